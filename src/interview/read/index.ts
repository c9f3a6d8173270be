export {
  type ChoiceHeard,
  type ChoiceOption,
  type ChoicesHeard,
  readChoice,
  readChoices,
} from "./choice.ts";
export { type ClockHeard, clockText, readClock } from "./clock.ts";
export { type ClockRangeHeard, readClockRange } from "./clock-range.ts";
export { type ChangeTarget, type Command, forcedText, readCommand } from "./command.ts";
export { type CountHeard, readCount } from "./count.ts";
export type { OriginWord } from "./origin-words.ts";
export { type QuantityHeard, type QuantitySpec, readQuantity } from "./quantity.ts";
export type { Refusal, Refused } from "./refusal.ts";
export { type RefusedQuestion, refusalText } from "./refusal-text.ts";
