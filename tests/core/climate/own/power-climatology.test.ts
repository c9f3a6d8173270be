// The JSON of NASA POWER, in both layouts the service has had (from memory); the numbers are invented.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type PowerClimatology, readPowerClimatology } from "../../../../src/core/climate/index.ts";
import { near } from "../../../helpers/near.ts";

const names = ["JAN", "FEB", "MAR", "APR", "MAY", "JUN", "JUL", "AUG", "SEP", "OCT", "NOV", "DEC"];
const sun = [1.81, 2.77, 3.92, 4.66, 5.44, 6.28, 6.56, 5.67, 4.51, 2.96, 2.0, 1.56];
const temp = [6, 7, 10, 12, 16, 20, 23, 23, 20, 15, 10, 7];
const named = (values: readonly number[], year: number) => ({
  ...Object.fromEntries(values.map((value, month) => [names[month]!, value])),
  ANN: year,
});

function present(change: (answer: Record<string, unknown>) => void = () => {}): string {
  const answer = {
    type: "Feature",
    geometry: { type: "Point", coordinates: [1.821, 42.075, 912.4] },
    properties: {
      parameter: {
        ALLSKY_SFC_SW_DWN: named(sun, 4.01),
        T2M: named(temp, 14.1),
        T2M_MIN: named(
          temp.map((tempC) => tempC - 12),
          -6,
        ),
        WS10M: named(
          temp.map((tempC) => 6 - tempC / 10),
          4.2,
        ),
      },
    },
    header: {
      title: "Climatology",
      api: { version: "v2" },
      fill_value: -999.0,
      start: "20010101",
      end: "20201231",
    },
    messages: [],
    parameters: {
      ALLSKY_SFC_SW_DWN: {
        units: "kW-hr/m^2/day",
        longname: "All Sky Surface Shortwave Downward Irradiance",
      },
      T2M: { units: "C", longname: "Temperature at 2 Meters" },
    },
  };
  change(answer);
  return JSON.stringify(answer);
}

function former(): string {
  const numbered = (values: readonly number[]) =>
    Object.fromEntries([...values, 4].map((value, month) => [String(month + 1), value]));
  return JSON.stringify({
    type: "FeatureCollection",
    features: [
      {
        type: "Feature",
        geometry: { type: "Point", coordinates: [1.821, 42.075, 912.4] },
        properties: { parameter: { ALLSKY_SFC_SW_DWN: numbered(sun), T2M: numbered(temp) } },
      },
    ],
    header: { fillValue: "-999", range: "22-year climatology" },
    parameterInformation: { ALLSKY_SFC_SW_DWN: { units: "kW-hr/m^2/day" } },
  });
}

function read(text: string): PowerClimatology {
  const found = readPowerClimatology(text);
  if (found.kind === "refused") throw new Error(`${found.why}: ${found.reason}`);
  return found;
}

/** The answer with something put in its place, by path. */
function withAt(path: string, value: unknown): string {
  return present((answer) => {
    const keys = path.split(" ");
    const last = keys.pop()!;
    let node = answer;
    for (const key of keys) node = node[key] as Record<string, unknown>;
    if (value === undefined) delete node[last];
    else node[last] = value;
  });
}

