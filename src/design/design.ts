/**
 * Everything computed from a brief: never saved, always derivable. One interface a stage; a stage rests only on those
 * named before it in stageNames.
 * A stage is null where what it needs is not known (no place, no radio); `provisional` names the stages that rest on
 * questions still open.
 */
import type { ClimateRefused, OwnFigures, Climate as SiteClimate } from "../core/climate/index.ts";
import type { Brief } from "./brief.ts";
import type { Finding } from "./finding.ts";
import type { Money, Parts } from "./stages/buying.ts";
import type { Mounting } from "./stages/mounting.ts";
import type { StageName } from "./stages/note.ts";
import type { Link, View } from "./stages/picture.ts";
import type { ArraySizing, Battery, Loads } from "./stages/power.ts";
import type { Reliability } from "./stages/reliability.ts";
import type { Climate, Sun } from "./stages/sky.ts";
import type { Wiring } from "./stages/wiring.ts";

export type * from "./stages/buying.ts";
export type * from "./stages/mounting.ts";
export type * from "./stages/note.ts";
export { stageNames } from "./stages/note.ts";
export type * from "./stages/picture.ts";
export type * from "./stages/power.ts";
export type * from "./stages/reliability.ts";
export type * from "./stages/sky.ts";
export type * from "./stages/wiring.ts";

/** Why a stage could not be worked at all. */
export interface Withheld {
  readonly stage: StageName;
  readonly because: string;
}

export interface Design {
  readonly schemaVersion: 1;
  readonly name: string;
  readonly brief: Brief;
  readonly climate: Climate | null;
  readonly sun: Sun | null;
  readonly loads: Loads;
  /** null where it was not simulated, or nothing can be sized. */
  readonly reliability: Reliability | null;
  readonly battery: Battery | null;
  readonly array: ArraySizing | null;
  readonly wiring: Wiring | null;
  readonly link: Link | null;
  readonly mounting: Mounting;
  readonly view: View;
  readonly parts: Parts;
  readonly money: Money;
  readonly findings: readonly Finding[];
  readonly provisional: readonly StageName[];
  readonly withheld: readonly Withheld[];
}

/** What the design needs to know of the world besides the brief; commands hands it in, bound to the embedded grids. */
export interface World {
  readonly climateAt: (site: {
    readonly latitudeDeg: number;
    readonly longitudeDeg: number;
    readonly elevationM: number | null;
  }) => SiteClimate | ClimateRefused;
  /** Where the grids hold nothing: the builder's own sun with the world's maps of the rest. */
  readonly climateOfOwn: (
    site: { readonly longitudeDeg: number; readonly elevationM: number | null },
    own: OwnFigures,
  ) => SiteClimate;
  /** Offset of local clock time from solar time, hours, for schedules by the clock. */
  readonly clockMinusSolarH: (site: {
    readonly latitudeDeg: number;
    readonly longitudeDeg: number;
  }) => number;
  /** How the simulation keeps what it worked out already; null: the handbook's sizes alone. */
  readonly simulation: { readonly remember: Remember } | null;
}

/** Works something out, or hands back what the same task with the same facts gave before. `given` is plain data. */
export type Remember = <T>(task: string, given: unknown, work: () => T) => T;
