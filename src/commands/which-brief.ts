import type { Asking } from "./asking.ts";
import type { Context } from "./context.ts";
import { freeName, nameRefusal, readCurrency, suggestedCurrency } from "./fresh-brief.ts";

/** What the command line asks for: anything, or one of the two. */
export interface Wish {
  readonly kind: "any" | "new" | "resume";
  readonly name: string | null;
  readonly currency: string | null;
}

export type Decided =
  | { readonly kind: "resume"; readonly id: string }
  | { readonly kind: "new"; readonly name: string; readonly currency: string };

/** What can be decided without asking anybody; null where somebody has to be asked. */
export function decidedAlready(context: Context, wish: Wish): Decided | null {
  const currency = wish.currency ?? context.settings.read().currency ?? null;
  if (wish.kind === "resume" && wish.name !== null) return { kind: "resume", id: wish.name };
  if (wish.kind === "new" && wish.name !== null && currency !== null) {
    return { kind: "new", name: wish.name, currency };
  }
  // From a pipe every line is an answer: nothing else may be asked.
  if (!context.surroundings.isTerminal && wish.kind !== "resume") {
    return { kind: "new", name: wish.name ?? freeName(context.briefs), currency: currency ?? "USD" };
  }
  return null;
}

async function askedNew(context: Context, wish: Wish, { asker }: Asking): Promise<Decided | null> {
  const name =
    wish.name ??
    (await asker.text("What do you call this post?", {
      suggested: freeName(context.briefs),
      refuses: (text) => nameRefusal(context.briefs, text),
    }));
  if (name === null) return null;
  const kept = wish.currency ?? context.settings.read().currency;
  if (kept !== undefined) return { kind: "new", name: name.trim(), currency: kept };
  const typed = await asker.text("In which currency are prices shown? Three letters, such as EUR.", {
    suggested: suggestedCurrency(process.env.LC_ALL || process.env.LANG),
    refuses: (text) =>
      readCurrency(text) === null ? "Type three letters, for example EUR, GBP or USD." : null,
  });
  if (typed === null) return null;
  const currency = readCurrency(typed)!;
  context.settings.write({ ...context.settings.read(), currency });
  return { kind: "new", name: name.trim(), currency };
}

/** Asks what is still open; null where the builder left. */
export async function askedWhich(context: Context, wish: Wish, asking: Asking): Promise<Decided | null> {
  const saved = wish.kind === "new" ? [] : context.briefs.list();
  if (saved.length > 0) {
    const choices: { readonly value: string | null; readonly label: string }[] = saved.map(
      ({ id, name, answered }) => ({
        value: id,
        label: `Go on with ${name} (${answered} ${answered === 1 ? "answer" : "answers"})`,
      }),
    );
    if (wish.kind === "any") choices.push({ value: null, label: "Begin a new post" });
    const chosen = await asking.asker.choose(
      "Which post is it about?",
      choices.map((choice) => ({ ...choice, value: choice })),
    );
    if (chosen === null) return null;
    if (chosen.value !== null) return { kind: "resume", id: chosen.value };
  }
  return askedNew(context, wish, asking);
}
