import { choice, quantity, topic } from "../src/interview/define.ts";
import { placeTopic } from "./place.ts";

const purpose = choice({
  shows: "lens",
  label: "What to tell apart",
  ask: "What must you be able to tell from the picture?",
  hint: "Imagine looking at it a week later, when something has happened.",
  why: "It sets how many picture points each [metre|foot] of the scene must have, and so the lens and the camera.",
  how: "Think of where the picture ends up. On the sofa, the first two will do. In court, only the last.",
  options: [
    {
      id: "notice",
      label: "That somebody or something is there",
      aliases: ["detect"],
      also: "somebody, someone, something, anybody, anyone, presence, detect, notice, there is someone, there is somebody, that a person is there",
    },
    {
      id: "follow",
      label: "What they are doing",
      aliases: ["observe"],
      also: "what they do, what is going on, what happens, what is happening, behaviour, behavior, observe, follow, what he does, what she does, what somebody does, what people do, what someone does",
    },
    {
      id: "recognise",
      label: "Which of the people I know it is",
      aliases: ["recognize"],
      also: "people i know, person i know, someone i know, somebody i know, known, family, neighbours, neighbors, friends, recognise, recognize, which of us, who i know",
    },
    {
      id: "identify",
      label: "Who a stranger is",
      also: "stranger, identify, identity, unknown person, a thief, thieves, burglar, court, police, proof",
    },
  ],
  unsure: { use: "recognise", because: "it is what most people miss later when they asked for less" },
});

const distance = quantity({
  dimension: "length",
  unit: "m",
  alsoUnit: "ft",
  shows: "lens",
  label: "Distance to the scene",
  ask: "How far is it from the camera to what it must show?",
  hint: "Pace it out: a long step is about [0.75 m. Example: 15 m or 50 ft|2 1/2 ft. Example: 50 ft or 15 m]",
  why: "Distance and width together choose the lens.",
  how: "Walk it and count long steps, or measure it on a phone's map.",
  possible: { min: 1, max: 500 },
  usual: { min: 3, max: 60 },
  lean: "high",
  unsure: { use: 15, because: "a gate or a yard is about that far (common practice)" },
});

const width = quantity({
  dimension: "length",
  unit: "m",
  alsoUnit: "ft",
  shows: "lens",
  label: "Width of the scene",
  ask: "How wide is the scene there, from left edge to right edge?",
  hint: "Only what must be in the picture. Example: [10 m or 30 ft|30 ft or 10 m]",
  why: "The wider the scene, the fewer picture points each person in it gets.",
  how: "Stand at the scene and pace from the left edge of what matters to the right edge.",
  possible: { min: 1, max: 500 },
  usual: { min: 2, max: 40 },
  lean: "high",
  unsure: { use: 10, because: "a gate with both its posts and some room (common practice)" },
});

