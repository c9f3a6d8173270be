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

# Standard deviation of a monthly value's error: beside a fitted station (held-out stations, fit_bias.py), what comes
# on top far from all (the same stations predicted without any within 700 km), and for cells filled from other maps.
NEAR_FRAC, FAR_FRAC, FILLED_FRAC = 0.11, 0.09, 0.125

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


def error_frac(lat, lon, fit, filled):
    """Standard deviation of the error of a corrected monthly value, by the variance that the stations leave."""
    nodes = fit["nodes"]
    among = likeness(nodes[:, 0], nodes[:, 1], nodes) + NOISE * np.eye(len(nodes))
    near = likeness(lat, lon, nodes)
    left = 1 - np.einsum("...i,ij,...j->...", near, np.linalg.inv(among), near)
    return np.sqrt(NEAR_FRAC**2 + FAR_FRAC**2 * left + np.where(filled, FILLED_FRAC**2, 0))


def corrected_days(days, take_off):
    """Daily clearness values (16, ...) made duller until their mean has fallen by take_off.

    The error is the clouds', so clear and black days keep their value and those between lose most: that also brings the
    spread of the daily values to what stations show (a box of three degrees evens out too much).
    """
    share = cloud_share(days)
    lost = share * take_off / np.maximum(share.mean(0), 1e-9)
    return np.maximum(days - lost, 0.2 * days)
