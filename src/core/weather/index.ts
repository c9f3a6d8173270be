export { HOURS_A_YEAR } from "./calendar.ts";
export { expectedDays } from "./expected-days.ts";
export { normalShareBelow } from "./gauss.ts";
export { ownWeatherPlace, ownYears } from "./own-year.ts";
export { measuredLag1ByMonth, usualLag1 } from "./persistence.ts";
export { type PanelSite, type PlaneYield, planeYield } from "./plane-yield.ts";
export type { HourClock } from "./sun-steps.ts";
export { type WeatherPlace, type WeatherYears, weatherYears } from "./weather-years.ts";
export { yearlySpreadFracByMonth } from "./yearly-spread.ts";
