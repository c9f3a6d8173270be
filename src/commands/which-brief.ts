import type { Units } from "../interview/conversation.ts";
import type { Asking } from "./asking.ts";
import type { Context } from "./context.ts";
import { readCurrency, unpricedText } from "./currency.ts";
import { freeName, nameRefusal, suggestedCurrency, suggestedUnits } from "./fresh-brief.ts";
import { welcome } from "./welcome.ts";

/** What the command line asks for: anything, or one of the two. */
export interface Wish {
  readonly kind: "any" | "new" | "resume";
  readonly name: string | null;
  readonly currency: string | null;
  readonly units: Units | null;
}

export type Decided =
  | { readonly kind: "resume"; readonly id: string }
  | { readonly kind: "new"; readonly name: string; readonly currency: string; readonly units: Units };

/** What can be decided without asking anybody; null where somebody has to be asked. */
export function decidedAlready(context: Context, wish: Wish): Decided | null {
  if (wish.kind === "resume" && wish.name !== null) return { kind: "resume", id: wish.name };
  if (wish.kind === "resume") {
    const [only, ...others] = context.briefs.list();
    return only !== undefined && others.length === 0 ? { kind: "resume", id: only.id } : null;
  }
  const settings = context.settings.read();
  const currency = wish.currency ?? settings.currency ?? null;
  const units = wish.units ?? settings.units ?? null;
  if (wish.kind === "new" && wish.name !== null && currency !== null && units !== null) {
    return { kind: "new", name: wish.name, currency, units };
  }
  // From a pipe every line is an answer: nothing else may be asked.
  if (!context.surroundings.isTerminal) {
    return {
      kind: "new",
      name: wish.name ?? freeName(context.briefs),
      currency: currency ?? "USD",
      units: units ?? "metric",
    };
  }
  return null;
}

/** Asked once: the settings keep it for the next post. */
async function askedCurrency({ settings, surroundings }: Context, { asker }: Asking): Promise<string | null> {
  const typed = await asker.text("Which currency are prices in?", {
    suggested: suggestedCurrency(surroundings.locale.money),
    refuses: (text) => {
      const reading = readCurrency(text);
      return reading.kind === "refused" ? reading.says : null;
    },
  });
  const reading = typed === null ? null : readCurrency(typed);
  if (reading?.kind !== "currency") return null;
  settings.write({ ...settings.read(), currency: reading.code });
  return reading.code;
}

/** The same for units. */
async function askedUnits({ settings, surroundings }: Context, { asker }: Asking): Promise<Units | null> {
  const units = await asker.choose<Units>(
    "Which units do you think in?",
    [
      { value: "metric", label: "metric (m, kg)" },
      { value: "us", label: "US (ft, lb)" },
    ],
    suggestedUnits(surroundings.locale.measures),
  );
  if (units !== null) settings.write({ ...settings.read(), units });
  return units;
}

async function askedNew(context: Context, wish: Wish, asking: Asking): Promise<Decided | null> {
  welcome(context);
  const name =
    wish.name ??
    (await asking.asker.text("What do you call this post?", {
      suggested: freeName(context.briefs),
      refuses: (text) => nameRefusal(context.briefs, text),
    }));
  if (name === null) return null;
  const kept = context.settings.read();
  const currency = wish.currency ?? kept.currency ?? (await askedCurrency(context, asking));
  if (currency === null) return null;
  const unpriced = unpricedText(currency);
  if (unpriced !== null) context.talk(`${unpriced}\n`);
  const units = wish.units ?? kept.units ?? (await askedUnits(context, asking));
  return units === null ? null : { kind: "new", name: name.trim(), currency, units };
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
