import { describe, expect, test } from "vitest";
import { packHours } from "../../src/core/weather/index.ts";
import { briefJsonSchema, foldersFrom, migrateBrief, readBriefText } from "../../src/store/index.ts";

describe("migrations", () => {
  // No version but the first exists yet, so the machinery is tried with planted steps.
  const steps = [
    (content: Readonly<Record<string, unknown>>) => ({
      ...content,
      schemaVersion: 2,
      name: `${content.title}`,
    }),
    ({ title: _gone, ...content }: Readonly<Record<string, unknown>>) => ({ ...content, schemaVersion: 1 }),
  ];

  test("an old file goes through every step after its version, in order", () => {
    const read = migrateBrief(
      { schemaVersion: 1, title: "Gate", answers: {} },
      { migrations: steps, newest: 3 },
    );
    expect(read).toMatchObject({ kind: "brief", file: { name: "Gate" } });
  });

  test("a file newer than the program is refused", () => {
    expect(migrateBrief({ schemaVersion: 2, name: "x", answers: {} })).toEqual({ kind: "newer", version: 2 });
  });

  test.each([[null], [5], ["text"], [[]], [{}], [{ schemaVersion: "1" }], [{ schemaVersion: 0.5 }]])(
    "%j is no brief, and the reason is said",
    (content) => {
      const read = migrateBrief(content);
      expect(read.kind).toBe("damaged");
      expect(read.kind === "damaged" && read.says.length).toBeGreaterThan(10);
    },
  );
});

describe("a brief written by hand", () => {
  test("needs a version, a name and answers; a bare text is an answer", () => {
    const read = readBriefText('\ufeff{"schemaVersion":1,"name":"Gate","answers":{"place.site":"Tromsø"}}');
    expect(read).toEqual({
      kind: "brief",
      file: {
        schemaVersion: 1,
        name: "Gate",
        currency: "USD",
        units: "metric",
        topicVersions: {},
        answers: { "place.site": "Tromsø" },
      },
    });
  });

  test("names the field that is wrong", () => {
    const read = readBriefText('{"schemaVersion":1,"name":"Gate","currency":"euro","answers":{}}');
    expect(read).toEqual({ kind: "damaged", says: "currency: three capital letters, such as EUR" });
    const units = readBriefText('{"schemaVersion":1,"name":"Gate","units":"imperial","answers":{}}');
    expect(units).toEqual({ kind: "damaged", says: "units: metric or us" });
  });

  test("may say that bare numbers are feet", () => {
    const read = readBriefText('{"schemaVersion":1,"name":"Gate","units":"us","answers":{}}');
    expect(read).toMatchObject({ kind: "brief", file: { units: "us" } });
  });
});

describe("sun figures of the builder's own", () => {
  const ghiDailyKWhPerM2ByMonth = Array(12).fill(2);
  const days = {
    dailyQuantilesByMonth: Array(12).fill([...Array(8).fill(0.5), ...Array(8).fill(1.5)]),
    lag1ByMonth: Array(12).fill(0.3),
  };
  const read = (figures: object) =>
    readBriefText(
      JSON.stringify({
        schemaVersion: 1,
        name: "Gate",
        answers: {
          "place.sun": { typed: "x.epw", value: { kind: "sun", figures }, origin: "datasheet" },
        },
      }),
    );
  const bare = { ghiDailyKWhPerM2ByMonth, meanTempCByMonth: null, source: "x.epw" };
  const kept = (figures: object) => ({
    kind: "brief",
    file: { answers: { "place.sun": { value: { figures } } } },
  });

  test("saved before their days were kept can still be read", () => {
    expect(read(bare)).toMatchObject(
      kept({ ...bare, dailyQuantilesByMonth: null, lag1ByMonth: null, hours: null }),
    );
  });

  test("keep their days", () => {
    expect(read({ ...bare, ...days })).toMatchObject(kept({ ...bare, ...days }));
  });

  test("keep the hours of a file, and a cut off text of them is damage", () => {
    const flat = new Float64Array(8760).fill(10);
    const packed = packHours({ ghiWPerM2: flat, dhiWPerM2: null, tempC: flat });
    const hours = { latitudeDeg: 52, longitudeDeg: -3, utcOffsetH: 0, packed };
    expect(read({ ...bare, ...days, hours })).toMatchObject(kept({ ...bare, ...days, hours }));
    const cut = { ...hours, packed: packed.slice(0, -4) };
    expect(read({ ...bare, ...days, hours: cut }).kind).toBe("damaged");
  });

  test("with days that cannot be are damage", () => {
    const fifteen = Array(12).fill(Array(15).fill(1));
    for (const wrong of [{ dailyQuantilesByMonth: fifteen }, { lag1ByMonth: Array(12).fill(1.5) }])
      expect(read({ ...bare, ...days, ...wrong }).kind).toBe("damaged");
  });
});

test("the schema names the known questions, and repeated ones by pattern", () => {
  const schema = briefJsonSchema([
    { id: "place.site", description: "Where is the post?" },
    { id: "loads.device.N.kind", description: "What is it?" },
  ]) as {
    properties: { answers: { properties: object; patternProperties: object; additionalProperties: boolean } };
  };
  const { answers } = schema.properties;
  expect(Object.keys(answers.properties)).toEqual(["place.site"]);
  const [pattern] = Object.keys(answers.patternProperties);
  expect("loads.device.12.kind").toMatch(new RegExp(pattern!));
  expect("loads.device.0.kind").not.toMatch(new RegExp(pattern!));
  expect(answers.additionalProperties).toBe(false);
});

test("the schema says what units there are, what they mean, and which are meant where nothing is said", () => {
  const { properties, required } = briefJsonSchema([]) as {
    properties: { units: { enum: string[]; default: string; description: string } };
    required: string[];
  };
  expect(properties.units.enum).toEqual(["metric", "us"]);
  expect(properties.units.default).toBe("metric");
  expect(properties.units.description).toContain("ft");
  expect(required).not.toContain("units");
});

describe("where things are kept", () => {
  const home = "/home/ada";
  // XDG Base Directory Specification 0.8 for Linux; Apple's File System Programming Guide and Microsoft's known folders
  // for the others (both from memory).
  test("Linux follows the XDG base directories", () => {
    expect(foldersFrom({}, { platform: "linux", home })).toEqual({
      data: "/home/ada/.local/share/mastwright",
      settings: "/home/ada/.config/mastwright",
    });
    expect(foldersFrom({ XDG_DATA_HOME: "/d", XDG_CONFIG_HOME: "/c" }, { platform: "linux", home })).toEqual({
      data: "/d/mastwright",
      settings: "/c/mastwright",
    });
  });
  test("macOS and Windows have their own", () => {
    expect(foldersFrom({}, { platform: "darwin", home }).data).toBe(
      "/home/ada/Library/Application Support/mastwright",
    );
    expect(foldersFrom({ LOCALAPPDATA: "/l", APPDATA: "/r" }, { platform: "win32", home })).toEqual({
      data: "/l/mastwright/Data",
      settings: "/r/mastwright/Config",
    });
  });
  test("MASTWRIGHT_HOME beats them all", () => {
    for (const platform of ["linux", "darwin", "win32"]) {
      expect(foldersFrom({ MASTWRIGHT_HOME: "/own", XDG_DATA_HOME: "/d" }, { platform, home })).toEqual({
        data: "/own",
        settings: "/own",
      });
    }
  });
});
