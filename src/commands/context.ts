import type { BriefStore, SettingsStore } from "../store/index.ts";
import type { Options } from "./command-line.ts";
import type { Surroundings } from "./surroundings.ts";

/** Exit codes; help prints them. */
export const exitCodes = {
  done: 0,
  ourBug: 1,
  unusable: 2,
  missing: 3,
  stop: 4,
  interrupted: 130,
  terminated: 143,
} as const;

/** What has to be done before the program may go down: set while a brief is open. */
export interface Lifeline {
  save: (() => void) | null;
  /** How to come back, said when it goes down. */
  comeBack: string;
}

/** What every command is handed. */
export interface Context {
  readonly args: readonly string[];
  readonly options: Options;
  readonly surroundings: Surroundings;
  readonly briefs: BriefStore;
  readonly settings: SettingsStore;
  readonly lifeline: Lifeline;
  /** Aborted by Ctrl-C where it comes as a signal. */
  readonly interrupted: AbortSignal;
  /** Results. */
  readonly out: (text: string) => void;
  /** Everything else. */
  readonly talk: (text: string) => void;
  readonly nowUtc: () => string;
}
