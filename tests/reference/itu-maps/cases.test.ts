import { readFileSync } from "node:fs";
import { join } from "node:path";
import { brotliDecompressSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { type Climate, climateAt, openClimate } from "../../../src/core/climate/index.ts";
import { near } from "../../helpers/near.ts";
import { rainValidation, refractivity, signLost, temperature } from "./cases.ts";

const data = join(import.meta.dirname, "../../../src/core/climate/data/climate.bin");
const grids = openClimate(brotliDecompressSync(readFileSync(data)));

function climate(spot: {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly elevationM?: number;
}): Climate {
  const found = climateAt({ grids, ...spot });
  if (found.kind === "refused") throw new Error(found.why);
  return found;
}

describe("rain rate exceeded for 0.01 % of the year, ITU-R P.837-7", () => {
  // The map is kept at its own eighth of a degree, each value in steps of 0.65 mm/h: half a step, bilinearly.
  const within = 0.35;

  for (const { place, rainRate001MmPerH, ...spot } of rainValidation) {
    it(`${place}: ${rainRate001MmPerH} mm/h (validation example)`, () => {
      near(climate(spot).rainRate001MmPerH, rainRate001MmPerH, { within });
    });
  }

  for (const { place, rainRate001MmPerH, latitudeDeg, longitudeDeg } of temperature) {
    it(`${place}: ${rainRate001MmPerH} mm/h (itur)`, () => {
      near(climate({ latitudeDeg, longitudeDeg }).rainRate001MmPerH, rainRate001MmPerH, { within });
    });
  }

  for (const { looksLike, rainRate001MmPerH, latitudeDeg, longitudeDeg } of signLost) {
    it(`the point that looks like ${looksLike} lies at sea, and ${looksLike} has another rain`, () => {
      expect(climateAt({ grids, latitudeDeg, longitudeDeg })).toEqual({ kind: "refused", why: "at-sea" });
      const turned = { latitudeDeg: -latitudeDeg, longitudeDeg };
      expect(Math.abs(climate(turned).rainRate001MmPerH - rainRate001MmPerH)).toBeGreaterThan(5);
    });
  }
});

describe("refractivity gradient (P.453, 65 m, 1 %) and terrain roughness (P.530-17)", () => {
  for (const { place, gradientPerKm, roughnessM, ...spot } of refractivity) {
    it(`${place}: ${gradientPerKm} per km, ${roughnessM} m`, () => {
      // Both maps at their own steps (0.75 and 0.5 degrees), kept in whole units: half a unit and the table's rounding.
      near(climate(spot).refractivityGradientPerKm, gradientPerKm, { within: 0.55 });
      near(climate(spot).terrainRoughnessM, roughnessM, { within: 0.55 });
    });
  }
});

describe("monthly mean temperature, P.1510-1", () => {
  for (const { place, januaryC, julyC, latitudeDeg, longitudeDeg } of temperature) {
    it(`${place}: July less January is ${(julyC - januaryC).toFixed(2)} K, whatever the elevation`, () => {
      const { meanTempCByMonth } = climate({ latitudeDeg, longitudeDeg });
      near(meanTempCByMonth[6]! - meanTempCByMonth[0]!, julyC - januaryC, { within: 0.11 });
    });
  }

  // At sea level on small islands and plains, where the map's ground and the place's are nearly the same.
  it("is the map's own value, less the lapse to the place", () => {
    const flat = temperature.filter(
      ({ place }) => place === "Minneapolis" || place === "Auckland" || place === "Nairobi",
    );
    for (const { januaryC, latitudeDeg, longitudeDeg } of flat) {
      near(climate({ latitudeDeg, longitudeDeg }).meanTempCByMonth[0]!, januaryC, { within: 0.2 });
    }
  });
});
