import { briefJsonSchema } from "../store/index.ts";
import { type Context, exitCodes } from "./context.ts";
import { openProgram } from "./open-program.ts";

export function run({ out }: Context): number {
  out(`${JSON.stringify(briefJsonSchema(openProgram().questions), null, 2)}\n`);
  return exitCodes.done;
}
