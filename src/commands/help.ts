import type { CommandName } from "./command-line.ts";
import { type Context, exitCodes } from "./context.ts";

interface Page {
  readonly form: string;
  readonly does: string;
  readonly examples: readonly (readonly [command: string, means: string])[];
  readonly more?: readonly string[];
}

const pages: Readonly<Record<CommandName, Page>> = {
  interview: {
    form: "mastwright",
    does: "Begins a new post or goes on with a saved one.",
    examples: [["mastwright", "ask which, then ask the questions"]],
  },
  new: {
    form: "mastwright new [NAME] [--currency CODE] [--units metric|us]",
    does: "Begins a new post.",
    examples: [
      ["mastwright new hill gate", "a post called hill gate"],
      ["mastwright new barn --currency EUR", "with prices in euro"],
      ["mastwright new barn --units us", "a bare number is feet, pounds, inches, mph"],
    ],
  },
  resume: {
    form: "mastwright resume [NAME]",
    does: "Goes on where an interview was left.",
    examples: [["mastwright resume hill-gate", "go on with hill gate"]],
  },
  list: {
    form: "mastwright list [--json]",
    does: "Names the saved briefs, the latest first.",
    examples: [["mastwright list", "what is saved"]],
  },
  show: {
    form: "mastwright show BRIEF [--to text|md|html|csv|json]",
    does: "Prints a brief's design with its lists.",
    examples: [["mastwright show hill-gate", "the whole design as text"]],
  },
  remove: {
    form: "mastwright remove NAME [--yes]",
    does: "Removes a saved brief, after asking.",
    examples: [["mastwright remove hill-gate", "asks first"]],
  },
  size: {
    form: "mastwright size BRIEF... [--json]",
    does: "Works out one or more briefs without asking anything.",
    examples: [
      ["mastwright size hill-gate", "the figures of a saved brief"],
      ["mastwright size sites/*.json --json", "ten sites at once, as one JSON list"],
      ["generate-brief | mastwright size - --json", "a brief from another program"],
    ],
    more: [
      "Questions left out are worked with their stand-ins and named on standard error:",
      "exit code 3, or 4 where a stop stands that rests on none of them.",
    ],
  },
  checklist: {
    form: "mastwright checklist BRIEF [--to md|text|html|csv|json]",
    does: "Prints the lists to buy, build and keep it by.",
    examples: [
      ["mastwright checklist hill-gate --to html > hill-gate.html", "a page to print"],
      ["mastwright checklist hill-gate --to csv", "the parts for a spreadsheet"],
    ],
  },
  outlook: {
    form: "mastwright outlook BRIEF FORECAST [--month 1-12] [--hour 0-23] [--json]",
    does: "Says when loads go off and come back, by a forecast.",
    examples: [
      ["mastwright outlook hill-gate 60 %, rain, rain, sunny", "full to 60 %"],
      ["mastwright outlook hill-gate 12.4 V, 3 overcast", "a voltage at rest"],
      ["mastwright outlook hill-gate 30 % and off, sunny", "dark since the dull spell"],
      ["mastwright outlook hill-gate 35 %, 0.8, 2.4 --json", "kWh/m2 a day"],
    ],
    more: [
      "FORECAST is the charge in percent, or the voltage after some hours at rest, then",
      "each day from today: sunny, partly, overcast, rain, or its kWh/m2 on the level.",
      "Loads that are off stay off until the battery is well charged again: say off, or",
      "extras off, where they are.",
      "Month and hour are the clock's at the post, unless they are given.",
    ],
  },
  schema: {
    form: "mastwright schema",
    does: "Prints the JSON Schema of a brief file.",
    examples: [["mastwright schema > brief.schema.json", "for an editor that completes and checks"]],
  },
  about: {
    form: "mastwright about",
    does: "Says where it keeps things and whose data it uses.",
    examples: [],
  },
  help: { form: "mastwright help [COMMAND]", does: "Prints this, or the page of one command.", examples: [] },
  version: { form: "mastwright version", does: "Prints the version.", examples: [] },
};

function table(rows: readonly (readonly [string, string])[]): readonly string[] {
  const columns = Math.max(...rows.map(([left]) => left.length));
  return rows.map(([left, right]) => `  ${left.padEnd(columns)}  ${right}`);
}

function overview(): readonly string[] {
  return [
    "Mastwright asks about a camera post that makes its own power, works out its",
    "parts and says what they mean.",
    "",
    "Examples",
    ...table([
      ["mastwright", "begin, or go on with a saved brief"],
      ["mastwright resume hill-gate", "go on with the brief hill-gate"],
      ["mastwright size site.json --json", "from a brief in a file, without asking"],
      ["mastwright checklist hill-gate --to md", "the lists to buy, build and keep it by"],
    ]),
    "",
    "Commands",
    ...table(
      Object.values(pages).map((page): [string, string] => [
        page.form.replace(/^mastwright ?| \[?--.*/g, "") || "(none)",
        page.does,
      ]),
    ),
    "",
    "  BRIEF is a file, the name of a saved brief, or - for standard input.",
    "  More about one of them, with examples: mastwright help size",
    "",
    "Options that work everywhere",
    ...table([
      ["--plain", "line by line: for screen readers, simple terminals, pipes"],
      ["--ascii", "no signs beyond ASCII"],
      ["--no-color", "no colour"],
      ["-h, --help", "the page of a command"],
      ["--version", "the version"],
    ]),
    "",
    "Environment",
    ...table([
      ["MASTWRIGHT_HOME", "folder for briefs and settings"],
      ["ACCESSIBLE=1, TERM=dumb", "as --plain"],
      ["NO_COLOR", "as --no-color"],
      ["MASTWRIGHT_POWER_URL", "another address for the POWER service"],
      ["MASTWRIGHT_DEBUG=1", "print the whole trace of an error of ours"],
    ]),
    "",
    "Exit codes",
    ...table([
      ["0", "done"],
      ["1", "an error of ours; your answers are saved"],
      ["2", "the command line or a file cannot be used"],
      ["3", "answers are missing; they are named on standard error"],
      ["4", "the design has a stop: do not buy it yet, whatever else is missing"],
      ["130", "interrupted; your answers are saved"],
      ["143", "told to end; your answers are saved"],
    ]),
  ];
}

function pageOf(page: Page): readonly string[] {
  return [
    page.does,
    "",
    ...(page.examples.length === 0 ? [] : ["Examples", ...table(page.examples), ""]),
    `  ${page.form}`,
    ...(page.more === undefined ? [] : ["", ...page.more]),
  ];
}

const isPage = (name: string): name is CommandName => Object.hasOwn(pages, name);

export function run({ args, out, talk }: Context): number {
  const [name] = args;
  if (name !== undefined && !isPage(name)) {
    talk(`There is no command "${name}". See: mastwright help\n`);
    return exitCodes.unusable;
  }
  out(`${(name === undefined ? overview() : pageOf(pages[name])).join("\n")}\n`);
  return exitCodes.done;
}
