/**
 * What people say at the questions with options, in words of our own: sentences that mean one option, sentences that mean
 * several, and sentences that only say what it is not. Expected options are how a reader takes the sentence.
 */
import { describe, expect, it } from "vitest";
import { topics } from "../../flows/index.ts";
import type { AnyChoice } from "../../src/interview/define.ts";
import { readChoiceAmongWords } from "../../src/interview/read/index.ts";

const choices = new Map<string, AnyChoice>(
  topics
    .flatMap(({ id, steps }) =>
      steps.flatMap((step) =>
        step.step === "ask"
          ? [step]
          : step.block.map((part) => ({ ...part, id: `${step.id ?? id}.${part.id.replace(/^each\./, "")}` })),
      ),
    )
    .flatMap(({ id, question }) => (question.kind === "choice" ? [[id, question] as const] : [])),
);

/** What a sentence comes to: an option's id, "a+b" where both are meant, "?" where none is taken, or a command. */
function readAt(id: string, text: string): string {
  const { options } = choices.get(id)!;
  const heard = readChoiceAmongWords(text, options);
  if (heard.ok) return heard.id;
  if ("command" in heard) return `(${heard.command})`;
  if (heard.refusal.code !== "several-options") return "?";
  const { matches } = heard.refusal;
  const ids = matches.map(
    (label) => options.find((option: { label: string }) => option.label === label)?.id ?? label,
  );
  return ids.join("+");
}

