import { refused } from "./refusal.ts";
import type { YearPlace, YearRefused } from "./typical-year.ts";

/** Time zones follow the sun within this: western China, at 5 h by its longitude, keeps 8. */
const ZONE_TOLERANCE_H = 4;

/** The place of a header's printed fields; a hole or a number that cannot be is damage. */
export function placeOf(printed: {
  readonly station: string;
  readonly latitude: string | undefined;
  readonly longitude: string | undefined;
  readonly utcOffset: string | undefined;
  readonly elevation: string | undefined;
}): YearPlace | YearRefused {
  const limits = [
    ["latitude", printed.latitude, -90, 90],
    ["longitude", printed.longitude, -180, 180],
    ["time zone", printed.utcOffset, -12, 14],
    ["elevation", printed.elevation, -500, 9000],
  ] as const;
  for (const [name, field, min, max] of limits) {
    const value = field === undefined || field === "" ? Number.NaN : Number(field);
    if (!(value >= min && value <= max)) {
      return refused(
        "damaged-header",
        `The header's ${name} is "${(field ?? "").slice(0, 20)}"; it must lie between ${min} and ${max}.`,
      );
    }
  }
  const longitudeDeg = Number(printed.longitude);
  const utcOffsetH = Number(printed.utcOffset);
  const apartH = ((((utcOffsetH - longitudeDeg / 15 + 12) % 24) + 24) % 24) - 12;
  if (Math.abs(apartH) > ZONE_TOLERANCE_H) {
    return refused(
      "damaged-header",
      `The header's longitude ${longitudeDeg} and time zone ${utcOffsetH} do not belong together: is a sign lost?`,
    );
  }
  return {
    station: printed.station,
    latitudeDeg: Number(printed.latitude),
    longitudeDeg,
    elevationM: Number(printed.elevation),
    utcOffsetH,
  };
}
