"""Fits bias.py to stations: python fit_bias.py STATIONS.JSON. Writes bias-fit.json and prints what was reached.

STATIONS.JSON is tests/reference/climate-stations/vectors/stations.json. Each station says its "use": "fit" (every second
of the first 58), "check" (the others, and 30 found later: fitting half of those too was no better at the rest), or
"none": places without a cell, and Venice 1951-1970, markedly darker than modern data of the same plain (Bologna in the
same list).
"""
import json
import sys

import numpy as np

import bias
from sources import DAYS, box_mean, clearness, filled_in_time, global_irradiation, temperature
from sun_h0 import monthly_kwh_per_m2


def at(k, lat, latitude, longitude):
    """Bilinear over the cells that have a value, as the program does it."""
    row, column = (latitude - lat[0]) / 3, (longitude + 180) / 3
    j, i = min(int(row), len(lat) - 2), int(np.floor(column))
    up, right = min(row - j, 1), column - i
    total, weight = 0, 0
    for dj, wj in ((0, 1 - up), (1, up)):
        for di, wi in ((0, 1 - right), (1, right)):
            cell = k[:, j + dj, (i + di) % k.shape[2]]
            if np.isfinite(cell).all():
                total, weight = total + wj * wi * cell, weight + wj * wi
    return total / weight


def fitted(k, measured, sun, temp_c, lat, lon):
    """base and nodes from stations; all arguments along the last axis."""
    usable = (sun > 0.6) & (measured * sun > 0.1)
    crowd = (bias.distance_km(lat, lon, lat, lon) < 500).sum(1)
    weight = np.where(usable, 1 / np.sqrt(crowd), 0)
    shapes = bias.cloud_share(k) * bias.terms(temp_c)
    a = (shapes * weight).reshape(len(shapes), -1).T
    base, *_ = np.linalg.lstsq(a, ((k - measured) * weight).ravel(), rcond=None)
    left = (k - measured) - np.tensordot(base, shapes, axes=1)
    share = np.where(usable, bias.cloud_share(k), 0)
    own = (share * left).sum(0) / (share**2).sum(0)
    nodes = np.stack([lat, lon, np.zeros_like(lat)], axis=1)
    among = bias.likeness(lat, lon, nodes) + bias.NOISE * np.eye(len(lat))
    nodes[:, 2] = np.linalg.solve(among, own)
    return {"base": base, "nodes": nodes}


def say(title, k, measured, sun, lat):
    ghi, truth = k * sun, measured * sun
    days = np.array(DAYS)[:, None]
    year = (ghi * days).sum(0) / (truth * days).sum(0) - 1
    dark = np.where(truth > 0.1, truth, 99).argmin(0)
    which = np.arange(len(lat))
    darkest = (ghi[dark, which] / truth[dark, which] - 1)[np.abs(lat) < 60]
    usable = (sun > 0.6) & (truth > 0.1)
    month = (ghi / np.maximum(truth, 0.05) - 1)[usable]
    print(f"{title:34} year: median {np.median(abs(year)):.3f} mean {year.mean():+.3f} worst fifth from "
          f"{np.quantile(abs(year), 0.8):.3f} | darkest month: within 10 % {(abs(darkest) < 0.1).mean():.2f} within 20 % "
          f"{(abs(darkest) < 0.2).mean():.2f} mean {darkest.mean():+.3f} | months: rms {np.sqrt((month**2).mean()):.3f}")


def main(stations):
    with open(stations, encoding="utf-8") as file:
        listed = json.load(file)
    mean, _, cell_lat, _ = global_irradiation()
    grid = filled_in_time(clearness(mean, cell_lat))
    temperatures = temperature()
    rows = []
    for one in listed:
        if one["use"] != "none":
            k = at(grid, cell_lat, one["latitudeDeg"], one["longitudeDeg"])
            sun = monthly_kwh_per_m2(one["latitudeDeg"])
            temp_c = box_mean(temperatures, -90, 0.75, one["latitudeDeg"], one["longitudeDeg"], 1.5)
            ghi = np.array(one["ghiDailyKWhPerM2ByMonth"])
            rows.append((k, ghi / np.maximum(sun, 1e-3), sun, temp_c, one["latitudeDeg"], one["longitudeDeg"],
                         one["use"] == "fit"))
    k, measured, sun, temp_c = (np.array([row[i] for row in rows]).T for i in range(4))
    lat, lon, is_fit = (np.array([row[i] for row in rows]) for i in (4, 5, 6))
    every = np.arange(len(rows))
    take = lambda which: [x[..., which] for x in (k, measured, sun, temp_c, lat, lon)]
    fix = lambda fit, which: k[:, which] - bias.excess(k[:, which], temp_c[:, which], lat[which], lon[which], fit)

    print(len(rows), "stations")
    say("as the package has it", k, measured, sun, lat)
    for use, check in ((~is_fit, is_fit), (is_fit, ~is_fit)):
        fit = fitted(*take(every[use]))
        check = every[check]
        say(f"fitted on the others, {len(check)} checked", fix(fit, check), measured[:, check], sun[:, check], lat[check])
    alone = np.zeros_like(k)
    for i in every:
        far = every[bias.distance_km(lat[i], lon[i], lat, lon) > 700]
        alone[:, [i]] = fix(fitted(*take(far)), np.array([i]))
    say("no station within 700 km", alone, measured, sun, lat)
    print("base", fit["base"])
    bias.FIT.write_text(json.dumps({
        "base": [round(x, 4) for x in fit["base"].tolist()],
        "nodes": [[round(x, 4) for x in node] for node in fit["nodes"].tolist()],
    }, indent=1) + "\n")


if __name__ == "__main__":
    main(sys.argv[1])
