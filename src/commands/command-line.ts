import { parseArgs } from "node:util";

/** Every option there is; each command names those it takes. */
const optionKinds = {
  help: { type: "boolean", short: "h" },
  version: { type: "boolean" },
  plain: { type: "boolean" },
  ascii: { type: "boolean" },
  "no-color": { type: "boolean" },
  json: { type: "boolean" },
  to: { type: "string" },
  currency: { type: "string" },
  units: { type: "string" },
  yes: { type: "boolean" },
  month: { type: "string" },
  hour: { type: "string" },
} as const;
type OptionName = keyof typeof optionKinds;

export interface Options {
  readonly help?: boolean;
  readonly version?: boolean;
  readonly plain?: boolean;
  readonly ascii?: boolean;
  readonly "no-color"?: boolean;
  readonly json?: boolean;
  readonly to?: string;
  readonly currency?: string;
  readonly units?: string;
  readonly yes?: boolean;
  readonly month?: string;
  readonly hour?: string;
}

const everywhere: readonly OptionName[] = ["help", "version", "plain", "ascii", "no-color"];

/** What each command takes beside the options that work everywhere. */
export const commandForms = {
  interview: { takes: [], least: 0, most: 0 },
  new: { takes: ["currency", "units"], least: 0, most: 1 },
  resume: { takes: [], least: 0, most: 1 },
  list: { takes: ["json"], least: 0, most: 0 },
  show: { takes: ["to"], least: 1, most: 1 },
  remove: { takes: ["yes"], least: 1, most: 1 },
  size: { takes: ["json"], least: 1, most: Number.POSITIVE_INFINITY },
  checklist: { takes: ["to"], least: 1, most: 1 },
  outlook: { takes: ["json", "month", "hour"], least: 1, most: Number.POSITIVE_INFINITY },
  schema: { takes: [], least: 0, most: 0 },
  about: { takes: [], least: 0, most: 0 },
  help: { takes: [], least: 0, most: 1 },
  version: { takes: [], least: 0, most: 0 },
} as const satisfies Record<
  string,
  { readonly takes: readonly OptionName[]; readonly least: number; readonly most: number }
>;
export type CommandName = keyof typeof commandForms;

export type CommandLine =
  | {
      readonly kind: "command";
      readonly name: CommandName;
      readonly args: readonly string[];
      readonly options: Options;
    }
  /** With the command whose page of help tells more. */
  | { readonly kind: "wrong"; readonly says: string; readonly command: CommandName | null };

const isCommand = (word: string): word is CommandName => Object.hasOwn(commandForms, word);
const wrong = (says: string, command: CommandName | null = null): CommandLine => ({
  kind: "wrong",
  says,
  command,
});

/** Commands that take one brief: a name of several words needs no quotation marks. */
const ofOneBrief: ReadonlySet<CommandName> = new Set(["new", "resume", "remove", "show", "checklist"]);

/** What was typed after the program's name, as a command with its arguments; or what is wrong with it. */
export function readCommandLine(argv: readonly string[]): CommandLine {
  let parsed: { readonly values: Options; readonly positionals: readonly string[] };
  try {
    parsed = parseArgs({ args: [...argv], options: optionKinds, allowPositionals: true });
  } catch (error) {
    // Node words these well, but advises about a "--" that nobody asked for: its first sentence is enough.
    return wrong(`${(error as Error).message.split(". To specify")[0]}.`.replace(/\.\.$/, "."));
  }
  const { values: options } = parsed;
  const [typedWord, ...args] = parsed.positionals;
  const word = typedWord ?? "interview";
  if (options.version) return { kind: "command", name: "version", args: [], options };
  if (options.help)
    return {
      kind: "command",
      name: "help",
      args: typedWord !== undefined && isCommand(word) ? [word] : [],
      options,
    };
  if (!isCommand(word)) return wrong(`There is no command "${word}".`);
  const form = commandForms[word];
  const taken = new Set<string>([...everywhere, ...form.takes]);
  for (const option of Object.keys(options)) {
    if (!taken.has(option)) return wrong(`The command ${word} takes no --${option}.`, word);
  }
  if (args.length < form.least)
    return wrong(`The command ${word} needs a brief: its name or its file.`, word);
  if (ofOneBrief.has(word) && args.length > 0)
    return { kind: "command", name: word, args: [args.join(" ")], options };
  if (args.length > form.most) return wrong(`That is one word too many: "${args[form.most]}".`, word);
  return { kind: "command", name: word, args, options };
}