const sentences: Readonly<Record<string, readonly (readonly [string, string])[]>> = {
  "place.fine": [
    ["you do that for me", "yours"],
    ["I leave it to you, thanks", "yours"],
    ["I would like to choose myself", "mine"],
    ["let me decide the fine points", "mine"],
    ["not me", "?"],
    ["not myself, you choose", "yours"],
    ["myself or you choose", "yours+mine"],
  ],
  "place.trust": [
    ["the lower one please", "lower"],
    ["take my own station", "own"],
    ["I trust the map more", "map"],
    ["not the map", "?"],
    ["my figures, not the map", "own"],
    ["the map or my figures", "own+map"],
  ],
  "place.dirt": [
    ["washed by rain", "washed"],
    ["the rain washes it off", "washed"],
    ["a bit dusty in August", "some"],
    ["there is pollen in spring", "some"],
    ["very dusty, it is a quarry", "dusty"],
    ["lots of birds sit there", "dusty"],
    ["not dusty at all", "?"],
    ["not dusty, the rain cleans it", "washed"],
    ["rain, and some dust too", "washed+some"],
    ["rarely dusty", "?"],
    ["little rain", "dusty"],
    ["it rains a lot here", "washed"],
    ["not clean", "?"],
  ],
  "view.purpose": [
    ["just that somebody is there", "notice"],
    ["I want to see what they do", "follow"],
    ["whether it is one of the neighbours", "?"],
    ["recognise my neighbours", "recognise"],
    ["I need to know who the thief is, a stranger", "identify"],
    ["identify strangers for the police", "identify"],
    ["not strangers", "?"],
    ["not strangers, only people I know", "recognise"],
    ["strangers and neighbours alike", "recognise+identify"],
  ],
  "view.cameras": [
    ["two", "several"],
    ["one fixed camera will do", "fixed"],
    ["I think fixed", "fixed"],
    ["a turning one", "turning"],
    ["two cameras I guess", "several"],
    ["not a turning one", "?"],
    ["fixed, not turning", "fixed"],
    ["one that is fixed and one that turns", "fixed+turning"],
    ["two fixed ones", "fixed+several"],
  ],
  "view.more.kind": [
    ["no more cameras", "none"],
    ["no, that is all", "none"],
    ["another fixed one", "fixed"],
    ["a turning one please", "turning"],
    ["not a fixed one", "?"],
    ["not fixed but turning", "turning"],
    ["fixed or turning, I do not mind", "fixed+turning"],
  ],
  "view.more.purpose": [
    ["only that someone is there", "notice"],
    ["which neighbour it is", "recognise"],
    ["not a stranger", "?"],
  ],
  "view.night": [
    ["in the dark as well, with infrared", "infrared"],
    ["there is a street lamp", "ambient"],
    ["it need not see anything at night, daylight is enough", "none"],
    ["no infrared", "?"],
    ["no infrared, the yard lamp is on", "ambient"],
    ["infrared or the street lights", "infrared+ambient"],
  ],
  "view.smoothness": [
    ["a few are enough", "occasional"],
    ["just normal", "normal"],
    ["the usual, please", "normal"],
    ["as smooth as possible", "smooth"],
    ["not smooth", "?"],
    ["normal, need not be smooth", "normal"],
    ["normal or smooth", "normal+smooth"],
  ],
  "view.sound": [
    ["no thanks, the law is strict", "no"],
    ["no sound", "no"],
    ["yes please", "yes"],
    ["yes, with sound", "yes"],
    ["probably not", "?"],
    ["yes, no, I cannot decide", "no+yes"],
    ["I'd rather not", "no"],
    ["only if it is legal", "?"],
  ],
  "loads.extra.kind": [
    ["no, nothing else", "none"],
    ["nothing more, only the camera", "none"],
    ["a small lamp", "lamp"],
    ["yes, a recorder", "recorder"],
    ["a rain gauge perhaps", "sensor"],
    ["no recorder", "?"],
    ["no recorder, but a lamp", "lamp"],
    ["a lamp and a sensor", "lamp+sensor"],
  ],
  "loads.extra.volts": [
    ["it says 12 V on the plug", "yes"],
    ["yes, twelve volts", "yes"],
    ["it takes 24 volts", "other"],
    ["by usb", "other"],
    ["not 12 V", "?"],
    ["12 V or 24 V", "yes+other"],
  ],
  "loads.extra.runs": [
    ["all the time", "always"],
    ["day and night I think", "always"],
    ["only at night", "night"],
    ["mostly during the day", "day"],
    ["not at night", "?"],
    ["by day, not at night", "day"],
    ["at night, sometimes by day", "day+night"],
  ],
  "hours.when": [
    ["probably every day", "always"],
    ["it must run round the clock", "always"],
    ["while it is light, sunrise to sunset", "daylight"],
    ["only in summer", "season"],
    ["during the working hours", "clock"],
    ["not at night", "?"],
    ["not at night, from dawn to dusk", "daylight"],
    ["dawn to dusk in summer", "daylight+season"],
    ["day and night but only in winter", "always+season"],
  ],
  "hours.fromMonth": [
    ["from april on", "apr"],
    ["I think in October", "oct"],
    ["May, I think", "may"],
    ["mid march", "mar"],
    ["not before April", "?"],
    ["not March but April", "apr"],
    ["april or june", "apr+jun"],
  ],
  "hours.toMonth": [
    ["till the end of September", "sep"],
    ["november at the latest", "nov"],
    ["not in december", "?"],
    ["September or October", "sep+oct"],
    ["end of sept", "sep"],
  ],
  "autonomy.consequence": [
    ["only a nuisance", "nuisance"],
    ["it would be annoying", "nuisance"],
    ["I would be worried", "worry"],
    ["a real disaster", "disaster"],
    ["it must never go dark", "disaster"],
    ["no disaster", "nuisance"],
    ["I'd rather say it in dark hours", "darkHours"],
    ["let me say the days without sun", "days"],
    ["not a nuisance", "?"],
    ["between a nuisance and a worry", "nuisance+worry"],
  ],
  "power.chemistry": [
    ["a lithium one please", "lifepo4"],
    ["AGM, it is cheap", "agm"],
    ["I want lead acid", "agm"],
    ["please choose for me", "choose"],
    ["not lithium", "?"],
    ["no lithium for me", "?"],
    ["lithium is too expensive", "?"],
    ["lithium, definitely not", "?"],
    ["not lithium, rather AGM", "agm"],
    ["AGM instead of lithium", "agm"],
    ["anything but lithium", "?"],
    ["either AGM or lithium", "agm+lifepo4"],
    ["lithium unless it freezes", "?"],
    ["is lithium better?", "?"],
    ["I don't like lithium", "?"],
    ["I like lithium but my dealer only has AGM", "agm+lifepo4"],
  ],
  "power.bankVolts": [
    ["probably 24", "24"],
    ["the 48 volt one", "48"],
    ["12 volts I think", "12"],
    ["you choose please", "choose"],
    ["not 12 V", "?"],
    ["12 V or 24 V", "12+24"],
    ["24, not 12", "24"],
  ],
  "power.controller": [
    ["an MPPT one", "mppt"],
    ["pwm is on my shelf", "pwm"],
    ["not pwm", "?"],
    ["MPPT rather than PWM", "mppt"],
    ["mppt or pwm", "mppt+pwm"],
  ],
  "power.tiltChange": [
    ["no, nobody climbs up there", "no"],
    ["yes, I am there anyway", "yes"],
    ["nobody will", "?"],
    ["no, well, yes", "no+yes"],
  ],
  "power.sizing": [
    ["the cheapest that does it", "recommended"],
    ["what the handbook says", "handbook"],
    ["the weather years please", "simulation"],
    ["not the handbook", "?"],
    ["the handbook's or the weather years'", "handbook+simulation"],
  ],
  "mounting.overhead": [
    ["no, there are no wires", "no"],
    ["no wires at all", "no"],
    ["there isn't any wire there", "no"],
    ["no wires yet, but a cable will come", "no+yes+notLooked"],
    ["none that I know of", "notLooked"],
    ["I think not", "notLooked"],
    ["yes, a power line", "yes"],
    ["there is a phone wire", "yes"],
    ["no power lines, only a telephone wire", "no+yes"],
    ["no, there is one", "no+yes"],
    ["probably not", "notLooked"],
    ["probably no wires", "no+notLooked"],
    ["I do not think so", "notLooked"],
    ["no, as far as I know", "no+notLooked"],
    ["no one has looked yet", "notLooked"],
    ["I still have to look", "notLooked"],
    ["no idea", "(unsure)"],
    ["no wires but I did not look behind the barn", "no+notLooked"],
    ["no, but I have only seen it on a map", "no+notLooked"],
    ["I'm pretty sure there is none", "no+notLooked"],
    ["nope, all clear", "no"],
    ["no, the line is buried", "no+yes"],
    ["not within 20 m", "?"],
  ],
  "mounting.wallFacing": [
    ["it looks to the west", "w"],
    ["south-east, over the yard", "se"],
    ["to the north east", "ne"],
    ["southwest", "sw"],
    ["not north", "?"],
    ["not north, south", "s"],
    ["east or west", "e+w"],
    ["I think south", "s+unknown"],
  ],
  "mounting.support": [
    ["the barn wall", "wall"],
    ["a new mast, I will dig", "newMast"],
    ["an old telephone pole", "existingPole"],
    ["on top of the roof", "roof"],
    ["not a wall", "?"],
    ["it isn't a wall", "?"],
    ["a wall is not possible", "?"],
    ["never on a roof", "?"],
    ["not the roof, the wall", "wall"],
    ["the wall, I don't want to dig", "wall"],
    ["wall or roof", "wall+roof"],
    ["not sure, maybe the wall", "wall+not sure"],
    ["I have really no idea", "(unsure)"],
    ["why a wall", "(why)"],
    ["how do I choose a wall", "(how)"],
    ["what is a wall bracket", "?"],
    ["the second one please", "existingPole"],
    ["option 3 I think", "wall"],
    ["1 or 3", "newMast+wall"],
    ["1 or the wall", "newMast+wall"],
    ["purple", "?"],
    ["we have a stone barn, its wall", "wall"],
    ["hardly the roof", "?"],
    ["roof? no way", "?"],
    ["anywhere but the roof", "?"],
    ["everything except a roof", "?"],
    ["the wall we cannot use", "?"],
    ["I would use the wall but it belongs to my neighbour", "?"],
    ["neither wall nor roof, so a new pole", "newMast"],
    ["the wall is ruled out", "?"],
  ],
  "mounting.soil": [
    ["heavy clay", "clay"],
    ["it is sandy", "sand"],
    ["mostly gravel", "gravel"],
    ["solid rock I am afraid", "rock"],
    ["a muddy field", "soft"],
    ["no clay", "?"],
    ["no clay, just sand", "sand"],
    ["sand over rock", "sand+rock"],
  ],
  "link.carrier": [
    ["a buried cable", "cable"],
    ["a wireless bridge to the house", "radio"],
    ["with a SIM card", "cellular"],
    ["it is recorded there", "none"],
    ["no cable", "?"],
    ["no cable, by radio", "radio"],
    ["radio or the mobile network", "radio+cellular"],
    ["cable is out of the question", "?"],
    ["there is no mobile network", "?"],
  ],
  "link.sight": [
    ["I can see it, clear view", "clear"],
    ["there are some trees", "trees"],
    ["the neighbour's barn is in the way", "buildings"],
    ["a small hill", "ground"],
    ["nobody looked so far", "unknown"],
    ["no trees", "clear"],
    ["no barn", "?"],
    ["a hedge and a shed", "trees+buildings"],
    ["not clear", "?"],
    ["a few trees, otherwise clear", "clear+trees"],
  ],
  "parts.owned.kind": [
    ["an old battery", "battery"],
    ["two solar panels", "panel"],
    ["I have an MPPT controller", "controller"],
    ["no, that's all", "none"],
    ["I own nothing", "none"],
    ["no battery", "?"],
    ["a battery and a panel", "battery+panel"],
  ],
  "parts.owned.batteryKind": [
    ["it says VRLA", "agm"],
    ["a lithium one", "lifepo4"],
    ["not lithium", "?"],
    ["lead or lithium", "agm+lifepo4"],
  ],
  "parts.owned.controllerKind": [
    ["the label says PWM", "pwm"],
    ["it's an mppt", "mppt"],
    ["not an mppt", "?"],
    ["pwm or mppt", "mppt+pwm"],
  ],
  "parts.owned.controllerLithium": [
    ["yes, it has a setting", "yes"],
    ["no, only lead", "no"],
    ["I'm not sure about that", "(unsure)"],
    ["well yes or no", "?"],
  ],
  "parts.owned.radioFeed": [
    ["802.3af it says", "standard"],
    ["passive 24 V", "passive24"],
    ["passive poe with 48 volts", "passive48"],
    ["with a round plug", "dc"],
    ["not standard", "?"],
    ["passive 24 or 48 V", "passive24+passive48"],
  ],
};

