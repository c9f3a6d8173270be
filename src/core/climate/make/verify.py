"""Compares ../data/climate.bin with the packages it was made from: python verify.py [--cities CITIES500.TXT]

Every layer is unpacked (by code of its own, written from the format in pack.py), every source is read again (sources.py),
the irradiation is corrected again (bias.py, islands.py), and for each layer the largest difference is printed beside the
half step that rounding may cost. Exit code 1 when a layer differs by more, lacks a value or has one too many.

    --cities   GeoNames' table, as for climate.py. With it the land mask is compared cell by cell; without it only that
               no land of the elevation map is missing, and the mask in the file says which island cells were wanted.
    --data     another climate.bin
    --vectors  also writes the source's values at some random land nodes there: what tests/reference/climate-grid reads

Cells far from all land are not compared: nobody asks for them and they hold whatever packs best.
Needs: pip install gsee-climate-data==1.0.0 itur==0.4.0 numpy brotli. Takes about a minute.
"""
import argparse
import datetime
import json
import platform
import sys
from importlib.metadata import version
from pathlib import Path

import brotli
import numpy as np

import climate
from sources import QUANTILES, itu_map, temperature, temperature_reference

# The steps that README.md states; a file that is packed more coarsely fails, whatever its own header says.
STEP = {"clearness": 1e-4, "dailyShareSqrt": 0.01, "clearnessErrorFrac": 0.002, "monthlyTempC": 0.1,
        "temperatureReferenceM": 5, "rainRate001MmPerH": 0.65, "refractivityGradientPerKm": 1,
        "terrainRoughnessM": 1, "groundElevationM": 5, "land": 0, "estimated": 0}
SEED, POINTS, ESTIMATED_POINTS, SEA_POINTS = 20261125, 34, 6, 8


