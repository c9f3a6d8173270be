import { openAsking } from "./asking.ts";
import { type Context, exitCodes } from "./context.ts";
import { idOfName } from "./fresh-brief.ts";
import { savedNames } from "./saved-names.ts";

export async function run(context: Context): Promise<number> {
  const { briefs, options, surroundings, talk } = context;
  const name = context.args[0]!;
  const id = idOfName(name);
  if (id === null || !briefs.exists(id)) {
    talk(`There is no saved brief called ${name}. ${savedNames(briefs)}\n`);
    return exitCodes.unusable;
  }
  if (!options.yes) {
    if (!surroundings.isTerminal) {
      talk(`Nobody is here to confirm it. To remove ${id} without asking: mastwright remove ${id} --yes\n`);
      return exitCodes.unusable;
    }
    const { asker, lines } = await openAsking(context);
    const isSure = await asker.confirm(`Remove ${id} with all its answers?`);
    lines?.close();
    if (isSure === null) return exitCodes.interrupted;
    if (!isSure) {
      talk("Kept.\n");
      return exitCodes.done;
    }
  }
  const lock = briefs.lock(id);
  if (lock.kind === "taken") {
    talk(`${id} is open in another window. Close it there first.\n`);
    return exitCodes.unusable;
  }
  briefs.remove(id);
  if (lock.kind === "held") lock.release();
  talk(`Removed ${id}.\n`);
  return exitCodes.done;
}
