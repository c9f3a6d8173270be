/**
 * The cautions, each written once. They defer to local codes, to the makers' instructions and to licensed people, and
 * they stand before the step that can hurt (see list.ts).
 */

/**
 * @param keepClearM  mast length as raised plus 3 m (10 ft)
 * @source OSHA 29 CFR 1910.333(c)(3): 10 ft to 50 kV, more above; from memory
 */
export const overheadLines = (keepClearM: string): string =>
  `Overhead wires kill. Keep every part of the mast, the ladder and yourself at least ${keepClearM} from any wire while it goes up. If a wire could be nearer, stop and ask the electricity company.`;

export const digging =
  "Before you dig, have pipes and cables marked by the national one-call service (811 in the United States; other countries have their own). Private lines are not marked: ask the owner. Dig by hand near a mark.";

export const openHole =
  "Cover or fence the hole whenever you leave it. Do not climb into a hole deeper than your chest: its sides can fall in.";

export const concrete = "Wet cement burns skin and eyes: gloves, long sleeves, eye protection.";

/** @source OSHA 29 CFR 1926.1053(b)(5)(i): base out a quarter of the working length; from memory */
export const ladder =
  "Ladder: on firm ground, one metre out for every four metres up, tied at the top, held by a second person. Never on the top rungs, never with both hands full, never in wind or when thunder can be heard.";

export const fallingMast =
  "A falling mast kills. Raise it with enough people for its weight, with a rope held from the far side, and with nobody under it.";

/** @source 29 CFR 1926.441 and common practice; from memory */
export const batteryHandling =
  "A battery can drive thousands of amperes through a spanner. Take off rings and watches, use insulated tools, cover one terminal while you work on the other, and wear eye protection.";

export const acid =
  "Lead-acid batteries give off hydrogen while they charge: no flame or spark near them, and never in a sealed box. If acid gets on skin or in eyes, rinse with much water and get help.";

export const lithium =
  "Never charge lithium iron phosphate below 0 C, never open, crush or bridge a block. A block that is swollen, hot or wet goes outdoors, away from anything that burns, and the fire service is told.";

export const liveDc =
  "A panel is live whenever light falls on it, and a direct-current arc does not go out by itself. Cover the panel with a blanket and never pull a connector apart under load.";

export const polarity =
  "Measure the polarity with a meter before every connection. Reversed wires destroy a controller at once and can start a fire.";

export const lifting = (what: string, weight: string, people: number): string =>
  people > 1
    ? `${what} weighs about ${weight}: lift it with ${people} people or a hoist, with straight backs.`
    : `${what} weighs about ${weight}: lift it close to the body, with a straight back.`;

/** @source FCC OET Bulletin 65 form, worst-case reflection, general public 10 W/m2; from memory */
export const radioExposure = (distance: string): string =>
  `Do not stand in front of the transmitting antenna within ${distance} while it is on, and switch it off before you work there.`;

export const thunder =
  "Stop at the first thunder and stay away from the mast until half an hour after the last.";

export const localCodes =
  "Electrical, building and radio rules differ from place to place. These lists do not replace them: where your rules ask for a licensed electrician or an engineer, let them do it or check it. The makers' instructions come before these lists.";
