"""Reads the two packages that the climate grids are made from.

gsee-climate-data 1.0.0 and itur 0.4.0 are installed in the same Python; see README.md beside this folder.
"""
import functools
from pathlib import Path

import gsee_climate_data
import itur
import numpy as np

from sun_h0 import DAYS, monthly_kwh_per_m2

ITU = Path(itur.__file__).parent / "data"
QUANTILES = 16


def itu_map(name):
    """One map of an ITU-R recommendation as (rows from south, columns from -180), with its south, west and step."""
    folder, file = name.split("/")
    axes = {"1510": "v1", "1511": "v2", "453": "v12", "530": "v16", "837": "v7"}[folder]
    suffix = {"453": "0d75"}.get(folder, "")
    if folder == "837":
        suffix = "_r001" if file == "v7_r001" else "_mt"
    lat = np.load(ITU / folder / f"{axes}_lat{suffix}.npz")["arr_0"][:, 0]
    lon = np.load(ITU / folder / f"{axes}_lon{suffix}.npz")["arr_0"][0]
    values = np.load(ITU / folder / f"{file}.npz")["arr_0"]
    if lat[0] > lat[-1]:
        lat, values = lat[::-1], values[::-1]
    step = round(float(lon[1] - lon[0]), 6)
    if lon.max() > 180.5:  # 0..360: turn it so that it starts at -180, without the doubled last column
        keep = lon < 359.999
        lon, values = lon[keep], values[:, keep]
        turn = int(np.argmax(lon >= 180))
        lon = np.concatenate([lon[turn:] - 360, lon[:turn]])
        values = np.concatenate([values[:, turn:], values[:, :turn]], axis=1)
    else:
        keep = (lon >= -180) & (lon < 180 - 1e-6)
        lon, values = lon[keep], values[:, keep]
    return values, float(lat[0]), float(lon[0]), abs(step)


def global_irradiation():
    """Monthly mean GHI (kWh/m2/day, (12, 44, 120)) and quantiles of the daily value over the mean (12, 16, 44, 120).

    The package holds, for each 3 degree cell and month, the probability density of the daily mean irradiance in 128
    bins, smoothed by a kernel: bins below zero are an artefact of the kernel and are folded to zero. Cells of the sea
    far from land hold NaN; months in which the sun stays below the horizon hold NaN too and become 0.
    """
    file = gsee_climate_data.load()
    lat, lon = file["lat"], file["lon"]
    watts = np.maximum(np.moveaxis(file["xk"], 2, 0).astype(float), 0)
    weight = np.moveaxis(file["pk"], 2, 0).astype(float)
    total = np.nansum(weight, axis=-1)
    has = total > 0
    weight = np.where(has[..., None], np.nan_to_num(weight) / np.where(has, total, 1)[..., None], 0)
    watts = np.nan_to_num(watts)
    mean = np.where(has, (weight * watts).sum(-1), np.nan) * 24 / 1000
    land = has.any(0)
    mean = np.where(land & ~has, 0, mean)
    quantiles = np.ones((12, QUANTILES, len(lat), len(lon)))
    for m, j, i in zip(*np.nonzero(has)):
        if mean[m, j, i] > 0.02:
            quantiles[m, :, j, i] = equal_share_means(watts[m, j, i] * 0.024 / mean[m, j, i], weight[m, j, i])
    return mean, quantiles, lat, lon


def equal_share_means(values, weights):
    """Mean of each sixteenth of the probability, from the dullest to the brightest; their mean is the mean."""
    edges = np.concatenate([[0], np.cumsum(weights)])
    edges /= edges[-1]
    area = np.concatenate([[0], np.cumsum(weights * values)])
    at = np.interp(np.linspace(0, 1, QUANTILES + 1), edges, area)
    return np.diff(at) * QUANTILES / area[-1]


def cell_h0(lat):
    """Extraterrestrial irradiation averaged over each cell's band of latitude: (12, 44)."""
    inside = np.linspace(-1.35, 1.35, 10)
    return monthly_kwh_per_m2(lat[None, :] + inside[:, None]).mean(1)


def clearness(mean, lat):
    """Monthly clearness index K of each cell; NaN where the sun is too low for a meaningful quotient."""
    h0 = cell_h0(lat)[:, :, None]
    return np.where(h0 > 0.15, mean / np.maximum(h0, 1e-6), np.nan)


def filled_in_time(k):
    """Polar-night months take the K of the nearest month that has one (it is multiplied by nearly no sun)."""
    out = k.copy()
    for distance in range(1, 7):
        for m in range(12):
            for other in ((m - distance) % 12, (m + distance) % 12):
                gap = np.isnan(out[m]) & ~np.isnan(k[other])
                out[m][gap] = k[other][gap]
    return out


def temperature():
    """Monthly mean temperature (12, 241, 480), degC, from -90, -180 in steps of 0.75 degrees (ITU-R P.1510-1)."""
    return np.stack([itu_map(f"1510/v1_t_month{m:02d}")[0] for m in range(1, 13)]) - 273.15


def temperature_reference(topo):
    """Mean ground height round each node of the temperature map: what its temperatures are taken to stand on.

    topo holds cells of 1/12 degree from the south pole; the box is 0.75 degrees wide, its edge cells count half.
    """
    around = np.pad(topo, ((5, 5), (0, 0)), mode="edge")
    sums = np.zeros((241, 480))
    for row in range(10):
        for column in range(10):
            share = (0.5 if row in (0, 9) else 1) * (0.5 if column in (0, 9) else 1)
            sums += share * np.roll(around, 5 - column, axis=1)[row : row + 2161 : 9, ::9]
    return sums / 81


def box_mean(values, south, step, lat, lon, reach):
    """Mean of a map from -180 over the nodes within `reach` degrees of a point."""
    rows = np.arange(np.ceil((lat - reach - south) / step), np.floor((lat + reach - south) / step) + 1).astype(int)
    columns = np.arange(np.ceil((lon - reach + 180) / step), np.floor((lon + reach + 180) / step) + 1).astype(int)
    rows = np.clip(rows, 0, values.shape[-2] - 1)
    return values[..., rows[:, None], columns[None] % values.shape[-1]].mean((-1, -2))


def rain_probability(months_c, lat, lon, reach):
    """Share of the time it rains, per cent, by month: ITU-R P.837-7 Annex 1, equations 1 and 2, over a box."""
    fall = box_mean(rain_fall(), -90.125, 0.25, lat, lon, reach)
    rate = 0.5874 * np.exp(0.0883 * np.maximum(months_c, 0))
    hours = 24 * np.array([31, 28.25, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31])
    return np.minimum(100 * fall / (hours * rate), 70)


@functools.cache
def rain_fall():
    return np.stack([itu_map(f"837/v7_mt_month{m:02d}")[0] for m in range(1, 13)])