def unpacked(path):
    """Layers by name: the header's entry and the values (planes, rows, columns), NaN where there is none."""
    whole = brotli.decompress(Path(path).read_bytes())
    if whole[:8] != b"MWCLIM1\n":
        raise ValueError("not a climate file")
    payload_at = 12 + int.from_bytes(whole[8:12], "little")
    layers = {}
    for about in json.loads(whole[12:payload_at])["layers"]:
        start = payload_at + about["at"]
        raw = np.frombuffer(whole[start : start + about["bytes"]], dtype=np.uint8)
        shape = about["planes"], about["rows"], about["columns"]
        if about["encoding"] == "bits":
            planes = raw.reshape(about["planes"], -1)
            stored = np.unpackbits(planes, axis=1, bitorder="little")[:, : shape[1] * shape[2]].astype(np.int64)
        elif about["encoding"] == "u8":
            stored = raw.astype(np.int64)
        elif about["encoding"] == "u16":
            stored = raw.view("<u2").astype(np.int64)
        else:
            low, high = raw.reshape(2, -1).astype(np.int64)
            zigzag = (low + 256 * high).reshape(shape)
            along = np.where(zigzag % 2 == 0, zigzag // 2, -(zigzag + 1) // 2)
            along[:, :, 0] = np.cumsum(along[:, :, 0], axis=1)
            stored = np.cumsum(np.cumsum(along, axis=2), axis=0)
        stored = stored.reshape(shape)
        values = stored * about["scale"] + about["offset"]
        layers[about["name"]] = about, np.where(stored == about.get("missing", -1), np.nan, values)
    return layers


def land_of_sources(topo, cities):
    """The land mask before it is cut to the file's rows: the elevation map's and, with the table, inhabited places'."""
    land = (climate.blocks(topo, 3) != 0).any((1, 3))
    if cities is not None:
        with open(cities, encoding="utf-8") as lines:
            for line in lines:
                lat, lon = (float(column) for column in line.split("\t")[4:6])
                land[min(int((lat + 90) * 4), 719), int((lon + 180) * 4) % 1440] = True
    return climate.cut(climate.spread(land, 1), -89.875, 0.25, climate.SOUTH + 0.125, climate.NORTH - 0.125)


def sources(land_in_file, cities):
    """Every layer anew: its name, values (planes, rows, columns), south, west, step in degrees, and the cells to compare."""
    topo = itu_map("1511/v2_topo")[0][2:-2]
    mapped = land_of_sources(topo, cities)
    land = land_in_file if cities is None else mapped
    fine_south = climate.SOUTH + 0.125
    months = temperature()
    k, shares, error, estimated, lat, lon = climate.irradiation(months, topo, land)
    everywhere = np.ones(k.shape[1:], dtype=bool)
    coarse = float(lat[0]), float(lon[0]), 3.0
    out = {
        # Without the table of places only the land of the map can be asked for, not the absence of any other.
        "land": (mapped[None], fine_south, -179.875, 0.25, mapped if cities is None else np.ones_like(mapped)),
        "clearness": (k, *coarse, everywhere),
        "dailyShareSqrt": (np.sqrt(shares).reshape(12 * QUANTILES, *k.shape[1:]), *coarse, everywhere),
        "clearnessErrorFrac": (error, *coarse, np.isfinite(k).all(0)),
        "estimated": (estimated[None], *coarse, everywhere),
    }

    def add(name, values, step):
        values = climate.cut(values, -90.0, step, climate.SOUTH, climate.NORTH)
        keep = climate.near(land, fine_south, *values.shape[-2:], climate.SOUTH, step)
        out[name] = values.reshape(-1, *values.shape[-2:]), climate.SOUTH, -180.0, step, keep

    add("monthlyTempC", months, 0.75)
    add("temperatureReferenceM", temperature_reference(topo), 0.75)
    add("rainRate001MmPerH", itu_map("837/v7_r001")[0], 0.125)
    add("refractivityGradientPerKm", itu_map("453/v12_dn65m_01d00_v1")[0], 0.75)
    add("terrainRoughnessM", itu_map("530/v16_gtopo_30")[0], 0.5)
    height = climate.blocks(topo, 3).mean((1, 3))
    height = climate.cut(height, -89.875, 0.25, fine_south, climate.NORTH - 0.125)
    out["groundElevationM"] = height[None], fine_south, -179.875, 0.25, land
    return out, land


def compared(name, about, ours, source):
    """Prints one line; returns whether the layer agrees, and its largest difference."""
    values, south, west, step, compare = source
    values = np.asarray(values, dtype=float)
    where = about["south"], about["west"], about["step"]
    if ours.shape != values.shape or np.abs(np.subtract(where, (south, west, step))).max() > 1e-6:
        print(f"{name:26} lies elsewhere: {ours.shape} from {where}, the source {values.shape} from {(south, west, step)}")
        return False, np.inf
    ours, values = ours[:, compare], values[:, compare]
    uneven = int((np.isnan(ours) != np.isnan(values)).sum())
    largest = float(np.nanmax(np.abs(ours - values)))
    allowed = STEP[name] / 2
    good = uneven == 0 and largest <= allowed * (1 + 1e-6) + 1e-9
    print(f"{name:26} {ours.size:9d} values, largest difference {largest:.6g}, half a step {allowed:.6g}"
          f"{'' if uneven == 0 else f', {uneven} with a value in one only'}: {'agrees' if good else 'DIFFERS'}")
    return good, largest


def node_of(source, lat, lon):
    """Row, column and coordinates of the node nearest a point."""
    values, south, west, step, _ = source
    row = int(np.clip(np.round((lat - south) / step), 0, values.shape[1] - 1))
    column = int(np.round((lon - west) / step)) % values.shape[2]
    return row, column, round(south + row * step, 6), round(west + column * step, 6)


def write_vectors(path, out, land, versions):
    """For each point the values of every layer at its node; of the daily shares one month, drawn as well."""
    draw = np.random.default_rng(SEED)
    south, west, step = out["land"][1:4]
    has = np.isfinite(out["clearness"][0]).all(0)
    sites = []
    for j, i in np.argwhere(land):
        row, column, *_ = node_of(out["clearness"], south + step * j, west + step * i)
        if has[row, column]:
            sites.append((j, i, bool(out["estimated"][0][0, row, column])))
    of_kind = [[site for site in sites if site[2] == kind] for kind in (False, True)]
    picked = [of_kind[kind][n] for kind, count in ((0, POINTS), (1, ESTIMATED_POINTS))
              for n in draw.choice(len(of_kind[kind]), count, replace=False)]
    points = []
    for j, i, _ in picked:
        month = int(draw.integers(12))
        nodes = {}
        for name, source in out.items():
            row, column, lat, lon = node_of(source, south + step * j, west + step * i)
            values = source[0][:, row, column].astype(float)
            if name == "dailyShareSqrt":
                values = values[month * QUANTILES : (month + 1) * QUANTILES]
            nodes[name] = {"latitudeDeg": lat, "longitudeDeg": lon, "values": [float(f"{v:.7g}") for v in values]}
        points.append({"dailySharesOfMonth": month, "nodes": nodes})
    seas = np.argwhere(~land)
    sea = [{"latitudeDeg": round(south + step * float(seas[n][0]), 6), "longitudeDeg": round(west + step * float(seas[n][1]), 6)}
           for n in draw.choice(len(seas), SEA_POINTS, replace=False)]
    head = {"madeBy": f"src/core/climate/make/verify.py --vectors, seed {SEED}", "versions": versions,
            "stepByLayer": STEP}
    lines = ",\n".join(json.dumps(point, separators=(",", ":")) for point in points)
    text = json.dumps(head)[:-1] + f',\n"sea":{json.dumps(sea)},\n"points":[\n{lines}\n]}}\n'
    json.loads(text)
    Path(path).write_text(text)


def main():
    ask = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    ask.add_argument("--cities")
    ask.add_argument("--data", default=Path(__file__).parent.parent / "data" / "climate.bin")
    ask.add_argument("--vectors")
    given = ask.parse_args()
    packages = {name: version(name) for name in ("gsee-climate-data", "itur", "numpy", "brotli")}
    versions = {"python": platform.python_version(), **packages}
    if (packages["gsee-climate-data"], packages["itur"]) != ("1.0.0", "0.4.0"):
        print("the file was made from gsee-climate-data 1.0.0 and itur 0.4.0; here are others")
    print(datetime.date.today(), ", ".join(f"{name} {number}" for name, number in versions.items()))

    layers = unpacked(given.data)
    out, land = sources(layers["land"][1][0] > 0.5, given.cities)
    if layers.keys() != STEP.keys() or out.keys() != STEP.keys():
        print("layers without a counterpart:", set(layers) ^ set(STEP))
        return 1
    results = [compared(name, *layers[name], source) for name, source in out.items()]
    if given.vectors is not None:
        write_vectors(given.vectors, out, land, versions)
    good = all(agrees for agrees, _ in results)
    print("every layer agrees" if good else "NOT every layer agrees")
    return 0 if good else 1


if __name__ == "__main__":
    sys.exit(main())