describe("sentences at every question with options", () => {
  it("are tried at all of them", () => {
    expect(Object.keys(sentences).sort()).toEqual([...choices.keys()].sort());
  });
  it.each(
    Object.entries(sentences).flatMap(([id, of]) => of.map(([text, means]) => [id, text, means] as const)),
  )("%s: %s", (id, text, means) => {
    expect(readAt(id, text)).toBe(means);
  });
});

const every = [...choices].flatMap(([id, { options }]) =>
  options.map((option: { id: string; label: string; also?: string }) => ({ id, option })),
);

describe("every option", () => {
  it.each(every)("$id: $option.id is still taken by its number, its id and its label", ({ id, option }) => {
    const { options } = choices.get(id)!;
    for (const text of [option.id, option.label])
      if (!/^\d+$/.test(text)) expect(readAt(id, text), text).toBe(option.id);
    const number = String(options.indexOf(option) + 1);
    expect(readAt(id, number)).toBe(option.id);
    expect(readAt(id, `option ${number} please`)).toBe(option.id);
  });

  it.each(every)("$id: $option.id is never taken where only its other words are denied", ({ id, option }) => {
    const all: readonly string[] = option.also?.split(", ") ?? [];
    for (const words of all) {
      if (all.includes(`not ${words}`)) continue;
      // words that hold a denial of their own cannot be denied once more
      if (
        /\b(?:no|not|none|never|nothing|nobody|only|just|\w+nt|cannot|do not|as smooth as possible)\b/.test(
          words,
        )
      )
        continue;
      for (const text of [`definitely not ${words}`, `it won't be ${words}`, `certainly without ${words}`])
        expect(readAt(id, text), text).not.toBe(option.id);
    }
  });

  it.each(every)("$id: $option.id is meant by each of its other words alone", ({ id, option }) => {
    for (const words of option.also?.split(", ") ?? []) {
      const taken = readAt(id, `hm, ${words}`);
      expect(taken.split("+"), words).toContain(option.id);
    }
  });
});
