import { extraterrestrialDailyKWhPerM2ByMonth } from "../../astronomy/index.ts";
import { type IrradiationCheck, monthlyIrradiation } from "./monthly-irradiation.ts";
import { type FileRefused, refused } from "./refusal.ts";

/** Parameters of NASA POWER that are read: irradiation on the level, air at 2 m, its minimum, wind at 10 m. */
export type PowerParameter = "ALLSKY_SFC_SW_DWN" | "T2M" | "T2M_MIN" | "WS10M";

/** A monthly climatology of one point. Lists have twelve entries, January first. */
export interface PowerClimatology {
  readonly kind: "climatology";
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  /** Mean height of the service's cell; null where the file has none. */
  readonly elevationM: number | null;
  readonly ghiDailyKWhPerM2ByMonth: readonly number[];
  readonly meanTempCByMonth: readonly number[] | null;
  /** The lowest hour of the whole period in each month, by the service's definition of T2M_MIN (from memory). */
  readonly lowestTempCByMonth: readonly number[] | null;
  /** At 10 m above the ground. */
  readonly windMPerSByMonth: readonly number[] | null;
  /** Parameters that the file does not have, or has with holes. */
  readonly missing: readonly PowerParameter[];
  /** The period as printed, such as "20010101 to 20201231"; null where not said. */
  readonly period: string | null;
  /** What is doubtful about the irradiation. */
  readonly checks: readonly IrradiationCheck[];
}

export type PowerRefusal =
  | "not-json"
  | "service-message"
  | "not-a-climatology"
  | "no-coordinates"
  | "no-irradiation"
  | "missing-months"
  | "unknown-unit"
  | "impossible-irradiation";

const MONTHS = ["JAN", "FEB", "MAR", "APR", "MAY", "JUN", "JUL", "AUG", "SEP", "OCT", "NOV", "DEC"] as const;

/** Where no fill value is printed. */
const USUAL_FILL_VALUE = -999;

/** Months with less sun than this outside the atmosphere need no figure: it is night. */
const NIGHT_KWH_PER_M2 = 0.05;

/**
 * Monthly climatology in the JSON of the NASA POWER service (public domain): both the present layout (one feature,
 * months JAN to DEC) and the former one (a list of features, months 1 to 12).
 *
 * @param text  the whole answer of the service, or the file saved from it
 * @returns figures by month with place and what is missing, or one reason why not; a text never throws
 * @source layouts and units from memory of the service's answers
 */
export function readPowerClimatology(text: string): PowerClimatology | FileRefused<PowerRefusal> {
  const root = objectOf(parsed(text));
  if (root === null)
    return refused("not-json", "This is no JSON: a climatology of NASA POWER begins with {.");
  const feature = objectOf(listOf(root.features)?.[0]) ?? root;
  const parameters = objectOf(objectOf(feature.properties)?.parameter);
  if (parameters === null) {
    const message = firstMessage(root);
    return message === null
      ? refused("not-a-climatology", "This JSON has no properties.parameter: it is no answer of NASA POWER.")
      : refused("service-message", `NASA POWER answered: ${message}`);
  }
  const place = coordinatesOf(feature);
  if (place === null) {
    return refused("no-coordinates", "The file does not say for which latitude and longitude it is.");
  }

  const header = objectOf(root.header) ?? {};
  const fill = numberOf(header.fill_value) ?? numberOf(header.fillValue) ?? USUAL_FILL_VALUE;
  const monthsOf = (name: PowerParameter): readonly (number | null)[] | null => {
    const byMonth = objectOf(parameters[name]);
    if (byMonth === null) return null;
    return MONTHS.map((month, i) => {
      const value = numberOf(byMonth[month]) ?? numberOf(byMonth[String(i + 1)]);
      return value === null || value === fill || value === USUAL_FILL_VALUE ? null : value;
    });
  };
  const whole = (name: PowerParameter): readonly number[] | null => {
    const values = monthsOf(name);
    return values?.every((value) => value !== null) ? values : null;
  };

  const printed = monthsOf("ALLSKY_SFC_SW_DWN");
  if (printed === null) {
    return refused("no-irradiation", "The file lacks ALLSKY_SFC_SW_DWN, the irradiation on level ground.");
  }
  const outside = extraterrestrialDailyKWhPerM2ByMonth(place.latitudeDeg);
  const values = printed.map((value, i) => (value === null && outside[i]! < NIGHT_KWH_PER_M2 ? 0 : value));
  if (!values.every((value) => value !== null)) {
    const holes = MONTHS.filter((_, i) => values[i] === null);
    return refused(
      "missing-months",
      holes.length === 12
        ? "The file has no monthly irradiation: ask for a climatology, not for days or hours."
        : `The irradiation is missing for ${holes.join(", ")}.`,
    );
  }
  const unit = unitOf(root, "ALLSKY_SFC_SW_DWN");
  const letters = unit?.toLowerCase().replace(/[^a-z0-9]/g, "") ?? "kwhrm2day";
  const perDay = DAILY_KWH_PER_UNIT.find(({ form }) => form.test(letters));
  if (perDay === undefined) {
    return refused(
      "unknown-unit",
      `The irradiation is in "${unit}"; read are kW-hr, MJ, W-hr (a day) and W, each per m^2.`,
    );
  }
  const { ghiDailyKWhPerM2ByMonth, checks } = monthlyIrradiation({
    values: values.map((value) => value * perDay.dailyKWh),
    unit: "kWh/m2 a day",
    latitudeDeg: place.latitudeDeg,
  });
  if (ghiDailyKWhPerM2ByMonth === null) {
    return refused(
      "impossible-irradiation",
      `The irradiation cannot be: it is negative or more than reaches latitude ${place.latitudeDeg} from space. Is its unit ${unit ?? "kW-hr/m^2/day"}?`,
    );
  }
  const lists = { T2M: whole("T2M"), T2M_MIN: whole("T2M_MIN"), WS10M: whole("WS10M") };
  return {
    kind: "climatology",
    ...place,
    ghiDailyKWhPerM2ByMonth,
    meanTempCByMonth: lists.T2M,
    lowestTempCByMonth: lists.T2M_MIN,
    windMPerSByMonth: lists.WS10M,
    missing: (Object.keys(lists) as (keyof typeof lists)[]).filter((name) => lists[name] === null),
    period: periodOf(header),
    checks,
  };
}

