import type { Design, World } from "../design.ts";
import type { Finding } from "../finding.ts";

/** A design before anything was found in it. */
export type Worked = Omit<Design, "findings">;

/** One thing to look for; null where it is not so. Rules that compare with another design ask the world for it. */
export type Rule = (design: Worked, world: World) => Finding | null;
