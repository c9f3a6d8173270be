import { openAsking } from "./asking.ts";
import { type Context, exitCodes } from "./context.ts";
import { explanation } from "./explanation.ts";
import { runChild } from "./run-child.ts";
import { welcome } from "./welcome.ts";
import { askedWhich, type Decided, decidedAlready, type Wish } from "./which-brief.ts";

/** The command line that does what was decided without asking again. */
function argsFor(context: Context, decided: Decided): readonly string[] {
  const { options } = context;
  const flags = [...(options.ascii ? ["--ascii"] : []), ...(options["no-color"] ? ["--no-color"] : [])];
  return decided.kind === "resume"
    ? ["resume", decided.id, ...flags]
    : ["new", decided.name, "--currency", decided.currency, "--units", decided.units, ...flags];
}

/**
 * From a wish to a conversation. What has to be asked first is asked by prompts in this process; the chat screen then
 * runs in a process of its own, because the two cannot hand the keyboard to each other.
 */
export async function startConversation(context: Context, wish: Wish): Promise<number> {
  const { surroundings, briefs, talk } = context;
  if (surroundings.face === "none") {
    context.out(explanation);
    return exitCodes.done;
  }
  const decided = decidedAlready(context, wish);
  if (decided !== null) {
    if (decided.kind === "new") welcome(context);
    const { holdConversation } = await import("./hold-conversation.ts");
    return holdConversation(context, decided, null);
  }
  if (wish.kind === "resume" && briefs.list().length === 0) {
    talk("There is no saved brief to go on with. Begin one with: mastwright new\n");
    return exitCodes.unusable;
  }
  const asking = await openAsking(context);
  const asked = await askedWhich(context, wish, asking);
  if (asked === null) {
    asking.lines?.close();
    talk("Nothing was begun.\n");
    return exitCodes.interrupted;
  }
  if (asking.lines === null) return runChild(argsFor(context, asked));
  const { holdConversation } = await import("./hold-conversation.ts");
  return holdConversation(context, asked, asking.lines);
}
