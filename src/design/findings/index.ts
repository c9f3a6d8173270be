import type { World } from "../design.ts";
import type { Finding } from "../finding.ts";
import type { Rule, Worked } from "./rule.ts";

/** In the order in which they are told: what can kill, what cannot work, what does not fit, what is good to know. */
export const rules: readonly Rule[] = [];

export function findingsOf(design: Worked, world: World): readonly Finding[] {
  return rules.map((rule) => rule(design, world)).filter((finding) => finding !== null);
}
