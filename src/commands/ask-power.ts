/**
 * A program of its own: asked by the interview after the builder's yes, for reading an answer must not take turns with
 * the network. Takes latitude and longitude, prints what came of it as JSON.
 */
import { fetchPower } from "./fetch-power.ts";

const [latitudeDeg = Number.NaN, longitudeDeg = Number.NaN] = process.argv.slice(2).map(Number);
const base = process.env.MASTWRIGHT_POWER_URL;
const fetched = await fetchPower({ latitudeDeg, longitudeDeg }, base === undefined ? {} : { base });
process.stdout.write(JSON.stringify(fetched));
