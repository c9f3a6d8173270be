import { type Balance, bankLifeYears, equalReliabilityPairs } from "../../core/energy/index.ts";
import { sum } from "../../core/numerics/index.ts";
import { MEAN_DAY_BY_MONTH } from "../../core/sun/index.ts";
import type { Brief } from "../brief.ts";
import type {
  ChosenPair,
  OwnYearOutcome,
  PairOutcome,
  Reliability,
  Remember,
  Sun,
  World,
  Yearly,
} from "../design.ts";
import { allowedDarkHours, CELL_CHEMISTRY } from "../practice/battery.ts";
import type { Effort } from "../practice/reliability.ts";
import { tiersOf } from "./reliability-loads.ts";
import {
  arrayCandidate,
  arrayCandidates,
  bankCandidate,
  bankCandidates,
  type Handbook,
  isHardCharged,
  isWellCharged,
  pairCost,
} from "./reliability-pairs.ts";
import { AS_ANSWERED, type Case, darkHoursOf, type Pair, runsOf } from "./reliability-runs.ts";
import { bestFirst, leastDarkOf, recommended } from "./reliability-verdict.ts";
import { ownPostWeather, type PostWeather, postWeather } from "./reliability-weather.ts";
import { fixed } from "./words.ts";

export { reliabilityNotes } from "./reliability-notes.ts";

/**
 * The handbook's pair and all others that could be bought, run through many weather years: what each delivers, which reach
 * what was asked, and which is to be built.
 *
 * Every run has a bank at the end of its life, but for the one that tells what the handbook's bank does while it is new.
 */
export function reliabilityStage(
  brief: Brief,
  given: Handbook & { readonly sun: Sun },
  world: World,
  effort: Effort,
): Reliability | null {
  const { loads, array } = given;
  if (world.simulation === null || array.panels === 0 || loads.largestDailyWh <= 0) return null;
  const { remember } = world.simulation;
  const { place, hours, autonomy, power, parts, currency } = brief;
  const rests = [given, brief.loads, place, hours, autonomy, power, parts, currency];
  // an answer about the mast or the money changes nothing here
  return remember("reliability", [rests, effort], () => workedOut(brief, given, remember, effort));
}

