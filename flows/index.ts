/** The flow: ten topics in the order in which they are asked, what is told after answers, and the map to a brief. */
import type { Topic } from "../src/interview/define.ts";
import { autonomyTopic } from "./autonomy.ts";
import { hoursTopic } from "./hours.ts";
import { linkTopic } from "./link.ts";
import { loadsTopic } from "./loads.ts";
import { moneyTopic } from "./money.ts";
import { mountingTopic } from "./mounting.ts";
import { partsTopic } from "./parts.ts";
import { placeTopic } from "./place.ts";
import { powerTopic } from "./power.ts";
import { viewTopic } from "./view.ts";

export { briefFromAnswers } from "./brief-from-answers.ts";
export { details } from "./details.ts";
export { withoutRetired } from "./retired.ts";
export { optionNotes, tellings } from "./tellings.ts";

export const topics: readonly Topic[] = [
  placeTopic,
  viewTopic,
  loadsTopic,
  hoursTopic,
  autonomyTopic,
  powerTopic,
  mountingTopic,
  linkTopic,
  partsTopic,
  moneyTopic,
];