describe("readPowerClimatology", () => {
  it("reads the present layout", () => {
    const found = read(present());
    expect(found).toMatchObject({
      latitudeDeg: 42.075,
      longitudeDeg: 1.821,
      elevationM: 912.4,
      ghiDailyKWhPerM2ByMonth: sun,
      meanTempCByMonth: temp,
      missing: [],
      period: "20010101 to 20201231",
      checks: [],
    });
    expect(found.lowestTempCByMonth![0]).toBe(-6);
    near(found.windMPerSByMonth![6]!, 3.7, { within: 1e-12 });
  });

  it("reads the former layout, and says what it lacks", () => {
    expect(read(former())).toMatchObject({
      latitudeDeg: 42.075,
      ghiDailyKWhPerM2ByMonth: sun,
      meanTempCByMonth: temp,
      lowestTempCByMonth: null,
      windMPerSByMonth: null,
      missing: ["T2M_MIN", "WS10M"],
      period: "22-year climatology",
    });
  });

  it.each([
    ["MJ/m^2/day", 3.6],
    ["kWh/m^2/day", 1],
    ["Wh/m^2/day", 1000],
    ["W/m^2", 1000 / 24],
  ])("reads irradiation in %s", (units, perKWh) => {
    const text = present((answer) => {
      const { parameter } = answer.properties as { parameter: Record<string, unknown> };
      parameter.ALLSKY_SFC_SW_DWN = named(
        sun.map((value) => value * perKWh),
        0,
      );
      (answer.parameters as Record<string, unknown>).ALLSKY_SFC_SW_DWN = { units };
    });
    read(text).ghiDailyKWhPerM2ByMonth.forEach((ghi, month) => {
      near(ghi, sun[month]!, { within: 1e-9 });
    });
  });

  it("a hole in the temperatures leaves them out, a hole in polar night is night", () => {
    expect(read(withAt("properties parameter T2M JAN", -999))).toMatchObject({
      meanTempCByMonth: null,
      missing: ["T2M"],
    });
    const barrow = [-999, 0.26, 1.54, 3.45, 4.6, 4.55, 4.38, 2.78, 1.25, 0.5, 0.03, -999];
    const polar = present((answer) => {
      answer.geometry = { coordinates: [-156.8, 71.29, 8] };
      (answer.properties as { parameter: Record<string, unknown> }).parameter.ALLSKY_SFC_SW_DWN = named(
        barrow,
        -999,
      );
    });
    expect(read(polar).ghiDailyKWhPerM2ByMonth).toEqual([0, ...barrow.slice(1, 11), 0]);
  });

  it.each([
    ["not-json", "LOCATION,Here"],
    ["not-json", ""],
    ["not-json", "[1,2]"],
    ["not-a-climatology", '{"type":"Feature"}'],
    ["service-message", '{"messages":["Please provide a latitude between -90 and 90."],"header":{}}'],
    ["no-coordinates", withAt("geometry", undefined)],
    ["no-coordinates", withAt("geometry coordinates", [1.8, 420])],
    ["no-irradiation", withAt("properties parameter ALLSKY_SFC_SW_DWN", undefined)],
    ["missing-months", withAt("properties parameter ALLSKY_SFC_SW_DWN JUN", -999)],
    ["missing-months", withAt("properties parameter ALLSKY_SFC_SW_DWN", { "20240101": 1.2 })],
    ["unknown-unit", withAt("parameters ALLSKY_SFC_SW_DWN units", "BTU/ft^2/day")],
    [
      "impossible-irradiation",
      withAt(
        "properties parameter ALLSKY_SFC_SW_DWN",
        named(
          sun.map((v) => v * 3.6),
          1,
        ),
      ),
    ],
    ["impossible-irradiation", withAt("properties parameter ALLSKY_SFC_SW_DWN DEC", -3)],
  ])("refuses with one sentence: %s", (why, text) => {
    const found = readPowerClimatology(text);
    expect(found).toMatchObject({ kind: "refused", why });
    expect(found.kind === "refused" && found.reason).toMatch(/^[A-Z].*[.?{]$/);
  });

  it("says which months are missing", () => {
    const found = readPowerClimatology(withAt("properties parameter ALLSKY_SFC_SW_DWN JUN", -999));
    expect(found.kind === "refused" && found.reason).toBe("The irradiation is missing for JUN.");
  });

  it("never throws, whatever JSON it is given", () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.json(),
          fc.string(),
          fc.jsonValue().map((value) => withAt("properties parameter ALLSKY_SFC_SW_DWN", value ?? 0)),
          fc.jsonValue().map((value) => withAt("geometry", value ?? 0)),
        ),
        (text) => {
          const found = readPowerClimatology(text);
          expect(["climatology", "refused"]).toContain(found.kind);
        },
      ),
      { numRuns: 500 },
    );
  });
});