export const viewTopic = topic(
  { id: "view", version: 1, title: "View", opening: "Now the view: what the camera must show." },
  [placeTopic],
)
  .ask("purpose", purpose)
  .ask("distance", distance)
  .ask("width", width)
  .ask(
    "cameras",
    choice({
      label: "Cameras",
      ask: "Which cameras will the post carry?",
      hint: "One fixed camera is the simplest and draws the least.",
      why: "Every camera adds to the panel and the battery. One that turns draws three times as much as a fixed one.",
      how: "Walk round the spot. If one picture from one place shows all you need, one fixed camera will do.",
      options: [
        {
          id: "fixed",
          label: "One fixed camera",
          also: "fixed, one that stands still, still, static, a single one, just one, only one, single camera, one camera",
        },
        {
          id: "turning",
          label: "One camera that turns",
          also: "turns, turning, ptz, pan, panning, rotating, rotates, moving, swivel",
        },
        {
          id: "several",
          label: "More than one",
          aliases: ["two", "three", "four", "both"],
          also: "more than one, several, two cameras, three cameras, four cameras, a few cameras, two of them, two, three, four, both",
        },
      ],
      unsure: { use: "fixed", because: "it is enough for one scene, and another can be added later" },
    }),
  )
  .repeat(
    "more",
    { atMost: 7, when: (given) => given(["view.cameras"], (cameras) => cameras === "several") },
    (camera) =>
      camera
        .ask(
          "kind",
          choice({
            label: "Next camera",
            ask: "What is the next camera?",
            hint: "The first camera, fixed, has been described already.",
            why: "Each camera needs its own scene, power and port.",
            how: "Go through the scenes one by one. Each that one camera cannot show needs another.",
            options: [
              {
                id: "none",
                label: "That was the last",
                aliases: ["no", "no more"],
                also: "nothing else, nothing more, last, no more, thats all, that is all, that was all, thats it, done, no other, no further, finished, enough",
              },
              { id: "fixed", label: "A fixed camera", also: "fixed, static, still" },
              {
                id: "turning",
                label: "A camera that turns",
                also: "turns, turning, ptz, pan, panning, rotating, rotates, moving, swivel",
              },
            ],
            unsure: { use: "none", because: "a camera can be added later" },
          }),
        )
        .ask("purpose", purpose)
        .ask("distance", distance)
        .ask("width", width),
  )
  .ask(
    "night",
    choice({
      shows: "energy",
      label: "Night",
      ask: "What must it see at night?",
      hint: "Infrared light is built into most cameras and can hardly be seen by eye.",
      why: "Night hours have no sun, so every watt then comes from the battery. Infrared adds 2 to 6 W to a fixed camera.",
      how: "Go there after dark. If you can read a sign by the light that is there, the camera can see by it too.",
      options: [
        {
          id: "infrared",
          label: "Everything, with infrared light",
          also: "infrared, ir, everything, in the dark, pitch dark, complete darkness, night vision",
        },
        {
          id: "ambient",
          label: "What street or yard lamps show",
          also: "street lamp, street light, streetlight, streetlamp, yard lamp, yard light, lamps, lamp post, floodlight, porch light, lit already, ambient",
        },
        {
          id: "none",
          label: "Nothing: daylight is enough",
          also: "daylight, by day, only day, only by day, daytime, nothing at night, not at night, no night, sees nothing, nothing",
        },
      ],
      unsure: { use: "infrared", because: "it draws the most, so the post will not be too small" },
    }),
  )
  .ask(
    "smoothness",
    choice({
      shows: "link",
      label: "Smoothness",
      ask: "How smooth must the picture be?",
      hint: "More pictures a second need a faster link and more storage.",
      why: "It sets how many megabits a second the link must carry, and how much must be stored.",
      how: "People walking are easy to follow at 10 to 15 pictures a second. Passing cars need 25.",
      options: [
        {
          id: "occasional",
          label: "A few pictures a second",
          also: "few, a few, occasional, slow, jerky, choppy, low",
        },
        {
          id: "normal",
          label: "Normal, about 15 a second",
          also: "15, fifteen, usual, average, medium, standard",
        },
        {
          id: "smooth",
          label: "Smooth, about 25 a second",
          also: "25, twenty five, very smooth, fluent, fluid, fast, cars, as smooth as possible, smoothest",
        },
      ],
      unsure: { use: "normal", because: "15 pictures a second show what people do (common practice)" },
    }),
  )
  .ask(
    "sound",
    choice({
      label: "Sound",
      ask: "Should it record sound as well?",
      hint: "The law on recording sound is often stricter than on pictures.",
      why: "In many places recording talk needs everybody's consent. It hardly changes the power.",
      how: "Ask a local adviser or the data protection office before you switch sound on.",
      options: [
        { id: "no", label: "No" },
        { id: "yes", label: "Yes" },
      ],
      unsure: { use: "no", because: "the law is stricter for sound than for pictures" },
    }),
  )
  .end();
