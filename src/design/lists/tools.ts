import type { Design, Mounting } from "../design.ts";
import { type Figures, listed, ratedAmps } from "./figures.ts";
import { applicable, type List, type MaybeStep, step } from "./list.ts";
import { type Post, postOf } from "./post.ts";

export function toolsList(design: Design): List {
  const post = postOf(design);
  return {
    id: "tools",
    title: "Tools to bring",
    intro: "A forgotten tool costs a second trip. Tick them off at home.",
    isOrdered: false,
    steps: applicable([...safety(post), ...electric(post), ...mechanic(post), ...network(post)]),
  };
}

function safety(post: Post): readonly MaybeStep[] {
  const { design, support } = post;
  return [
    step("people", "A second person, a telephone that has signal there, first-aid kit, drinking water."),
    step(
      "wear",
      "Eye and ear protection, cut-resistant gloves, a hard hat for everybody near the work, firm boots.",
    ),
    step(
      "ladder",
      `Ladder to work at ${post.say.clear(topM(post))} without its top rungs, straps to tie it, a rope and a bucket to haul parts.`,
    ),
    support === "roof" && step("harness", "Harness, line and anchor made for it, or a scaffold."),
    design.battery?.chemistry === "agm" &&
      step(
        "soda",
        `Baking soda, ${post.say.said.either("five litres", "a gallon and a half")} of water and an eye-wash bottle, in case acid is spilt.`,
      ),
    design.battery !== null && step("extinguisher", "Fire extinguisher for electrical fires."),
    step("cover", "Opaque blanket or cardboard and cord, to cover every panel."),
  ];
}

/** Highest place at which hands work. */
const topM = ({ design: { mounting }, hasFrame }: Post): number =>
  Math.max(mounting.cameraHeightM, mounting.radioHeightM, hasFrame ? 0 : mounting.panelHeightM);

/** Above this a multimeter's own range ends. @source common practice, no source */
const CLAMP_METER_FROM_A = 10;

function electric({ design }: Post): readonly MaybeStep[] {
  const { array, battery, wiring } = design;
  const ratings = new Set(wiring?.runs.flatMap(({ fuseA }) => (fuseA === null ? [] : [fuseA])) ?? []);
  for (const one of [wiring?.stringFuseA, wiring?.blockFuseA]) if (one != null) ratings.add(one);
  const isLarge = (array?.chargeCurrentA ?? 0) > CLAMP_METER_FROM_A;
  return [
    step(
      "meter",
      `Multimeter for direct current to 10 A and 200 V, with spare fuses${isLarge ? ", and a clamp meter for direct current" : ""}.`,
    ),
    step(
      "insulated",
      "Insulated screwdrivers and spanners, and a torque screwdriver or wrench for the terminals.",
    ),
    step(
      "crimp",
      `Wire cutters, strippers, ferrules and their crimp tool${array === null ? "" : ", the crimp tool and spanners made for the panels' plugs"}${battery === null ? "" : ", a crimp tool for battery lugs and heat-shrink sleeves"}.`,
    ),
    ratings.size > 0 &&
      step(
        "fuses",
        `Two spare fuses of each rating: ${listed([...ratings].toSorted((a, b) => a - b).map(ratedAmps))}.`,
      ),
    step("spares", "Cable ties for outdoor use, self-sealing tape, labels, marker, a towel, rubbish bag."),
  ];
}

/** Water for a 25 kg bag of dry concrete mix. @source from memory: 2.5 to 3 litres, the bag says it */
const WATER_L_PER_BAG = 3;

function mixing(say: Figures, footing: NonNullable<Mounting["footing"]>): MaybeStep {
  const bags = say.bags(footing);
  const waterL = Math.ceil((WATER_L_PER_BAG * footing.bags25Kg) / 5) * 5;
  return step(
    "mixing",
    `Barrow or mixer, shovel, and about ${say.said(waterL, "litres", { safe: "up" })} of water for the concrete. Have the ${say.said(bags.count * bags.kg, "kg")} of mix delivered to the spot.`,
    {
      why: `About ${say.said.either("3 litres", "3 quarts")} for a bag of ${bags.each} (from memory: the bag says it).`,
    },
  );
}

function mechanic({ design, isNewMast, standsFree, hasFrame, say }: Post): readonly MaybeStep[] {
  const { mounting, link } = design;
  const { footing } = mounting;
  const isHeavy = mounting.lifts.some(({ needsHoist }) => needsHoist);
  return [
    step(
      "measure",
      "Spirit level, tape measure, angle gauge for the tilt, and a compass or telephone for the direction.",
    ),
    isNewMast &&
      footing !== null &&
      step(
        "digging",
        `Auger or post-hole digger for a hole ${say.dug(footing.diameterM)} across and ${say.dug(footing.depthM)} deep, digging bar, a cover for the hole, props and clamps to hold the mast plumb.`,
      ),
    isNewMast && footing !== null && mixing(say, footing),
    link?.carrier === "cable" &&
      step("trenching", "Spade or trencher, pipe, draw cord and warning tape for the trench."),
    hasFrame && step("frame", "Tools of the panel frame's maker for its anchors, and a long level."),
    !standsFree &&
      step(
        "drilling",
        "Hammer drill with bits for the wall or roof, detector for cables and pipes, dust mask, sealant.",
      ),
    standsFree && step("rod", "Driver or heavy hammer for the earth rod."),
    step("spanners", `Spanners for the brackets and clamps, file and zinc paint for cut steel.`),
    isHeavy && step("hoist", "Hoist, hand truck or more people for what two cannot lift."),
    step("lock", "Padlock, and the sign that says that it records."),
  ];
}

function network({ design, sender }: Post): readonly MaybeStep[] {
  return [
    step(
      "laptop",
      "Laptop with a network port and cable, charged, with the settings sheet and every maker's instructions on it.",
    ),
    design.wiring !== null && step("poe", "Network cable tester, and a PoE meter that shows watts."),
    sender === "radio" && step("talk", "A way to talk to whoever stands at the other end, and binoculars."),
    sender === "router" && step("card", "The mobile card, its code, and a telephone of the same network."),
  ];
}
