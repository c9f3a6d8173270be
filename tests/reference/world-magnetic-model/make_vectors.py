"""Makes vectors.json: declination and horizontal field of the World Magnetic Model 2025.

    python3 -m venv venv && venv/bin/pip install pygeomag==1.1.0 ahrs==0.4.0 && venv/bin/python make_vectors.py

"computed" is what pygeomag (MIT) works out from its own copy of the coefficients, at places and times drawn with a fixed
seed, at sea level on the ellipsoid. "published" are the lines at height 0 of the test values that NOAA/NCEI publishes with
the model (public domain), as shipped in ahrs (MIT).
"""

import json
import pathlib
import random

import ahrs
import pygeomag

rng = random.Random(2025)
model = pygeomag.GeoMag(coefficients_file="wmm/WMM_2025.COF")


def row(latitude, longitude, year):
    got = model.calculate(glat=latitude, glon=longitude, alt=0, time=year)
    return [latitude, longitude, year, round(got.d, 5), round(got.h, 2)]


# Evenly over the sphere, then closer to where people and the poles are, then the ends of the years and the date line.
computed = [
    row(round(max(-89.0, min(89.0, rng.choice((rng.gauss(45, 15), rng.gauss(-30, 15), rng.uniform(-89, 89))))), 3),
        round(rng.uniform(-180, 180), 3), round(rng.uniform(2025, 2030), 2))
    for _ in range(80)
]
computed += [row(round(rng.uniform(70, 89), 3), round(rng.uniform(-180, 180), 3), 2027.0) for _ in range(12)]
computed += [row(-64.2, 135.9, 2026.0), row(86.0, 140.0, 2026.0), row(52.3, -3.51, 2025.0), row(52.3, -3.51, 2030.0),
             row(-17.7, 180.0, 2026.5), row(-17.7, -180.0, 2026.5)]

lines = (pathlib.Path(ahrs.__file__).parent / "utils/WMM2025/WMM2025_TEST_VALUES.txt").read_text().splitlines()
fields = [[float(x) for x in line.split()] for line in lines if line.strip() and not line.startswith("#")]
published = [[f[2], ((f[3] + 180) % 360) - 180, f[0], f[10], f[7]] for f in fields if f[1] == 0]


def rows(them):
    return ",\n    ".join(json.dumps(one) for one in them)


pathlib.Path(__file__).with_name("vectors.json").write_text(
    f'{{\n  "library": "pygeomag 1.1.0",\n  "columns": ["latitudeDeg", "longitudeDeg", "year", "declinationDeg", "horizontalNT"],\n'
    f'  "computed": [\n    {rows(computed)}\n  ],\n  "published": [\n    {rows(published)}\n  ]\n}}\n')
print(len(computed), len(published))
