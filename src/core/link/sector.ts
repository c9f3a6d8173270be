import { clamp, within } from "../numerics/index.ts";
import { misalignmentLossDb } from "./antenna.ts";
import { freeSpaceLossDb } from "./free-space.ts";
import { VIDEO_SHARE_FRAC } from "./throughput.ts";

/** Level at which a radio takes the channel for busy, 20 MHz. IEEE 802.11 clear channel assessment, from memory. */
const BUSY_DBM = -82;

export type SectorPost = {
  readonly name: string;
  /** Seen from the sector, clockwise from true north, 0 to 360. */
  readonly bearingDeg: number;
  /** 1 to 100 000. */
  readonly distanceM: number;
  /** Streams with overhead, 0 to 100 000. */
  readonly neededMbps: number;
  /** Throughput it would have alone, 0 to 100 000; 0: no rate leaves the margin. */
  readonly netMbps: number;
  /** Of the post's antenna, which looks at the sector: -20 to 70. */
  readonly gainDbi: number;
  /** Full half-power width, 0.05 to 180. */
  readonly beamwidthDeg: number;
  /** -60 to 60. */
  readonly txPowerDbm: number;
};

export type Sector = {
  /** Middle of the beam, 0 to 360. */
  readonly bearingDeg: number;
  /** Full half-power width in azimuth, 10 to 360. */
  readonly beamwidthDeg: number;
  readonly frequencyMHz: number;
  /** Air time that may be filled, 0.01 to 1; VIDEO_SHARE_FRAC when absent. */
  readonly shareFrac?: number;
};

export type SectorPostUse = {
  readonly name: string;
  /** Part of the sector's time that its pictures keep busy; 1 or more: even alone too slow. */
  readonly airtimeFrac: number;
  /** The same need over the rate of the fastest post: what it takes beyond this is what its slowness costs the others. */
  readonly slownessFrac: number;
  /** Angle to the middle of the beam, 0 to 180. */
  readonly offAxisDeg: number;
  /** Inside the half-power width. */
  readonly isInBeam: boolean;
  readonly fits: boolean;
  /** One sentence where it does not fit. */
  readonly reason: string | undefined;
};

export type SectorLoad = {
  readonly posts: readonly SectorPostUse[];
  /** Of all posts together, also those that do not fit; undefined where one has no rate at all. */
  readonly airtimeFrac: number | undefined;
  readonly allowedFrac: number;
  readonly isEnough: boolean;
  /** Pairs that do not hear each other and so send at once: the sector must poll, or grant leave to send. */
  readonly hiddenPairs: readonly (readonly [string, string])[];
  /** Middle of the arc that holds all posts, and its width: where to aim one sector, and how wide it must be. */
  readonly arc: { readonly bearingDeg: number; readonly widthDeg: number };
};

/**
 * Whether one sector antenna carries every post that shares it.
 *
 * Posts are let in by the air time they take, least first, until the allowed share is full: so a far slow one, which
 * costs all others, is the first left out.
 *
 * @param use.posts   one to 100
 * @param use.sector  see {@link Sector}
 * @throws RangeFault outside the ranges above
 * @source air time = need/rate, worked by hand; hearing each other: free space between the posts through the antennas'
 *         main lobes against -82 dBm (IEEE 802.11 clear channel assessment, from memory); the order is judgement
 */
export function sectorLoad(use: {
  readonly posts: readonly SectorPost[];
  readonly sector: Sector;
}): SectorLoad {
  const { posts, sector } = use;
  within("posts.length", posts.length, 1, 100);
  const allowedFrac = within("shareFrac", sector.shareFrac ?? VIDEO_SHARE_FRAC, 0.01, 1);
  const halfDeg = within("beamwidthDeg", sector.beamwidthDeg, 10, 360) / 2;
  const fastestMbps = Math.max(...posts.map((post) => within("netMbps", post.netMbps, 0, 100_000)));
  const asked = posts.map((post) => ({
    post,
    airtimeFrac: airtime(within("neededMbps", post.neededMbps, 0, 100_000), post.netMbps),
    offAxisDeg: turnBetweenDeg(post.bearingDeg, sector.bearingDeg),
  }));

  const admitted = new Set<SectorPost>();
  let filledFrac = 0;
  for (const { post, airtimeFrac, offAxisDeg } of asked.toSorted((a, b) => a.airtimeFrac - b.airtimeFrac)) {
    // a rounding error must not shut out the post that just fills the share
    if (offAxisDeg > halfDeg || filledFrac + airtimeFrac > allowedFrac + 1e-12) continue;
    filledFrac += airtimeFrac;
    admitted.add(post);
  }
  const uses = asked.map(({ post, airtimeFrac, offAxisDeg }): SectorPostUse => {
    const fits = admitted.has(post);
    return {
      name: post.name,
      airtimeFrac,
      slownessFrac: Math.max(0, airtimeFrac - airtime(post.neededMbps, fastestMbps)),
      offAxisDeg,
      isInBeam: offAxisDeg <= halfDeg,
      fits,
      reason: fits ? undefined : whyNot({ post, airtimeFrac, offAxisDeg, halfDeg, allowedFrac }),
    };
  });
  const totalFrac = uses.reduce((total, one) => total + one.airtimeFrac, 0);
  return {
    posts: uses,
    airtimeFrac: Number.isFinite(totalFrac) ? totalFrac : undefined,
    allowedFrac,
    isEnough: uses.every((one) => one.fits),
    hiddenPairs: hiddenPairs(posts, sector.frequencyMHz),
    arc: arcOf(posts.map((post) => within("bearingDeg", post.bearingDeg, 0, 360))),
  };
}

