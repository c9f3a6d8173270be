import { readFileSync } from "node:fs";
import { join } from "node:path";
import { brotliDecompressSync } from "node:zlib";
import { openClimate } from "../../../src/core/climate/index.ts";

export const climateBytes = brotliDecompressSync(
  readFileSync(join(import.meta.dirname, "../../../src/core/climate/data/climate.bin")),
);

export const grids = openClimate(climateBytes);
