import { within } from "../numerics/index.ts";

/** Sun, air and wind at the module. */
export interface Weather {
  /** Irradiance in the plane of the array, 0 to 1500. */
  readonly poaWPerM2: number;
  /** Air temperature, -60 to 60. */
  readonly ambientTempC: number;
  /** Wind at the module, 0 to 60. */
  readonly windMPerS: number;
}

/**
 * Cell temperature from the nominal operating cell temperature on the data sheet.
 *
 * @param cell.noctC  40 to 60
 * @returns deg C
 * @accuracy about 5 K; wind is not seen
 * @throws RangeFault outside the ranges above
 * @source Ross 1980; Duffie and Beckman section 23.3, without the efficiency term
 */
export function noctCellTempC(cell: Omit<Weather, "windMPerS"> & { readonly noctC: number }): number {
  const { poaWPerM2, ambientTempC } = weather({ ...cell, windMPerS: 0 });
  return ambientTempC + ((within("noctC", cell.noctC, 20, 80) - 20) * poaWPerM2) / 800;
}

/** Construction and mounting of a module in the Sandia thermal model. */
export type ModuleMount = "open-rack-glass-polymer" | "open-rack-glass-glass";

/** King, Boyson and Kratochvil 2004, SAND2004-3535, table 1. */
const SANDIA_MOUNT: Record<ModuleMount, { readonly a: number; readonly b: number; readonly riseK: number }> =
  {
    "open-rack-glass-polymer": { a: -3.56, b: -0.075, riseK: 3 },
    "open-rack-glass-glass": { a: -3.47, b: -0.0594, riseK: 3 },
  };

/**
 * Temperatures of the back of a module and of its cells.
 *
 * @returns deg C
 * @accuracy about 5 K
 * @throws RangeFault outside the ranges of Weather
 * @source King, Boyson and Kratochvil 2004, SAND2004-3535, eqs. 11 and 12
 */
export function sandiaModuleTempC(module: Weather & { readonly mount: ModuleMount }): {
  readonly moduleTempC: number;
  readonly cellTempC: number;
} {
  const { poaWPerM2, ambientTempC, windMPerS } = weather(module);
  const { a, b, riseK } = SANDIA_MOUNT[module.mount];
  const moduleTempC = ambientTempC + poaWPerM2 * Math.exp(a + b * windMPerS);
  return { moduleTempC, cellTempC: moduleTempC + (riseK * poaWPerM2) / 1000 };
}

/**
 * Module temperature by the linear heat-loss model, also that of IEC 61853-2.
 *
 * @param module.constantLossWPerM2K   25 when left out
 * @param module.windLossWsPerM3K      6.84 when left out
 * @returns deg C
 * @accuracy about 3 K for open racks
 * @throws RangeFault outside the ranges of Weather
 * @source Faiman 2008, Progress in Photovoltaics 16, 307
 */
export function faimanModuleTempC(
  module: Weather & { readonly constantLossWPerM2K?: number; readonly windLossWsPerM3K?: number },
): number {
  const { poaWPerM2, ambientTempC, windMPerS } = weather(module);
  const constantLoss = within("constantLossWPerM2K", module.constantLossWPerM2K ?? 25, 5, 100);
  const windLoss = within("windLossWsPerM3K", module.windLossWsPerM3K ?? 6.84, 0, 30);
  return ambientTempC + poaWPerM2 / (constantLoss + windLoss * windMPerS);
}

/**
 * Power of a module at a given light and cell temperature.
 *
 * @param module.ratedW                    at 1000 W/m2 and 25 deg C, 0 or more
 * @param module.cellTempC                 -60 to 120
 * @param module.powerTempCoefficientPerK  negative, -0.0065 to 0: crystalline silicon -0.0035 to -0.005
 * @returns W
 * @accuracy 2 % above 200 W/m2; the fall of efficiency in weak light is not seen
 * @throws RangeFault outside the ranges above
 * @source Dobos 2014, NREL/TP-6A20-62641, eq. for DC power
 */
export function modulePowerW(module: {
  readonly ratedW: number;
  readonly poaWPerM2: number;
  readonly cellTempC: number;
  readonly powerTempCoefficientPerK: number;
}): number {
  const coefficient = within("powerTempCoefficientPerK", module.powerTempCoefficientPerK, -0.0065, 0);
  const riseK = within("cellTempC", module.cellTempC, -60, 120) - 25;
  const lightRatio = within("poaWPerM2", module.poaWPerM2, 0, 1500) / 1000;
  return within("ratedW", module.ratedW, 0, 1e6) * lightRatio * (1 + coefficient * riseK);
}

/**
 * Share of a month's module energy lost to heat, from monthly means alone. Negative in cold: the module then
 * gains.
 *
 * @param month.meanTempC         monthly mean air temperature, -60 to 50
 * @param month.clearnessIndex    monthly K_T, 0 to 1.2 (held at 0.8 above)
 * @param month.noctC             40 to 60
 * @param month.powerTempCoefficientPerK  -0.0065 to 0
 * @returns fraction
 * @accuracy about 0.02, for tilts within 20 deg of the best
 * @throws RangeFault outside the ranges above
 * @source Evans 1981, Solar Energy 27, 555: cell minus air temperature (219 + 832 K_T)(NOCT - 20)/800 (from
 *         memory)
 */
export function monthlyHeatLossFrac(month: {
  readonly meanTempC: number;
  readonly clearnessIndex: number;
  readonly noctC: number;
  readonly powerTempCoefficientPerK: number;
}): number {
  const index = Math.min(within("clearnessIndex", month.clearnessIndex, 0, 1.2), 0.8);
  const riseK = ((219 + 832 * index) * (within("noctC", month.noctC, 20, 80) - 20)) / 800;
  const cellTempC = within("meanTempC", month.meanTempC, -60, 50) + riseK;
  return -within("powerTempCoefficientPerK", month.powerTempCoefficientPerK, -0.0065, 0) * (cellTempC - 25);
}

function weather(given: Weather): Weather {
  return {
    poaWPerM2: within("poaWPerM2", given.poaWPerM2, 0, 1500),
    ambientTempC: within("ambientTempC", given.ambientTempC, -60, 60),
    windMPerS: within("windMPerS", given.windMPerS, 0, 60),
  };
}
