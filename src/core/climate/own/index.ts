export { climateOfOwn } from "./climate-of-own.ts";
export { type ComparedSources, comparedSources } from "./compared-sources.ts";
export { readEpw } from "./epw.ts";
export {
  type IrradiationCheck,
  type IrradiationUnit,
  monthlyIrradiation,
  type OwnIrradiation,
} from "./monthly-irradiation.ts";
export {
  type PowerClimatology,
  type PowerParameter,
  type PowerRefusal,
  readPowerClimatology,
} from "./power-climatology.ts";
export type { FileRefused } from "./refusal.ts";
export { readTmy3 } from "./tmy3.ts";
export type {
  HourlySeries,
  TypicalYear,
  TypicalYearRefusal,
  YearPlace,
  YearRefused,
} from "./typical-year.ts";
export { type OwnFigures, withOwnFigures } from "./with-own-figures.ts";
