import { choice, quantity, topic } from "../src/interview/define.ts";
import { linkTopic } from "./link.ts";

const volts = { dimension: "voltage", unit: "V" } as const;

export const partsTopic = topic(
  {
    id: "parts",
    version: 1,
    title: "Parts",
    opening: "Now what you have already: each part is checked against the rest before you climb.",
  },
  [linkTopic],
)
  .repeat("owned", { atMost: 4 }, (part) =>
    part
      .ask(
        "kind",
        choice({
          label: "Already owned",
          ask: "Which of these parts do you have already?",
          hint: "One at a time: you are asked again until you say nothing more.",
          why: "A wrong part is usually discovered on the ladder. Its data sheet can tell it now.",
          how: "Look in the shed. If the data sheet is lost, the label on the part has most of it.",
          options: [
            {
              id: "none",
              label: "Nothing more",
              aliases: ["no", "nothing", "none of them"],
              also: "nothing, none, no more, no other, thats all, that is all, that was all, thats it, i have nothing, i own nothing, have none, no parts, not any, nothing else, everything is new, all new",
            },
            { id: "battery", label: "A battery", also: "battery, batteries, accumulator" },
            { id: "panel", label: "A solar panel", also: "panel, module, solar" },
            {
              id: "controller",
              label: "A charge controller",
              also: "controller, charge regulator, regulator, mppt, pwm",
            },
            { id: "radio", label: "A pair of radios", also: "radio, bridge, antennas, dishes" },
          ],
          unsure: { use: "none", because: "then the list asks for new parts that fit each other" },
        }),
      )
      .ask(
        "batteryKind",
        choice({
          label: "Battery's kind",
          ask: "Which kind of battery is it?",
          hint: "It is printed on the case: AGM, sealed lead-acid, VRLA; or LiFePO4.",
          why: "Charging a battery with the wrong settings ruins it.",
          how: "Lift it: 12 V and 100 Ah weigh about [30 kg|65 lb] in lead and [12 kg|26 lb] in lithium.",
          options: [
            {
              id: "agm",
              label: "AGM lead-acid",
              aliases: ["lead", "lead acid", "vrla"],
              also: "agm, gel, sealed lead, car battery, lead, acid",
            },
            {
              id: "lifepo4",
              label: "Lithium iron phosphate (LiFePO4)",
              aliases: ["lithium", "lfp"],
              also: "lithium, iron phosphate, lifepo, lifepo4, lfp, li ion, lithium ion",
            },
          ],
          unsure: { use: "agm", because: "most old batteries are lead-acid" },
        }),
        (given) => ({ when: given(["each.kind"], (kind) => kind === "battery") }),
      )
      .ask(
        "batteryVolts",
        quantity({
          ...volts,
          label: "Battery's voltage",
          ask: "What is the voltage of one battery block?",
          hint: "Printed on the case. Example: 12 V",
          why: "Blocks are put in series until they reach the bank's voltage.",
          how: "Read the label. LiFePO4 blocks say 12.8 V: that counts as 12 V.",
          possible: { min: 6, max: 52 },
          usual: { min: 6, max: 52 },
          lean: "best",
          unsure: { use: 12, because: "most blocks are 12 V" },
        }),
        (given) => ({ when: given(["each.kind"], (kind) => kind === "battery") }),
      )
      .ask(
        "batteryAh",
        quantity({
          dimension: "charge",
          unit: "Ah",
          label: "Battery's capacity",
          ask: "How many amp-hours (Ah) does one block hold?",
          hint: "Amp-hours say how much it stores; printed on the case. Example: 100 Ah",
          why: "It decides how many blocks you need.",
          how: "Read the label; the figure for 20 hours (C20) is the one to take.",
          possible: { min: 1, max: 1000 },
          usual: { min: 5, max: 300 },
          lean: "low",
          unsure: { use: 35, because: "a block one person can carry" },
        }),
        (given) => ({ when: given(["each.kind"], (kind) => kind === "battery") }),
      )
      .ask(
        "batteryCount",
        quantity({
          dimension: "count",
          unit: "",
          isWhole: true,
          label: "How many blocks",
          ask: "How many such blocks do you have?",
          hint: "Count only blocks of the same make, size and age.",
          why: "Old and new blocks do not share work fairly.",
          how: "Look for the date code on each case.",
          possible: { min: 1, max: 40 },
          usual: { min: 1, max: 12 },
          lean: "low",
          unsure: { use: 1, because: "the fewest there can be" },
        }),
        (given) => ({ when: given(["each.kind"], (kind) => kind === "battery") }),
      )
      .ask(
        "panelWatts",
        quantity({
          dimension: "power",
          unit: "W",
          label: "Panel's rating",
          ask: "How many watts is the panel rated at?",
          hint: "On the label at the back: maximum power, Pmax. Example: 100 W",
          why: "It decides how many panels you need.",
          how: "Read the label on the back of the panel.",
          possible: { min: 5, max: 700 },
          usual: { min: 20, max: 450 },
          lean: "low",
          unsure: { use: 100, because: "a usual size; read the label before you count on it" },
        }),
        (given) => ({ when: given(["each.kind"], (kind) => kind === "panel") }),
      )
      .ask(
        "panelVolts",
        quantity({
          ...volts,
          label: "Panel's open-circuit voltage",
          ask: "What is the panel's open-circuit voltage (Voc)?",
          hint: "The voltage with nothing connected; on the label. Example: 22.5 V",
          why: "On a cold bright morning it rises, and too much destroys a controller.",
          how: "Read Voc on the label at the back of the panel.",
          possible: { min: 5, max: 80 },
          usual: { min: 18, max: 55 },
          lean: "high",
          unsure: { use: 24, because: "the high end for a panel of the 12 V class" },
        }),
        (given) => ({ when: given(["each.kind"], (kind) => kind === "panel") }),
      )
      .ask(
        "panelCount",
        quantity({
          dimension: "count",
          unit: "",
          isWhole: true,
          label: "How many panels",
          ask: "How many such panels do you have?",
          hint: "Only panels of the same kind.",
          why: "Unequal panels hold each other back.",
          how: "Compare the labels.",
          possible: { min: 1, max: 40 },
          usual: { min: 1, max: 8 },
          lean: "low",
          unsure: { use: 1, because: "the fewest there can be" },
        }),
        (given) => ({ when: given(["each.kind"], (kind) => kind === "panel") }),
      )
      .ask(
        "controllerKind",
        choice({
          label: "Controller's kind",
          ask: "Is the charge controller an MPPT or a PWM?",
          hint: "It says so on its label.",
          why: "A PWM controller wastes a tenth to a third of the panel.",
          how: "Read the label or the first page of the manual.",
          options: [
            { id: "mppt", label: "MPPT" },
            { id: "pwm", label: "PWM" },
          ],
          unsure: { use: "pwm", because: "the weaker of the two" },
        }),
        (given) => ({ when: given(["each.kind"], (kind) => kind === "controller") }),
      )
      .ask(
        "controllerVolts",
        quantity({
          ...volts,
          label: "Controller's highest panel voltage",
          ask: "What is the highest panel voltage the controller can take?",
          hint: "Maximum PV input on its data sheet. Example: 75 V",
          why: "One cold morning above it, and the controller is gone.",
          how: "Look for maximum PV open-circuit voltage on the data sheet.",
          possible: { min: 15, max: 600 },
          usual: { min: 25, max: 250 },
          lean: "low",
          unsure: { use: 30, because: "the smallest kind sold" },
        }),
        (given) => ({ when: given(["each.kind"], (kind) => kind === "controller") }),
      )
      .ask(
        "controllerAmps",
        quantity({
          dimension: "current",
          unit: "A",
          label: "Controller's charge current",
          ask: "What is the highest charge current of the controller?",
          hint: "Rated charge current on its data sheet. Example: 15 A",
          why: "It limits how much panel can be used.",
          how: "It is often the number in the controller's name; the data sheet is surer.",
          possible: { min: 1, max: 200 },
          usual: { min: 5, max: 100 },
          lean: "low",
          unsure: { use: 10, because: "the smallest kind sold" },
        }),
        (given) => ({ when: given(["each.kind"], (kind) => kind === "controller") }),
      )
      .ask(
        "controllerLithium",
        choice({
          label: "Controller charges LiFePO4",
          ask: "Can the controller charge lithium iron phosphate batteries?",
          hint: "Look for LiFePO4 or a setting by hand on its data sheet.",
          why: "Lead-acid settings overcharge or starve a lithium battery.",
          how: "Look for battery types on the data sheet.",
          options: [
            { id: "yes", label: "Yes" },
            { id: "no", label: "No" },
          ],
          unsure: { use: "no", because: "only a data sheet that says so can be trusted with it" },
        }),
        (given) => ({ when: given(["each.kind"], (kind) => kind === "controller") }),
      )
      .ask(
        "radioFeed",
        choice({
          label: "How the radio is fed",
          ask: "How is the radio at the post fed?",
          hint: "PoE is power over the network cable. Standard PoE says 802.3af or at; passive PoE names a voltage.",
          why: "Passive power on a standard port, or the reverse, feeds nothing or destroys something.",
          how: "Look at the power section of its data sheet or at the supply that came with it.",
          options: [
            {
              id: "standard",
              label: "Standard PoE (802.3)",
              also: "standard, 802.3af, 802.3at, 802.3bt, af, at standard, 802.3",
            },
            { id: "passive24", label: "Passive PoE, 24 V", also: "24 v, 24" },
            { id: "passive48", label: "Passive PoE, 48 V", also: "48 v, 48" },
            {
              id: "dc",
              label: "A round plug or terminals, DC",
              also: "round plug, barrel plug, plug, terminals, screw terminals, dc, barrel",
            },
          ],
          unsure: {
            use: "passive24",
            because: "many bridge radios are fed so; check before you buy the switch",
          },
        }),
        (given) => ({ when: given(["each.kind"], (kind) => kind === "radio") }),
      )
      .ask(
        "radioLowVolts",
        quantity({
          ...volts,
          label: "Radio's lowest voltage",
          ask: "What is the lowest voltage the radio accepts?",
          hint: "Input range on its data sheet. Example: 16 V",
          why: "It must still run when the battery is low and the cable long.",
          how: "Look for supply voltage or input range on the data sheet.",
          possible: { min: 3, max: 57 },
          usual: { min: 8, max: 50 },
          lean: "high",
          unsure: { use: 22, because: "a narrow range round 24 V" },
        }),
        (given) => ({ when: given(["each.kind"], (kind) => kind === "radio") }),
      )
      .ask(
        "radioHighVolts",
        quantity({
          ...volts,
          label: "Radio's highest voltage",
          ask: "What is the highest voltage the radio accepts?",
          hint: "Input range on its data sheet. Example: 30 V",
          why: "A battery being charged is well above its nominal voltage.",
          how: "Look for supply voltage or input range on the data sheet.",
          possible: { min: 5, max: 60 },
          usual: { min: 12, max: 57 },
          lean: "low",
          unsure: { use: 26, because: "a narrow range round 24 V" },
        }),
        (given) => ({ when: given(["each.kind"], (kind) => kind === "radio") }),
      ),
  )
  .ask(
    "keepDays",
    quantity({
      dimension: "duration",
      unit: "days",
      label: "Pictures kept",
      ask: "For how many days shall the pictures be kept?",
      hint: "As short as works. Usual: 7 to 30 days.",
      why: "It sets the size of the store at home; the law often asks for as few days as will do.",
      how: "Think how long it takes until you notice that something happened.",
      possible: { min: 1, max: 365 },
      usual: { min: 3, max: 60 },
      lean: "high",
      unsure: { use: 14, because: "two weeks is usual (common practice)" },
    }),
    (given) => ({ when: given(["place.fine"], (fine) => fine === "mine") }),
  )
  .end();
