import packageFile from "../../package.json" with { type: "json" };
import { type Context, exitCodes } from "./context.ts";

export const version: string = packageFile.version;

export function run({ out }: Context): number {
  out(`mastwright ${version}\n`);
  return exitCodes.done;
}
