import { type Context, exitCodes } from "./context.ts";
import { foundBrief } from "./load-brief.ts";
import { openProgram } from "./open-program.ts";
import { verdictOn } from "./verdict.ts";

/** Sizes each brief of the command line; what is missing is worked with its stand-in, named, and marked by the exit code. */
export function run(context: Context): number {
  const { args, options, out, talk } = context;
  const program = openProgram();
  const sheets: string[] = [];
  let worst = 0;
  let unusable = 0;
  for (const what of args) {
    const found = foundBrief(context, what);
    if (found.kind === "unusable") {
      talk(`${found.says}\n`);
      unusable++;
      continue;
    }
    const opened = program.open(found.file);
    const design = program.designOf(opened.state);
    const verdict = verdictOn(found.file.name, opened, design.findings);
    for (const says of verdict.says) talk(`${says}\n`);
    if (verdict.code === exitCodes.unusable) unusable++;
    // a stop is the highest of the codes that a design can have, and weighs most among them
    worst = Math.max(worst, verdict.code);
    if (options.json) {
      sheets.push(program.sheet(opened.state, "json").trimEnd());
      continue;
    }
    const facts = program.shortFacts(design);
    const columns = Math.max(0, ...facts.map(({ label }) => label.length));
    sheets.push(
      [found.file.name, ...facts.map(({ label, value }) => `  ${label.padEnd(columns)}  ${value}`)].join(
        "\n",
      ),
    );
  }
  if (options.json) out(`${args.length === 1 ? (sheets[0] ?? "") : `[${sheets.join(",\n")}]`}\n`);
  else if (sheets.length > 0) out(`${sheets.join("\n\n")}\n`);
  return unusable > 0 ? exitCodes.unusable : worst;
}
