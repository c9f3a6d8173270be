/** What joins it: every run, its conductor and its fuse. */

export interface Run {
  readonly name: string;
  readonly from: string;
  readonly to: string;
  readonly currentA: number;
  readonly lengthM: number;
  readonly systemV: number;
  readonly areaMm2: number;
  readonly awg: string;
  /** The conductor as it is bought there: by square millimetres or by gauge. */
  readonly sold: string;
  readonly dropV: number;
  readonly dropFrac: number;
  readonly maxDropFrac: number;
  /** False where not even the thickest conductor of the table does: the figures are then that one's. */
  readonly isEnough: boolean;
  readonly decidedBy: "ampacity" | "voltage drop" | "fuse" | "smallest sold";
  /** null where the run needs none, with the reason. */
  readonly fuseA: number | null;
  readonly fuseReason: string;
}

export interface PoeRun {
  readonly device: string;
  /** 1 to 8; 0 where no class powers it. */
  readonly poeClass: number;
  readonly deviceW: number;
  readonly lengthM: number;
  readonly deviceV: number;
  readonly lossW: number;
}

export interface Wiring {
  readonly runs: readonly Run[];
  readonly poeRuns: readonly PoeRun[];
  /** Prospective, at the bank's terminals; deliberately high. */
  readonly shortCircuitA: number;
  readonly mainFuseKind: string;
  /** What a fuse of that kind commonly breaks safely. */
  readonly mainFuseInterruptA: number;
  /** In each string of panels; null where none is needed. */
  readonly stringFuseA: number | null;
  /** At each string of blocks, where there are several; else null. */
  readonly blockFuseA: number | null;
}
