import { isSnowLikely, snowWeeksAssumed } from "../src/design/stand-ins.ts";
import { choice, place, quantity, topic } from "../src/interview/define.ts";

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
    "shade",
    quantity({
      dimension: "angle",
      unit: "deg",
      shows: "sun",
      label: "Shade",
      ask: "How high is the tallest thing between the panel and the midday sun?",
      hint: "A fist at arm's length covers about 10 degrees. Answer in degrees or fists, 0 for none.",
      why: "An hour of shade at noon costs more than any tilt can win back, and one shaded row of cells can stop a whole panel.",
      how: "Stand where the panel will be, face the midday sun's side and stack fists from the horizon up to the top of the trees, hill or roof.",
      possible: { min: 0, max: 60 },
      usual: { min: 0, max: 25 },
      lean: "high",
      unsure: {
        use: 10,
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
        { id: "washed", label: "Rain keeps it clean" },
        { id: "some", label: "Some dust, pollen, birds or salt" },
        { id: "dusty", label: "Dry and dusty, or many birds" },
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
