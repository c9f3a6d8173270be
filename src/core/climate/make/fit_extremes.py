"""Fits the gap between the coldest month and the lowest hour: python fit_extremes.py STATIONS.JSON

STATIONS.JSON is tests/reference/climate-stations/vectors/stations.json. Month means are those of the temperature map,
brought to the station's elevation as the program does it, because that is what the program starts from.
Prints what ../tables.ts holds, and what is left.
"""
import json
import sys

import numpy as np

from sources import itu_map, temperature, temperature_reference

LAPSE_K_PER_M = 0.0065


def bilinear(values, lat, lon):
    row, column = (lat + 90) / 0.75, (lon + 180) / 0.75
    j, i = int(row), int(column)
    up, right = row - j, column - i
    east = (i + 1) % 480
    return ((1 - up) * ((1 - right) * values[..., j, i] + right * values[..., j, east])
            + up * ((1 - right) * values[..., j + 1, i] + right * values[..., j + 1, east]))


def main(stations):
    with open(stations, encoding="utf-8") as file:
        listed = [one for one in json.load(file) if abs(one["latitudeDeg"]) < 72 and one.get("temperatureUse") != "check"]
    months, ground = temperature(), temperature_reference(itu_map("1511/v2_topo")[0][2:-2])
    rows = []
    for one in listed:
        where = one["latitudeDeg"], one["longitudeDeg"]
        at = bilinear(months, *where) - LAPSE_K_PER_M * (one["elevationM"] - bilinear(ground, *where))
        rows.append((at.min(), at.max(), one))
    coldest = [(low, one["coldestMonthTempC"]) for low, _, one in rows if "coldestMonthTempC" in one]
    miss = np.array([a - b for a, b in coldest])
    print(f"coldest month: {len(miss)} stations, mean {miss.mean():+.2f} K, deviation {miss.std():.2f} K")

    cold = [(low, high - low, one["lowestHourTempC"]) for low, high, one in rows if "lowestHourTempC" in one]
    low, span, hour = (np.array(x) for x in zip(*cold))
    table = np.stack([np.ones_like(span), span], axis=1)
    weights, *_ = np.linalg.lstsq(table, low - hour, rcond=None)
    left = low - hour - table @ weights
    alone = left / (1 - np.diag(table @ np.linalg.pinv(table)))
    print(f"lowest hour: {len(hour)} stations, gap = {weights[0]:.2f} K + {weights[1]:.3f} range; left {left.std():.2f} K, "
          f"each left out {np.sqrt((alone**2).mean()):.2f} K, from {left.min():.1f} to {left.max():.1f} K")

    hot = [(high, high - low, one["highestHourTempC"]) for low, high, one in rows if "highestHourTempC" in one]
    gap = np.array([hour - high for high, _, hour in hot])
    print(f"highest hour: {len(gap)} stations, gap {gap.mean():.1f} K, deviation {gap.std():.1f} K, "
          f"from {gap.min():.1f} to {gap.max():.1f} K")


if __name__ == "__main__":
    main(sys.argv[1])
