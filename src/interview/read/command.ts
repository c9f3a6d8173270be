import { type ChoiceOption, optionNamed } from "./choice.ts";
import { LONGEST_ANSWER, plainText } from "./typed-text.ts";

/** What can be said at any question instead of an answer. */
export type Command =
  | { readonly command: "why" | "how" | "unsure" | "back" | "review" | "more" | "help" | "save" | "undo" }
  | { readonly command: "change"; readonly target: ChangeTarget }
  /** `asks`: the charge, what is on or off, and the days to come, as typed; empty where only the word was. */
  | { readonly command: "outlook"; readonly asks: string };

/** Which answer to change: its number in the review, words of its name, or not said. */
export type ChangeTarget =
  | { readonly by: "number"; readonly number: number }
  | { readonly by: "name"; readonly name: string }
  | { readonly by: "nothing" };

type Plain = Exclude<Command["command"], "change" | "outlook">;

const WORDS: Readonly<Record<Plain, readonly string[]>> = {
  why: [
    "?",
    "why",
    "why do you ask",
    "why do you ask that",
    "why ask",
    "why that",
    "why this",
    "what for",
    "what is this for",
    "what is it for",
    "reason",
  ],
  how: [
    "how",
    "how to",
    "find out",
    "how do i know",
    "where do i find it",
    "where do i find that",
    "where do i find this",
    "where do i look",
    "where is it",
    "how to find out",
    "how to measure",
  ],
  unsure: [
    "dont know",
    "i dont know",
    "do not know",
    "i do not know",
    "idk",
    "dk",
    "not sure",
    "im not sure",
    "i am not sure",
    "unsure",
    "im unsure",
    "you decide",
    "you choose",
    "up to you",
    "no idea",
    "i have no idea",
    "no clue",
    "dunno",
    "i dunno",
    "n/a",
    "unknown",
    "cant say",
    "cant tell",
    "i cant tell",
    "i cant say",
    "havent a clue",
    "skip",
    "skip it",
    "skip this",
    "pass",
  ],
  back: [
    "b",
    "<",
    "<<",
    "<-",
    "back",
    "go back",
    "back up",
    "back one",
    "previous",
    "prev",
    "last question",
    "previous question",
  ],
  review: [
    "list",
    "review",
    "answers",
    "my answers",
    "show",
    "show answers",
    "show my answers",
    "show all",
    "show me my answers",
    "list answers",
    "list my answers",
    "check answers",
    "check my answers",
    "summary",
    "see answers",
  ],
  more: [
    "more",
    "tell me more",
    "more please",
    "more details",
    "more detail",
    "details",
    "detail",
    "explain",
    "explain more",
    "go on",
    "say more",
  ],
  help: [
    "help",
    "help me",
    "??",
    "commands",
    "what can i say",
    "what can i type",
    "what can i do",
    "options",
  ],
  save: [
    "save",
    "quit",
    "exit",
    "stop",
    "bye",
    "goodbye",
    "good bye",
    "q",
    "save and quit",
    "save and exit",
    "save and stop",
    "save and leave",
    "stop here",
    "stop for now",
    "come back later",
    "enough for today",
    "thats all for today",
  ],
  undo: ["undo", "undo that", "undo it", "undo last", "take that back", "take it back"],
};

const BY_WORDS: ReadonlyMap<string, Plain> = new Map(
  (Object.keys(WORDS) as Plain[]).flatMap((command) =>
    WORDS[command].map((words) => [words, command] as const),
  ),
);

/** Whole questions, where only the beginning is sure. "Why, Arizona" and "How" in Lancashire's neighbour are places. */
const QUESTIONS: readonly (readonly [Plain, RegExp])[] = [
  ["why", /^why (?:do|does|is|are|would|should|must|ask) .+$/],
  ["why", /^why (?:does|should) (?:it|that|this) matter$/],
  ["how", /^how (?:do|can|could|would|should) (?:i|we|you|one) .+$/],
  ["how", /^how to .+$/],
  ["how", /^where (?:do|can|would|could|should) (?:i|we) (?:find|see|look|read|get) .+$/],
  ["unsure", /^i (?:really |honestly )?(?:dont|do not) know\D*$/],
];

const CHANGE =
  /^(?:change|edit|fix|correct|revise|redo|amend|go to|goto|go back to|back to)(?: (?:answer|number|question|no\.?|nr\.?|the|my)(?= ))*(?: (.+))?$/;

/** Only with a charge or a kind of day after it: "Outlook, Saskatchewan" is a town. */
const OUTLOOK =
  /^(?:outlook|forecast)(?:\s*$|[\s:]+((?:(?:at|charge|battery|sun|rain|cloud|overcast|partly|clear|snow)|\D{0,12}\d|(?:it|its|the|all|picture|cameras?|loads?|extras?)\b.*\b(?:off|on|dark)\b.*\d).*)$)/;

/**
 * The command a text is, or null where it is an answer. Text that begins with a quotation mark is never a command:
 * 'Why is the town, why is the question.
 *
 * @param options  of the choice being asked: the whole name of one of them is that answer, whatever else it may mean
 */
export function readCommand(text: string, options: readonly ChoiceOption[] = []): Command | null {
  if (text.length > LONGEST_ANSWER || isForced(text) || optionNamed(text, options)) return null;
  const words = plainText(text).toLowerCase().replace(/'/g, "").trim();
  const bare = words.replace(/(?<=[a-z/])[\s.,!?]+$/, "");
  const command = BY_WORDS.get(bare) ?? QUESTIONS.find(([, pattern]) => pattern.test(bare))?.[0];
  if (command !== undefined) return { command };
  const ahead = OUTLOOK.exec(bare);
  if (ahead !== null) return { command: "outlook", asks: ahead[1] ?? "" };
  const change = CHANGE.exec(bare);
  return change === null ? null : { command: "change", target: targetOf(change[1]) };
}

function targetOf(words: string | undefined): ChangeTarget {
  if (words === undefined || /^(?:answer|question|number|it|that|this)$/.test(words))
    return { by: "nothing" };
  const number = /^#?\s*(\d{1,4})$/.exec(words);
  return number === null ? { by: "name", name: words } : { by: "number", number: Number(number[1]) };
}

/** Whether a text asks for the lists. */
export const isForLists = (text: string): boolean =>
  /^\s*(?:(?:show|print|make|give)(?: me)? )?(?:the |my )?(?:lists|shopping list|parts list)\s*[.!]?\s*$/i.test(
    text,
  );

/** Whether a text asks for something at a question without options, instead of answering it. */
export const isCommand = (text: string): boolean => isForLists(text) || readCommand(text) !== null;

const isForced = (text: string): boolean => /^\s*['"‘’“”]/.test(text);

/** The text an answer was meant to be: without the quotation marks that kept it from being a command. */
export function forcedText(text: string): string {
  if (!isForced(text)) return text;
  return text
    .trim()
    .replace(/^['"‘’“”]/, "")
    .replace(/['"’”]$/, "")
    .trim();
}
