/** Questions that are no longer asked, put into words for those that took their place: old briefs stay whole. */
import type { Answer } from "../src/interview/conversation.ts";

type Kept = string | Answer;

/** A length as one would type it; null where nobody knew. */
function lengthText(kept: Kept | undefined): string | null {
  if (kept === undefined) return null;
  if (typeof kept === "string") return /^(?:unsure|not sure)$/i.test(kept.trim()) ? null : kept.trim();
  const { value, origin } = kept;
  return value.kind === "quantity" && origin !== "assumed"
    ? `${Number(value.high.toPrecision(6))} ${value.unit}`
    : null;
}

const words = { trees: "trees", buildings: "building", ground: "rise" } as const;

function sightOf(kept: Kept | undefined): keyof typeof words {
  const text = typeof kept === "string" ? kept : kept?.value.kind === "choice" ? kept.value.option : "";
  return /tree|hedge|^2$/i.test(text) ? "trees" : /build|barn|^3$/i.test(text) ? "buildings" : "ground";
}

const retired = ["link.obstacleTop", "link.obstacleDistance", "link.obstacleDepth"] as const;

/**
 * Answers with those to retired questions put into words. Up to version 1 of the topic "link" one thing in between had three
 * questions of its own: height, distance, depth.
 */
export function withoutRetired<A extends Kept>(
  answers: Readonly<Record<string, A>>,
): Readonly<Record<string, A | string>> {
  const [top, distance, depth] = retired.map((id) => lengthText(answers[id]));
  const rest: Record<string, A | string> = Object.fromEntries(
    Object.entries(answers).filter(([id]) => !retired.some((gone) => gone === id)),
  );
  if (top == null || rest["link.between"] !== undefined) return rest;
  const deep = depth == null ? "" : ` and ${depth} deep`;
  const where = distance == null ? "half way" : `at ${distance}`;
  return { ...rest, "link.between": `${words[sightOf(answers["link.sight"])]} ${top} high${deep} ${where}` };
}
