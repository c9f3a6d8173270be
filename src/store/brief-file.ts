/**
 * The shape of a saved brief. Invariants:
 *
 * 1. A file carries `schemaVersion`; an older one is brought up step by step by pure functions, a newer one is refused
 *    and never touched.
 * 2. Nothing computed is saved: only what was answered, exactly as typed, with the value read from it and its origin.
 * 3. An answer may be a bare text, so that a file can be written by hand: it is then read like a typed line.
 */
import * as z from "zod";

export const schemaVersion = 1;

/** Three series of 8760 hours, two bytes each, in base64. */
const packedHoursLength = (3 * 8760 * 2 * 4) / 3;

const origin = z.enum(["measured", "datasheet", "estimate", "assumed"]);

const site = z.strictObject({
  label: z.string(),
  latitudeDeg: z.number().min(-90).max(90),
  longitudeDeg: z.number().min(-180).max(180),
  elevationM: z.number().nullable(),
  countryCode: z
    .string()
    .regex(/^[A-Z]{2}$/)
    .nullable(),
});

const minuteOfDay = z.number().min(0).max(1440);

const storedValue = z.discriminatedUnion("kind", [
  z.strictObject({
    kind: z.literal("quantity"),
    low: z.number(),
    best: z.number(),
    high: z.number(),
    unit: z.string(),
    spot: z
      .strictObject({
        latitudeDeg: z.number().min(-90).max(90),
        longitudeDeg: z.number().min(-180).max(180),
      })
      .optional(),
  }),
  z.strictObject({ kind: z.literal("choice"), option: z.string() }),
  z.strictObject({ kind: z.literal("place"), site: site.nullable() }),
  z.strictObject({ kind: z.literal("clock"), fromMin: minuteOfDay, toMin: minuteOfDay }),
  z.strictObject({
    kind: z.literal("horizon"),
    points: z
      .array(
        z.strictObject({ azimuthDeg: z.number().min(0).max(360), elevationDeg: z.number().min(0).max(90) }),
      )
      .readonly(),
  }),
  z.strictObject({
    kind: z.literal("sun"),
    figures: z
      .strictObject({
        ghiDailyKWhPerM2ByMonth: z.array(z.number().min(0).max(15)).length(12).readonly(),
        meanTempCByMonth: z.array(z.number()).length(12).readonly().nullable(),
        // Briefs saved before these were kept have none of the next three.
        dailyQuantilesByMonth: z
          .array(z.array(z.number().min(0).max(16)).length(16).readonly())
          .length(12)
          .readonly()
          .nullable()
          .default(null),
        lag1ByMonth: z.array(z.number().min(0).max(0.95)).length(12).readonly().nullable().default(null),
        hours: z
          .strictObject({
            latitudeDeg: z.number().min(-90).max(90),
            longitudeDeg: z.number().min(-180).max(180),
            utcOffsetH: z.number().min(-12).max(14),
            packed: z
              .string()
              .length(packedHoursLength)
              .regex(/^[A-Za-z0-9+/]*$/),
          })
          .nullable()
          .default(null),
        source: z.string(),
      })
      .nullable(),
  }),
  z.strictObject({ kind: z.literal("obstacles"), words: z.string() }),
  z.strictObject({
    kind: z.literal("ground"),
    ground: z
      .strictObject({
        profile: z
          .array(
            z.strictObject({
              distanceFromNearM: z.number().min(0).max(200_000),
              groundM: z.number().min(-500).max(9000),
            }),
          )
          .readonly(),
        source: z.string(),
      })
      .nullable(),
  }),
]);

const answer = z.union([z.string(), z.strictObject({ typed: z.string(), value: storedValue, origin })]);

