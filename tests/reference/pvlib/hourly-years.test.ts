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

  it("the light is unpacked whole", () => {
    monthly((hour) => ghi[hour]!).forEach((sum, month) => {
      near(sum, year.ghiDailyKWhPerM2ByMonth[month]!, { within: 0.0001 });
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
