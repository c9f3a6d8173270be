import { type Context, exitCodes } from "./context.ts";
import { openProgram } from "./open-program.ts";
import { version } from "./version.ts";

export function run({ out, briefs, settings }: Context): number {
  const lines = [
    `Mastwright ${version}, under the MIT licence.`,
    "It asks about a camera post that makes its own power and sends its own picture, works out its parts, and says",
    "what they mean. It calculates from what it is told; it does not replace local codes, the makers' instructions or",
    "licensed practice. It runs without a network, and nothing you type leaves this machine.",
    "",
    `Briefs:   ${briefs.folder}`,
    `Settings: ${settings.path}`,
    "",
    "Data inside:",
    ...openProgram().attributions.map((line) => `  ${line}`),
  ];
  out(`${lines.join("\n")}\n`);
  return exitCodes.done;
}
