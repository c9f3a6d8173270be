/**
 * The cautions, each written once: in full for the first step that needs it, in few words for the later ones. They defer
 * to local codes, to the makers' instructions and to licensed people, and they stand before the step that can hurt (see
 * list.ts). Each begins with the name of what hurts, as safety signs do.
 */
import type { Lift } from "../design.ts";
import { amps, type Figures, volts } from "./figures.ts";

export type Hazard =
  | "overhead lines"
  | "buried lines"
  | "open hole"
  | "wet cement"
  | "falling mast"
  | "weak pole"
  | "ladder"
  | "roof edge"
  | "hidden lines"
  | "lifting"
  | "wind"
  | "heat"
  | "short circuit"
  | "lead-acid"
  | "lithium"
  | "fire"
  | "live panel"
  | "polarity"
  | "passive PoE"
  | "mains"
  | "lightning"
  | "radio waves";

export interface Caution {
  readonly hazard: Hazard;
  readonly says: string;
}

/** A caution with the few words that recall it. */
export interface Warning extends Caution {
  readonly again: string;
}

/**
 * @param keepClearM  length as raised plus 3 m (10 ft)
 * @source OSHA 29 CFR 1910.333(c)(3): 10 ft to 50 kV, more above; from memory
 */
export const overheadLines = ({ clear, said }: Figures, keepClearM: number): Warning => ({
  hazard: "overhead lines",
  says: `Overhead lines kill. The spot must lie at least ${clear(keepClearM)} from any wire, and nothing you carry or climb ever comes within ${said.either("3 m (10 ft)", "10 ft")} of one. Lines on tall towers need more. If a wire could be nearer, stop and ask its owner.`,
  again: `Overhead lines: look up again. Nothing comes within ${said.either("3 m (10 ft)", "10 ft")} of a wire.`,
});

/** @source one-call practice: 18 to 24 in either side of a mark are dug by hand */
export const buriedLines = ({ said }: Figures): Warning => ({
  hazard: "buried lines",
  says: `Buried lines: before you dig or drive anything, have pipes and cables marked by the national one-call service (811 in the United States; other countries have their own). Private lines are not marked: ask the owner. Dig by hand within ${said.either("0.6 m (24 in)", "24 in")} of a mark.`,
  again: `Buried lines: only where they have been marked, and by hand within ${said.either("0.6 m (24 in)", "24 in")} of a mark.`,
});

/** @source depth: OSHA 29 CFR 1926.652 asks for shoring from 5 ft, many countries from 1.2 m; from memory */
export const openHole = ({ said }: Figures): Warning => ({
  hazard: "open hole",
  says: `Open hole: cover or fence it whenever you leave it. Never get into one deeper than ${said.either("1.2 m (4 ft)", "4 ft")}: its sides can bury you.`,
  again: "Open hole: covered or fenced whenever you leave it, and nobody in it.",
});

export const cement: Warning = {
  hazard: "wet cement",
  says: "Wet cement burns skin and eyes for hours without hurting at first. Wear waterproof gloves, long sleeves, boots and eye protection, and wash splashes off at once. Do not breathe the dust.",
  again: "Wet cement: gloves, long sleeves, boots and eye protection.",
};

export const fallingMast: Warning = {
  hazard: "falling mast",
  says: "Falling mast: it kills whoever stands under it. Raise it in still air, with enough people for its weight, a rope held from the far side, and nobody within its length who has no task. Hard hats for all.",
  again: "Falling mast: still air, a rope from the far side, nobody within its length.",
};

export const weakPole: Warning = {
  hazard: "weak pole",
  says: "Weak pole: rust or rot at the ground can bring it down with the ladder against it. Look and knock before you lean anything on it. A pole that carries other people's wires is not yours to climb.",
  again: "Weak pole: nothing leans on it before it has been looked at.",
};

/** @source OSHA 29 CFR 1926.1053(b)(5)(i): foot out a quarter of the working length; from memory */
export const ladder: Warning = {
  hazard: "ladder",
  says: "Ladder: firm level ground, its foot out a quarter of the height it reaches, tied at the top and held by a second person. Keep three points of contact and stay off the top rungs. Tie your tools. Nobody stands below. No ladder in wind, ice or thunder.",
  again: "Ladder: tied, held, its foot out a quarter of its height, nobody below.",
};

/** @source OSHA 29 CFR 1926.501: protection from 6 ft, elsewhere often 2 m; from memory */
export const roofEdge = ({ said }: Figures): Warning => ({
  hazard: "roof edge",
  says: `Roof edge: falls from roofs kill. Above ${said.either("2 m (6 ft)", "6 ft")} use a scaffold or a harness on an anchor made for it, or let a roofer do it. The ladder stands ${said.either("1 m (3 ft)", "3 ft")} above the edge. Stay off wet, icy and brittle roofs.`,
  again: "Roof edge: scaffold or harness, and a dry roof.",
});

export const hiddenLines: Warning = {
  hazard: "hidden lines",
  says: "Hidden lines: look for cables and pipes in the wall or roof with a detector before you drill. Wear eye and ear protection, and a dust mask: old boards and paint can hold asbestos or lead.",
  again: "Hidden lines: search with a detector before every hole.",
};

/** A panel in the hands, or on a frame that is not yet fixed. */
export const wind: Warning = {
  hazard: "wind",
  says: "Wind: a panel is a sail, and a gust takes it out of your hands. Work in still air, and never leave it lying loose.",
  again: "Wind: a panel is a sail. Still air only.",
};

