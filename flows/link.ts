import { choice, ground, obstacles, quantity, topic } from "../src/interview/define.ts";
import { mountingTopic } from "./mounting.ts";

/** What is taken to stand there while nobody has measured it: half way, where most room is needed. */
const inTheMiddle = {
  trees: {
    use: "trees [10 m|33 ft] high and [20 m|65 ft] deep half way",
    because: "a few rows of grown trees where most room is needed (common practice)",
  },
  buildings: {
    use: "building [8 m|26 ft] high half way",
    because: "a barn where most room is needed (common practice)",
  },
  ground: {
    use: "rise of [5 m|16 ft] half way",
    because: "a swell of the ground where most room is needed (common practice)",
  },
} as const;
const isObstructed = (sight: string): sight is keyof typeof inTheMiddle => Object.hasOwn(inTheMiddle, sight);

export const linkTopic = topic(
  { id: "link", version: 2, title: "Link", opening: "Now the way home for the picture." },
  [mountingTopic],
)
  .ask(
    "carrier",
    choice({
      label: "Picture travels by",
      ask: "How shall the picture get home?",
      hint: "Under [90 m (300 ft)|295 ft] with a trench, a cable is better than any radio.",
      why: "A cable needs no licence and little power; a radio needs a clear line; the mobile network costs every month.",
      how: "Measure on a phone's map how far it is to a building with power and network.",
      options: [
        {
          id: "cable",
          label: "By cable: under [90 m|295 ft], and a trench can be dug",
          also: "cable, wire, wired, trench, ethernet, fibre, fiber",
        },
        {
          id: "radio",
          label: "By radio to a building with power and network",
          also: "radio, wireless, wifi, wi-fi, bridge, microwave",
        },
        {
          id: "cellular",
          label: "By the mobile network",
          aliases: ["4g", "5g", "lte", "mobile"],
          also: "mobile, cellular, cell network, phone network, sim, sim card, 4g, 5g, lte",
        },
        {
          id: "none",
          label: "Not at all: it is recorded at the post",
          also: "recorded at the post, record at the post, recorded there, stays at the post, stays there, memory card, sd card, not at all, no need",
        },
      ],
      unsure: { use: "radio", because: "it is the usual way, and it asks the most of the post" },
    }),
  )
  .ask(
    "radioPower",
    quantity({
      dimension: "power",
      unit: "W",
      shows: "energy",
      label: "Radio power",
      ask: "How many watts does the radio at the post draw?",
      hint: "Its data sheet says it. Example: 7 W",
      why: "It runs whenever the camera runs, day and night.",
      how: "Take the maximum on the data sheet, or measure it while the picture runs.",
      possible: { min: 0.5, max: 60 },
      usual: { min: 3, max: 15 },
      lean: "high",
      unsure: { use: 7, because: "point-to-point radios draw 4 to 9 W (common practice)" },
    }),
    (given) => ({ when: given(["link.carrier"], (carrier) => carrier === "radio") }),
  )
  .ask(
    "routerPower",
    quantity({
      dimension: "power",
      unit: "W",
      shows: "energy",
      label: "Router power",
      ask: "How many watts does the cellular router draw?",
      hint: "Its data sheet says typical and maximum. Example: 5 W",
      why: "It runs whenever the camera runs, day and night.",
      how: "Take the maximum on the data sheet, or measure it while the picture runs.",
      possible: { min: 0.5, max: 40 },
      usual: { min: 2, max: 12 },
      lean: "high",
      unsure: { use: 5, because: "cellular routers draw 3 to 7 W (common practice)" },
    }),
    (given) => ({ when: given(["link.carrier"], (carrier) => carrier === "cellular") }),
  )
  .ask(
    "distance",
    quantity({
      dimension: "length",
      unit: "m",
      alsoUnit: "ft",
      shows: "link",
      label: "Distance home",
      ask: "How far is it from the post to the other end?",
      hint: "On a map, or along the trench; or the other end's coordinates. Example: [400 m or 0.5 mi|1300 ft or 0.5 mi]",
      why: "A radio loses strength with distance, and a network cable ends at [90 m|295 ft]. Coordinates also say where to aim.",
      how: "Use the measuring tool of a phone's map, from the post to the antenna at the other end. Or press and hold on the other end: it shows two numbers, and both can be typed here.",
      alsoSpot: true,
      possible: { min: 1, max: 40_000 },
      usual: { min: 5, max: 5000 },
      lean: "high",
      unsure: { use: 1000, because: "farther than most; measure it on a map" },
    }),
    (given) => ({
      when: given(["link.carrier"], (carrier) => carrier === "radio" || carrier === "cable"),
      suggest: given(["link.carrier"], (carrier) =>
        carrier === "cable"
          ? { use: 90, because: "the longest a network cable may be" }
          : { use: 1000, because: "farther than most; measure it on a map" },
      ),
    }),
  )
  .ask(
    "sight",
    choice({
      shows: "link",
      label: "Line of sight",
      ask: "What can you see from where the radio will be towards the other end?",
      hint: "From the height of the radio, not from the ground. Binoculars help.",
      why: "Most radio bridges do not work without a clear line, and leaves eat what is left.",
      how: "Put a bright lamp or a mirror at the other end and look from the radio's height. Look again when the leaves are out.",
      options: [
        {
          id: "clear",
          label: "The other end itself, nothing between",
          also: "nothing in between, nothing between, nothing in the way, clear, clear line, clear view, free, open field, i can see it, can see the other end, other end itself, see the house, no obstacle, not a tree, no tree",
        },
        {
          id: "trees",
          label: "Trees or hedges in between",
          also: "tree, hedge, wood, forest, orchard, bush, bushes, leaves",
        },
        {
          id: "buildings",
          label: "A building or barn in between",
          also: "building, barn, house, shed, roof, silo, wall",
        },
        {
          id: "ground",
          label: "A rise in the ground in between",
          also: "rise, hill, ridge, bank, slope, high ground, dyke, mound",
        },
        {
          id: "unknown",
          label: "Nobody has looked yet",
          also: "nobody looked, nobody has looked, not looked, havent looked, have not looked, hasnt looked, not checked, havent checked, not yet, not been there",
        },
      ],
      unsure: { use: "unknown", because: "a line that nobody has looked along is never taken as clear" },
    }),
    (given) => ({ when: given(["link.carrier"], (carrier) => carrier === "radio") }),
  )
  .ask(
    "between",
    obstacles({
      shows: "link",
      along: "link.distance",
      label: "In between",
      ask: "What stands in between, how high is it, and how far from the post?",
      hint: "Several, with commas. Example: barn [7 m|25 ft] high at [300 m|900 ft], row of trees [12 m|40 ft] high and [20 m|60 ft] deep half way",
      why: "The line must pass well above it: radio needs room round the line, not only the line itself. Leaves let some of it through.",
      how: "A phone's map shows how far and how deep. For the height hold a stick upright, as long as your arm, and walk until it covers the thing: you stand as far from it as it is high.",
      unsure: { use: inTheMiddle.trees.use, because: inTheMiddle.trees.because },
    }),
    (given) => ({
      when: given(
        ["link.carrier", "link.sight"],
        (carrier, sight) => carrier === "radio" && isObstructed(sight),
      ),
      suggest: given(["link.sight"], (sight) =>
        isObstructed(sight) ? inTheMiddle[sight] : inTheMiddle.trees,
      ),
    }),
  )
  .ask(
    "ground",
    ground({
      shows: "link",
      along: "link.distance",
      label: "Ground in between",
      unit: "m",
      alsoUnit: "ft",
      ask: "Do you know how the ground runs between the two ends?",
      hint: "level; pairs of [metres|feet] from the post and height; or a file's name. Example: [0 12, 200 14, 450 13.5|0 40, 600 46, 1500 44]",
      why: "A swell of a few [metres|feet] that nobody notices on foot can stand in the middle of a long line.",
      how: "Many maps draw a profile of a line: read off the height every hundred [metres|yards] or so. What stands on the ground belongs to the question before.",
      unsure: { use: null, because: "taken as level between the two ends, and what you named stands on it" },
    }),
    (given) => ({
      when: given(["link.carrier", "place.fine"], (carrier, fine) => carrier === "radio" && fine === "mine"),
    }),
  )
  .ask(
    "farHeight",
    quantity({
      dimension: "length",
      unit: "m",
      alsoUnit: "ft",
      shows: "link",
      label: "Height at the other end",
      ask: "How high above the ground can the radio at the other end be?",
      hint: "Under the eaves of a house is about [4 m. Example: 4 m or 13 ft|13 ft. Example: 13 ft or 4 m]",
      why: "Height at either end lifts the line over what is in between.",
      how: "Count rows of bricks or cladding, or hold a stick of known length against the wall.",
      possible: { min: 0.5, max: 100 },
      usual: { min: 2, max: 15 },
      lean: "low",
      unsure: { use: 4, because: "under the eaves of a house (common practice)" },
    }),
    (given) => ({ when: given(["link.carrier"], (carrier) => carrier === "radio") }),
  )
  .ask(
    "otherPosts",
    quantity({
      dimension: "count",
      unit: "",
      isWhole: true,
      shows: "link",
      label: "Other posts",
      ask: "How many other posts will send to the same radio at the other end?",
      hint: "0 if this is the only one.",
      why: "Posts that share one radio share its time on the air.",
      how: "Count the posts you plan for the next few years.",
      possible: { min: 0, max: 40 },
      usual: { min: 0, max: 8 },
      lean: "high",
      unsure: { use: 0, because: "most people begin with one" },
    }),
    (given) => ({ when: given(["link.carrier"], (carrier) => carrier === "radio") }),
  )
  .end();
