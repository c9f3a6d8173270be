"""The file format of climate.bin: named layers on regular latitude-longitude grids.

    bytes 0..7    "MWCLIM1\\n"
    bytes 8..11   length of the header, little-endian
    header        JSON in UTF-8: {"layers": [...], "facts": {...}}
    payload       the layers' bytes, at the offsets that the header names (counted from the payload's start)

Rows run from south to north, columns from west to east, planes (months) outermost. A stored integer s means
s * scale + offset; `missing` marks a cell without a value. Encodings:

    u8        one byte a value
    u16       two bytes, little-endian
    bits      one bit a value, least significant first, each plane padded to a whole byte
    u16delta  zigzag of the difference from the value to the west (in the first column: from the value to the south;
              in later planes: of the difference from the plane before), low bytes of all values first, then high bytes
"""
import json

import numpy as np


def layer(name, values, south, west, step, scale=1.0, offset=0.0, encoding="u8", missing=None):
    """One layer. `values` is (planes, rows, columns), NaN where there is none."""
    values = np.asarray(values, dtype=float)
    if values.ndim == 2:
        values = values[None]
    if encoding == "bits":
        payload = b"".join(np.packbits(plane.ravel() > 0.5, bitorder="little").tobytes() for plane in values)
    else:
        top = 255 if encoding == "u8" else 65535
        stored = np.round((values - offset) / scale)
        empty = ~np.isfinite(values)
        if empty.any() and missing is None:
            raise ValueError(f"{name} has empty cells and no code for them")
        stored[empty] = 0 if missing is None else missing
        inside = stored[~empty]
        if inside.min() < 0 or inside.max() > (top if missing is None else top - 1):
            raise ValueError(f"{name} does not fit: {inside.min()} to {inside.max()}")
        whole = stored.astype(np.int64)
        if encoding == "u8":
            payload = whole.astype(np.uint8).tobytes()
        elif encoding == "u16":
            payload = whole.astype("<u2").tobytes()
        elif encoding == "u16delta":
            payload = _delta(whole)
        else:
            raise ValueError(encoding)
    planes, rows, columns = values.shape
    about = {"name": name, "planes": planes, "rows": rows, "columns": columns, "south": south, "west": west,
             "step": step, "scale": scale, "offset": offset, "encoding": encoding}
    if missing is not None:
        about["missing"] = missing
    return about, payload


def _delta(whole):
    change = whole.copy()
    change[1:] -= whole[:-1]
    along = change.copy()
    along[:, :, 1:] -= change[:, :, :-1]
    along[:, 1:, 0] -= change[:, :-1, 0]
    zigzag = np.where(along >= 0, 2 * along, -2 * along - 1).ravel()
    if zigzag.max() > 65535:
        raise ValueError("a step is too large for the delta encoding")
    return (zigzag & 255).astype(np.uint8).tobytes() + (zigzag >> 8).astype(np.uint8).tobytes()


def packed(layers, facts):
    at = 0
    header = []
    for about, payload in layers:
        header.append({**about, "at": at, "bytes": len(payload)})
        at += len(payload)
    text = json.dumps({"layers": header, "facts": facts}, separators=(",", ":")).encode()
    return b"MWCLIM1\n" + len(text).to_bytes(4, "little") + text + b"".join(payload for _, payload in layers)
