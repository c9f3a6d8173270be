import { frostDepthAssumedM, gustAssumedMPerS } from "../src/design/stand-ins.ts";
import { choice, quantity, topic } from "../src/interview/define.ts";
import { powerTopic } from "./power.ts";

/** What says that somebody looked up and saw none. */
const noWires =
  "no wire, no line, no power line, no cable, no overhead, there is none, there are none, " +
  "there is no, there are no, there isnt, there arent, all clear, nothing overhead, nothing above, " +
  "not any, none above, none overhead, there is no wire, there is no line, there is no power line, " +
  "there is no cable, there are no wire, there are no line, there are no power line, " +
  "there are no cable, there isnt a wire, there isnt a line, there isnt a power line, " +
  "there isnt a cable, there isnt any wire, there isnt any line, there isnt any power line, " +
  "there isnt any cable, there arent any wire, there arent any line, there arent any power line, " +
  "there arent any cable";
/** A guess about overhead wires is no look: whoever says one of these is not taken at a yes or no. */
const notLooked =
  "not looked, havent looked, have not looked, hasnt looked, nobody looked, nobody has looked, " +
  "no one looked, not been there, not look, didnt look, cant see, cannot see, couldnt see, " +
  "could not see, on a map, on the map, on a photo, satellite, street view, pretty sure, " +
  "quite sure, fairly sure, almost sure, not checked, havent checked, not yet, must look, " +
  "must check, should look, should check, have to look, have to check, need to look, need to check, " +
  "to look, to check, will look, will check, probably, i think, i guess, i believe, i suppose, " +
  "i hope, maybe, perhaps, likely, as far as i know, that i know, from memory, i remember, " +
  "should be, dont think, do not think, none that i know, not that i know, not as far as i know, " +
  "probably not, maybe not, perhaps not, i think not, i guess not, i hope not";

