import { choice, quantity, topic } from "../src/interview/define.ts";
import { hoursTopic } from "./hours.ts";

export const autonomyTopic = topic(
  {
    id: "autonomy",
    version: 1,
    title: "Autonomy",
    opening: "Now autonomy: how long the post must live without sun.",
  },
  [hoursTopic],
)
  .ask(
    "consequence",
    choice({
      shows: "battery",
      label: "If it goes dark",
      ask: "How bad is it if the picture goes dark in a dull week?",
      hint: "The stricter the answer, the bigger the battery or the panels.",
      why: "It sets how many sunless days the battery must carry. That is most of the post's weight and cost.",
      how: "Think of the last bad week of weather: what would a missing day of pictures have cost you?",
      options: [
        {
          id: "nuisance",
          label: "A nuisance: some dark days a year are fine",
          also: "annoying, annoyance, not bad, not so bad, not very bad, not too bad, not that bad, no big deal, not a big deal, not a disaster, no disaster, not the end of the world, can live with it, acceptable, does not matter, doesnt matter, does not matter much, doesnt matter much",
        },
        {
          id: "worry",
          label: "A worry: only a few dark days a year",
          also: "worrying, worried, bad, quite bad, rather bad, fairly bad",
        },
        {
          id: "disaster",
          label: "A disaster: next to never",
          also: "catastrophe, catastrophic, disastrous, terrible, next to never, almost never, hardly ever, must never, must never go dark, should never go dark, never go dark, never be dark, must not go dark, cannot go dark, cant go dark, very bad, really bad, unacceptable, not acceptable",
        },
        {
          id: "days",
          label: "I will say it in days without sun",
          also: "days without sun, in days, sunless days, as days, number of days",
        },
        {
          id: "darkHours",
          label: "I will say it in dark hours a year",
          also: "dark hours, in hours, as hours, hours a year, number of hours",
        },
      ],
      unsure: { use: "worry", because: "it is the safer of the two usual answers" },
    }),
  )
  .ask(
    "days",
    quantity({
      dimension: "duration",
      unit: "days",
      shows: "battery",
      label: "Days without sun",
      ask: "How many days without sun must the battery carry?",
      hint: "Usual: 3 to 5 in sunny places, 5 to 10 elsewhere, far more in the north. Example: 7",
      why: "Each day adds one day of load to the battery.",
      how: "Ask a neighbour for the longest dull spell they remember, and add two days.",
      possible: { min: 1, max: 120 },
      usual: { min: 2, max: 20 },
      lean: "high",
      unsure: { use: 7, because: "common practice where dull weeks happen" },
    }),
    (given) => ({ when: given(["autonomy.consequence"], (answer) => answer === "days") }),
  )
  .ask(
    "darkHours",
    quantity({
      dimension: "duration",
      unit: "h",
      shows: "battery",
      label: "Dark hours a year",
      ask: "How many hours a year may the picture be dark?",
      hint: "88 hours a year is 99 percent of the time lit; 438 is 95 percent. Example: 88",
      why: "Few dark hours ask for a much bigger battery.",
      how: "Count the days a year you could do without it, and multiply by 24.",
      possible: { min: 1, max: 2000 },
      usual: { min: 9, max: 500 },
      lean: "low",
      unsure: { use: 88, because: "99 percent of the time is usual for what matters" },
    }),
    (given) => ({ when: given(["autonomy.consequence"], (answer) => answer === "darkHours") }),
  )
  .ask(
    "visit",
    quantity({
      dimension: "duration",
      unit: "days",
      shows: "battery",
      label: "Time to get there",
      ask: "How many days until somebody can get to the post when it fails?",
      hint: "In the worst season. Example: 2 days",
      why: "The battery should last at least until somebody can clear snow or change a fuse.",
      how: "Ask who has a key and a car, and how the track is in winter.",
      possible: { min: 0, max: 120 },
      usual: { min: 0, max: 14 },
      lean: "high",
      unsure: { use: 3, because: "a long weekend is the usual delay (common practice)" },
    }),
  )
  .end();
