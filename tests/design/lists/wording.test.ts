/** How the lists are written: short, whole sentences with units, and nobody's name in them. */
import { describe, expect, it } from "vitest";
import { type Design, listsOf } from "../../../src/design/index.ts";
import { designs } from "./variants.ts";

interface Said {
  readonly at: string;
  readonly text: string;
}
function saidBy(name: string, design: Design): readonly Said[] {
  return listsOf(design).flatMap((list) => [
    { at: `${name}: ${list.id}`, text: list.intro },
    ...list.steps.flatMap((step) =>
      [step.does, step.why, step.expects, ...step.cautions.map(({ says }) => says)]
        .filter((text) => text !== "")
        .map((text) => ({ at: `${name}: ${list.id}.${step.id}`, text })),
    ),
  ]);
}
const all = designs.flatMap(([name, design]) => saidBy(name, design));
const breaches = (rule: RegExp, texts: readonly Said[] = all): readonly string[] =>
  texts.filter(({ text }) => rule.test(text)).map(({ at, text }) => `${at}: ${text}`);

/** Each with a text that breaks it, so that the rule itself is known to bite. */
const forbidden: readonly (readonly [what: string, rule: RegExp, breach: string])[] = [
  ["a figure that is none", /\b(NaN|undefined|null|Infinity)\b|\[object/, "Dig undefined m deep."],
  ["a plural in brackets", /\(s\)/, "Wait 1 minute(s)."],
  [
    "a plural after one",
    /(?<![\d.,])1 (minutes|seconds|days|weeks|months|panels|strings|blocks|bags|ports|people|posts)\b/,
    "Wait 1 minutes.",
  ],
  [
    "a unit twice",
    /\b(m|V|A|W|Wh|Ah|kg|N|dB|dBm|dBi|cm2|mm|ohm|days?|minutes?|litres|pixels)\s+\1\b|°C C\b|%\s*%|percent %/,
    "Dig 2 m m deep.",
  ],
  ["a milli before W, J or A", /\bm[WJA]\b|\bmAh\b/, "It draws 300 mA."],
  ["words that hurry or flatter", /\b(please|simply|just|easy|easily|obviously|of course)\b/i, "Just dig."],
  [
    "a promise of compliance",
    /\b(complies|compliant|meets (the|your) code|is legal|legally)\b/i,
    "It is legal.",
  ],
  ["a trade mark", /[™®©]/, "Use Thing™."],
  ["a space too many, or before a stop", / {2}| [.,;:](?!\d)/, "Dig  here ."],
  ["two stops", /\.\.|;\.|,\.|:\./, "Dig here.."],
  ["a dash for a sentence", / [-–—] /, "Dig - then stop."],
  ["an exponent", /\d[eE][+-]?\d/, "Hold 1e21 N."],
];

describe("the wording", () => {
  it.each(forbidden)("has no %s", (_what, rule, breach) => {
    expect(breaches(rule)).toEqual([]);
    expect(breaches(rule, [{ at: "planted", text: breach }])).toHaveLength(1);
  });
  it("is whole sentences: a capital first, a full stop last", () => {
    expect(breaches(/^(?![A-Z0-9])|[^.?]$/)).toEqual([]);
    expect(breaches(/^(?![A-Z0-9])|[^.?]$/, [{ at: "planted", text: "dig here" }])).toHaveLength(1);
  });
  it("is short: no sentence of more than 60 words, few above 35", () => {
    const sentences = [...new Set(all.flatMap(({ text }) => text.split(/(?<=[.?:;]) /)))];
    const words = sentences.map((sentence) => sentence.split(" ").length);
    expect(Math.max(...words)).toBeLessThanOrEqual(60);
    expect(words.filter((count) => count > 35).length / words.length).toBeLessThan(0.03);
  });
  it("gives every figure a unit or a noun", () => {
    const named =
      /RFC 1918|IEEE (802\.3|1013)|IEC 62676-4:2014|IEC [\d-]+|EN 303 645 provision 5\.1|NEC 250\.53|811 in the|H\.26[45]|WPA[23]|192\.168\.50\.\d+\/\d+|255\.[\d.]+|(?<=[ ,(])\.\d+\b|\d+:\d\d|(?<=\d )x \d+(?:\.\d+)?|(?<=\()[\d/-]+ in schedule \d+|class \d|Camera \d|Recorder \d|Lamp \d|Sensor \d/g;
    const bare = all.filter(({ text }) =>
      /(?<![\d.])\d+(\.\d+)?(?![\d.]*\d)(?!\s*(?:[A-Za-zΩ%°]|x ))/.test(
        text.replace(named, "").replace(/\d+(\.\d+)? (to|or) (?=\d)/g, ""),
      ),
    );
    expect(bare.map(({ at, text }) => `${at}: ${text}`)).toEqual([]);
  });
  it("names nobody's product: capitals inside a sentence are standards, units, terms and our own devices", () => {
    const allowed = new Set(
      "AGM Ah AWG C CM DC EIRP EN ETSI FTP GB HTTPS I IEC IEEE NEC NTP OSHA PD PoE PV RFC RSRP UPnP VLAN VPN WPA WPA2-AES WPA3 WPS Telnet United States Camera Radio Cellular Lamp Sensor Recorder Charge PoE Controller Battery Load Panels Feed Class T A V W Wh N K Hz MHz GHz Mbit/s H January February March April May June July August September October November December Bit".split(
        " ",
      ),
    );
    const strangers = new Set<string>();
    for (const { text } of all) {
      const inside = text.replace(/(^|[.?:;(] ?)[A-Z][\w'-]*/g, "$1");
      for (const [word] of inside.matchAll(/(?<![\w.])[A-Z][\w/-]*/g))
        if (!allowed.has(word)) strangers.add(word);
    }
    expect([...strangers]).toEqual([]);
  });
});
