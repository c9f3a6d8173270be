/**
 * A program of its own: asked by the interview, for reading an answer must not take turns with the disk. Takes a file and
 * spots as JSON on its input, prints what came of it as JSON.
 */
import { text } from "node:stream/consumers";
import { geotiffHeights } from "./read-geotiff.ts";
import type { Spot } from "./spot.ts";

const asked = JSON.parse(await text(process.stdin)) as {
  readonly file: string;
  readonly spots: readonly Spot[];
};
process.stdout.write(JSON.stringify(await geotiffHeights(asked.file, asked.spots)));
