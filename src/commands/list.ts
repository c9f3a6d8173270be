import { type Context, exitCodes } from "./context.ts";

export function run({ briefs, options, out, talk }: Context): number {
  const saved = briefs.list();
  if (options.json) {
    out(`${JSON.stringify(saved, null, 2)}\n`);
    return exitCodes.done;
  }
  if (saved.length === 0) talk("There is no saved brief yet. Begin one with: mastwright new\n");
  const columns = Math.max(0, ...saved.map(({ id }) => id.length));
  for (const { id, answered, savedUtc } of saved) {
    const when =
      savedUtc === null ? "written by hand" : `saved ${savedUtc.slice(0, 16).replace("T", " ")} UTC`;
    out(`${id.padEnd(columns)}  ${answered} ${answered === 1 ? "answer" : "answers"}, ${when}\n`);
  }
  return exitCodes.done;
}