function workedOut(
  brief: Brief,
  given: Handbook & { readonly sun: Sun },
  remember: Remember,
  effort: Effort,
): Reliability {
  const { climate, battery, array, sun } = given;
  const setting = { climate, sun, isDirect: array.controller === "pwm" };
  const weather = postWeather(brief, { ...setting, years: effort.years }, remember);
  const { run, runUnlessDarker } = runsOf(brief, given, weather, remember);
  const dullRatio = 1 - climate.ghiUncertaintyFrac;
  const careful = carefulCase(brief, dullRatio);
  const outcome = (pair: Pair, balance = run(pair, careful)): PairOutcome => ({
    ...pair.array,
    ...pair.bank,
    ...pairCost(brief, { ...pair, battery }),
    darkHours: darkHoursOf(balance),
  });

  const handbookPair: Pair = {
    array: arrayCandidate(brief, given, array.wantedW),
    bank: bankCandidate(brief, battery, battery.wantedAh),
  };
  const handbook = outcome(handbookPair);
  const arrays = arrayCandidates(brief, given, effort);
  const banks = bankCandidates(brief, given, effort);
  const askedDarkHours = allowedDarkHours(brief.autonomy);
  // who asked for days sees what else would be as seldom dark
  const targetDarkHours = askedDarkHours ?? handbook.darkHours;
  const enough = (pair: Pair) => runUnlessDarker(pair, careful, targetDarkHours);
  const found = equalReliabilityPairs({
    panelCounts: arrays.map((_, i) => i + 1),
    mostStrings: banks.length,
    targetDarkHours,
    // a larger bank takes more warmth: beyond some size it is the darker one
    isLargerNeverDarker: brief.power.batteryHeaterW.value === 0,
    darkHoursOf: ({ panels, strings }) => {
      const balance = enough({ array: arrays[panels - 1]!, bank: banks[strings - 1]! });
      return balance === null ? Number.POSITIVE_INFINITY : darkHoursOf(balance);
    },
  }).pairs.flatMap(({ panels, strings }) =>
    strings === null ? [] : [{ array: arrays[panels - 1]!, bigEnough: banks.slice(strings - 1) }],
  );
  // a bank that the array charges too hard or too weakly is stepped over: a larger one is no darker
  const wellCharged = found.flatMap(({ array: lined, bigEnough }) => {
    const bank = bigEnough.find((one) => isWellCharged(lined, one, battery));
    return bank === undefined ? [] : [{ array: lined, bank }];
  });
  const gentle = found.flatMap(({ array: lined, bigEnough: [bank] }) =>
    bank !== undefined && !isHardCharged(lined, bank, battery) ? [{ array: lined, bank }] : [],
  );
  const pairs = bestFirst(
    (wellCharged.length > 0 ? wellCharged : gentle).flatMap((pair) => {
      const balance = enough(pair);
      return balance === null || darkHoursOf(balance) > targetDarkHours ? [] : [outcome(pair, balance)];
    }),
  );
  const leastDark =
    askedDarkHours === null || pairs.length > 0
      ? null
      : leastDarkOf(
          arrays.flatMap((lined) => {
            const bank = banks.findLast((one) => isWellCharged(lined, one, battery));
            return bank === undefined ? [] : [outcome({ array: lined, bank })];
          }),
        );
  const verdict = recommended(brief, { askedDarkHours, handbook, pairs, leastDark });
  const { chosen } = verdict;
  const isReached = askedDarkHours === null || chosen.darkHours <= askedDarkHours;
  const chosenPair: Pair = {
    array: arrayCandidate(brief, given, chosen.wantedW),
    bank: bankCandidate(brief, battery, chosen.wantedAh),
  };
  return {
    years: weather.years,
    askedDarkHours,
    carefulRatio: careful.demandRatio,
    carefulSunRatio: careful.sunRatio,
    carefulMeans: carefulMeans(careful),
    handbook,
    handbookNewDarkHours: battery.bridgesDarkMonths
      ? darkHoursOf(run(handbookPair, { ...AS_ANSWERED, healthFrac: 1 }))
      : null,
    pairs,
    chosenMethod: verdict.method,
    because: verdict.because,
    chosen,
    isReached,
    yearly: yearlyOf(given, {
      asAnswered: run(chosenPair, AS_ANSWERED),
      careful: run(chosenPair, careful),
      dull: run(chosenPair, { demandRatio: 1, sunRatio: dullRatio }),
      ownYear: ownYearOf(brief, given, ownPostWeather(brief, setting, remember), chosenPair),
      devicesByTier: devicesByTier(brief, given),
    }),
  };
}

/** One year's run is not worth remembering. */
const unremembered: Remember = (_task, _given, work) => work();

function ownYearOf(
  brief: Brief,
  given: Handbook & { readonly sun: Sun },
  weather: PostWeather | null,
  pair: Pair,
): OwnYearOutcome | null {
  const { ownSun } = brief.place;
  if (weather === null || ownSun.value === null) return null;
  const balance = runsOf(brief, given, weather, unremembered).run(pair, AS_ANSWERED);
  return {
    source: ownSun.value.source,
    darkHours: darkHoursOf(balance),
    lowestSocFrac: Math.min(...balance.lowestSocFracByMonth),
  };
}

/**
 * By which pairs are judged: a demand larger by the builder's margin. Where the sun may be duller than that covers, the rest is
 * taken from the sun and not added to the demand: a month without sun has none to lose, and a bank that carries it none to add.
 */
function carefulCase(brief: Brief, dullRatio: number): Case {
  const demandRatio = 1 + brief.power.marginFrac.value;
  return { demandRatio, sunRatio: Math.min(1, demandRatio * dullRatio) };
}

function carefulMeans({ sunRatio }: Case): string {
  return sunRatio > 0.995
    ? "your margin used up"
    : `your margin used up and the sun ${fixed(100 * (1 - sunRatio), 0)} % duller`;
}

