"""How far a typical year's month lies from the long mean: python typical_years.py STATIONS.JSON FOLDER

FOLDER is pcse/tests/test_data of the source package pcse 6.0.13 (EUPL-1.2): NL1.976 to NL1.999 are daily measurements
of Wageningen, 1976 to 1999. From 15 of those years, drawn again and again, the month is picked whose daily values are
distributed most like the pool's (Finkelstein-Schafer statistic, weights of a TMY3, radiation half; from memory), and its
mean put beside that of all 24 years. Then, for the stations of the table below 60 degrees, the darkest month: its
spread between years from the spread of its days, and the share of stations that a perfect long mean would have within 10 %.
"""
import json
import sys
from math import erf, sqrt
from pathlib import Path

import numpy as np

# Irradiation, mean, highest and lowest temperature, vapour pressure, wind.
WEIGHTS = 0.5, 0.1, 0.05, 0.05, 0.2, 0.1
# A single month's spread over that of its days' mean if days were alike from month to month: both places' mean.
DAYS_LIKE_THE_LAST = 0.28  # correlation of neighbouring days (Wageningen 0.28, Davos 0.27)
LONGER_MEMORY = 1.17  # what weeks and seasons add (Wageningen 1.19, Davos 1.14)


def daily(folder):
    """{(year, month): array of days by six values}"""
    months = {}
    for path in sorted(Path(folder).glob("NL1.*")):
        lines = [line.split() for line in path.read_text("latin-1").splitlines() if not line.startswith("*")][1:]
        for line in lines:
            if len(line) < 9:
                continue
            year, day = int(line[1]), int(line[2])
            date = np.datetime64(f"{year}-01-01") + day - 1
            ghi, low, high, vapour, wind = (float(value) for value in line[3:8])
            month = date.astype("datetime64[M]").astype(int) % 12
            months.setdefault((year, month), []).append((ghi / 3600, (low + high) / 2, high, low, vapour, wind))
    return {key: np.array(days) for key, days in months.items() if len(days) >= 25}


def apart(one, pool):
    """Mean distance of two cumulative distributions at the days of the first."""
    one, pool = np.sort(one), np.sort(pool)
    share = lambda of: np.searchsorted(of, one, side="right") / len(of)
    return np.abs(share(one) - share(pool)).mean()


def between_years(spread):
    """Standard deviation of a month's mean between years from the spread of its daily values."""
    return LONGER_MEMORY * spread * np.sqrt((1 + DAYS_LIKE_THE_LAST) / (1 - DAYS_LIKE_THE_LAST) / 30)


def within(frac, limit=0.1):
    return np.mean([erf(limit / (one * sqrt(2))) for one in frac])


def main(stations, folder):
    days, draw, single, picked = daily(folder), np.random.default_rng(1), [], []
    for month in range(12):
        years = [year for year, m in days if m == month]
        mean = {year: days[year, month][:, 0].mean() for year in years}
        long = np.mean(list(mean.values()))
        single.append([mean[year] / long - 1 for year in years])
        picked.append([])
        for _ in range(40):
            pool = draw.choice(years, 15, replace=False)
            every = np.concatenate([days[year, month] for year in pool])
            far = lambda year: sum(w * apart(days[year, month][:, c], every[:, c]) for c, w in enumerate(WEIGHTS))
            picked[-1].append(mean[min(pool, key=far)] / long - 1)
    rms = lambda values: np.sqrt(np.mean(np.square(np.concatenate(values))))
    for title, months in (("all months", range(12)), ("November to January", (10, 11, 0))):
        one, best = [single[m] for m in months], [picked[m] for m in months]
        print(f"Wageningen, {title}: a single year's {rms(one):.3f} from the long mean (rms), a picked one's {rms(best):.3f}, "
              f"within 10 %: {np.mean(np.abs(np.concatenate(one)) < 0.1):.2f} and {np.mean(np.abs(np.concatenate(best)) < 0.1):.2f}")
    with open(stations, encoding="utf-8") as file:
        listed = [one for one in json.load(file) if "dailyShareSpreadByMonth" in one and abs(one["latitudeDeg"]) < 60]
    spread = []
    for one in listed:
        ghi = np.array(one["ghiDailyKWhPerM2ByMonth"])
        spread.append(one["dailyShareSpreadByMonth"][int(np.where(ghi > 0.1, ghi, 99).argmin())])
    years = between_years(np.array(spread))
    print(f"{len(listed)} stations, darkest month between years: {np.median(years):.3f} (median), {years.min():.3f} to {years.max():.3f}")
    for title, share in (("single years", 1), ("picked, half of it", 0.5), ("picked, and five years of grid", sqrt(0.25 + 0.2))):
        print(f"  {title}: within 10 % {within(share * years):.2f}, within 20 % {within(share * years, 0.2):.2f}")


if __name__ == "__main__":
    main(*sys.argv[1:3])
