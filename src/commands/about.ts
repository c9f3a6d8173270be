import { wrapText } from "../plain/index.ts";
import { type Context, exitCodes } from "./context.ts";
import { openProgram } from "./open-program.ts";
import { version } from "./version.ts";

const columns = 78;

const says = [
  "It asks about a camera post that makes its own power and sends its own picture, works out its parts, and says what they mean.",
  "It calculates from what it is told; it does not replace local codes, the makers' instructions or licensed practice.",
  "It runs without a network, and nothing you type leaves this machine unless you ask for it.",
].join(" ");

export function run({ out, briefs, settings }: Context): number {
  const credits = openProgram().attributions.flatMap((line) =>
    wrapText(line, columns - 4).map((text, index) => `${index === 0 ? "  " : "    "}${text}`),
  );
  const lines = [
    `Mastwright ${version}, under the MIT licence.`,
    ...wrapText(says, columns),
    "",
    `Briefs:   ${briefs.folder}`,
    `Settings: ${settings.path}`,
    "",
    "Data inside:",
    ...credits,
  ];
  out(`${lines.join("\n")}\n`);
  return exitCodes.done;
}
