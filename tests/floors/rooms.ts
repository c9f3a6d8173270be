/**
 * Who may import whom: arrows go down only. A room that is not listed here is a breach, so a new folder is given its
 * floor on its first day. Other rooms come in by a room's doors, index.ts unless others are named.
 */
export interface Room {
  /** Rooms below that it may import. */
  readonly below: readonly string[];
  /** Packages from outside; "node" stands for every node: module. */
  readonly packages: readonly string[];
  /** Files that other rooms may import. */
  readonly doors: readonly string[];
  /** No clock, no chance, no state, no terminal, no file. */
  readonly isPure: boolean;
}

const floor = (below: readonly string[], about: Partial<Omit<Room, "below">> = {}): Room => ({
  below,
  packages: [],
  doors: ["index.ts"],
  isPure: false,
  ...about,
});
/** A field of engineering: rests on units, numerics and words, and on the lower fields it names. */
const field = (lowerFields: readonly string[] = [], packages: readonly string[] = []): Room =>
  floor(["src/core/units", "src/core/numerics", "src/core/words", ...lowerFields], {
    isPure: true,
    packages,
  });

const fields = [
  "src/core/astronomy",
  "src/core/climate",
  "src/core/place",
  "src/core/sun",
  "src/core/energy",
  "src/core/weather",
  "src/core/wiring",
  "src/core/link",
  "src/core/mast",
  "src/core/view",
  "src/core/units",
  "src/core/numerics",
  "src/core/words",
];

export const rooms: Readonly<Record<string, Room>> = {
  "src/core/numerics": floor([], { isPure: true }),
  "src/core/words": floor([], { isPure: true }),
  "src/core/units": floor(["src/core/numerics"], { isPure: true }),
  "src/core/astronomy": field(),
  "src/core/climate": field(["src/core/astronomy"]),
  "src/core/place": field([], ["geographiclib-geodesic", "geomagnetism", "@photostructure/tz-lookup"]),
  "src/core/sun": field(["src/core/astronomy"]),
  "src/core/energy": field(["src/core/sun", "src/core/climate"]),
  "src/core/weather": field(["src/core/sun", "src/core/climate"]),
  "src/core/wiring": field(),
  "src/core/link": field(),
  "src/core/mast": field(),
  "src/core/view": field(),
  "src/core": floor(fields, { isPure: true }),
  "src/design": floor(fields, {
    doors: ["index.ts", "brief.ts", "finding.ts", "design.ts", "stand-ins.ts"],
    isPure: true,
  }),
  "src/interview": floor(["src/design", ...fields], {
    doors: ["index.ts", "conversation.ts", "define.ts"],
    isPure: true,
  }),
  flows: floor(["src/interview", "src/design", ...fields], { isPure: true }),
  "src/report": floor(["src/design", ...fields], { isPure: true }),
  "src/store": floor(["src/design", "src/core/units"], { packages: ["conf", "zod", "node"] }),
  "src/plain": floor(["src/interview", "src/report", "src/design"], {
    packages: ["@inquirer/prompts", "string-width", "node"],
    doors: ["index.ts", "ask.ts"],
  }),
  // What is said has its words in plain: the chat screen sets the same lines beside a margin.
  "src/screen": floor(["src/plain", "src/interview", "src/report", "src/design"], {
    packages: ["ink", "react", "node"],
  }),
  "src/commands": floor(
    ["src/screen", "src/plain", "src/store", "src/report", "flows", "src/interview", "src/design", ...fields],
    { packages: ["geotiff", "node"], doors: [] },
  ),
};

/** Arrows within an allowed pair that may reach one door only: what flows may know of the interview. */
export const narrowArrows: Readonly<Record<string, readonly string[]>> = {
  "flows -> src/interview": ["define.ts", "conversation.ts"],
};

/** Words that a pure room must not contain, and why. */
export const impureWords: readonly (readonly [RegExp, string])[] = [
  [/\bMath\.random\b/, "chance: take a seed"],
  [/\bDate\b/, "the clock"],
  [/\bprocess\b/, "the environment"],
  [/\bconsole\b/, "the terminal"],
  [/\bperformance\b/, "the clock"],
  [/\bset(?:Timeout|Interval|Immediate)\b/, "a timer"],
  [/\bfetch\s*\(/, "the network"],
  [/\bBuffer\b/, "Node: use Uint8Array"],
  [/\bglobalThis\b/, "a way round this list"],
  [/^(?:export\s+)?(?:let|var)\b/m, "module-level mutable state"],
];
