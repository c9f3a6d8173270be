import { choice, clock, topic } from "../src/interview/define.ts";
import { loadsTopic } from "./loads.ts";

const months = [
  { id: "jan", label: "January", also: "jan" },
  { id: "feb", label: "February", also: "feb" },
  { id: "mar", label: "March", also: "mar" },
  { id: "apr", label: "April", also: "apr" },
  { id: "may", label: "May" },
  { id: "jun", label: "June", also: "jun" },
  { id: "jul", label: "July", also: "jul" },
  { id: "aug", label: "August", also: "aug" },
  { id: "sep", label: "September", also: "sep, sept" },
  { id: "oct", label: "October", also: "oct" },
  { id: "nov", label: "November", also: "nov" },
  { id: "dec", label: "December", also: "dec" },
] as const;
export const monthIds = months.map((month) => month.id);

export const hoursTopic = topic(
  {
    id: "hours",
    version: 1,
    title: "Hours",
    opening: "Now the hours: a night hour costs more than a day hour.",
  },
  [loadsTopic],
)
  .ask(
    "when",
    choice({
      shows: "energy",
      label: "Camera runs",
      ask: "When must the camera run?",
      hint: "Only what you need: a camera that rests at night can halve the battery.",
      why: "Night hours have no sun and, with infrared, draw the most.",
      how: "Think of what you would miss. A building site may only matter at night, a trailhead only by day.",
      options: [
        {
          id: "always",
          label: "Always, day and night",
          also: "day and night, night and day, all the time, every day, round the clock, around the clock, 24 7, 24 hours, constantly, continuously, nonstop, all day and night, all day and all night, all year, whole year, all year round, always",
        },
        {
          id: "daylight",
          label: "From dawn to dusk",
          aliases: ["day", "daylight"],
          also: "dawn, dusk, sunrise, sunset, daylight, by day, daytime, day, day only, while the sun is up, when it is light, when its light",
        },
        {
          id: "clock",
          label: "Between two times of day",
          also: "between two times, two times, certain hours, fixed hours, set hours, working hours, office hours, opening hours, at night, night, by the clock, from 8 to, from 9 to, evenings",
        },
        {
          id: "season",
          label: "Always, but only part of the year",
          also: "part of the year, season, seasonal, in season, some months, a few months, certain months, summer, winter, spring, autumn, months of the year",
        },
      ],
      unsure: { use: "always", because: "it draws the most, so the post will not be too small" },
    }),
  )
  .ask(
    "clock",
    clock({
      shows: "energy",
      label: "Between",
      ask: "From when to when must it run?",
      hint: "By the clock there. Example: 6:30 to 20:00, or 7 pm to 5 am",
      why: "The hours between set how much comes straight from the panel and how much from the battery.",
      how: "Take the hours when something can happen, and half an hour more on both sides.",
      unsure: { use: { fromMin: 0, toMin: 0 }, because: "the whole day draws the most" },
    }),
    (given) => ({ when: given(["hours.when"], (when) => when === "clock") }),
  )
  .ask(
    "fromMonth",
    choice({
      shows: "energy",
      label: "First month",
      ask: "Which is the first month it must run?",
      hint: "Type a number from 1 to 12, or the month.",
      why: "Leaving out the dark months can make the post several times smaller.",
      how: "Take the first month in which something can happen.",
      options: months,
      unsure: { use: "jan", because: "the whole year asks for the most" },
    }),
    (given) => ({ when: given(["hours.when"], (when) => when === "season") }),
  )
  .ask(
    "toMonth",
    choice({
      shows: "array",
      label: "Last month",
      ask: "Which is the last month it must run?",
      hint: "It runs to the end of that month.",
      why: "Leaving out the dark months can make the post several times smaller.",
      how: "Take the last month in which something can happen.",
      options: months,
      unsure: { use: "dec", because: "the whole year asks for the most" },
    }),
    (given) => ({ when: given(["hours.when"], (when) => when === "season") }),
  )
  .end();
