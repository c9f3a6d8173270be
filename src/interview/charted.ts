/** Which charts an answer brings: those of the topics it closes, and those whose matter it moved; none twice for the same numbers. */
import type { Chart, Walked } from "./conversation.ts";
import type { Now, Then } from "./turn.ts";

/** Everything that is seen of a chart. */
export const inkOf = ({ words, lines }: Chart): string => [words, ...lines].join("\n");

/**
 * What is to be drawn after an answer.
 *
 * A topic that closes draws its charts. An answer of a topic draws those of its charts whose matter (`of`) it moved, at once. A
 * revised answer draws all that it moved: of its own topic where that is closed, and of the matter of any other closed one.
 *
 * @param about.closing ids of the topics that this answer closes
 */
export function chartsAfter<D>(
  now: Now<D>,
  then: Then<D>,
  about: { readonly from: Walked; readonly closing: readonly string[] },
): readonly Chart[] {
  const { interview } = now;
  const { from, closing } = about;
  const own = from.topic.id as string;
  const isChanged = now.state.answers !== then.state.answers;
  const isRevised = isChanged && from.answer !== null;
  const mayMove = isRevised ? [own, ...now.state.closed] : isChanged ? [own] : [];
  const topics = [...new Set([...closing, ...mayMove])];
  const byTitle = new Map<string, Chart>();
  for (const id of topics) {
    const isClosed = now.state.closed.includes(id);
    for (const chart of interview.charts(id, then.design())) {
      if (then.state.drawn[chart.title] === inkOf(chart)) continue;
      if (!closing.includes(id)) {
        const before = interview.charts(id, now.design()).find(({ title }) => title === chart.title);
        const isMoved = chart.of !== undefined && chart.of !== before?.of;
        const isRedrawn = isClosed && id === own && (before === undefined || inkOf(before) !== inkOf(chart));
        if (!isMoved && !isRedrawn) continue;
      }
      byTitle.set(chart.title, chart);
    }
  }
  return [...byTitle.values()];
}
