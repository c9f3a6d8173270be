export { type Form, PARTINGS, type Parting, scan } from "./scan.ts";
