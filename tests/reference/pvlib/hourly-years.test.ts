// Two TMY3 years (U.S. Department of Energy, public: Chicago O'Hare 725300 and Golden NREL 724666), every hour carried to
// a plane by our own functions and by pvlib (version in the file; made by make_model_vectors.py). The light is the
// station's; nothing of ours stands in the file.
import { readFileSync } from "node:fs";
import { inflateSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import {
  hayDaviesPoa,
  hdkrPoa,
  incidenceDeg,
  isotropicPoa,
  perezPoa,
  type SkyLight,
  sunPosition,
} from "../../../src/core/sun/index.ts";
import { near, nearRatio } from "../../helpers/near.ts";

const MODELS = { isotropic: isotropicPoa, hayDavies: hayDaviesPoa, hdkr: hdkrPoa, perez: perezPoa } as const;
type Model = keyof typeof MODELS;

interface Year {
  readonly file: string;
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly elevationM: number;
  readonly utcOffsetH: number;
  readonly ghiDailyKWhPerM2ByMonth: readonly number[];
  readonly planes: readonly ({ readonly tiltDeg: number } & Readonly<
    Record<`${Model}DailyKWhPerM2ByMonth`, readonly number[]>
  >)[];
  readonly light: string;
}

const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const MONTH_OF_HOUR = DAYS.flatMap((days, month) => new Array<number>(days * 24).fill(month));

/** Mean daily sums in Wh/m2 as the summary (.stat) that goes with each file prints them. */
const PRINTED: Readonly<
  Record<string, { readonly global: readonly number[]; readonly diffuse: readonly number[] }>
> = {
  "USA_IL_Chicago-OHare.Intl.AP.725300_TMY3.epw": {
    global: [1764, 2493, 3440, 4394, 5976, 6294, 6177, 5161, 4193, 2941, 1819, 1504],
    diffuse: [956, 1330, 1740, 2057, 2539, 2690, 2800, 2422, 1861, 1394, 1089, 799],
  },
  "USA_CO_Golden-NREL.724666_TMY3.epw": {
    global: [2317, 3049, 4701, 5685, 6114, 6262, 6175, 5892, 4929, 3482, 2881, 1701],
    diffuse: [803, 1023, 1423, 1962, 2322, 2558, 2145, 2099, 1764, 1209, 725, 936],
  },
};

const mean = (values: readonly number[]) => values.reduce((total, value) => total + value, 0) / values.length;

const found = JSON.parse(readFileSync(new URL("vectors/hourly-years.json", import.meta.url), "utf8"));

it("pvlib and stations", () => {
  expect(found.library).toBe("pvlib 0.16.1");
  expect(found.years).toHaveLength(2);
});

describe.each(found.years as readonly Year[])("$file", (year) => {
  const bytes = inflateSync(Buffer.from(year.light, "base64"));
  const numbers = new Uint16Array(bytes.buffer, bytes.byteOffset, 3 * 8760);
  const seriesOf = (i: number) => numbers.subarray(i * 8760, (i + 1) * 8760);
  const [ghi, dni, dhi] = [seriesOf(0), seriesOf(1), seriesOf(2)] as const;
  const firstUtcMs = Date.UTC(1990, 0, 1) + 1_800_000 - year.utcOffsetH * 3_600_000;
  const sun = Array.from({ length: 8760 }, (_, hour) =>
    sunPosition({ ...year, utcMs: firstUtcMs + hour * 3_600_000 }),
  );
  const monthly = (hourly: (hour: number) => number): readonly number[] => {
    const sums = new Array<number>(12).fill(0);
    for (let hour = 0; hour < 8760; hour += 1) sums[MONTH_OF_HOUR[hour]!]! += hourly(hour) / 1000;
    return sums.map((sum, month) => sum / DAYS[month]!);
  };

  it("the light is unpacked whole, and its sums are those printed with the file", () => {
    const { global, diffuse } = PRINTED[year.file]!;
    monthly((hour) => ghi[hour]!).forEach((sum, month) => {
      near(sum, year.ghiDailyKWhPerM2ByMonth[month]!, { within: 0.0001 });
      near(sum, global[month]! / 1000, { within: 0.00051 });
    });
    monthly((hour) => dhi[hour]!).forEach((sum, month) => {
      near(sum, diffuse[month]! / 1000, { within: 0.00051 });
    });
  });

  // with the sun below the horizon at mid-hour pvlib's Perez sky is black; ours is even, as in its other models
  const isTwilight = (model: Model, hour: number): boolean => model === "perez" && sun[hour]!.zenithDeg > 90;

  const cases = year.planes.flatMap((plane) =>
    (Object.keys(MODELS) as Model[]).map((model) => [model, plane.tiltDeg, plane] as const),
  );
  it.each(cases)("%s at tilt %f: each month within 0.1 % of pvlib", (model, tiltDeg, plane) => {
    const transposed = MODELS[model] as (light: SkyLight) => {
      readonly poaWPerM2: number;
      readonly skyWPerM2: number;
    };
    let twilightKWhPerM2 = 0;
    const sums = monthly((hour) => {
      const { zenithDeg, azimuthDeg, extraterrestrialNormalWPerM2 } = sun[hour]!;
      if (ghi[hour] === 0 && dhi[hour] === 0 && dni[hour] === 0) return 0;
      const got = transposed({
        zenithDeg,
        extraterrestrialNormalWPerM2,
        tiltDeg,
        albedo: 0.2,
        ghiWPerM2: ghi[hour]!,
        beamNormalWPerM2: dni[hour]!,
        diffuseWPerM2: dhi[hour]!,
        incidenceDeg: incidenceDeg({ zenithDeg, sunAzimuthDeg: azimuthDeg, tiltDeg, azimuthDeg: 180 }),
      });
      if (!isTwilight(model, hour)) return got.poaWPerM2;
      twilightKWhPerM2 += got.skyWPerM2 / 1000;
      return got.poaWPerM2 - got.skyWPerM2;
    });
    expect(twilightKWhPerM2).toBeLessThan(0.0015 * 365 * mean(sums));
    sums.forEach((sum, month) => {
      nearRatio(sum, plane[`${model}DailyKWhPerM2ByMonth`][month]!, { withinFrac: 0.001 });
    });
  });
});
