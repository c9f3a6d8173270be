/** What holds it up, and what has to be lifted. */

export interface Lift {
  readonly what: string;
  readonly weightKg: number;
  readonly people: number;
  /** Too heavy even for two pairs of hands: a hoist, a hand truck, or smaller pieces. */
  readonly needsHoist: boolean;
}

export interface Mounting {
  /** As in the sun stage; null while the place is unknown. */
  readonly tiltDeg: number | null;
  readonly azimuthDeg: number | null;
  /** A large array stands on a frame of its own beside the mast. */
  readonly panelMount: "mast" | "ground frame";
  /** Middle of the panels, of the camera, of the radio and of the box above ground. */
  readonly panelHeightM: number;
  readonly cameraHeightM: number;
  readonly radioHeightM: number;
  readonly boxHeightM: number;
  /** Of a new mast, or of the pole that stands there as answered. */
  readonly mastHeightM: number;
  /** Highest of what is to hang on it. */
  readonly neededHeightM: number;
  /** Above and below ground. */
  readonly tubeLengthM: number;
  readonly gustMPerS: number;
  readonly velocityPressurePa: number;
  /** On the panels wherever they stand, 0.6 of the gust's (for checks against allowable stress and soil values). */
  readonly panelForceN: number;
  /** On everything on the mast, the mast itself included where it is new; 0.6 of the gust's. */
  readonly totalForceN: number;
  /** The true push of the strongest gust on the panels, and on everything: what holds by its own strength must bear it. */
  readonly panelGustForceN: number;
  readonly gustForceN: number;
  readonly groundMomentNm: number;
  /** null where a pole, wall or roof stands already. Where isEnough is false the figures are the stoutest tube's. */
  readonly tube: {
    readonly name: string;
    readonly outsideMm: number;
    readonly wallMm: number;
    readonly stressShareFrac: number;
    readonly tipDeflectionM: number;
    readonly weightKg: number;
    readonly isEnough: boolean;
  } | null;
  readonly footing: {
    readonly depthM: number;
    readonly diameterM: number;
    readonly frostDepthM: number;
    readonly concreteM3: number;
    /** The same concrete in the one bag or the other. */
    readonly bags25Kg: number;
    readonly bags50Lb: number;
    readonly mustRedesign: boolean;
  } | null;
  readonly box: {
    /** On the mast, or on the ground at its foot where the bank is too heavy to hang. */
    readonly stands: "mast" | "ground";
    /** Least inside volume for bank, controller, switch and fuses. */
    readonly volumeL: number;
    /** Over the air, from what is inside, behind a sun shield. */
    readonly riseK: number;
    /** Free opening low down and again high up; 0 for a battery that gives off no gas. */
    readonly openingCm2: number;
  };
  readonly lifts: readonly Lift[];
  /** Level distance from the mast's foot to the nearest overhead line, at least. */
  readonly keepClearM: number;
}