export const lifting = ({ weight }: Figures, { what, weightKg, people, needsHoist }: Lift): Warning => {
  const says = needsHoist
    ? `Lifting: one ${what} weighs about ${weight(weightKg)}. That is too much for two pairs of hands alone: use a hoist, a hand truck, more people or smaller pieces.`
    : people > 1
      ? `Lifting: one ${what} weighs about ${weight(weightKg)}. Lift it with ${people} people, close to the body and with straight backs.`
      : `Lifting: one ${what} weighs about ${weight(weightKg)}. Lift it close to the body, with a straight back.`;
  return { hazard: "lifting", says, again: says };
};

/**
 * @param hotTempC  highest hour of a typical year; null where no place is known
 */
export const heat = ({ temperature }: Figures, hotTempC: number | null): Warning => ({
  hazard: "heat",
  says: `Heat: glass and dark metal in the sun burn the skin, so wear gloves. ${hotTempC !== null && hotTempC >= 30 ? `The hottest hours here reach ${temperature(hotTempC)}: work early, in shade, and drink.` : "Drink, and rest in shade on hot days."}`,
  again: "Heat: gloves for sunlit glass and metal, water, shade.",
});

/**
 * @param bankShortCircuitA  prospective, at the bank's terminals
 * @source OSHA 29 CFR 1926.441 and common practice; from memory
 */
export const shortCircuit = (bankShortCircuitA: number | null): Warning => ({
  hazard: "short circuit",
  says: `Short circuit: ${bankShortCircuitA === null ? "a battery can drive thousands of amperes" : `this bank can drive up to about ${amps(bankShortCircuitA)}`} through a spanner, and molten metal flies. Take off rings and watches, use insulated tools, cover one terminal while you work on the other, and wear eye protection.`,
  again: "Short circuit: no rings, insulated tools, cover one terminal, goggles.",
});

/** @source OSHA 29 CFR 1926.441 and common practice; from memory */
export const leadAcid: Warning = {
  hazard: "lead-acid",
  says: "Lead-acid: it gives off hydrogen while it charges, which explodes. No flame or spark near it, vents free, never a sealed box. Acid in the eyes or on the skin: rinse with much water for 15 minutes and get help.",
  again: "Lead-acid: vents free, no flame or spark, water at hand.",
};

/** @source makers' limits and common practice; from memory */
export const lithium = ({ temperature }: Figures): Warning => ({
  hazard: "lithium",
  says: `Lithium iron phosphate: never charge it below ${temperature(0)}, never open, crush, drop or bridge a block, and never work round its management system. If one is swollen, hot or smoking, get away, keep others away and call the fire service.`,
  again: `Lithium: not charged below ${temperature(0)}, not dropped, not bridged.`,
});

/** @source common practice, no source */
export const heaterFire: Warning = {
  hazard: "fire",
  says: "Fire: a heater pad without its thermostat, folded, or under cables can set foam and box alight. Use one made for batteries that limits its own heat, lay it flat, never bridge its thermostat, and give it the fuse of its own that stands in the table of wires.",
  again: "Fire: the heater pad flat, its thermostat never bridged, on its own fuse.",
};

/** Above this a direct voltage counts as more than may be touched. @source IEC 60364-4-41, 60 V in dry places; from memory */
const TOUCH_SAFE_V = 60;

/**
 * @param coldV     of a whole string on the record cold morning
 * @param inSeries  panels of a string: one alone, before they are joined, gives its share
 */
export const livePanel = (coldV: number | null, inSeries = 1): Warning => ({
  hazard: "live panel",
  says: `Live panel: it gives voltage whenever light falls on it${coldV === null ? "" : `, here up to ${inSeries > 1 ? `${volts(coldV / inSeries)} from one alone and ${volts(coldV)} from ${inSeries} in series` : volts(coldV)} on a cold morning`}, and a direct-current arc does not go out by itself. Cover it, and never pull a plug apart while current flows.${coldV !== null && coldV > TOUCH_SAFE_V ? ` More than ${TOUCH_SAFE_V} V can kill: let a qualified person do this.` : ""}`,
  again: "Live panel: covered, and no plug pulled apart while current flows.",
});

export const polarity: Warning = {
  hazard: "polarity",
  says: "Polarity: measure with a meter before every connection. Reversed wires destroy a controller at once and can start a fire.",
  again: "Polarity: measure before you connect.",
};

export const passivePoe: Warning = {
  hazard: "passive PoE",
  says: "Passive PoE: an injector of that kind is always live and can destroy a camera, a switch or a laptop. Compare voltage and pin-out of both ends first, and mark its cable.",
  again: "Passive PoE: only the marked cable, only the radio.",
};

export const mains: Warning = {
  hazard: "mains",
  says: "Mains: plug into an outlet that is there already and has a residual-current device. A new outlet or any open mains wiring is an electrician's work.",
  again: "Mains: only ready-made outlets; the rest is an electrician's work.",
};

/** @source 30-30 rule of lightning safety; from memory */
export const lightning: Warning = {
  hazard: "lightning",
  says: "Lightning: stop at the first thunder, and keep away from mast, rod and cables until half an hour after the last.",
  again: "Lightning: stop at the first thunder.",
};

/**
 * @param distanceM  in front of the antenna, beyond which the limit for the general public is kept
 * @source FCC OET Bulletin 65 form, worst-case reflection, general public 10 W/m2; from memory
 */
export const radioWaves = ({ clear }: Figures, distanceM: number): Warning => ({
  hazard: "radio waves",
  says: `Radio waves: do not stay within ${clear(distanceM)} in front of an antenna that is sending. Switch it off before you work there, and never look into it.`,
  again: `Radio waves: not within ${clear(distanceM)} in front of an antenna that is sending.`,
});

export const localCodes =
  "Electrical, building and radio rules differ from place to place, and these lists do not replace them. Where your rules ask for a licensed electrician or an engineer, let them do it or check it. The makers' instructions come before these lists.";
