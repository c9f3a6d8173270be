"""Makes planes.json: how much more a steep plane gets than the level in measured hours, month by month.

    python3 -m venv venv && venv/bin/pip install pvlib==0.16.1 && venv/bin/python make_planes.py FOLDER

FOLDER holds the source archive tsib 0.1.6 (MIT) of PyPI with the German test reference years of 2010; taken are the five stations
whose lit hours are flagged 1 (measured, from memory), direct and diffuse on the level. Plane facing south at latitude + 15 degrees,
albedo 0.2, Hay and Davies, sun at mid-hour; direct light below 2 degrees of height is dropped. Nothing of ours is used.
"""

import glob
import json
import pathlib
import sys

import numpy as np
import pandas as pd
import pvlib

STATIONS = {2: ("Rostock", 54.18, 12.08), 3: ("Hamburg", 53.63, 10.0), 4: ("Potsdam", 52.38, 13.06),
            9: ("Chemnitz", 50.8, 12.87), 12: ("Mannheim", 49.52, 8.55)}


def hours_of(number):
    path = glob.glob(f"{sys.argv[1]}/**/TRY/TRY2010_{number:02d}_Jahr.dat", recursive=True)[0]
    rows = [line.split() for line in open(path, encoding="latin-1")]
    rows = [row for row in rows if len(row) > 16 and row[0] == str(number) and row[2].isdigit()]
    return np.array([(float(row[13]), float(row[14])) for row in rows]).T


out = []
for number, (place, lat, lon) in STATIONS.items():
    direct, diffuse = hours_of(number)
    times = pd.date_range("2001-01-01 00:30", periods=8760, freq="h", tz=3600)
    sun = pvlib.solarposition.get_solarposition(times, lat, lon, 50)
    up = np.cos(np.radians(sun.zenith.to_numpy()))
    normal = pd.Series(np.where(up > 0.035, direct / np.maximum(up, 0.035), 0).clip(max=1100), times)
    plane = pvlib.irradiance.get_total_irradiance(
        lat + 15, 180, sun.zenith, sun.azimuth, normal, pd.Series(direct + diffuse, times), pd.Series(diffuse, times),
        dni_extra=pvlib.irradiance.get_extra_radiation(times), albedo=0.2, model="haydavies").poa_global.fillna(0).to_numpy()
    of = [times.month == month for month in range(1, 13)]
    out.append({"place": place, "latitudeDeg": lat, "longitudeDeg": lon,
                "ghiDailyKWhPerM2ByMonth": [round(float((direct + diffuse)[m].sum() / m.sum() * 24 / 1000), 3) for m in of],
                "planeRatioByMonth": [round(float(plane[m].sum() / (direct + diffuse)[m].sum()), 3) for m in of]})
(pathlib.Path(__file__).parent / "planes.json").write_text(
    json.dumps({"library": f"pvlib {pvlib.__version__}", "stations": out}, indent=1) + "\n")
