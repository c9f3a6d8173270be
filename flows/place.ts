import {
  isSnowLikely,
  mustChooseSun,
  PANEL_LOWER_EDGE_M,
  snowWeeksAssumed,
} from "../src/design/stand-ins.ts";
import { choice, horizon, place, quantity, sun, topic } from "../src/interview/define.ts";

export const placeTopic = topic({
  id: "place",
  version: 1,
  title: "Place",
  opening: "First the place: it decides the sun, the cold and the rules.",
})
  .ask(
    "where",
    place({
      label: "Place",
      ask: "Where will the post stand?",
      hint: "A town or village near it, or its latitude and longitude. Example: 52.30, -3.51",
      why: "The place sets the sun, the cold, the rain and the radio rules. Everything else is worked from it.",
      how: "Press and hold on the spot in a phone's map: it shows two numbers, latitude and longitude. Until you have them, the nearest town you can name will do.",
      unsure: {
        use: null,
        because:
          "no place can stand in for yours: until you name the nearest town, only the parts that need no sun are worked",
      },
    }),
  )
  .ask(
    "fine",
    choice({
      label: "Fine points",
      ask: "Who settles the fine points, such as bank voltage or the margin?",
      hint: "Mastwright says what it chose and why.",
      why: "A newcomer can leave them. An installer may have parts on the shelf, or sun figures of their own.",
      how: "If those words mean nothing to you, leave them to Mastwright: nothing is lost, and they can be changed later.",
      options: [
        {
          id: "yours",
          label: "Mastwright",
          aliases: ["you", "choose for me"],
          also: "for me, you choose, you decide, you settle, whatever you think, as you think, as you like, leave it, leave them, leave that",
        },
        {
          id: "mine",
          label: "I do: ask me",
          aliases: ["me", "ask me"],
          also: "myself, let me, i will, i want to, i do, i decide, i choose, for me to, on my own, me please",
        },
      ],
      unsure: { use: "yours", because: "the usual choices are safe ones" },
    }),
  )
  .ask(
    "sun",
    sun({
      label: "Own sun figures",
      ask: "Do you have sun figures of your own for the place?",
      hint: "none; twelve figures from January (kWh/m2 a day); the name of an EPW, TMY3 or POWER file; or fetch",
      why: "A station nearby is surer than a map. Both are shown beside each other, and the lower counts unless you say otherwise.",
      how: "Weather services publish monthly means of global horizontal irradiation. With internet, fetch asks the open POWER service of NASA.",
      unsure: { use: null, because: "the built-in map knows every place on land, and says how sure it is" },
    }),
    (given) => ({
      // Where the map knows nothing, only the builder's own figures can help.
      when: given.site(
        ["place.where", "place.fine"],
        (site, where, fine) => where !== null && (site === null || fine === "mine"),
      ),
    }),
  )
  .ask(
    "trust",
    choice({
      label: "Which sun to trust",
      ask: "Your figures and the map differ by more than a quarter: which shall count?",
      hint: "In the dullest month. The lower is the safe choice.",
      why: "The panel is sized by the dullest month, so a quarter there is a quarter of the panel.",
      how: "Ask how your figures were measured: for how many years, by which instrument, and how far away.",
      options: [
        { id: "lower", label: "The lower of the two", also: "lower, lowest, smaller, safer, safe, cautious" },
        {
          id: "own",
          label: "My figures",
          also: "mine, my own, my station, my numbers, my data, own figures, measured",
        },
        {
          id: "map",
          label: "The built-in map",
          also: "map, built in, yours, your figures, your data, your numbers",
        },
      ],
      unsure: { use: "lower", because: "it cannot make the panel too small" },
    }),
    (given) => ({
      when: given.site(
        ["place.sun"],
        (site, own) => site !== null && own !== null && mustChooseSun(site.ghiDailyKWhPerM2ByMonth, own),
      ),
    }),
  )
  .ask(
    "shade",
    horizon({
      shows: "sun",
      label: "Shade",
      ask: "Seen from the panel, what stands between it and the sun, and how high?",
      hint: "A fist at arm's length is about 10 degrees. Example: one fist, or hill to the south 15 deg high",
      why: "An hour of shade at noon costs more than any tilt can win back, and one shaded row of cells can stop a whole panel.",
      how: "Stand where the panel will be, your eyes as near as you can to its lower edge ([2 m or 6.5 ft|6.5 ft] up on a mast), face the midday sun's side and stack fists from the horizon up to the top of the trees, hill or roof. A height with a distance works too: say them from the ground, and I reckon from the panel. Say 0 if nothing stands there.",
      eyeHeightM: PANEL_LOWER_EDGE_M,
      possible: { min: 0, max: 80 },
      usual: { min: 0, max: 25 },
      unsure: {
        use: [{ azimuthDeg: 0, elevationDeg: 10 }],
        because: "one fist all round, and few places are clearer than that (common practice)",
      },
    }),
  )
  .ask(
    "dirt",
    choice({
      shows: "array",
      label: "Dirt",
      ask: "How dirty will the panel get?",
      hint: "Look at parked cars and road signs nearby.",
      why: "Dust, droppings and salt take light from the panel until rain or a brush takes them away.",
      how: "Wipe a road sign near the place with a white cloth. A grey cloth means rain keeps up; a brown one means dust.",
      options: [
        { id: "washed", label: "Rain keeps it clean", also: "washed, wash, washes, clean, rains often, wet" },
        {
          id: "some",
          label: "Some dust, pollen, birds or salt",
          also: "some dust, a little dust, a bit of dust, a bit dusty, a little dusty, slightly dusty, some dirt, a little dirt, a bit dirty, pollen, salt, salty, some birds, a few birds, middling, average, normal, a little, a bit",
        },
        {
          id: "dusty",
          label: "Dry and dusty, or many birds",
          also: "dusty, dry, little rain, no rain, hardly any rain, hardly ever rains, rarely rains, seldom rains, desert, sandstorm, very dirty, filthy, many birds, lots of birds, lots of dust, much dust, a lot of dust, gulls, quarry, gravel road, dirt road",
        },
      ],
      unsure: { use: "some", because: "5 percent less light is what most places lose (common practice)" },
    }),
  )
  .ask(
    "snow",
    quantity({
      dimension: "duration",
      unit: "weeks",
      shows: "array",
      label: "Snow on the panel",
      ask: "For how many weeks a year does snow lie on steep roofs there?",
      hint: "Ask a neighbour. Example: 3 weeks. Say 0 if it slides off within a day.",
      why: "A covered panel gives nothing, and it happens in the darkest months.",
      how: "Ask somebody who lives there. A panel steeper than 60 degrees sheds most snow within a day or two.",
      possible: { min: 0, max: 26 },
      usual: { min: 0, max: 8 },
      lean: "high",
      unsure: { use: 4, because: "a safe figure for a place whose winter freezes (common practice)" },
    }),
    (given) => ({
      when: given.site(["place.where"], (site) => site !== null && isSnowLikely(site.coldestMonthC)),
      suggest: given.site(["place.where"], (site) => ({
        use: snowWeeksAssumed(site?.coldestMonthC ?? -5),
        because: "taken from how cold the winter is there, on the safe side (common practice)",
      })),
    }),
  )
  .end();
