/**
 * The types of define.ts: what a flow may say, and the mistakes that must not compile. The second half is checked by
 * `npm run types`: a planted mistake that compiles leaves its @ts-expect-error unused, which is itself an error.
 */
import { describe, expect, test } from "vitest";
import { checkFlow } from "../../src/interview/check-flow.ts";
import { choice, place, quantity, type Topic, topic } from "../../src/interview/define.ts";

const wording = { label: "Label", ask: "Which?", hint: "Look.", why: "It matters.", how: "Measure." };
const days = quantity({
  ...wording,
  dimension: "duration",
  unit: "d",
  possible: { min: 0.5, max: 30 },
  usual: { min: 2, max: 7 },
  lean: "high",
  unsure: { use: 5, because: "common practice" },
});
const season = choice({
  ...wording,
  options: [
    { id: "always", label: "All year" },
    { id: "pause", label: "It may pause" },
  ],
  unsure: { use: "always", because: "the safer of the two" },
});
const device = choice({
  ...wording,
  options: [
    { id: "none", label: "Nothing more" },
    { id: "lamp", label: "A lamp" },
  ],
  unsure: { use: "none", because: "most posts carry nothing else" },
});
const where = place({ ...wording, unsure: { use: null, because: "no place can stand in for another" } });

const placeTopic = topic({ id: "place", version: 1, title: "Place", opening: "First the place." })
  .ask("site", where)
  .end();
const begun = () => topic({ id: "autonomy", version: 1, title: "Autonomy", opening: "Next." }, [placeTopic]);

test("a rule is handed the values it declares, typed: of earlier topics, of its block, of a whole block", () => {
  const autonomyTopic = begun()
    .ask("season", season)
    .ask("days", days, (given) => ({
      when: given(["autonomy.season", "place.site"], (when, site) => when === "always" && site !== null),
      suggest: given.site(["autonomy.season"], (facts, when) => ({
        use: facts !== null && facts.coldestMonthC < 0 && when === "always" ? 7 : 3,
        because: "winter",
      })),
    }))
    .repeat("other", { atMost: 3, when: (given) => given(["autonomy.days"], (d) => d > 1) }, (start) =>
      start
        .ask("kind", device)
        .ask("days", days, (given) => ({ when: given(["each.kind"], (kind) => kind === "lamp") })),
    )
    .end();
  const powerTopic = topic({ id: "power", version: 1, title: "Power", opening: "Then." }, [
    placeTopic,
    autonomyTopic,
  ])
    .ask("bank", days, (given) => ({
      suggest: given(["place.site", "autonomy.other"], (site, others) => ({
        use: others.reduce((sum, other) => sum + (other.kind === "lamp" ? other.days : 0), 5),
        because: site?.label ?? "nowhere",
      })),
    }))
    .end();
  expect(checkFlow([placeTopic, autonomyTopic, powerTopic])).toEqual([]);
  expect(autonomyTopic.steps.map((step) => step.id)).toEqual([
    "autonomy.season",
    "autonomy.days",
    "autonomy.other",
  ]);
});

describe("mistakes that do not compile, and that the check at run time finds too", () => {
  const breaches = (mistaken: Topic) => checkFlow([placeTopic, mistaken]);

  test("a rule that reads a later answer", () => {
    const mistaken = begun()
      .ask("days", days, (given) => ({
        // @ts-expect-error the season is asked after this
        when: given(["autonomy.season"], () => true),
      }))
      .ask("season", season)
      .end();
    expect(breaches(mistaken)).toEqual([
      'autonomy.days reads "autonomy.season", which is not asked before it',
    ]);
  });

  test("an id that stands twice", () => {
    const mistaken = begun()
      .ask("season", season)
      // @ts-expect-error asked already
      .ask("season", season)
      .end();
    expect(breaches(mistaken)).toEqual(["autonomy.season is asked twice"]);
  });

  test("a stand-in that is no option", () => {
    const odd = choice({
      ...wording,
      options: [
        { id: "a", label: "A" },
        { id: "b", label: "B" },
      ],
      // @ts-expect-error there is no option c
      unsure: { use: "c", because: "a mistake" },
    });
    expect(breaches(begun().ask("odd", odd).end())).toEqual([
      "autonomy.odd: its stand-in is no possible answer to it",
    ]);
  });

  test("inside a block: a later answer, an id that stands twice", () => {
    const mistaken = begun()
      .repeat("other", { atMost: 2 }, (start) =>
        start
          .ask("kind", device)
          // @ts-expect-error asked after this
          .ask("days", days, (given) => ({ when: given(["each.later"], () => true) }))
          // @ts-expect-error asked already
          .ask("kind", device),
      )
      .end();
    expect(breaches(mistaken)).toEqual([
      'autonomy.other, each.days reads "each.later", which is not asked before it',
      "autonomy.other, each.kind is asked twice",
    ]);
  });

  test("a rule outside a block that reads inside it", () => {
    const mistaken = begun()
      .repeat("other", { atMost: 2 }, (start) => start.ask("kind", device))
      // @ts-expect-error only the list of records is known outside
      .ask("days", days, (given) => ({ when: given(["each.kind"], () => true) }))
      .end();
    expect(breaches(mistaken)).toEqual(['autonomy.days reads "each.kind", which is not asked before it']);
  });
});

test("mistakes that only the types can see do not compile", () => {
  const never: unknown[] = [
    begun()
      .ask("season", season)
      // @ts-expect-error only one answer was declared
      .ask("days", days, (given) => ({ when: given(["autonomy.season"], (_first, second) => second) })),
    begun()
      .ask("season", season)
      // @ts-expect-error misspelt: "alwys" is no option
      .ask("days", days, (given) => ({ when: given(["autonomy.season"], (when) => when === "alwys") })),
    begun()
      .ask("season", season)
      // @ts-expect-error the suggestion is no option
      .ask("other", season, (given) => ({
        suggest: given(["autonomy.season"], () => ({ use: "never", because: "a mistake" })),
      })),
    begun()
      .ask("season", season)
      // @ts-expect-error a quantity is suggested as text
      .ask("days", days, (given) => ({
        suggest: given(["autonomy.season"], () => ({ use: "4", because: "a mistake" })),
      })),
    begun()
      .repeat("other", { atMost: 2 }, (start) => start.ask("kind", device))
      // @ts-expect-error the block asks no "size"
      .ask("days", days, (given) => ({ when: given(["autonomy.other"], (all) => all[0]?.size === 1) })),
    // @ts-expect-error no stand-in
    place({ ...wording }),
    // @ts-expect-error no such topic
    topic({ id: "weather", version: 1, title: "Weather", opening: "Rain." }),
  ];
  expect(never).toHaveLength(7);
});