export const mountingTopic = topic(
  {
    id: "mounting",
    version: 2,
    title: "Mounting",
    opening: "Now what holds it up. The first question is the one that saves lives.",
  },
  [powerTopic],
)
  .ask(
    "overhead",
    choice({
      label: "Overhead wires",
      ask: "Is any overhead wire within [12 m (40 ft)|40 ft] of the spot?",
      hint: "Enough for a mast of [9 m|29 ft], its buried part counted, and [3 m (10 ft)|10 ft] more. Look also along the way you will carry it.",
      why: "A mast or ladder that touches a power line kills. It is the likeliest way to die on this job.",
      how: "Go there, pace out [12 m (40 ft)|40 ft] to each side and look up. If the mast grows, you will be told to look further. If there is any wire and you do not know what it is, ask the electricity company before anything else.",
      options: [
        {
          id: "no",
          label: "No: I have looked",
          aliases: ["none within 12 m", "none within 40 ft"],
          also: noWires,
        },
        {
          id: "yes",
          label: "Yes, there is",
          also: "there is a, there is one, there are, theres a, theres one, wire, line, cable, pylon",
        },
        {
          id: "notLooked",
          label: "Nobody has looked yet",
          also: notLooked,
        },
        {
          id: "noneFar",
          label: "None within [25 m (82 ft)|82 ft] either: I have looked that far",
          aliases: ["none within 25 m", "none within 82 ft", "none far off either"],
        },
      ],
      unsure: { use: "notLooked", because: "nothing may be raised there before somebody has looked up" },
    }),
  )
  .ask(
    "wireDistance",
    quantity({
      dimension: "length",
      unit: "m",
      alsoUnit: "ft",
      label: "Distance of the nearest wire",
      ask: "How far from the spot is the nearest overhead wire?",
      hint: "Level along the ground, to the point right under the wire. Example: [11 m or 36 ft|36 ft or 11 m]",
      why: "Even if the mast falls towards the wire, [3 m (10 ft)|10 ft] must be left between them.",
      how: "Pace it out on the ground and stay away from the wire itself. A long step is about [0.75 m|2.5 ft].",
      possible: { min: 0, max: 100 },
      usual: { min: 0, max: 50 },
      lean: "low",
      unsure: { use: 0, because: "a wire whose distance nobody knows counts as too near" },
    }),
    (given) => ({ when: given(["mounting.overhead"], (overhead) => overhead === "yes") }),
  )
  .ask(
    "support",
    choice({
      shows: "mast",
      label: "Mounted on",
      ask: "What will it be mounted on?",
      hint: "A pole that carries other people's wires is not yours to use.",
      why: "A new mast needs a footing; a standing pole, wall or roof needs its owner's word and the right clamps.",
      how: "Look for something solid in the right place. Ask who owns it before you count on it.",
      options: [
        {
          id: "newMast",
          label: "A new mast in the ground",
          also: "new mast, new pole, new post, own mast, own pole, own post, mast, dig, footing, concrete",
        },
        {
          id: "existingPole",
          label: "A pole that stands already",
          also: "pole, existing pole, existing post, existing mast, old pole, old post, old mast, lamp post, lamppost, stands already, already standing, is there already, already there",
        },
        {
          id: "wall",
          label: "A wall",
          also: "wall, gable, facade, side of the house, side of a house, side of the barn, side of a barn",
        },
        { id: "roof", label: "A roof", also: "roof, rooftop, ridge, chimney" },
      ],
      unsure: { use: "newMast", because: "it can stand anywhere, and it asks for the most parts" },
    }),
  )
  .ask(
    "poleDiameter",
    quantity({
      dimension: "length",
      unit: "mm",
      alsoUnit: "in",
      shows: "mast",
      label: "Pole's outside diameter",
      ask: "How thick is the pole that stands there, on the outside?",
      hint: "A string round it, divided by 3.14. Example: [76 mm or 3 in|3 in or 76 mm]",
      why: "The clamps of the panel, the box and the camera must fit it.",
      how: "Wind a string round it once, measure the string and divide by 3.14.",
      possible: { min: 20, max: 600 },
      usual: { min: 40, max: 200 },
      lean: "best",
      unsure: { use: 76, because: "a common steel pole; measure it before you buy a clamp" },
    }),
    (given) => ({ when: given(["mounting.support"], (support) => support === "existingPole") }),
  )
  .ask(
    "poleHeight",
    quantity({
      dimension: "length",
      unit: "m",
      alsoUnit: "ft",
      shows: "link",
      label: "Pole's height",
      ask: "How high above the ground does the pole that stands there reach?",
      hint: "To its very top. Example: [5 m or 16 ft|16 ft or 5 m]",
      why: "Camera, panel and radio can hang no higher than the pole, and its height decides how far off wires must be.",
      how: "Lean a stick of known length against it, step back and count how often the stick goes into the pole.",
      possible: { min: 0.5, max: 40 },
      usual: { min: 2, max: 12 },
      lean: "low",
      unsure: { use: 4, because: "a low guess for a pole that carries a lamp; measure it before you buy" },
    }),
    (given) => ({ when: given(["mounting.support"], (support) => support === "existingPole") }),
  )
  .ask(
    "wallFacing",
    choice({
      shows: "sun",
      label: "Wall faces",
      ask: "Which way does the wall face?",
      hint: "The way you look with your back to it.",
      why: "Panels on a wall can look out from it and to either side, but never back through it.",
      how: "Stand with your back to the wall, a few steps away from steel, and read a compass or a phone. On a map: the side of the building.",
      options: [
        { id: "n", label: "North", also: "north, northward" },
        { id: "ne", label: "North-east", also: "north east, northeast" },
        { id: "e", label: "East", also: "east, eastward" },
        { id: "se", label: "South-east", also: "south east, southeast" },
        { id: "s", label: "South", also: "south, southward" },
        { id: "sw", label: "South-west", also: "south west, southwest" },
        { id: "w", label: "West", also: "west, westward" },
        { id: "nw", label: "North-west", also: "north west, northwest" },
        { id: "unknown", label: "Nobody has looked yet", also: notLooked },
      ],
      unsure: {
        use: "unknown",
        because: "a wall that may face the wrong way is never taken as facing the sun",
      },
    }),
    (given) => ({ when: given(["mounting.support"], (support) => support === "wall") }),
  )
  .ask(
    "cameraHeight",
    quantity({
      dimension: "length",
      unit: "m",
      alsoUnit: "ft",
      shows: "mast",
      label: "Camera height",
      ask: "How high above the ground will the camera hang?",
      hint: "[3 m|10 ft] is out of reach and still shows faces. Example: [3 m or 10 ft|10 ft or 3 m]",
      why: "Higher is safer from hands but looks down on hats, and the mast grows.",
      how: "Hold a phone up on a pole at that height and look at the picture.",
      possible: { min: 1, max: 15 },
      usual: { min: 2, max: 6 },
      lean: "high",
      unsure: { use: 3, because: "out of reach, and faces can still be seen (common practice)" },
    }),
  )
  .ask(
    "gust",
    quantity({
      dimension: "speed",
      unit: "m/s",
      alsoUnit: "mph",
      shows: "mast",
      label: "Strongest gust",
      ask: "What is the strongest gust it must stand?",
      hint: "The building office has a map. Usual: [40 to 55 m/s (90 to 125 mph)|90 to 125 mph].",
      why: "The wind on the panel decides the mast and its footing. It grows with the square of the gust.",
      how: "Ask the local building office for the design wind speed (3-second gust). Hilltops and shores get more.",
      possible: { min: 20, max: 95 },
      usual: { min: 35, max: 65 },
      lean: "high",
      unsure: {
        use: gustAssumedMPerS,
        because:
          "high for most inland places, but not for a hurricane coast: ask before you buy steel (from memory)",
      },
    }),
  )
  .ask(
    "soil",
    choice({
      shows: "footing",
      label: "Soil",
      ask: "What is the ground like where the footing goes?",
      hint: "Dig a spade deep. Press with your thumb.",
      why: "Weak ground needs a deeper footing.",
      how: "Sand runs through the fingers; clay can be rolled into a sausage; if a thumb goes in easily, it is soft.",
      options: [
        {
          id: "clay",
          label: "Clay or silt that holds together",
          also: "clay, silt, loam, loamy, clayey, silty, sticky, sandy clay",
        },
        {
          id: "sand",
          label: "Sand, or sand with clay",
          also: "sand, sandy, clay with sand, sand with clay, sand and clay, sandy clay",
        },
        { id: "gravel", label: "Gravel", also: "gravelly, stony, stones, pebbles" },
        { id: "rock", label: "Rock", also: "rocky, bedrock, granite, ledge, solid stone" },
        {
          id: "soft",
          label: "Peat, mud or loose fill",
          also: "peat, mud, muddy, peaty, fill, loose fill, made ground, soft, boggy, bog, marsh, marshy, swamp, swampy",
        },
      ],
      unsure: { use: "clay", because: "the weakest ground that needs no engineer" },
    }),
    (given) => ({ when: given(["mounting.support"], (support) => support === "newMast") }),
  )
  .ask(
    "frost",
    quantity({
      dimension: "length",
      unit: "m",
      alsoUnit: "ft",
      shows: "footing",
      label: "Frost depth",
      ask: "How deep does the ground freeze?",
      hint: "The building office knows it. Example: [0.8 m or 30 in|30 in or 0.8 m]",
      why: "A footing that ends in frozen ground is lifted by it.",
      how: "Ask the building office, or whoever lays water pipes there.",
      possible: { min: 0, max: 4 },
      usual: { min: 0, max: 2 },
      lean: "high",
      unsure: { use: 0.5, because: "a middling figure; the place's own cold replaces it" },
    }),
    (given) => ({
      when: given.site(
        ["mounting.support", "place.fine"],
        (site, support, fine) =>
          support === "newMast" &&
          fine === "mine" &&
          site !== null &&
          frostDepthAssumedM(site.coldestMonthC) > 0,
      ),
      suggest: given.site(["place.where"], (site) => ({
        use: site === null ? 0.5 : frostDepthAssumedM(site.coldestMonthC),
        because: "taken from the coldest month there, on the safe side (common practice)",
      })),
    }),
  )
  .end();
