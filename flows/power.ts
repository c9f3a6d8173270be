import { choice, quantity, topic } from "../src/interview/define.ts";
import { autonomyTopic } from "./autonomy.ts";

/** How the choice is left to the program. */
const forMe =
  "for me, you choose, you decide, your choice, up to you, whatever you think, whatever is best, as you like, leave it";

export const powerTopic = topic(
  { id: "power", version: 1, title: "Power", opening: "Now the parts that make and keep the power." },
  [autonomyTopic],
)
  .ask(
    "chemistry",
    choice({
      shows: "battery",
      label: "Battery kind",
      ask: "Which kind of battery do you want?",
      hint: "AGM is sealed lead-acid: heavy, cheap, happy in frost. Lithium iron phosphate is light and must not be charged below freezing.",
      why: "The battery kind rules the controller, the charge settings, the weight and the box.",
      how: "Ask what a shop near you sells and takes back. Where it freezes, AGM needs no heater.",
      options: [
        { id: "choose", label: "Choose for me", also: forMe },
        {
          id: "agm",
          label: "AGM lead-acid",
          aliases: ["lead", "lead acid"],
          also: "agm, gel, vrla, sealed lead, car battery, lead, acid",
        },
        {
          id: "lifepo4",
          label: "Lithium iron phosphate (LiFePO4)",
          aliases: ["lithium", "lfp"],
          also: "lithium, iron phosphate, lifepo, lifepo4, lfp, li ion, lithium ion",
        },
      ],
      unsure: { use: "choose", because: "AGM where it freezes, lithium iron phosphate elsewhere" },
    }),
  )
  .ask(
    "batteryHeater",
    quantity({
      dimension: "power",
      unit: "W",
      shows: "dark",
      label: "Battery heater",
      ask: "How many watts does the battery's own heater draw, all blocks together?",
      hint: "0 where it has none; the data sheet of a lithium battery for the cold names it. Example: 30 W",
      why: "Without one, a lithium battery takes no charge on frosty days; with one, it spends part of its energy on warmth.",
      how: "Look for a self-heating mark and its watts on the battery's data sheet.",
      possible: { min: 0, max: 200 },
      usual: { min: 0, max: 100 },
      lean: "best",
      unsure: { use: 0, because: "most blocks of this kind have none" },
    }),
    (given) => ({
      when: given.site(
        ["power.chemistry"],
        (site, chemistry) => chemistry === "lifepo4" && site !== null && site.designColdC < 0,
      ),
    }),
  )
  .ask(
    "lift",
    quantity({
      dimension: "mass",
      unit: "kg",
      alsoUnit: "lb",
      shows: "battery",
      label: "Heaviest lift",
      ask: "What is the heaviest single thing you will lift there?",
      hint: "One battery block must not be heavier. Example: [15 kg or 35 lb|35 lb or 15 kg]",
      why: "A bank is made of whole blocks, so your back decides their size.",
      how: "A full bucket of water weighs [10 to 12 kg; a bag of cement 25 kg|22 to 26 lb; a common bag of concrete mix 60 lb].",
      possible: { min: 3, max: 80 },
      usual: { min: 8, max: 35 },
      lean: "low",
      unsure: { use: 15, because: "one person can place that with care (common practice)" },
    }),
  )
  .ask(
    "bankVolts",
    choice({
      shows: "battery",
      label: "Bank voltage",
      ask: "Which voltage shall the battery bank have?",
      hint: "Twice the voltage halves the current and the copper.",
      why: "The radio, the switch and the controller must all accept it.",
      how: "Look at the input range on the data sheets of what it feeds.",
      options: [
        { id: "choose", label: "Choose for me", also: forMe },
        { id: "12", label: "12 V", also: "12, twelve" },
        { id: "24", label: "24 V", also: "24, twenty four" },
        { id: "48", label: "48 V", also: "48, forty eight" },
      ],
      unsure: { use: "choose", because: "12 V for small posts, 24 V where the current grows" },
    }),
    (given) => ({ when: given(["place.fine"], (fine) => fine === "mine") }),
  )
  .ask(
    "controller",
    choice({
      shows: "array",
      label: "Charge controller",
      ask: "Which kind of charge controller will it be?",
      hint: "MPPT follows the panel's best voltage; PWM simply connects the panel to the battery.",
      why: "MPPT brings in a tenth to a third more, most in the cold.",
      how: "The controller's label says MPPT or PWM.",
      options: [
        { id: "mppt", label: "MPPT" },
        { id: "pwm", label: "PWM" },
      ],
      unsure: { use: "mppt", because: "it wins most in the cold dark months that set the size" },
    }),
    (given) => ({ when: given(["place.fine"], (fine) => fine === "mine") }),
  )
  .ask(
    "margin",
    quantity({
      dimension: "share",
      unit: "%",
      shows: "array",
      label: "Margin",
      ask: "How much margin on top of the sums?",
      hint: "Usual: 20 to 25 percent. Example: 20 %",
      why: "Loads creep up and panels get dirty; margin is what is left then.",
      how: "Take more where the figures above were guesses.",
      possible: { min: 0, max: 100 },
      usual: { min: 10, max: 40 },
      lean: "high",
      unsure: { use: 20, because: "common practice" },
    }),
    (given) => ({ when: given(["place.fine"], (fine) => fine === "mine") }),
  )
  .ask(
    "largestPanel",
    quantity({
      dimension: "power",
      unit: "W",
      shows: "array",
      label: "Largest panel",
      ask: "What is the largest single panel you can mount?",
      hint: "Usual: 100 to 200 W each; about [1 square metre|11 square feet] for 200 W.",
      why: "A larger panel catches more wind on one bracket.",
      how: "Ask for the bracket's data sheet: it names the largest panel.",
      possible: { min: 20, max: 450 },
      usual: { min: 50, max: 250 },
      lean: "low",
      unsure: { use: 200, because: "the largest that one person can hold on a ladder (common practice)" },
    }),
    (given) => ({ when: given(["place.fine"], (fine) => fine === "mine") }),
  )
  .ask(
    "tiltChange",
    choice({
      label: "Tilt changed twice a year",
      ask: "Will somebody change the panel's tilt twice a year?",
      hint: "It helps in summer only; the winter tilt sets the size.",
      why: "A post sized for winter rarely needs it.",
      how: "Only say yes if somebody climbs there anyway.",
      options: [
        { id: "no", label: "No" },
        { id: "yes", label: "Yes" },
      ],
      unsure: { use: "no", because: "nobody climbs as often as they meant to" },
    }),
    (given) => ({ when: given(["place.fine"], (fine) => fine === "mine") }),
  )
  .ask(
    "sizing",
    choice({
      shows: "dark",
      label: "Which size is built",
      ask: "Which of the two sizes shall the lists follow?",
      hint: "The handbook's: sums by hand from the darkest month and days without sun. The other: run through thirty weather years of your place.",
      why: "They rarely agree: the handbook knows no weather, and the weather years know no surprises.",
      how: "Look at the dark hours of each, and at what they cost; a careful inspector will ask for the handbook's.",
      options: [
        {
          id: "recommended",
          label: "The one that reaches what I asked for at about the least price",
          also: "recommended, least money, cheapest, cheaper, the one you recommend, what i asked for",
        },
        { id: "handbook", label: "The handbook's", also: "handbook, by the handbook, by hand, inspector" },
        {
          id: "simulation",
          label: "The one of the weather years",
          also: "weather years, weather, simulation, simulated, thirty years",
        },
      ],
      unsure: { use: "recommended", because: "it reaches what you asked for, and says by which of the two" },
    }),
    (given) => ({
      when: given(
        ["place.fine", "autonomy.consequence"],
        (fine, consequence) => fine === "mine" && consequence !== "days",
      ),
    }),
  )
  .end();
