import type { Context } from "./context.ts";
import { startConversation } from "./start-conversation.ts";

export const run = (context: Context): Promise<number> =>
  startConversation(context, { kind: "any", name: null, currency: null, units: null });