/** Of the unit's letters alone, without case: "kW-hr/m^2/day" is kwhrm2day. */
const DAILY_KWH_PER_UNIT: readonly { readonly form: RegExp; readonly dailyKWh: number }[] = [
  { form: /^kwhr?m2(?:day|d)?$/, dailyKWh: 1 },
  { form: /^mjm2(?:day|d)?$/, dailyKWh: 1 / 3.6 },
  { form: /^whr?m2(?:day|d)?$/, dailyKWh: 1 / 1000 },
  { form: /^wm2$/, dailyKWh: 24 / 1000 },
];

/** Unit of a parameter as printed; null where the file says none. */
function unitOf(root: JsonObject, name: PowerParameter): string | null {
  for (const table of ["parameters", "parameterInformation"]) {
    const units = objectOf(objectOf(root[table])?.[name])?.units;
    if (typeof units === "string") return units;
  }
  return null;
}

function coordinatesOf(
  feature: JsonObject,
): Pick<PowerClimatology, "latitudeDeg" | "longitudeDeg" | "elevationM"> | null {
  const coordinates = listOf(objectOf(feature.geometry)?.coordinates);
  const longitudeDeg = numberOf(coordinates?.[0]);
  const latitudeDeg = numberOf(coordinates?.[1]);
  if (latitudeDeg === null || longitudeDeg === null) return null;
  if (Math.abs(latitudeDeg) > 90 || Math.abs(longitudeDeg) > 180) return null;
  return { latitudeDeg, longitudeDeg, elevationM: numberOf(coordinates?.[2]) };
}

function periodOf(header: JsonObject): string | null {
  const { start, end, range } = header;
  if (typeof start === "string" && typeof end === "string") return `${start} to ${end}`;
  return typeof range === "string" ? range : null;
}

/** What the service says instead of figures: a list of messages, or a header and a list. */
function firstMessage(root: JsonObject): string | null {
  const messages = listOf(root.messages) ?? [root.message, root.detail];
  return messages.find((message): message is string => typeof message === "string" && message !== "") ?? null;
}

type JsonObject = Readonly<Record<string, unknown>>;

function parsed(text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch {
    return null;
  }
}

function objectOf(value: unknown): JsonObject | null {
  return typeof value === "object" && value !== null && !Array.isArray(value) ? (value as JsonObject) : null;
}

function listOf(value: unknown): readonly unknown[] | null {
  return Array.isArray(value) ? value : null;
}

/** A finite number, or a text that is one: the former layout printed "-999". */
function numberOf(value: unknown): number | null {
  const number = typeof value === "string" && value.trim() !== "" ? Number(value) : value;
  return typeof number === "number" && Number.isFinite(number) ? number : null;
}