/** What a simulated pair is laid out for; null: the handbook's own sizes stand. */
export function chosenPairOf(reliability: Reliability | null): ChosenPair | null {
  if (reliability === null || reliability.chosenMethod === "handbook") return null;
  const { wantedAh, wantedW } = reliability.chosen;
  return { wantedAh, wantedW };
}

function devicesByTier(brief: Brief, given: Handbook & { readonly sun: Sun }): ReadonlyMap<string, string> {
  const { climate, sun, battery } = given;
  return new Map(
    tiersOf(brief, { climate, sun, permittedDodFrac: battery.permittedDodFrac, demandRatio: 1 }).map(
      ({ name, devices }) => [name, devices],
    ),
  );
}

/** Days drawn of the darkest spell. */
const SPELL_DAYS = 39;

function yearlyOf(
  { battery }: Handbook,
  runs: {
    readonly asAnswered: Balance;
    readonly careful: Balance;
    readonly dull: Balance;
    readonly ownYear: OwnYearOutcome | null;
    readonly devicesByTier: ReadonlyMap<string, string>;
  },
): Yearly {
  const { asAnswered, careful, dull, ownYear } = runs;
  const picture = asAnswered.tiers[0];
  const { darkestSpell, energy } = asAnswered;
  // a month before the lowest day and some days after it
  const from = Math.max(0, darkestSpell.lowestAtDay - SPELL_DAYS + 9);
  const startDayOfYear = (darkestSpell.startDay + from) % 365;
  const life = bankLifeYears({
    chemistry: CELL_CHEMISTRY[battery.chemistry],
    cyclesPerYearByDepth: asAnswered.cyclesPerYearByDepth,
    tempC: asAnswered.ageingTempC,
  });
  const wantedWh = sum(asAnswered.tiers.map(({ wantedWhPerYear }) => wantedWhPerYear));
  const unmetWh = sum(asAnswered.tiers.map(({ unmetWhPerYear }) => unmetWhPerYear));
  return {
    darkHours: picture?.darkHoursPerYear ?? 0,
    worstTenthDarkHours: picture?.worstYearInTenDarkHours ?? 0,
    darkHoursByMonth: picture?.darkHoursByMonth ?? Array.from({ length: 12 }, () => 0),
    ownYear,
    carefulDarkHours: darkHoursOf(careful),
    dullSunDarkHours: darkHoursOf(dull),
    lossOfLoadFrac: wantedWh > 0 ? unmetWh / wantedWh : 0,
    tiers: asAnswered.tiers
      .map(({ name, darkHoursPerYear, lossOfLoadEnergyFrac }) => ({
        devices: runs.devicesByTier.get(name) ?? name,
        darkHours: darkHoursPerYear,
        lossOfLoadFrac: lossOfLoadEnergyFrac,
      }))
      .toReversed(),
    lowestSocFracByMonth: asAnswered.lowestSocFracByMonth,
    medianSocFracByMonth: asAnswered.medianSocFracByMonth,
    darkSpell: {
      month: monthOfDay(startDayOfYear),
      lowestSocFracByDay: Array.from(darkestSpell.dailyLowestSocFrac.slice(from, from + SPELL_DAYS)),
      // cold takes capacity away at the bottom: the loads go off while more is still stored
      offBelowSocFrac: 1 - battery.permittedDodFrac * darkestSpell.capacityFracAtLowest,
      isOff: darkestSpell.tiersOnAtLowest === 0,
    },
    wastedFrac: energy.pvAvailableWh > 0 ? energy.pvWastedWh / energy.pvAvailableWh : 0,
    fullCyclesPerYear: asAnswered.equivalentFullCyclesPerYear,
    batteryYears: life.years,
    batteryYearsReason:
      life.ruledBy === "cycles"
        ? "worn by its charging and discharging"
        : "aged by time and warmth before its cycles are used up",
    refillDays: asAnswered.recovery === null ? null : asAnswered.recovery.meanHours / 24,
    frostHours: asAnswered.freezingHoursPerYear,
  };
}

function monthOfDay(day: number): number {
  return MEAN_DAY_BY_MONTH.findLastIndex(({ firstDayOfYear }) => firstDayOfYear <= day + 1);
}
