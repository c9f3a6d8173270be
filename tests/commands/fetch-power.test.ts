import { createServer, type RequestListener, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { afterEach, describe, expect, it } from "vitest";
import { fetchPower } from "../../src/commands/fetch-power.ts";

const spot = { latitudeDeg: 52.30123, longitudeDeg: -3.51 };
let server: Server | null = null;
afterEach(() => {
  server?.closeAllConnections();
  server?.close();
  server = null;
});

/** A service on this machine's own loopback address. */
async function serving(listener: RequestListener): Promise<string> {
  server = createServer(listener);
  await new Promise<void>((resolve) => server!.listen(0, "127.0.0.1", resolve));
  return `http://127.0.0.1:${(server!.address() as AddressInfo).port}`;
}

describe("asking the service", () => {
  it("sends the spot to a hundredth of a degree and what is wanted, and nothing else", async () => {
    const asked: URL[] = [];
    const base = await serving((request, response) => {
      asked.push(new URL(request.url!, "http://x"));
      response.end('{"properties":{}}');
    });
    expect(await fetchPower(spot, { base })).toEqual({ kind: "text", text: '{"properties":{}}' });
    expect(asked).toHaveLength(1);
    expect(asked[0]!.pathname).toBe("/api/temporal/climatology/point");
    expect(Object.fromEntries(asked[0]!.searchParams)).toEqual({
      parameters: "ALLSKY_SFC_SW_DWN,T2M,T2M_MIN,WS10M",
      community: "RE",
      latitude: "52.30",
      longitude: "-3.51",
      format: "JSON",
    });
  });

  it("tries once more after a fault of the service", async () => {
    let count = 0;
    const base = await serving((_request, response) => {
      count += 1;
      response.statusCode = count === 1 ? 503 : 200;
      response.end("{}");
    });
    expect(await fetchPower(spot, { base })).toEqual({ kind: "text", text: "{}" });
    expect(count).toBe(2);
  });

  it("does not ask again after a refusal, and says so in one or two sentences", async () => {
    let count = 0;
    const base = await serving((_request, response) => {
      count += 1;
      response.statusCode = 422;
      response.end();
    });
    const fetched = await fetchPower(spot, { base });
    expect(fetched).toMatchObject({ kind: "nothing" });
    expect(fetched.kind === "nothing" && fetched.says).toMatch(/^The service answered with 422\. Use a file/);
    expect(count).toBe(1);
  });

  it("gives up on one that never answers", async () => {
    const base = await serving(() => {});
    const fetched = await fetchPower(spot, { base, timeoutMs: 80 });
    expect(fetched.kind === "nothing" && fetched.says).toMatch(/^The service did not answer in time\./);
  });

  it("says that it cannot be reached where there is no network", async () => {
    // Nothing listens on the discard port of the loopback address.
    const fetched = await fetchPower(spot, { base: "http://127.0.0.1:9" });
    expect(fetched.kind === "nothing" && fetched.says).toMatch(/^The service cannot be reached from here\./);
  });
});
