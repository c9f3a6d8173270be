export { convert } from "./convert.ts";
export { dimensionWords, findUnit, unitOf, unitsOf } from "./find.ts";
export { formatNumber, formatQuantity, quantityWords } from "./format.ts";
export { MONTH_NAMES } from "./month-names.ts";
export { type Exactness, type SaidUnit, type Saying, sayingIn, type UnitSystem } from "./said.ts";
export type { Dimension, Unit } from "./unit.ts";
