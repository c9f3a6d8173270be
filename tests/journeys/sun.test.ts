/** Sun figures of the builder's own, in the real program: from the service after a yes, from a file, or typed. */

import { readFileSync, writeFileSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { join } from "node:path";
import { describe, expect, onTestFinished, test } from "vitest";
import { freshHome, piped } from "./start.ts";

// Invented figures in the open layout of the service, for a spot in Wales.
const ghi = [0.6, 1.2, 2.3, 3.7, 4.7, 5.0, 4.8, 4.0, 2.8, 1.5, 0.8, 0.5];
const months = ["JAN", "FEB", "MAR", "APR", "MAY", "JUN", "JUL", "AUG", "SEP", "OCT", "NOV", "DEC"];
const byMonth = (values: readonly number[]) => ({
  ...Object.fromEntries(months.map((month, i) => [month, values[i]])),
  ANN: 2.66,
});
const climatology = JSON.stringify({
  type: "Feature",
  geometry: { type: "Point", coordinates: [-3.51, 52.3, 300] },
  properties: {
    parameter: { ALLSKY_SFC_SW_DWN: byMonth(ghi), T2M: byMonth(ghi.map((value) => 3 + 2.5 * value)) },
  },
  header: { title: "invented", fill_value: -999 },
  parameters: { ALLSKY_SFC_SW_DWN: { units: "kW-hr/m^2/day" }, T2M: { units: "C" } },
});

/** Asks the first two questions, then the one about own figures. */
const talk = (home: string, lines: readonly string[], env: Readonly<Record<string, string>> = {}) =>
  piped({
    program: "real",
    args: ["new", "gate", "--plain", "--currency", "GBP", "--units", "metric"],
    home,
    input: `${["52.30, -3.51", "I do", ...lines].join("\n")}\n`,
    env,
  });
const savedSun = (home: string) =>
  JSON.parse(readFileSync(join(home, "briefs", "gate.json"), "utf8")).answers["place.sun"];

async function service(): Promise<{ readonly base: string; readonly asked: () => number }> {
  let count = 0;
  const server = createServer((_request, response) => {
    count += 1;
    response.end(climatology);
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  onTestFinished(() => {
    server.closeAllConnections();
    server.close();
  });
  return { base: `http://127.0.0.1:${(server.address() as AddressInfo).port}`, asked: () => count };
}

describe("sun figures of one's own", () => {
  test("are fetched only after a yes", async () => {
    const { base, asked } = await service();
    const refused = await talk(freshHome(), ["fetch", "no"], { MASTWRIGHT_POWER_URL: base });
    expect(refused.out).toContain("This sends 52.3, -3.51 to NASA's open POWER service");
    expect(asked()).toBe(0);

    const home = freshHome();
    const agreed = await talk(home, ["fetch", "yes"], { MASTWRIGHT_POWER_URL: base });
    expect(asked()).toBe(1);
    expect(agreed.out).toContain("NASA POWER gives 2.66 kWh/m2 a day over the year.");
    expect(savedSun(home).value.figures.ghiDailyKWhPerM2ByMonth).toEqual(ghi);
  });

  test("offline, one sentence says what to do instead, and the question stays", async () => {
    const { out } = await talk(freshHome(), ["fetch", "yes"], { MASTWRIGHT_POWER_URL: "http://127.0.0.1:9" });
    expect(out).toContain("The service cannot be reached from here. Use a file or twelve figures instead");
    expect(out.trimEnd()).toMatch(/Own sun figures:\s*(?:Saved|$)/m);
  });

  test("come from a file, and stand beside the map", async () => {
    const home = freshHome();
    const file = join(home, "valley.json");
    writeFileSync(file, climatology);
    const { out } = await talk(home, [file]);
    expect(out).toContain("valley.json gives 2.66 kWh/m2 a day");
    expect(savedSun(home).value.figures.source).toBe("valley.json");
  });

  test("are typed; too few, a missing file or a folder are refused in one sentence", async () => {
    const home = freshHome();
    const { out } = await talk(home, ["1 2 3", "nowhere.epw", home, ghi.join(" ")]);
    expect(out).toContain("Twelve figures are needed, January first; 3 were typed.");
    expect(out).toContain("There is no file nowhere.epw here.");
    expect(out).toContain("is a folder.");
    expect(savedSun(home).value.figures.ghiDailyKWhPerM2ByMonth).toEqual(ghi);
  });
});
