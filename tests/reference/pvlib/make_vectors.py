"""Makes vectors/*.json with pvlib (BSD-3-Clause), the general photovoltaic library.

    python3 -m venv venv && venv/bin/pip install pvlib==0.16.1 && venv/bin/python make_vectors.py

Inputs are random with a fixed seed; outputs are pvlib's own. Azimuths are clockwise from true north in both.
"""

import json
import pathlib

import numpy as np
import pandas as pd
import pvlib

OUT = pathlib.Path(__file__).parent / "vectors"
RNG = np.random.default_rng(20240917)


def write(name, function, rows):
    body = ",\n    ".join(json.dumps(row) for row in rows)
    text = f'{{\n  "library": "pvlib {pvlib.__version__}",\n  "function": "{function}",\n  "rows": [\n    {body}\n  ]\n}}\n'
    (OUT / f"{name}.json").write_text(text)
    print(name, len(rows))


def num(x, digits=9):
    return float(f"{float(x):.{digits}g}")


def position():
    rows = []
    for _ in range(300):
        utc_ms = int(RNG.integers(-631152000, 2524608000)) * 1000
        lat, lon, elev = num(RNG.uniform(-89.9, 89.9), 7), num(RNG.uniform(-180, 180), 7), num(RNG.uniform(0, 4000), 5)
        pressure, temp = num(RNG.uniform(60000, 104000), 6), num(RNG.uniform(-30, 40), 4)
        when = pd.DatetimeIndex([pd.Timestamp(utc_ms, unit="ms", tz="UTC")])
        got = pvlib.solarposition.spa_python(when, lat, lon, altitude=elev, pressure=pressure, temperature=temp, delta_t=None)
        rows.append(
            dict(utcMs=utc_ms, latitudeDeg=lat, longitudeDeg=lon, elevationM=elev, pressurePa=pressure, tempC=temp,
                 apparentZenithDeg=num(got["apparent_zenith"].iloc[0]), zenithDeg=num(got["zenith"].iloc[0]),
                 azimuthDeg=num(got["azimuth"].iloc[0]), equationOfTimeMin=num(got["equation_of_time"].iloc[0])))
    write("position", "solarposition.spa_python (NREL SPA, delta_t by its own polynomial)", rows)


def sun_times():
    rows = []
    for _ in range(200):
        day = pd.Timestamp("1970-01-01", tz="UTC") + pd.Timedelta(days=int(RNG.integers(0, 29000)))
        lat, lon = num(RNG.uniform(-60, 60), 6), num(RNG.uniform(-30, 30), 6)
        got = pvlib.solarposition.sun_rise_set_transit_spa(pd.DatetimeIndex([day]), lat, lon, delta_t=None)
        ms = {k: int(got[k].iloc[0].timestamp() * 1000) for k in ("sunrise", "transit", "sunset")}
        # SPA answers within one UTC day: farther from Greenwich the sunset may be that of the evening before
        rows.append(dict(noonUtcMs=int(day.timestamp() * 1000) + 43_200_000, latitudeDeg=lat, longitudeDeg=lon,
                         sunriseUtcMs=ms["sunrise"], transitUtcMs=ms["transit"], sunsetUtcMs=ms["sunset"]))
    write("sun-times", "solarposition.sun_rise_set_transit_spa", rows)


def incidence():
    rows = []
    for _ in range(200):
        zen, az = num(RNG.uniform(0, 100), 7), num(RNG.uniform(0, 360), 7)
        tilt, face = num(RNG.uniform(0, 90), 7), num(RNG.uniform(0, 360), 7)
        rows.append(dict(zenithDeg=zen, sunAzimuthDeg=az, tiltDeg=tilt, azimuthDeg=face,
                         incidenceDeg=num(pvlib.irradiance.aoi(tilt, face, zen, az))))
    write("incidence", "irradiance.aoi", rows)


def air_mass():
    rows = [dict(zenithDeg=z, airMassRatio=num(pvlib.atmosphere.get_relative_airmass(z, "kastenyoung1989")))
            for z in [num(v, 7) for v in RNG.uniform(0, 90, 200)] + [0.0, 90.0]]
    write("air-mass", "atmosphere.get_relative_airmass, kastenyoung1989", rows)


def erbs():
    rows = []
    for _ in range(400):
        doy, zen = int(RNG.integers(1, 366)), num(RNG.uniform(0, 95), 7)
        extra = num(pvlib.irradiance.get_extra_radiation(doy), 12)
        ghi = num(RNG.uniform(0, 1.15) * extra * max(np.cos(np.radians(zen)), 0.03), 7)
        got = pvlib.irradiance.erbs(ghi, zen, doy)
        rows.append(dict(ghiWPerM2=ghi, zenithDeg=zen, extraterrestrialNormalWPerM2=extra, dayOfYear=doy,
                         diffuseWPerM2=num(got["dhi"]), beamNormalWPerM2=num(got["dni"]), clearnessIndex=num(got["kt"])))
    write("erbs", "irradiance.erbs", rows)


