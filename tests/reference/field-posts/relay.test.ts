/**
 * A small relay that ran in the field, in drawn weather of sunny places.
 *
 * @source a Wi-Fi relay measured in 2008, mesh-networks.org section 3-2: 0.24 A at 12 V (2.88 W); a panel of 20 W gave 60 Wh on
 *         cloudy and 120 Wh on sunny days, about 100 Wh a day; 65 Ah at 12 V held through cloudy spells (printed). 780 Wh are
 *         11.3 days of it (arithmetic). Its place is not named: two places whose panel gives about the measured energy.
 */
import { describe, expect, it } from "vitest";
import { bankTempC, simulateBalance } from "../../../src/core/energy/index.ts";
import { planeYield, weatherYears } from "../../../src/core/weather/index.ts";
import { tier } from "../../core/energy/balance/weather.ts";
import { placeAt } from "../../core/weather/places.ts";
import { near } from "../../helpers/near.ts";

const YEARS = 10;
const PANEL_W = 20;
const CONTROLLER_FRAC = 0.95;

describe.each([
  ["Phoenix", 33.45, -112],
  ["Nepal", 28, 84.5],
] as const)("a relay of 2.88 W near %s", (_, latitudeDeg, longitudeDeg) => {
  const weather = weatherYears({ ...placeAt(latitudeDeg, longitudeDeg), seed: 1, years: YEARS });
  const { powerWPerRatedW } = planeYield({
    weather,
    tiltDeg: latitudeDeg + 5,
    azimuthDeg: 180,
    horizon: [],
    albedoByMonth: Array.from({ length: 12 }, () => 0.2),
    soilingLossFrac: 0.03,
  });
  const tempC = bankTempC({ ambientTempC: weather.ambientTempC, timeConstantH: 10 });
  const relay = (outputRatio: Float64Array, ratedAh = 65) =>
    simulateBalance({
      years: YEARS,
      pv: { kind: "mppt", outputRatio, ratedW: PANEL_W },
      bank: { chemistry: "lead-vented", nominalV: 12, ratedAh, healthFrac: 1, tempC },
      controller: { efficiencyFrac: CONTROLLER_FRAC, maxOutputA: 5, ownW: 0 },
      loads: [tier({ watts: 2.88 })],
    });

  it("the panel gives the measured energy: about 100 Wh a day, 60 to 120 Wh on dull and bright days", () => {
    const days = Float64Array.from({ length: YEARS * 365 }, (_day, day) =>
      powerWPerRatedW
        .subarray(24 * day, 24 * day + 24)
        .reduce((all, ratio) => all + PANEL_W * CONTROLLER_FRAC * ratio, 0),
    ).sort();
    near(days.reduce((all, wh) => all + wh, 0) / days.length, 100, { within: 8 });
    near(days[Math.floor(0.1 * days.length)]!, 60, { within: 10 });
    near(days[Math.floor(0.9 * days.length)]!, 120, { within: 10 });
  });
  it("is never dark in ten years, and never below a quarter", () => {
    const found = relay(powerWPerRatedW);
    expect(found.tiers[0]!.darkHoursPerYear).toBe(0);
    expect(Math.min(...found.lowestSocFracByMonth)).toBeGreaterThan(0.25);
  });
  it("is often dark with a tenth of the battery", () => {
    expect(relay(powerWPerRatedW, 6.5).tiers[0]!.darkHoursPerYear).toBeGreaterThan(100);
  });
  it("holds out more than ten days of no sun at all, and less than the 11.3 that full and idle arithmetic gives", () => {
    const DARK_DAYS = 14;
    const cut = powerWPerRatedW.slice();
    // from a midnight in May: what the evening took and what the bank loses by itself come off
    for (let year = 0; year < YEARS; year += 1) {
      const from = year * 8760 + 130 * 24;
      cut.fill(0, from, from + 24 * DARK_DAYS);
    }
    const { darkHoursPerYear } = relay(cut).tiers[0]!;
    expect(DARK_DAYS - darkHoursPerYear / 24).toBeGreaterThan(10);
    expect(DARK_DAYS - darkHoursPerYear / 24).toBeLessThan(11.3);
  });
});