function airtime(neededMbps: number, netMbps: number): number {
  if (neededMbps === 0) return 0;
  return netMbps > 0 ? neededMbps / netMbps : Number.POSITIVE_INFINITY;
}

function whyNot(of: {
  readonly post: SectorPost;
  readonly airtimeFrac: number;
  readonly offAxisDeg: number;
  readonly halfDeg: number;
  readonly allowedFrac: number;
}): string {
  const { post, airtimeFrac, offAxisDeg, halfDeg, allowedFrac } = of;
  const percent = (frac: number) => `${Math.round(frac * 100)} %`;
  if (offAxisDeg > halfDeg) {
    return `${post.name} lies ${Math.round(offAxisDeg)}° off the middle of a beam that reaches ${Math.round(halfDeg)}° either way.`;
  }
  if (!Number.isFinite(airtimeFrac)) return `${post.name} has no rate that leaves the wanted margin.`;
  if (airtimeFrac > allowedFrac) {
    return `${post.name} alone would keep the air busy ${percent(airtimeFrac)} of the time; ${percent(allowedFrac)} may be filled.`;
  }
  return `With the others ${post.name}, which takes ${percent(airtimeFrac)} of the time, would fill more than ${percent(allowedFrac)}.`;
}

function hiddenPairs(
  posts: readonly SectorPost[],
  frequencyMHz: number,
): readonly (readonly [string, string])[] {
  const hidden: [string, string][] = [];
  posts.forEach((a, i) => {
    for (const b of posts.slice(i + 1)) {
      const heardDbm = Math.min(levelBetweenDbm(a, b, frequencyMHz), levelBetweenDbm(b, a, frequencyMHz));
      if (heardDbm < BUSY_DBM) hidden.push([a.name, b.name]);
    }
  });
  return hidden;
}

/** What one post hears of another while both look at the sector. */
function levelBetweenDbm(from: SectorPost, to: SectorPost, frequencyMHz: number): number {
  const angle = (turnBetweenDeg(from.bearingDeg, to.bearingDeg) * Math.PI) / 180;
  const a = within("distanceM", from.distanceM, 1, 100_000);
  const b = within("distanceM", to.distanceM, 1, 100_000);
  const apartM = Math.max(1, Math.sqrt(Math.max(0, a ** 2 + b ** 2 - 2 * a * b * Math.cos(angle))));
  // at each post, the angle between the sector and the other post
  const offDeg = (own: number, other: number) =>
    (Math.acos(clamp((own ** 2 + apartM ** 2 - other ** 2) / (2 * own * apartM), -1, 1)) * 180) / Math.PI;
  const sent =
    within("txPowerDbm", from.txPowerDbm, -60, 60) +
    within("gainDbi", from.gainDbi, -20, 70) -
    misalignmentLossDb({ offAxisDeg: offDeg(a, b), beamwidthDeg: from.beamwidthDeg });
  const heard =
    within("gainDbi", to.gainDbi, -20, 70) -
    misalignmentLossDb({ offAxisDeg: offDeg(b, a), beamwidthDeg: to.beamwidthDeg });
  return sent + heard - freeSpaceLossDb({ distanceM: apartM, frequencyMHz });
}

/** Smaller angle between two bearings, 0 to 180. */
export function turnBetweenDeg(aDeg: number, bDeg: number): number {
  const turn = Math.abs(within("bearingDeg", aDeg, 0, 360) - within("bearingDeg", bDeg, 0, 360)) % 360;
  return Math.min(turn, 360 - turn);
}

/** The shortest arc that holds all bearings: what is left of the circle beside the widest gap. */
function arcOf(bearings: readonly number[]): { readonly bearingDeg: number; readonly widthDeg: number } {
  const sorted = bearings.map((deg) => deg % 360).sort((a, b) => a - b);
  let gapDeg = -1;
  let startDeg = 0;
  sorted.forEach((deg, i) => {
    const next = sorted[i + 1] ?? sorted[0]! + 360;
    if (next - deg > gapDeg) {
      gapDeg = next - deg;
      startDeg = next % 360;
    }
  });
  const widthDeg = 360 - gapDeg;
  return { bearingDeg: (startDeg + widthDeg / 2) % 360, widthDeg };
}
