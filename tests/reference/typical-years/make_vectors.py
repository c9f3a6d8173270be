"""Makes vectors/*.json with pvlib (BSD-3-Clause): what its readers find in typical-year files of an invented place.

    python3 -m venv venv && venv/bin/pip install pvlib==0.16.1 && venv/bin/python make_vectors.py

The files themselves are not kept: invented-year.ts writes the same text, byte for byte (compared by its SHA-256). The
numbers in them are invented; only the layouts are real. pvlib leaves codes for missing values as they are, so the holes
are filled here by the mean of the same hour of the day before and the day after.
"""

import hashlib
import io
import json
import pathlib

import numpy as np
import pandas as pd
import pvlib

OUT = pathlib.Path(__file__).parent / "vectors"
DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]


def tenths(n):
    return f"{'-' if n < 0 else ''}{abs(n) // 10}.{abs(n) % 10}"


def hours():
    """One tuple of whole numbers an hour: month, day, hour, ghi, dni, dhi, temperature and wind in tenths."""
    state, i = 1, 0
    for month, days in enumerate(DAYS, 1):
        for day in range(1, days + 1):
            for hour in range(24):
                state = (state * 1664525 + 1013904223) % 2**32
                chance = state // 65536
                from_july = abs(i // 24 - 182)
                light = max(0, 12 - abs(2 * hour - 23))
                ghi = (900 - 3 * from_july) * light * (20 + chance % 81) // 1100
                temp = -50 + (182 - from_july) + 3 * hour - 36 + chance % 21
                yield month, day, hour, ghi, ghi * 7 // 10, ghi * 3 // 10, temp, chance % 80
                i += 1


def epw():
    lines = [
        "LOCATION,Invented Hollow,-,NOW,made for a test,999999,52.10,9.40,1.0,90.0",
        "DESIGN CONDITIONS,0",
        "TYPICAL/EXTREME PERIODS,0",
        "GROUND TEMPERATURES,0",
        "HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0",
        "COMMENTS 1,every number here is invented",
        "COMMENTS 2,",
        "DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31",
    ]
    for i, (month, day, hour, ghi, dni, dhi, temp, wind) in enumerate(hours()):
        g = "9999" if i in (1000, 1001) else str(ghi)
        t = "99.9" if i == 500 else tenths(temp)
        w = "999" if i == 77 else tenths(wind)
        lines.append(
            f"{1990 + month},{month},{day},{hour + 1},60,?9?9,{t},99.9,999,999999,9999,9999,9999,{g},{dni},{dhi},"
            f"999999,999999,999999,9999,180,{w},99,99,9999,99999,9,999999999,999,.999,999,99,999,999,99"
        )
    return "\r\n".join(lines) + "\r\n"


def tmy3():
    lines = [
        '999999,"INVENTED HOLLOW",NW,1.0,52.100,9.400,90',
        "Date (MM/DD/YYYY),Time (HH:MM),ETR (W/m^2),ETRN (W/m^2),GHI (W/m^2),GHI source,GHI uncert (%),DNI (W/m^2),"
        "DNI source,DNI uncert (%),DHI (W/m^2),DHI source,DHI uncert (%),Dry-bulb (C),Dry-bulb source,"
        "Dry-bulb uncert (code),Wspd (m/s),Wspd source,Wspd uncert (code)",
    ]
    for i, (month, day, hour, ghi, dni, dhi, temp, wind) in enumerate(hours()):
        g = "-9900" if i in (1000, 1001) else str(ghi)
        t = "-9900" if i == 500 else tenths(temp)
        w = "-9900" if i == 77 else tenths(wind)
        lines.append(
            f"{month:02d}/{day:02d}/{1990 + month},{hour + 1:02d}:00,0,0,{g},1,13,{dni},1,9,{dhi},1,9,{t},A,7,{w},A,7"
        )
    return "\n".join(lines) + "\n"


def num(x):
    return float(f"{float(x):.12g}")


def vector(name, text, frame, meta, columns):
    assert len(frame) == 8760
    series = {}
    for key, column in columns.items():
        values = pd.Series(frame[column].to_numpy(dtype=float))
        low, high = {"temp": (-99, 99), "wind": (0, 99)}.get(key, (-1, 9998))
        holes = (values < low) | (values >= high)
        assert holes.sum() == {"ghi": 2, "temp": 1, "wind": 1}.get(key, 0), (key, holes.sum())
        values[holes] = np.nan
        series[key] = values.fillna((values.shift(24) + values.shift(-24)) / 2)
    month = np.repeat(np.arange(12), np.array(DAYS) * 24)
    daily = series["ghi"].to_numpy().reshape(365, 24).sum(axis=1) / 1000
    day_month = np.repeat(np.arange(12), DAYS)
    shares = []
    for m in range(12):
        days = np.sort(daily[day_month == m])
        # every day sixteen times, cut into sixteen equal parts
        parts = np.repeat(days, 16).reshape(16, len(days)).mean(axis=1)
        shares.append([num(x) for x in parts / days.mean()])
    picked = sorted({*range(0, 8760, 97), 12, 77, 500, 1000, 1001, 8759})
    found = dict(
        library=f"pvlib {pvlib.__version__}",
        sha256=hashlib.sha256(text.encode()).hexdigest(),
        latitudeDeg=num(meta["latitude"]),
        longitudeDeg=num(meta["longitude"]),
        elevationM=num(meta["altitude"]),
        utcOffsetH=num(meta["TZ"]),
        ghiDailyKWhPerM2ByMonth=[num(daily[day_month == m].mean()) for m in range(12)],
        meanTempCByMonth=[num(series["temp"].to_numpy()[month == m].mean()) for m in range(12)],
        lowestTempC=num(series["temp"].min()),
        highestTempC=num(series["temp"].max()),
        dailyGhiQuantilesByMonth=shares,
        hours=[[i, *(num(series[key].iloc[i]) for key in ("ghi", "dni", "dhi", "temp", "wind"))] for i in picked],
    )
    body = ",\n".join(f"  {json.dumps(key)}: {json.dumps(value)}" for key, value in found.items())
    (OUT / f"{name}.json").write_text("{\n" + body + "\n}\n")
    print(name, len(text), "bytes of file,", len(picked), "hours")


text = epw()
frame, meta = pvlib.iotools.read_epw(io.StringIO(text))
vector("epw", text, frame, meta, dict(ghi="ghi", dni="dni", dhi="dhi", temp="temp_air", wind="wind_speed"))

text = tmy3()
path = OUT / "invented-tmy3.csv"
path.write_text(text)
frame, meta = pvlib.iotools.read_tmy3(path, map_variables=True)
path.unlink()
meta = {"latitude": meta["latitude"], "longitude": meta["longitude"], "altitude": meta["altitude"], "TZ": meta["TZ"]}
vector("tmy3", text, frame, meta, dict(ghi="ghi", dni="dni", dhi="dhi", temp="temp_air", wind="wind_speed"))
