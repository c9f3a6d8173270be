import type { Program } from "../../src/commands/program.ts";
import type { Design } from "../../src/design/design.ts";
import { tinyDialogue, tinyState } from "./tiny-dialogue.ts";

const drawing = ["    ______", "   /_____/", "      |", "     [_]", "      |", "   ___|___"];

/** The tiny conversation as the commands see a program: for tests of commands and faces without an engine. */
export function openProgram(): Program {
  const { update, view } = tinyDialogue();
  return {
    topicVersions: { place: 1 },
    questions: [{ id: "place.name", description: "What is the nearest town?" }],
    attributions: [],
    open(file) {
      const asked = ["place.name", "view.kind", "link.distance"];
      const answers = Object.fromEntries(
        asked.flatMap((id) => {
          const kept = file.answers[id];
          if (kept === undefined || kept === "unreadable") return [];
          return [
            [
              id,
              typeof kept === "string"
                ? {
                    typed: kept,
                    value: { kind: "choice", option: kept } as const,
                    origin: "estimate" as const,
                  }
                : kept,
            ],
          ];
        }),
      );
      const state = {
        ...tinyState(file.name),
        currency: file.currency,
        units: file.units,
        answers,
        cursor: asked.find((id) => !Object.hasOwn(answers, id)) ?? null,
      };
      return {
        state,
        refused: Object.keys(file.answers)
          .filter((id) => !Object.hasOwn(answers, id))
          .map((id) => ({ id, says: "there is no such question" })),
        untouched: Object.fromEntries(
          Object.entries(file.answers).filter(([id]) => !Object.hasOwn(answers, id)),
        ),
        missing: asked.filter((id) => !Object.hasOwn(answers, id)).map((id) => ({ id, ask: `${id}?` })),
      };
    },
    update,
    view,
    suggestedPlaces: (text, atMost) =>
      ["Tromsø, Norway", "Trondheim, Norway", "Trier, Germany", "Trento, Italy"]
        .filter((name) => text.length > 2 && name.toLowerCase().startsWith(text.toLowerCase()))
        .slice(0, atMost),
    designOf: ({ answers }) =>
      ({
        findings:
          answers["place.name"]?.typed === "under the line"
            ? [
                {
                  id: "x",
                  severity: "stop",
                  says: "A line is overhead.",
                  change: "",
                  numbers: {},
                  topics: [],
                },
              ]
            : [],
      }) as unknown as Design,
    shortFacts: () => [{ label: "Battery", value: "200 Ah at 12 V" }],
    drawPost: (state) => (Object.keys(state.answers).length === 0 ? null : drawing),
    sheet: (state, format) =>
      format === "json"
        ? `${JSON.stringify({ name: state.name, answers: state.answers }, null, 2)}\n`
        : `${format === "csv" ? "part,quantity,unit\\n" : ""}Camera post: ${state.name} (${format}), 5 Ω\n`,
  };
}
