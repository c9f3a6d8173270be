import { quantity, topic } from "../src/interview/define.ts";
import { partsTopic } from "./parts.ts";

export const moneyTopic = topic(
  { id: "money", version: 1, title: "Money", opening: "Last, the money. It never hides a stop." },
  [partsTopic],
)
  .ask(
    "ceiling",
    quantity({
      dimension: "count",
      unit: "",
      shows: "cost",
      label: "Ceiling",
      ask: "What is the most you want to spend on parts?",
      hint: "In your own currency; 0 if there is no ceiling. Example: 1200",
      why: "If the safe design costs more, you are told before you buy, and what could be left out.",
      how: "Leave out what you own already. Tools and travel come on top.",
      // Currencies differ by ten thousand times, so nothing is unusual here.
      possible: { min: 0, max: 1_000_000_000 },
      usual: { min: 0, max: 1_000_000_000 },
      lean: "low",
      unsure: { use: 0, because: "then the safe design is shown whatever it costs" },
    }),
  )
  .ask(
    "contingency",
    quantity({
      dimension: "share",
      unit: "%",
      shows: "cost",
      label: "Contingency",
      ask: "How much shall be set aside for odds and ends?",
      hint: "Screws, clamps, glands, another trip. Usual: 10 to 15 percent.",
      why: "There is always a part that was not on the list.",
      how: "Take more if the shop is far away.",
      possible: { min: 0, max: 50 },
      usual: { min: 5, max: 25 },
      lean: "high",
      unsure: { use: 15, because: "common practice" },
    }),
    (given) => ({ when: given(["place.fine"], (fine) => fine === "mine") }),
  )
  .end();
