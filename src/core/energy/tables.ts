import type { Chemistry } from "./chemistry.ts";

type Curve = readonly (readonly [number, number])[];

/**
 * Cell size correction factor of lead-acid against electrolyte temperature in deg C, at rates of 8 h and
 * faster.
 *
 * @source IEEE 485 table 1, base 25 deg C (values from memory), given in deg F from 25 to 120
 */
export const IEEE_485_SIZE_FACTOR_BY_TEMP_C: Curve = [
  [-3.9, 1.52],
  [-1.1, 1.43],
  [1.7, 1.35],
  [4.4, 1.3],
  [7.2, 1.25],
  [10, 1.19],
  [12.8, 1.15],
  [15.6, 1.11],
  [18.3, 1.08],
  [20, 1.056],
  [21.1, 1.04],
  [25, 1],
  [26.7, 0.98],
  [32.2, 0.94],
  [37.8, 0.91],
  [43.3, 0.88],
  [48.9, 0.86],
];

/**
 * Capacity of lead-acid at a rate of about 6 to 8 h, as a fraction of that at 25 deg C, below the range of
 * IEEE 485.
 *
 * @source -17.8 deg C (0 deg F): US Army TM 10-6140-200-14 section 1-9, 6-h rate. -40: our own guess, no
 *         source (the line through the other two points would reach nothing there)
 */
export const COLD_FAST_CAPACITY_FRAC_BY_TEMP_C: Curve = [
  [-40, 0.1],
  [-17.8, 0.4],
  [-3.9, 1 / 1.52],
];

/**
 * Capacity of lead-acid at C/100, as a fraction of that at 25 deg C; no gain is counted above 25.
 *
 * Common practice puts 0 deg C at 0.85 to 0.90 (no source); the lower end is taken. The colder points are a
 * cautious reading of data-sheet curves from memory; one textbook figure keeps 0.97 at -10 deg C and C/72.
 */
export const SLOW_LEAD_CAPACITY_FRAC_BY_TEMP_C: Curve = [
  [-40, 0.35],
  [-30, 0.5],
  [-20, 0.62],
  [-10, 0.74],
  [0, 0.85],
  [10, 0.93],
  [25, 1],
];

/**
 * Capacity of lithium iron phosphate as a fraction of that at 25 deg C.
 *
 * Makers give 0.80 to 0.90 at 0 deg C and 0.60 to 0.70 at -20 (from memory); the lower ends are taken.
 */
export const LIFEPO4_CAPACITY_FRAC_BY_TEMP_C: Curve = [
  [-20, 0.6],
  [0, 0.8],
  [25, 1],
];

/**
 * State of charge, 0 to 1, against the temperature at which lead-acid electrolyte freezes, coldest first.
 *
 * @source US Army TM 5-3820-256-24-4 table 2 (full at specific gravity 1.265; its 25 % line misprints +15 deg
 *         F for the -15.0 deg C beside it). The table for 1.280 (TM 10-6140-200-14 table 1-1) freezes colder,
 *         so this one is the safer.
 */
export const CHARGE_FRAC_BY_FREEZING_TEMP_C: Curve = [
  [-59.5, 1],
  [-37.2, 0.75],
  [-26.1, 0.5],
  [-15, 0.25],
  [-9.4, 0],
];

/** Voltages of one cell at 25 deg C, and how they are shifted with temperature. */
export interface CellVoltages {
  readonly absorptionV: number;
  /** null: not held at float. */
  readonly floatV: number | null;
  /** null: must not be equalised. */
  readonly equaliseV: number | null;
  /** Loads are cut off here at the slow rates of a solar system. */
  readonly disconnectV: number;
  /** Per cell, for absorption, float and equalising; negative. */
  readonly compensationVPerK: number;
  readonly chargeMinTempC: number;
  readonly chargeMaxTempC: number;
  readonly dischargeMinTempC: number;
  readonly dischargeMaxTempC: number;
}

/**
 * Mid-range settings by chemistry.
 *
 * Lead-acid voltages from memory: absorption 2.40-2.47 vented, 2.35-2.45 AGM, 2.35-2.40 gel; float 2.23-2.30;
 * equalising 2.5-2.6 vented only; cut-off 1.90-1.95; -5 mV/K vented, -4 mV/K sealed. Lithium iron phosphate
 * voltages and all temperature limits: common practice, no source. The maker's sheet for the block bought
 * always goes first.
 */
