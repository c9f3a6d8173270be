import { readFileSync } from "node:fs";
import { join } from "node:path";
import { brotliDecompressSync } from "node:zlib";
import { openPlaces } from "../../../src/core/place/index.ts";

export const placeBytes = brotliDecompressSync(
  readFileSync(join(import.meta.dirname, "../../../src/core/place/data/places.bin")),
);

export const index = openPlaces(placeBytes);
