import type { Options } from "./command-line.ts";

type Env = Readonly<Record<string, string | undefined>>;

/** What the terminal and the environment allow and ask for. */
export interface Surroundings {
  /** none: nobody can be asked, and nobody asked for line by line either. */
  readonly face: "chat" | "plain" | "none";
  readonly isTerminal: boolean;
  /** Line by line was asked for, as whoever has it read aloud does. */
  readonly isPlainAsked: boolean;
  readonly isAscii: boolean;
  readonly isColourless: boolean;
  /** Started by `npm start`: the command line to come back with is then another. */
  readonly isFromNpm: boolean;
  readonly isDebugging: boolean;
  /** Of the terminal; 80 where there is none. */
  readonly columns: number;
  /** Whose money and whose measures are suggested: "en_GB.UTF-8", "en-US"; empty where nothing says so. */
  readonly locale: { readonly money: string; readonly measures: string };
  /** Another process of ours, which this one goes on from, has said what the program is. */
  readonly isWelcomed: boolean;
}

/** Set for a process that goes on from another of ours. */
export const welcomedMark = "MASTWRIGHT_WELCOMED";

const isSet = (value: string | undefined): boolean => value !== undefined && value !== "" && value !== "0";

/** POSIX: the first of these that is set and not empty decides; where none is, the locale is C. */
function isUtf8(env: Env): boolean {
  return /utf-?8/i.test(env.LC_ALL || env.LC_CTYPE || env.LANG || "");
}

export function surroundingsFrom(about: {
  readonly env: Env;
  readonly options: Options;
  readonly platform: string;
  readonly isInputTerminal: boolean;
  readonly isOutputTerminal: boolean;
  /** What the system itself is set to. */
  readonly systemLocale: string;
  readonly columns: number | undefined;
}): Surroundings {
  const { env, options } = about;
  const isPlainAsked = options.plain === true || isSet(env.ACCESSIBLE) || env.TERM === "dumb";
  const isBoth = about.isInputTerminal && about.isOutputTerminal;
  const hasPlain = about.isInputTerminal || options.plain === true;
  // Windows and macOS terminals show Unicode whatever these variables say.
  const usesLocale = about.platform !== "win32" && about.platform !== "darwin";
  const localeOf = (category: string | undefined): string =>
    env.LC_ALL || category || env.LANG || (usesLocale ? "" : about.systemLocale);
  return {
    face: isBoth && !isPlainAsked ? "chat" : hasPlain ? "plain" : "none",
    isTerminal: about.isInputTerminal,
    isPlainAsked,
    isAscii: options.ascii === true || (usesLocale && !isUtf8(env)),
    isColourless: options["no-color"] === true || (env.NO_COLOR ?? "") !== "",
    isFromNpm: env.npm_lifecycle_event === "start",
    isDebugging: isSet(env.MASTWRIGHT_DEBUG),
    columns: about.columns || 80,
    locale: { money: localeOf(env.LC_MONETARY), measures: localeOf(env.LC_MEASUREMENT) },
    isWelcomed: isSet(env[welcomedMark]),
  };
}

/**
 * Changes the environment as the drawing library needs it before it is loaded: it draws nothing live where it finds itself
 * in continuous integration, and does not know NO_COLOR.
 */
export function prepareDrawing(env: Record<string, string | undefined>, isColourless: boolean): void {
  for (const name of Object.keys(env)) {
    if (/^(?:CI|CI_.*|CONTINUOUS_INTEGRATION)$/.test(name)) delete env[name];
  }
  if (isColourless) env.FORCE_COLOR = "0";
}
