import { within } from "../numerics/index.ts";

/**
 * Coefficients k1 to k6 of the power rating model, per watt rated, for crystalline silicon.
 *
 * @source Huld et al. 2011, Solar Energy Materials and Solar Cells 95, 3359, and Chatzipanagi et al. 2025, Progress in
 *         Photovoltaics 33, 905, both in the digits of pvlib 0.16.1
 */
const SILICON = {
  "huld-2011": [-0.017237, -0.040465, -0.004702, 0.000149, 0.00017, 0.000005],
  "chatzipanagi-2025": [-0.006756, -0.016444, -0.003015, -0.000045, -0.000043, 0],
} as const satisfies Record<string, readonly [number, number, number, number, number, number]>;

/** Which measured modules: those of about 2010, or those sold about 2020. */
export type SiliconFit = keyof typeof SILICON;

/** Light in which the fit by logarithms still answers with sense; weaker light is held at this. */
const WEAKEST_WPERM2 = 20;

/**
 * Efficiency of a crystalline module in weak light over its rated one, cells at 25 deg C: to be multiplied onto
 * modulePowerW.
 *
 * @param light.effectiveWPerM2  irradiance that reaches the cells, 0 to 1500; below 20 the value at 20 is held
 * @param light.fit              "huld-2011" when left out: the poorer, older modules
 * @returns ratio, 1 at 1000 W/m2; at 200 W/m2 0.923 and 0.968
 * @throws RangeFault outside the range above
 * @source see SILICON: 1 + k1 ln(G/1000) + k2 ln2(G/1000)
 */
export function weakLightRatio(light: {
  readonly effectiveWPerM2: number;
  readonly fit?: SiliconFit;
}): number {
  return huldRatio({ ...light, moduleTempC: 25 });
}

/**
 * Power of a crystalline silicon module by irradiance and module temperature, weak light included.
 *
 * @param module.ratedW           at 1000 W/m2 and 25 deg C, 0 to 1e6
 * @param module.effectiveWPerM2  irradiance that reaches the cells, 0 to 1500; below 20 the efficiency at 20 is held,
 *                                since the logarithms would turn it negative
 * @param module.moduleTempC      back of the module, -60 to 120
 * @param module.fit              "huld-2011" when left out
 * @returns W, 0 or more
 * @accuracy about 1 % of measured modules of its fit from 50 to 1000 W/m2 (from memory)
 * @throws RangeFault outside the ranges above
 * @source Huld et al. 2011, eq. 1; coefficients see SILICON
 */
export function huldModulePowerW(module: {
  readonly ratedW: number;
  readonly effectiveWPerM2: number;
  readonly moduleTempC: number;
  readonly fit?: SiliconFit;
}): number {
  const ratedW = within("ratedW", module.ratedW, 0, 1e6);
  return (ratedW * huldRatio(module) * module.effectiveWPerM2) / 1000;
}

function huldRatio(module: {
  readonly effectiveWPerM2: number;
  readonly moduleTempC: number;
  readonly fit?: SiliconFit;
}): number {
  const effective = within("effectiveWPerM2", module.effectiveWPerM2, 0, 1500);
  const riseK = within("moduleTempC", module.moduleTempC, -60, 120) - 25;
  const [k1, k2, k3, k4, k5, k6] = SILICON[module.fit ?? "huld-2011"];
  const log = Math.log(Math.max(effective, WEAKEST_WPERM2) / 1000);
  return Math.max(
    0,
    1 + k1 * log + k2 * log ** 2 + riseK * (k3 + k4 * log + k5 * log ** 2) + k6 * riseK ** 2,
  );
}

/**
 * Current of a module over its rated one, as a controller without power-point tracking draws it: a source in step
 * with the light.
 *
 * @param module.effectiveWPerM2           irradiance that reaches the cells, 0 to 1500
 * @param module.cellTempC                 -60 to 120
 * @param module.currentTempCoefficientPerK  -0.001 to 0.002. For the short-circuit current 0.0005 when left out; a
 *                                           module held at battery voltage runs near it. For the current at maximum
 *                                           power -0.0002
 * @returns ratio, A per A rated at 1000 W/m2 and 25 deg C
 * @accuracy 2 % against the five-parameter model of a 36-cell module at 13 V, cells -20 to 60 deg C, above 200 W/m2, and 0.5 % of the rated current below; where
 *           hotter cells bring the maximum-power voltage down to the battery's, the current falls and this does not see it
 * @throws RangeFault outside the ranges above
 * @source the linear law of De Soto, Klein and Beckman 2006 for the light current; coefficients are the medians of the
 *         381 crystalline modules in the Sandia module database of 2015-06-30 (as shipped with pvlib 0.16.1: 0.00054
 *         and -0.00020)
 */
export function moduleCurrentRatio(module: {
  readonly effectiveWPerM2: number;
  readonly cellTempC: number;
  readonly currentTempCoefficientPerK?: number;
}): number {
  const coefficient = within(
    "currentTempCoefficientPerK",
    module.currentTempCoefficientPerK ?? 0.0005,
    -0.001,
    0.002,
  );
  const lightRatio = within("effectiveWPerM2", module.effectiveWPerM2, 0, 1500) / 1000;
  return lightRatio * (1 + coefficient * (within("cellTempC", module.cellTempC, -60, 120) - 25));
}
