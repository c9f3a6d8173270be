import type { Context } from "./context.ts";
import { startConversation } from "./start-conversation.ts";

export const run = (context: Context): Promise<number> =>
  startConversation(context, {
    kind: "resume",
    name: context.args[0] ?? null,
    currency: null,
    units: null,
  });
