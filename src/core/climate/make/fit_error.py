"""How far a corrected month may be off: python fit_error.py STATIONS.JSON. Prints what bias.error_frac rests on.

Every station but "none" is predicted from those farther away than 100, 250, 500, 700 and 1500 km, in turn; the errors are
put beside the spread of the daily values and the variance that the stations used leave. The four figures of bias.py
are a fit by likelihood (errors beyond three standard deviations count as three), rounded, and rather wide than narrow in
changeable months far from stations, where the errors have long tails.

A typical year's own distance from the long mean (typical_years.py: 5 to 10 %) is in these errors too: the grid is somewhat
better than they say.
Needs scipy beside what climate.py needs. Takes about two minutes.
"""
import json
import sys

import numpy as np
from scipy.optimize import minimize

import bias
import climate
from fit_bias import at, fitted
from sources import box_mean, clearness, filled_in_time, global_irradiation, itu_map, temperature
from sun_h0 import monthly_kwh_per_m2

GAPS_KM = 100, 250, 500, 700, 1500


def spread_of_days():
    """Standard deviation of the packed daily shares, by month and cell; NaN where there is no irradiation."""
    topo = itu_map("1511/v2_topo")[0][2:-2]
    land = (climate.blocks(topo, 3) != 0).any((1, 3))
    land = climate.cut(climate.spread(land, 1), -89.875, 0.25, climate.SOUTH + 0.125, climate.NORTH - 0.125)
    k, shares, *_ = climate.irradiation(temperature(), topo, land)
    return np.where(np.isfinite(k).all(0), shares.std(1), np.nan)


def stations(path):
    with open(path, encoding="utf-8") as file:
        listed = [one for one in json.load(file) if one["use"] != "none"]
    mean, _, cell_lat, _ = global_irradiation()
    grid, spread, temperatures = filled_in_time(clearness(mean, cell_lat)), spread_of_days(), temperature()
    lat, lon = (np.array([one[name] for one in listed]) for name in ("latitudeDeg", "longitudeDeg"))
    sun = np.array([monthly_kwh_per_m2(y) for y in lat]).T
    ghi = np.array([one["ghiDailyKWhPerM2ByMonth"] for one in listed]).T
    of = lambda read: np.array([read(y, x) for y, x in zip(lat, lon)]).T
    return {"k": of(lambda y, x: at(grid, cell_lat, y, x)), "measured": ghi / np.maximum(sun, 1e-3), "sun": sun,
            "temp_c": of(lambda y, x: box_mean(temperatures, -90, 0.75, y, x, 1.5)), "lat": lat, "lon": lon,
            }, of(lambda y, x: at(spread, cell_lat, y, x))


def main(path):
    s, spread = stations(path)
    far = bias.distance_km(s["lat"], s["lon"], s["lat"], s["lon"])
    rows = []
    for gap in GAPS_KM:
        for i in range(len(s["lat"])):
            one, others = [i], np.flatnonzero(far[i] > gap)
            fit = fitted(**{name: value[..., others] for name, value in s.items()})
            k = s["k"][:, one] - bias.excess(s["k"][:, one], s["temp_c"][:, one], s["lat"][one], s["lon"][one], fit)
            left = bias.left_by_stations(s["lat"][one], s["lon"][one], fit)[0]
            for m in np.flatnonzero((s["sun"][:, i] > 0.6) & (s["measured"][:, i] * s["sun"][:, i] > 0.1)):
                rows.append((k[m, 0] / s["measured"][m, i] - 1, spread[m, i], left))
    error, spread, left = np.array(rows).T
    frac = lambda p: bias.station_error_frac(spread, left, p[:2], p[2:])
    loss = lambda p: (np.log(frac(p)) + np.minimum((error / frac(p)) ** 2, 9) / 2).sum()
    print("by likelihood", np.abs(minimize(loss, [0.05, 0.05, 0.2, 0.3], method="Nelder-Mead").x).round(3))
    stated = frac(bias.STEADY_FRAC + bias.PER_SPREAD)
    for low, high in ((0, 0.5), (0.5, 0.7), (0.7, 0.85), (0.85, 0.95), (0.95, 1.01)):
        for dull, wild in ((0, 0.2), (0.2, 0.3), (0.3, 0.4), (0.4, 0.5), (0.5, 1)):
            which = (left >= low) & (left < high) & (spread >= dull) & (spread < wild)
            e, u = error[which], stated[which]
            print(f"left {low:4} to {high:4}, spread {dull:3} to {wild:3}: {which.sum():4} months, error {np.sqrt((e**2).mean()):.3f}"
                  f" (rms), stated {np.sqrt((u**2).mean()):.3f}, inside {(abs(e) < u).mean():.2f}, inside twice {(abs(e) < 2 * u).mean():.2f}")


if __name__ == "__main__":
    main(sys.argv[1])