const briefFile = z.strictObject({
  schemaVersion: z.literal(schemaVersion),
  name: z.string().min(1).max(80),
  currency: z
    .string()
    .regex(/^[A-Z]{3}$/, "three capital letters, such as EUR")
    .default("USD")
    .describe("ISO 4217: the currency that prices are in."),
  units: z
    .enum(["metric", "us"], { error: "metric or us" })
    .default("metric")
    .describe(
      "What a bare number is taken in where a question knows two units: m, kg, mm, m/s for metric; ft, lb, in, mph for us.",
    ),
  startedUtc: z.string().optional(),
  savedUtc: z.string().optional(),
  topicVersions: z.record(z.string(), z.number()).default({}),
  answers: z.record(z.string(), answer),
});

export type BriefFile = z.output<typeof briefFile>;
export type FileAnswer = BriefFile["answers"][string];

/** What reading a brief came to: a file, or the reason why it is not one. */
export type BriefReading =
  | { readonly kind: "brief"; readonly file: BriefFile }
  /** Made by a later version of the program. */
  | { readonly kind: "newer"; readonly version: number }
  | { readonly kind: "damaged"; readonly says: string };

type Content = Readonly<Record<string, unknown>>;
/** Step i brings the content of version i + 1 to version i + 2. */
export type Migrations = readonly ((content: Content) => Content)[];

const migrations: Migrations = [];

function faultsOf(error: z.ZodError): string {
  return error.issues
    .slice(0, 3)
    .map((issue) => `${issue.path.length === 0 ? "the file" : issue.path.join(" / ")}: ${issue.message}`)
    .join("; ");
}

/** Whatever was in a file, as a brief of the newest shape. */
export function migrateBrief(
  content: unknown,
  about: { readonly migrations: Migrations; readonly newest: number } = { migrations, newest: schemaVersion },
): BriefReading {
  if (typeof content !== "object" || content === null || Array.isArray(content)) {
    return { kind: "damaged", says: "it does not hold a brief" };
  }
  const version = (content as Content).schemaVersion;
  if (typeof version !== "number" || !Number.isInteger(version) || version < 1) {
    return { kind: "damaged", says: "schemaVersion: it does not say which version it is" };
  }
  if (version > about.newest) return { kind: "newer", version };
  let migrated = content as Content;
  for (const step of about.migrations.slice(version - 1)) migrated = step(migrated);
  const read = briefFile.safeParse(migrated);
  return read.success ? { kind: "brief", file: read.data } : { kind: "damaged", says: faultsOf(read.error) };
}

/** The text of a brief file, from wherever it came, as a brief. */
export function readBriefText(text: string): BriefReading {
  let content: unknown;
  try {
    content = JSON.parse(text.replace(/^\ufeff/, ""));
  } catch (error) {
    return { kind: "damaged", says: `it is not JSON (${(error as Error).message})` };
  }
  return migrateBrief(content);
}

/** A question as far as the schema of a brief needs to know it. */
export interface SchemaQuestion {
  /** "topic.name", or "topic.block.N.name" for each of a repeated block. */
  readonly id: string;
  readonly description: string;
}

/** The JSON Schema of a brief file, with the answers that the questions allow. */
export function briefJsonSchema(questions: readonly SchemaQuestion[]): object {
  const schema = z.toJSONSchema(briefFile, { io: "input" }) as unknown as {
    properties: { answers: { additionalProperties: unknown; [key: string]: unknown } };
  };
  const { additionalProperties: answerSchema } = schema.properties.answers;
  const known: Record<string, unknown> = {};
  const repeated: Record<string, unknown> = {};
  for (const { id, description } of questions) {
    const entry = { description, $ref: "#/$defs/answer" };
    if (id.includes(".N.")) repeated[`^${id.replaceAll(".", "\\.").replace("N", "[1-9][0-9]*")}$`] = entry;
    else known[id] = entry;
  }
  return {
    ...schema,
    title: "A Mastwright brief",
    properties: {
      ...schema.properties,
      answers: {
        type: "object",
        description:
          'What was answered, by question id. A bare text is read like a typed line: "30 ft", "unsure". Questions left out are worked with their stand-ins.',
        properties: known,
        patternProperties: repeated,
        additionalProperties: false,
      },
    },
    $defs: { answer: answerSchema },
  };
}
