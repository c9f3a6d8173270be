/**
 * What typed text means: pure functions from one typed line to a value, or to a refusal with its numbers. None of them
 * throws whatever is typed; what a refusal says is `refusalText`, and stands nowhere else.
 */
export { type ChoiceHeard, type ChoiceOption, readChoice } from "./choice.ts";
export { type AskedInstead, readChoiceAmongWords } from "./choice-words.ts";
export { type ChoicesHeard, readChoices } from "./choices.ts";
export { type ClockHeard, readClock } from "./clock.ts";
export { type ClockRangeHeard, readClockRange } from "./clock-range.ts";
export {
  type ChangeTarget,
  type Command,
  forcedText,
  isCommand,
  isForLists,
  readCommand,
} from "./command.ts";
export { type CountHeard, readCount } from "./count.ts";
export type { OriginWord } from "./origin-words.ts";
export { beginsWithCharge, type OutlookHeard, readOutlook } from "./outlook.ts";
export { readQuantity, readQuantityAmongWords } from "./quantity.ts";
export type { QuantityHeard, QuantitySpec } from "./quantity-heard.ts";
export type { Refusal, Refused } from "./refusal.ts";
export { type RefusedQuestion, refusalText } from "./refusal-text.ts";
