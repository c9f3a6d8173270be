/**
 * Asks the open POWER service of NASA for the monthly climatology of one spot. Only ever called after the builder has
 * agreed to it: the coordinates leave this machine.
 */

/** The service's own address; another may be set for tests or a mirror. */
const publicAddress = "https://power.larc.nasa.gov";
const path = "/api/temporal/climatology/point";
const timeoutMs = 8000;
const tries = 2;
/** A climatology is some kilobytes; whatever is a thousand times larger is something else. */
const largestBytes = 2_000_000;

export type Fetched =
  | { readonly kind: "text"; readonly text: string }
  /** One sentence on why there is nothing. */
  | { readonly kind: "nothing"; readonly says: string };

const elsewhere = "Use a file or twelve figures instead, or try again later.";

function addressFor(spot: Spot, base: string): URL {
  const url = new URL(path, base);
  url.search = new URLSearchParams({
    parameters: "ALLSKY_SFC_SW_DWN,T2M,T2M_MIN,WS10M",
    community: "RE",
    // The service's cells are half a degree wide: no more is told of the place than is needed.
    latitude: spot.latitudeDeg.toFixed(2),
    longitude: spot.longitudeDeg.toFixed(2),
    format: "JSON",
  }).toString();
  return url;
}

interface Spot {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
}

export async function fetchPower(
  spot: Spot,
  about: { readonly base?: string; readonly timeoutMs?: number } = {},
): Promise<Fetched> {
  const url = addressFor(spot, about.base ?? publicAddress);
  let says = "";
  for (let attempt = 1; attempt <= tries; attempt++) {
    try {
      const answer = await fetch(url, { signal: AbortSignal.timeout(about.timeoutMs ?? timeoutMs) });
      if (answer.ok) {
        const text = await answer.text();
        if (text.length <= largestBytes) return { kind: "text", text };
        return { kind: "nothing", says: `The service sent something far too long. ${elsewhere}` };
      }
      says = `The service answered with ${answer.status}. ${elsewhere}`;
      // A refusal will be the same the next time; a fault of the service may not.
      if (answer.status < 500) break;
    } catch (error) {
      const isLate = error instanceof DOMException && error.name === "TimeoutError";
      says = isLate
        ? `The service did not answer in time. ${elsewhere}`
        : `The service cannot be reached from here. ${elsewhere}`;
    }
  }
  return { kind: "nothing", says };
}
