import { sum, within } from "../numerics/index.ts";

/**
 * Share of the raw air rate that arrives as payload, for planning.
 *
 * Judgement, no standard: before 802.11n a carrier-sense link was about 50 % efficient (read in a published 802.11n
 * handbook), with aggregation about 70 %; a published field textbook gives 22 of 54 Mbit/s (41 %).
 */
export const PLANNING_FACTOR_FRAC = { clearAir: 0.5, interference: 0.4 } as const;

/** Of the net throughput, what steady video may fill; the rest answers bursts and retries. Judgement, no standard. */
export const VIDEO_SHARE_FRAC = 0.5;

/** Packet headers and retries on top of the video itself. Judgement, built from RFC 3550 headers (5.6 %) and retries. */
export const VIDEO_OVERHEAD_FRAC = 0.15;

/**
 * Payload ceiling of an Ethernet port: 1460 octets of payload in every 1538 on the wire.
 *
 * @param portMbps  nominal, 10 to 100 000
 * @returns Mbit/s of TCP payload; 94.9 for a 100 Mbit/s port
 * @throws RangeFault outside the range above
 * @source IEEE 802.3 frame, preamble and gap with 20 + 20 octets of IP and TCP header; worked by hand
 */
export function wiredPortMbps(portMbps: number): number {
  return (within("portMbps", portMbps, 10, 100_000) * 1460) / 1538;
}

/**
 * Throughput to plan with.
 *
 * @param phyMbps             raw rate on the air, 0 to 100 000
 * @param planningFactorFrac  0 to 1, see {@link PLANNING_FACTOR_FRAC}
 * @param portMbps            slowest Ethernet port on the way (radio, switch, injector), 10 to 100 000; absent: no limit
 * @returns Mbit/s, both directions together (one shares the air with the other)
 * @throws RangeFault outside the ranges above
 * @source planning judgement, no standard
 */
export function netThroughputMbps(link: {
  readonly phyMbps: number;
  readonly planningFactorFrac: number;
  readonly portMbps?: number;
}): number {
  const airMbps =
    within("phyMbps", link.phyMbps, 0, 100_000) * within("planningFactorFrac", link.planningFactorFrac, 0, 1);
  return link.portMbps === undefined ? airMbps : Math.min(airMbps, wiredPortMbps(link.portMbps));
}

export type CapacityCheck = {
  /** Streams with their overhead. */
  readonly neededMbps: number;
  /** What of the link may be filled. */
  readonly allowedMbps: number;
  /** Needed over the whole net throughput; above 1 the picture breaks up at once. */
  readonly usedFrac: number;
  readonly isEnough: boolean;
};

/**
 * Whether a link carries the video asked of it, with room for bursts.
 *
 * @param streamsMbps    every stream that crosses the link, each 0 to 10 000
 * @param netMbps        throughput to plan with, 0.001 to 100 000
 * @param overheadFrac   0 to 1; {@link VIDEO_OVERHEAD_FRAC} when absent
 * @param shareFrac      0.01 to 1; {@link VIDEO_SHARE_FRAC} when absent
 * @throws RangeFault outside the ranges above
 * @source planning judgement, no standard: sum of streams x 1.15 <= 50 % of the net throughput
 */
export function capacityCheck(link: {
  readonly streamsMbps: readonly number[];
  readonly netMbps: number;
  readonly overheadFrac?: number;
  readonly shareFrac?: number;
}): CapacityCheck {
  const overheadFrac = within("overheadFrac", link.overheadFrac ?? VIDEO_OVERHEAD_FRAC, 0, 1);
  const netMbps = within("netMbps", link.netMbps, 0.001, 100_000);
  const streams = link.streamsMbps.map((mbps) => within("streamsMbps", mbps, 0, 10_000));
  const neededMbps = sum(streams) * (1 + overheadFrac);
  const allowedMbps = netMbps * within("shareFrac", link.shareFrac ?? VIDEO_SHARE_FRAC, 0.01, 1);
  return { neededMbps, allowedMbps, usedFrac: neededMbps / netMbps, isEnough: neededMbps <= allowedMbps };
}

/**
 * Air time that several posts take of the one radio they share at the far end. A slow post costs the fast ones: each
 * megabit of it keeps the channel busy for longer.
 *
 * @param posts  for each: its streams with overhead, 0 to 100 000, and its own net throughput if it were alone,
 *               0.001 to 100 000
 * @returns fraction of the time; above {@link VIDEO_SHARE_FRAC} there is no room for bursts, above 1 it cannot work
 * @throws RangeFault outside the ranges above
 * @source time sharing, worked by hand; collisions and polling are in the planning factor
 */
export function sharedAirtimeFrac(
  posts: readonly { readonly neededMbps: number; readonly netMbps: number }[],
): number {
  return sum(
    posts.map(
      (post) =>
        within("neededMbps", post.neededMbps, 0, 100_000) / within("netMbps", post.netMbps, 0.001, 100_000),
    ),
  );
}

/**
 * Time that a radio must wait for an acknowledgement because of the distance alone, and the coverage class that grants
 * it. A bridge longer than 1 to 2 km must have its distance set, else it repeats what had arrived.
 *
 * @param distanceM  1 to 100 000
 * @returns round trip in microseconds and the 802.11 coverage class (3 us each), undefined beyond class 31 (13.9 km)
 * @throws RangeFault outside the range above
 * @source IEEE 802.11 coverage class (from memory); speed of light
 */
export function acknowledgementWait(distanceM: number): {
  readonly roundTripUs: number;
  readonly coverageClass: number | undefined;
} {
  const oneWayUs = within("distanceM", distanceM, 1, 100_000) / 299.792458;
  const coverageClass = Math.ceil(oneWayUs / 1.5);
  return { roundTripUs: 2 * oneWayUs, coverageClass: coverageClass <= 31 ? coverageClass : undefined };
}
