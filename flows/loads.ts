import { isFanLikely, isHeaterLikely } from "../src/design/stand-ins.ts";
import { choice, quantity, topic } from "../src/interview/define.ts";
import { viewTopic } from "./view.ts";

const watts = { dimension: "power", unit: "W", lean: "high" } as const;

export const loadsTopic = topic(
  {
    id: "loads",
    version: 1,
    title: "Loads",
    opening:
      'Now the power: what each device draws. A label is safe, a meter is best; say which, like "4 W measured".',
  },
  [viewTopic],
)
  .ask(
    "camera",
    quantity({
      ...watts,
      shows: "energy",
      label: "Camera power by day",
      ask: "How many watts does the fixed camera draw by day?",
      hint: "The data sheet says typical or maximum. Example: 5 W, or 4.2 W measured",
      why: "The camera runs for more hours than anything else, so its watts set the size of everything.",
      how: "The label gives a maximum, often twice the mean. A plug-in meter on its supply for a night is best.",
      possible: { min: 0.5, max: 60 },
      usual: { min: 2, max: 12 },
      unsure: { use: 5, because: "fixed cameras draw 3 to 6 W (common practice)" },
    }),
    (given) => ({ when: given(["view.cameras"], (cameras) => cameras !== "turning") }),
  )
  .ask(
    "infrared",
    quantity({
      ...watts,
      shows: "energy",
      label: "Infrared power",
      ask: "How many watts more does it draw with its infrared light on?",
      hint: "The data sheet gives a figure with infrared: subtract the one without. Example: 4 W",
      why: "The light burns all night, when only the battery feeds it.",
      how: "Cover the camera's light sensor and read the meter again.",
      possible: { min: 0, max: 60 },
      usual: { min: 1, max: 10 },
      unsure: { use: 4, because: "infrared adds 2 to 6 W to a fixed camera (common practice)" },
    }),
    (given) => ({
      when: given(
        ["view.cameras", "view.night"],
        (cameras, night) => cameras !== "turning" && night === "infrared",
      ),
    }),
  )
  .ask(
    "turning",
    quantity({
      ...watts,
      shows: "energy",
      label: "Turning camera power by day",
      ask: "How many watts does the turning camera draw by day?",
      hint: "Take the figure while it moves if there are two. Example: 18 W",
      why: "A camera that turns draws three to five times as much as a fixed one.",
      how: "The data sheet says typical and maximum. A meter on its supply for a day is best.",
      possible: { min: 1, max: 100 },
      usual: { min: 8, max: 40 },
      unsure: { use: 18, because: "turning cameras draw 10 to 25 W (common practice)" },
    }),
    (given) => ({
      when: given(
        ["view.cameras", "view.more"],
        (cameras, more) =>
          cameras === "turning" || (cameras === "several" && more.some((m) => m.kind === "turning")),
      ),
    }),
  )
  .ask(
    "turningInfrared",
    quantity({
      ...watts,
      shows: "energy",
      label: "Turning camera infrared power",
      ask: "How many watts more does the turning camera draw with infrared on?",
      hint: "The data sheet gives a figure with infrared: subtract the one without. Example: 10 W",
      why: "The light burns all night, when only the battery feeds it.",
      how: "Cover the camera's light sensor and read the meter again.",
      possible: { min: 0, max: 80 },
      usual: { min: 2, max: 20 },
      unsure: { use: 10, because: "infrared adds 5 to 15 W to a turning camera (common practice)" },
    }),
    (given) => ({
      when: given(
        ["view.cameras", "view.more", "view.night"],
        (cameras, more, night) =>
          night === "infrared" &&
          (cameras === "turning" || (cameras === "several" && more.some((m) => m.kind === "turning"))),
      ),
    }),
  )
  .ask(
    "heater",
    quantity({
      ...watts,
      shows: "energy",
      label: "Heater power",
      ask: "How many watts does a heater in the camera or its housing draw?",
      hint: "0 where there is none; the data sheet names it. Example: 12 W",
      why: "It runs on the coldest nights, when the battery gives least.",
      how: "Look for two figures on the data sheet: with and without heater.",
      possible: { min: 0, max: 60 },
      usual: { min: 0, max: 25 },
      unsure: { use: 0, because: "small fixed cameras mostly have none (common practice)" },
    }),
    (given) => ({
      // small fixed cameras mostly have none: whoever wants the fine points is asked all the same
      when: given.site(
        ["view.cameras", "place.fine"],
        (site, cameras, fine) =>
          site !== null && isHeaterLikely(site.designColdC) && (cameras === "turning" || fine === "mine"),
      ),
      suggest: given(["view.cameras"], (cameras) =>
        cameras === "turning"
          ? { use: 15, because: "housings of turning cameras have 10 to 20 W (common practice)" }
          : { use: 0, because: "small fixed cameras mostly have none (common practice)" },
      ),
    }),
  )
  .ask(
    "heaterBelow",
    quantity({
      dimension: "temperature",
      unit: "C",
      alsoUnit: "F",
      shows: "energy",
      label: "Heater on below",
      ask: "Below which air temperature does that heater switch on?",
      hint: "The data sheet of the camera or of its thermostat. Example: [0 C|32 F]",
      why: "The higher it is, the more hours it runs.",
      how: "Where no figure is to be found, take [0 C|32 F].",
      possible: { min: -40, max: 25 },
      usual: { min: -25, max: 15 },
      lean: "high",
      unsure: { use: 0, because: "thermostats of housings are mostly set near freezing (common practice)" },
    }),
    (given) => ({ when: given(["loads.heater"], (heaterW) => heaterW > 0) }),
  )
  .ask(
    "fan",
    quantity({
      ...watts,
      shows: "energy",
      label: "Fan power",
      ask: "How many watts does a fan in the box draw?",
      hint: "0 where there is none. Example: 2 W",
      why: "In great heat electronics live longer with moving air, but the fan must be fed.",
      how: "Volts times amps on its label. Most boxes of this size do without one, in the shade.",
      possible: { min: 0, max: 30 },
      usual: { min: 0, max: 5 },
      unsure: { use: 0, because: "a pale box in the panel's shade does without (common practice)" },
    }),
    (given) => ({
      when: given.site(
        ["place.fine"],
        (site, fine) => site !== null && isFanLikely(site.designHotC) && fine === "mine",
      ),
    }),
  )
  .ask(
    "fanAbove",
    quantity({
      dimension: "temperature",
      unit: "C",
      alsoUnit: "F",
      shows: "energy",
      label: "Fan on above",
      ask: "Above which air temperature does the fan run?",
      hint: "As its thermostat is set. Example: [35 C|95 F]",
      why: "The lower it is, the more hours it runs.",
      how: "Look at the dial or the label of its thermostat.",
      possible: { min: 0, max: 60 },
      usual: { min: 25, max: 45 },
      lean: "low",
      unsure: {
        use: 35,
        because: "it leaves a box [15|27] degrees before most devices reach their limit (common practice)",
      },
    }),
    (given) => ({ when: given(["loads.fan"], (fanW) => fanW > 0) }),
  )
  .repeat("extra", { atMost: 6 }, (device) =>
    device
      .ask(
        "kind",
        choice({
          label: "Other device",
          ask: "Is anything else to be powered at the post?",
          hint: "The radio or router that sends the picture is asked about later.",
          why: "A small device that runs day and night can ask for as much panel as the camera.",
          how: "Go through the parts on your bench: anything with a plug or a battery lead counts.",
          options: [
            {
              id: "none",
              label: "Nothing else",
              aliases: ["no", "nothing", "no more"],
              also: "nothing, none, no more, no other, no thanks, thats all, that is all, that was all, thats it, only the camera, just the camera",
            },
            {
              id: "recorder",
              label: "A recorder at the post",
              also: "recorder, nvr, recording box, hard disk",
            },
            { id: "lamp", label: "A lamp at night", also: "lamp, light, floodlight, spotlight" },
            {
              id: "sensor",
              label: "A sensor",
              also: "thermometer, rain gauge, weather station, motion detector, gauge, probe",
            },
            {
              id: "other",
              label: "Something else",
              also: "something else, another thing, something other, a different thing",
            },
          ],
          unsure: {
            use: "none",
            because: "a device can be added later, and you will be shown what it costs",
          },
        }),
      )
      .ask(
        "power",
        quantity({
          ...watts,
          label: "Device power",
          ask: "How many watts does it draw while it runs?",
          hint: "Volts times amps on its label give watts. Example: 10 W",
          why: "Watts times hours is what the panel must bring in.",
          how: "Read its label, or put a meter on its supply for a day.",
          possible: { min: 0.05, max: 200 },
          usual: { min: 0.1, max: 30 },
          unsure: { use: 10, because: "a small recorder draws 5 to 15 W (common practice)" },
        }),
        (given) => ({
          suggest: given(["each.kind"], (kind) =>
            kind === "sensor"
              ? { use: 1, because: "a sensor with its electronics draws less than 1 W (common practice)" }
              : { use: 10, because: "a small recorder or lamp draws 5 to 15 W (common practice)" },
          ),
        }),
      )
      .ask(
        "volts",
        choice({
          label: "Device voltage",
          ask: "Does it run on 12 V direct current?",
          hint: "Its label or plug says so: 12 V DC. A range such as 9 to 30 V DC includes it.",
          why: "The post has one 12 V supply for such devices. Another voltage can destroy the device, or not start it.",
          how: "Read the label on the device or on its plug: the output of the plug is what the device takes.",
          options: [
            { id: "yes", label: "Yes, 12 V", also: "12 v, 12 volt, twelve volt" },
            {
              id: "other",
              label: "No, another voltage",
              also: "another voltage, other voltage, 5 v, 5 volt, usb, 24 v, 24 volt, 48 v, 48 volt, mains",
            },
          ],
          unsure: {
            use: "yes",
            because: "most small devices do; read its label before you join it to anything",
          },
        }),
      )
      .ask(
        "runs",
        choice({
          label: "When it runs",
          ask: "When does it run?",
          hint: "A lamp usually runs at night only.",
          why: "Hours in the dark cost more than hours in the sun.",
          how: "Look for a timer or light sensor in its settings.",
          options: [
            {
              id: "always",
              label: "Day and night",
              also: "day and night, night and day, always, all the time, round the clock, around the clock, 24 7, 24 hours, constantly, continuously, nonstop, all day and night, all day and all night, all day long and all night",
            },
            {
              id: "day",
              label: "By day only",
              also: "by day, day, daytime, daylight, in the day, only by day, while the sun is up",
            },
            {
              id: "night",
              label: "By night only",
              also: "by night, night, at night, dark, after dark, when it is dark, when its dark",
            },
          ],
          unsure: { use: "always", because: "it draws the most, so the post will not be too small" },
        }),
      ),
  )
  .end();