export const CELL_VOLTAGES: Readonly<Record<Chemistry, CellVoltages>> = {
  "lead-vented": {
    absorptionV: 2.45,
    floatV: 2.25,
    equaliseV: 2.58,
    disconnectV: 1.93,
    compensationVPerK: -0.005,
    chargeMinTempC: -20,
    chargeMaxTempC: 50,
    dischargeMinTempC: -40,
    dischargeMaxTempC: 55,
  },
  "lead-agm": {
    absorptionV: 2.4,
    floatV: 2.27,
    equaliseV: null,
    disconnectV: 1.93,
    compensationVPerK: -0.004,
    chargeMinTempC: -20,
    chargeMaxTempC: 50,
    dischargeMinTempC: -40,
    dischargeMaxTempC: 55,
  },
  "lead-gel": {
    absorptionV: 2.36,
    floatV: 2.27,
    equaliseV: null,
    disconnectV: 1.93,
    compensationVPerK: -0.004,
    chargeMinTempC: -20,
    chargeMaxTempC: 50,
    dischargeMinTempC: -40,
    dischargeMaxTempC: 55,
  },
  lifepo4: {
    absorptionV: 3.55,
    floatV: 3.375,
    equaliseV: null,
    disconnectV: 3,
    compensationVPerK: 0,
    chargeMinTempC: 0,
    chargeMaxTempC: 45,
    dischargeMinTempC: -20,
    dischargeMaxTempC: 60,
  },
};

/**
 * Factor on the open-circuit voltage of crystalline silicon, with the coldest air temperature of each band.
 *
 * @source NEC table 690.7(A) (factors as quoted in a public data file and from memory)
 */
export const NEC_690_7_FACTOR_BY_LOWEST_TEMP_C: Curve = [
  [25, 1],
  [20, 1.02],
  [15, 1.04],
  [10, 1.06],
  [5, 1.08],
  [0, 1.1],
  [-5, 1.12],
  [-10, 1.14],
  [-15, 1.16],
  [-20, 1.18],
  [-25, 1.2],
  [-30, 1.21],
  [-35, 1.23],
  [-40, 1.25],
];

/**
 * Days of storage for a year-round station against latitude: ampere-hours for 5 W (10 Ah a day at 12 V) over
 * 10.
 *
 * @source UNAVCO knowledge base article 190, Remote Station Power Analysis (2007), row of two panels (170 W);
 *         82 and 84 degrees from the page's later revision. The 12 V is that group's practice and does not
 *         stand beside the table.
 */
export const POLAR_STORAGE_DAYS_BY_LATITUDE_DEG: Curve = [
  [60, 90],
  [62, 90],
  [64, 90],
  [66, 110],
  [68, 130],
  [70, 150],
  [72, 170],
  [74, 190],
  [76, 210],
  [78, 220],
  [80, 230],
  [82, 230],
  [84, 240],
];

/** What the hour-by-hour balance asks of a bank besides its size; the maker's sheet goes first. */
export interface BankTraits {
  /** Energy that stays in the bank over energy put in at its terminals. */
  readonly chargeEfficiencyFrac: number;
  /** Energy given at the terminals over energy taken out of store; times the above: the round trip. */
  readonly dischargeEfficiencyFrac: number;
  /** Of what is stored, at 25 deg C; doubles for each 10 K. */
  readonly selfDischargePerMonthFrac: number;
  /** Largest charge current in A over rated Ah. */
  readonly maxChargeCRate: number;
  /**
   * Missing charge over this many hours is the most that is accepted, so that the last part goes in ever more
   * slowly; 0: no such limit.
   */
  readonly acceptanceH: number;
}

/**
 * Mid-range traits by chemistry.
 *
 * From memory: energy round trip 0.70 to 0.80 lead-acid, 0.85 at the slow rates of a solar post; 0.92 to 0.96
 * lithium iron phosphate; self-discharge a month 5 to 15 % vented (antimony), 1 to 3 % the others; charge
 * current C/5 at most for lead-acid. How a round trip is shared between its two halves, and the C/2 of
 * lithium: common practice, no source. Acceptance in proportion to the missing charge is the old law of Mas
 * (from memory); its 2 h is our own choice, so that absorption at C/10 starts near 0.8 and lasts 3 to 5 h.
 */
