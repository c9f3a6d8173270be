"""The bias of the reanalysis, and how it is taken off the clearness index before packing.

Reanalysis clouds are too thin for the sun: MERRA-2 shows 5 to 30 % more global irradiation than stations, most in
cloudy middle latitudes, least in deserts, in frozen months and in warm showery ones. So

    K' = K - w(K) * (base + hot * h(T) + cold * c(T) + region(latitude, longitude))

w(K)      share of the error that a sky of this clearness can have: none under a sky that is always clear, the most at
          K = 0.57; w = 6.75 x^2 (1 - x) with x = K / 0.85
h(T)      rises from 0 at a monthly mean of 18 degC to 1 at 28 degC
c(T)      rises from 0 at 5 degC to 1 at -10 degC
region    what the fitted stations still miss, spread by optimal interpolation (Gandin 1963, from memory) with
          a correlation that falls by e over REACH_KM; nothing where no station is near

The form is ours; the figures come from fit_bias.py, which writes bias-fit.json.
"""
import json
from pathlib import Path

import numpy as np

REACH_KM = 1000.0
NOISE = 0.5  # variance of a station's own error over that of the regional one

# Error of a corrected monthly value (fit_error.py): what a month of even sun has, and what comes with each unit of the
# daily values' spread, both beside a station and on top of that far from all; and of cells filled from other maps
# (islands.py).
STEADY_FRAC, PER_SPREAD = (0.05, 0.06), (0.23, 0.28)
FILLED_FRAC = 0.125
WIDEST_FRAC = 0.5  # in twilight months, whose days hardly compare, more would say nothing

# Where the reanalysis is known to miss a cloud that lasts, and no station corrects it: what comes on top, as a standard
# deviation, and the places round which it does, fading over REGION_KM. The regimes are those of Klein & Hartmann (1993,
# J. Climate 6, 1587, from memory): stratocumulus over cold water off Peru and Namibia, stratus over the Chinese basins.
# Not widened: the coasts of California (six stations within 7 %) and Western Australia (one, within 8 %).
REGION_KM = 300.0
MISSED_CLOUD = (
    # Lima: 30 % too bright over the year, 70 % in winter (from memory: 4.3 and about 3.0 kWh/m2/day); 41 % by its
    # sunshine hours (sunshine-hours-by-city 0.1.0, CC-BY-4.0), where 266 other cities differ by less than 24 %.
    ("coast of Peru and north Chile", 0.30, ((-5.0, -81.0), (-8.5, -79.0), (-12.0, -77.0), (-15.5, -75.0), (-18.5, -70.3),
                                             (-21.5, -70.1), (-24.5, -70.4), (-27.5, -70.9))),
    # The same regime; no figure at all, so less is claimed.
    ("coast of Namibia and south Angola", 0.20, ((-12.5, 13.5), (-15.5, 12.2), (-18.5, 12.2), (-21.5, 13.8), (-24.5, 14.6))),
    # Chengdu and Chongqing: half too bright over the year, twice in December (from memory: 2.7 and 1.4 kWh/m2/day).
    ("Sichuan basin and Guizhou", 0.35, ((30.7, 104.1), (29.5, 106.5), (26.6, 106.7))),
    # Recife, Natal, Salvador: 19 to 23 % too bright by the sunshine hours of the same table.
    ("north-east coast of Brazil", 0.12, ((-5.8, -35.2), (-8.1, -34.9), (-10.5, -36.5), (-13.0, -38.5))),
)

FIT = Path(__file__).parent / "bias-fit.json"


def cloud_share(k):
    x = np.clip(k / 0.85, 0, 1)
    return 6.75 * x**2 * (1 - x)


def terms(temp_c):
    """The three shapes that base, hot and cold are multiplied by."""
    return np.stack([np.ones_like(temp_c), np.clip(temp_c - 18, 0, 10) / 10, np.clip(5 - temp_c, 0, 15) / 15])


def distance_km(lat, lon, other_lat, other_lon):
    """On a sphere; arrays of any shape against vectors, the vectors along a new last axis."""
    lat, lon = np.radians(np.asarray(lat))[..., None], np.radians(np.asarray(lon))[..., None]
    other_lat, other_lon = np.radians(other_lat), np.radians(other_lon)
    cosine = np.sin(lat) * np.sin(other_lat) + np.cos(lat) * np.cos(other_lat) * np.cos(lon - other_lon)
    return 6371 * np.arccos(np.clip(cosine, -1, 1))


def likeness(lat, lon, nodes):
    return np.exp(-distance_km(lat, lon, nodes[:, 0], nodes[:, 1]) / REACH_KM)


def read_fit():
    fit = json.loads(FIT.read_text())
    return {"base": np.array(fit["base"]), "nodes": np.array(fit["nodes"])}


def excess(k, temp_c, lat, lon, fit):
    """What is to be taken off K; k and temp_c are (12, ...), lat and lon the rest of the shape."""
    region = likeness(lat, lon, fit["nodes"]) @ fit["nodes"][:, 2]
    amount = np.tensordot(fit["base"], terms(temp_c), axes=1) + region
    return np.minimum(cloud_share(k) * amount, 0.6 * k)


def left_by_stations(lat, lon, fit):
    """Share of the regional variance that the stations do not explain: small beside them, 1 far from all."""
    nodes = fit["nodes"]
    among = likeness(nodes[:, 0], nodes[:, 1], nodes) + NOISE * np.eye(len(nodes))
    near = likeness(lat, lon, nodes)
    return 1 - np.einsum("...i,ij,...j->...", near, np.linalg.inv(among), near)


def missed_cloud_frac(lat, lon):
    """What the regions of MISSED_CLOUD add, as a standard deviation; 0 far from them."""
    most = np.zeros(np.shape(lat))
    for _, frac, places in MISSED_CLOUD:
        places = np.array(places)
        near = distance_km(lat, lon, places[:, 0], places[:, 1]).min(-1)
        most = np.maximum(most, frac * np.exp(-np.maximum(near / REGION_KM - 0.5, 0) ** 2))
    return most


def station_error_frac(spread, left, steady=STEADY_FRAC, per_spread=PER_SPREAD):
    """What stations show: the error of a month with that spread where they leave so much of the regional variance."""
    variance = lambda near, far: near**2 + left * far**2
    return np.sqrt(variance(*steady) + variance(*per_spread) * spread**2)


def error_frac(lat, lon, fit, filled, spread):
    """Standard deviation of the error of each corrected monthly value, as a fraction of it: (12, ...) like spread.

    spread   standard deviation of the daily values over the month's mean: months of changeable cloud are known worst,
             both because the reanalysis' clouds are and because five years of them are few
    """
    more = missed_cloud_frac(lat, lon) ** 2 + np.where(filled, FILLED_FRAC**2, 0)
    return np.minimum(np.hypot(station_error_frac(spread, left_by_stations(lat, lon, fit)), np.sqrt(more)), WIDEST_FRAC)


def corrected_days(days, take_off):
    """Daily clearness values (16, ...) made duller until their mean has fallen by take_off.

    The error is the clouds', so clear and black days keep their value and those between lose most: that also brings the
    spread of the daily values to what stations show (a box of three degrees evens out too much).
    """
    share = cloud_share(days)
    lost = share * take_off / np.maximum(share.mean(0), 1e-9)
    return np.maximum(days - lost, 0.2 * days)
