import { type Context, exitCodes } from "./context.ts";
import { readCurrency } from "./currency.ts";
import { nameRefusal, readUnits } from "./fresh-brief.ts";
import { startConversation } from "./start-conversation.ts";

export async function run(context: Context): Promise<number> {
  const [name = null] = context.args;
  const refusal = name === null ? null : nameRefusal(context.briefs, name);
  if (refusal !== null) {
    context.talk(`${refusal}\n`);
    return exitCodes.unusable;
  }
  const typed = context.options.currency;
  const reading = typed === undefined ? null : readCurrency(typed);
  if (reading?.kind === "refused") {
    context.talk(`--currency got "${typed}". ${reading.says}\n`);
    return exitCodes.unusable;
  }
  const currency = reading?.code ?? null;
  const typedUnits = context.options.units;
  const units = typedUnits === undefined ? null : readUnits(typedUnits);
  if (typedUnits !== undefined && units === null) {
    context.talk(`--units takes metric or us; got "${typedUnits}".\n`);
    return exitCodes.unusable;
  }
  return startConversation(context, { kind: "new", name, currency, units });
}