export const BANK_TRAITS: Readonly<Record<Chemistry, BankTraits>> = {
  "lead-vented": {
    chargeEfficiencyFrac: 0.85,
    dischargeEfficiencyFrac: 0.94,
    selfDischargePerMonthFrac: 0.07,
    maxChargeCRate: 0.2,
    acceptanceH: 2,
  },
  "lead-agm": {
    chargeEfficiencyFrac: 0.89,
    dischargeEfficiencyFrac: 0.95,
    selfDischargePerMonthFrac: 0.03,
    maxChargeCRate: 0.2,
    acceptanceH: 2,
  },
  "lead-gel": {
    chargeEfficiencyFrac: 0.89,
    dischargeEfficiencyFrac: 0.95,
    selfDischargePerMonthFrac: 0.03,
    maxChargeCRate: 0.2,
    acceptanceH: 2,
  },
  lifepo4: {
    chargeEfficiencyFrac: 0.97,
    dischargeEfficiencyFrac: 0.97,
    selfDischargePerMonthFrac: 0.03,
    maxChargeCRate: 0.5,
    acceptanceH: 0,
  },
};

const LEAD_REST_CELL_V: Curve = [
  [0, 11.5 / 6],
  [0.25, 11.9 / 6],
  [0.5, 12.2 / 6],
  [0.75, 12.45 / 6],
  [1, 12.7 / 6],
];

/** Voltages of a cell by state of charge, 0 to 1, and how far they can be trusted. */
export interface CellAtRest {
  /** After hours without current, at 25 deg C. */
  readonly restVByChargeFrac: Curve;
  /** How much two makers, and a cell not quite at rest, differ at the same charge. */
  readonly restScatterV: number;
  /** Rise of the voltage while charged, for each unit of A over Ah. */
  readonly riseVPerCRate: number;
}

const LEAD_AT_REST: CellAtRest = {
  restVByChargeFrac: LEAD_REST_CELL_V,
  restScatterV: 0.015,
  riseVPerCRate: 1.2,
};

/**
 * Lead-acid: 12.7, 12.45, 12.2 and 11.9 V of a 12 V block at full, three, two and one quarter (from memory),
 * 11.5 V empty. Lithium iron phosphate: the flat curve of common cells, which rest up to 0.02 V apart after
 * charging and after discharging at the same charge (from memory). Scatter of lead-acid and rise: common
 * practice, no source.
 */
export const CELL_AT_REST: Readonly<Record<Chemistry, CellAtRest>> = {
  "lead-vented": LEAD_AT_REST,
  "lead-agm": LEAD_AT_REST,
  "lead-gel": LEAD_AT_REST,
  lifepo4: {
    restVByChargeFrac: [
      [0, 2.8],
      [0.05, 3.05],
      [0.1, 3.18],
      [0.2, 3.24],
      [0.3, 3.265],
      [0.5, 3.29],
      [0.7, 3.315],
      [0.9, 3.335],
      [0.98, 3.355],
      [1, 3.42],
    ],
    restScatterV: 0.02,
    riseVPerCRate: 0.3,
  },
};

/** How long a bank lasts when it is only kept, and when it is only cycled. */
export interface BankWear {
  /** Cycles to 0.8 of the rated capacity against depth; straight lines between the logarithms of both. */
  readonly cyclesByDepthFrac: Curve;
  /** Years at 25 deg C and colder; halved for each 10 K above. */
  readonly calendarYears: number;
}

/**
 * Cautious ends, from memory: vented 500 to 700 cycles at a depth of 0.8, 1000 to 1200 at 0.5, 3000 and more
 * at 0.2; tubular gel about 1500 at 0.8; lithium iron phosphate 2000 to 6000 at 0.8. AGM is taken as vented;
 * gel has the slope of vented; lithium is taken to give the same energy in all at any depth. Calendar years:
 * common practice, no source.
 */
export const BANK_WEAR: Readonly<Record<Chemistry, BankWear>> = {
  "lead-vented": {
    cyclesByDepthFrac: [
      [0.2, 3000],
      [0.5, 1000],
      [0.8, 500],
    ],
    calendarYears: 8,
  },
  "lead-agm": {
    cyclesByDepthFrac: [
      [0.2, 3000],
      [0.5, 1000],
      [0.8, 500],
    ],
    calendarYears: 7,
  },
  "lead-gel": {
    cyclesByDepthFrac: [
      [0.2, 9000],
      [0.5, 3000],
      [0.8, 1500],
    ],
    calendarYears: 10,
  },
  lifepo4: {
    cyclesByDepthFrac: [
      [0.2, 8000],
      [0.8, 2000],
    ],
    calendarYears: 12,
  },
};