def isotropic():
    rows = []
    for _ in range(300):
        zen, az = num(RNG.uniform(0, 95), 7), num(RNG.uniform(0, 360), 7)
        tilt, face, albedo = num(RNG.uniform(0, 90), 7), num(RNG.uniform(0, 360), 7), num(RNG.uniform(0, 0.9), 4)
        dni, dhi = num(RNG.uniform(0, 1000), 6), num(RNG.uniform(0, 500), 6)
        ghi = num(dhi + dni * max(np.cos(np.radians(zen)), 0), 9)
        got = pvlib.irradiance.get_total_irradiance(tilt, face, zen, az, dni, ghi, dhi, albedo=albedo, model="isotropic")
        rows.append(dict(zenithDeg=zen, sunAzimuthDeg=az, tiltDeg=tilt, azimuthDeg=face, albedo=albedo,
                         beamNormalWPerM2=dni, diffuseWPerM2=dhi, ghiWPerM2=ghi, poaWPerM2=num(got["poa_global"]),
                         beamWPerM2=num(got["poa_direct"]), skyWPerM2=num(got["poa_sky_diffuse"]),
                         groundWPerM2=num(got["poa_ground_diffuse"])))
    write("isotropic", "irradiance.get_total_irradiance, isotropic", rows)


def cell_temperature():
    mounts = {"open-rack-glass-polymer": "open_rack_glass_polymer", "open-rack-glass-glass": "open_rack_glass_glass"}
    rows = []
    for i in range(300):
        poa, temp, wind = num(RNG.uniform(0, 1300), 6), num(RNG.uniform(-40, 50), 4), num(RNG.uniform(0, 25), 4)
        mount = list(mounts)[i % 2]
        p = pvlib.temperature.TEMPERATURE_MODEL_PARAMETERS["sapm"][mounts[mount]]
        noct = num(RNG.uniform(40, 55), 4)
        gamma, rated = num(RNG.uniform(-0.005, -0.002), 4), num(RNG.uniform(10, 500), 5)
        cell = num(pvlib.temperature.sapm_cell(poa, temp, wind, p["a"], p["b"], p["deltaT"]))
        rows.append(dict(poaWPerM2=poa, ambientTempC=temp, windMPerS=wind, mount=mount, noctC=noct,
                         powerTempCoefficientPerK=gamma, ratedW=rated,
                         sandiaModuleTempC=num(pvlib.temperature.sapm_module(poa, temp, wind, p["a"], p["b"])),
                         sandiaCellTempC=cell, faimanTempC=num(pvlib.temperature.faiman(poa, temp, wind)),
                         rossTempC=num(pvlib.temperature.ross(poa, temp, noct=noct)),
                         powerW=num(rated * poa / 1000 * (1 + gamma * (cell - 25)))))
    write("cell-temperature", "temperature.sapm_module, sapm_cell, faiman, ross; power from the printed equation P0 G/1000 (1 + gamma (Tc - 25))", rows)


def clear_sky():
    rows = [dict(apparentZenithDeg=z, ghiWPerM2=num(pvlib.clearsky.haurwitz(pd.Series([z]))["ghi"].iloc[0]))
            for z in [num(v, 7) for v in RNG.uniform(0, 100, 200)]]
    write("clear-sky", "clearsky.haurwitz", rows)


def spencer():
    rows = [dict(dayOfYear=int(n), declinationDeg=num(np.degrees(pvlib.solarposition.declination_spencer71(n))),
                 cooperDeclinationDeg=num(np.degrees(pvlib.solarposition.declination_cooper69(n))),
                 equationOfTimeMin=num(pvlib.solarposition.equation_of_time_spencer71(n)),
                 normalWPerM2=num(pvlib.irradiance.get_extra_radiation(n, solar_constant=1367.0, method="spencer")))
            for n in range(1, 366, 3)]
    write("spencer", "solarposition.declination_spencer71, declination_cooper69, equation_of_time_spencer71; irradiance.get_extra_radiation", rows)


def typical_years():
    """Hourly transposition of the two typical years that pvlib ships, monthly means of daily sums, kWh/m2."""
    days = np.array([31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31])
    folder = pathlib.Path(pvlib.__file__).parent / "data"
    rows = []
    for name, file in (("Sand Point AK", "703165TY.csv"), ("Greensboro NC", "723170TYA.CSV")):
        df, meta = pvlib.iotools.read_tmy3(folder / file, coerce_year=1990, map_variables=True)
        lat, lon = meta["latitude"], meta["longitude"]
        # rows are stamped at the end of their hour
        middle = df.index - pd.Timedelta("30min")
        sun = pvlib.solarposition.get_solarposition(middle, lat, lon)
        sun.index = df.index
        extra = pd.Series(np.asarray(pvlib.irradiance.get_extra_radiation(middle)), index=df.index)

        def monthly(series):
            return [round(float(x), 3) for x in series.fillna(0).groupby(middle.month).sum() / 1000 / days]

        for tilt in (round(lat, 1), round(lat + 15, 1)):
            row = dict(name=name, latitudeDeg=lat, tiltDeg=tilt, ghiDailyKWhPerM2ByMonth=monthly(df.ghi))
            for model in ("isotropic", "perez"):
                got = pvlib.irradiance.get_total_irradiance(
                    tilt, 180, sun.apparent_zenith, sun.azimuth, df.dni, df.ghi, df.dhi, dni_extra=extra,
                    airmass=pvlib.atmosphere.get_relative_airmass(sun.apparent_zenith), albedo=0.2, model=model)
                row[f"{model}DailyKWhPerM2ByMonth"] = monthly(got["poa_global"])
            rows.append(row)
    write("typical-years", "iotools.read_tmy3; irradiance.get_total_irradiance hour by hour, albedo 0.2, facing south", rows)


if __name__ == "__main__":
    OUT.mkdir(exist_ok=True)
    for make in (position, sun_times, incidence, air_mass, erbs, isotropic, cell_temperature, clear_sky, spencer, typical_years):
        make()
