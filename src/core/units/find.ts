import { DIMENSIONS } from "./tables.ts";
import type { Dimension, Unit } from "./unit.ts";

interface Index {
  readonly units: readonly Unit[];
  readonly exact: ReadonlyMap<string, Unit>;
  /** Without regard to case; null where two units would be meant. */
  readonly folded: ReadonlyMap<string, Unit | null>;
}

const ALL_DIMENSIONS = Object.keys(DIMENSIONS) as readonly Dimension[];

const INDEX = Object.fromEntries(
  ALL_DIMENSIONS.map((dimension) => [dimension, indexOf(dimension)]),
) as unknown as Readonly<Record<Dimension, Index>>;

const BY_SYMBOL: ReadonlyMap<string, Unit> = new Map(
  ALL_DIMENSIONS.flatMap((dimension) => INDEX[dimension].units.map((unit) => [unit.symbol, unit] as const)),
);

function indexOf(dimension: Dimension): Index {
  const units = DIMENSIONS[dimension].units.map((row) => ({ ...row, dimension }));
  const exact = new Map<string, Unit>();
  const folded = new Map<string, Unit | null>();
  for (const unit of units) {
    for (const form of typedForms(unit)) {
      exact.set(form, unit);
      const fold = form.toLowerCase();
      const before = folded.get(fold);
      folded.set(fold, before === undefined || before === unit ? unit : null);
    }
  }
  return { units, exact, folded };
}

/** Every way to type a unit, in the plain form that `findUnit` compares. */
function typedForms(unit: Unit): readonly string[] {
  const forms = [unit.symbol, unit.singular, unit.plural, ...unit.typed].map(plainForm);
  return [...new Set(forms)].filter((form) => form !== "");
}

/** One spelling for what looks the same: superscripts, "per" and "/", spaces, a closing full stop. */
function plainForm(text: string): string {
  return text
    .normalize("NFKC")
    .replace(/[º˚]/g, "°")
    .replace(/[’′]/g, "'")
    .replace(/''|[“”″]/g, '"')
    .replace(/[·⋅]/g, " ")
    .replace(/\bsq\./gi, "sq")
    .replace(/\bper\b(?!\s*cent)/gi, "/")
    .replace(/\s*\/\s*/g, "/")
    .replace(/°\s+/g, "°")
    .replace(/\s+/g, " ")
    .replace(/\.$/, "")
    .trim();
}

/** The units in which a quantity of this kind may be typed; the first is the usual one. */
export function unitsOf(dimension: Dimension): readonly Unit[] {
  return INDEX[dimension].units;
}

/**
 * The unit a text names, by symbol, name or any typed form; letter case is forgiven where only one unit can be meant
 * ("MW" is never a milliwatt). Without a dimension the most usual meaning is taken: "C" is a temperature.
 *
 * @returns undefined where no unit, or more than one, can be meant
 * @example findUnit("Feet")?.symbol  // "ft"
 */
export function findUnit(text: string, dimension?: Dimension): Unit | undefined {
  const form = plainForm(text);
  if (dimension !== undefined) return findIn(form, dimension);
  const bySymbol = BY_SYMBOL.get(text);
  if (bySymbol !== undefined && text !== "") return bySymbol;
  for (const each of ALL_DIMENSIONS) {
    const exact = INDEX[each].exact.get(form);
    if (exact !== undefined) return exact;
  }
  for (const each of ALL_DIMENSIONS) {
    const folded = INDEX[each].folded.get(form.toLowerCase());
    if (folded !== undefined) return folded ?? undefined;
  }
  return undefined;
}

function findIn(form: string, dimension: Dimension): Unit | undefined {
  const { exact, folded, units } = INDEX[dimension];
  if (form === "") return units.find((unit) => unit.symbol === "");
  return exact.get(form) ?? folded.get(form.toLowerCase()) ?? undefined;
}

/**
 * The unit with this symbol.
 *
 * @throws Error for a symbol that is not in the table: that is a slip of ours, what a builder types goes to `findUnit`
 */
export function unitOf(symbol: string): Unit {
  const unit = BY_SYMBOL.get(symbol) ?? findUnit(symbol);
  if (unit === undefined) throw new Error(`no unit "${symbol}" in the table`);
  return unit;
}

/** A kind of quantity in words with its article: "a voltage". */
export function dimensionWords(dimension: Dimension): string {
  return DIMENSIONS[dimension].words;
}
