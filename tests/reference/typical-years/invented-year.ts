/** The same files as make_vectors.py writes: an invented place in the open layouts. */

const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

function tenths(n: number): string {
  return `${n < 0 ? "-" : ""}${Math.floor(Math.abs(n) / 10)}.${Math.abs(n) % 10}`;
}

interface Hour {
  readonly month: number;
  readonly day: number;
  readonly hour: number;
  readonly ghi: number;
  readonly temp: number;
  readonly wind: number;
}

function hours(): readonly Hour[] {
  const rows: Hour[] = [];
  let state = 1;
  DAYS.forEach((days, i) => {
    for (let day = 1; day <= days; day += 1) {
      for (let hour = 0; hour < 24; hour += 1) {
        state = (state * 1664525 + 1013904223) % 2 ** 32;
        const chance = Math.floor(state / 65536);
        const fromJuly = Math.abs(Math.floor(rows.length / 24) - 182);
        const light = Math.max(0, 12 - Math.abs(2 * hour - 23));
        rows.push({
          month: i + 1,
          day,
          hour: hour + 1,
          ghi: Math.floor(((900 - 3 * fromJuly) * light * (20 + (chance % 81))) / 1100),
          temp: -50 + (182 - fromJuly) + 3 * hour - 36 + (chance % 21),
          wind: chance % 80,
        });
      }
    }
  });
  return rows;
}

export const EPW_HEADER: readonly string[] = [
  "LOCATION,Invented Hollow,-,NOW,made for a test,999999,52.10,9.40,1.0,90.0",
  "DESIGN CONDITIONS,0",
  "TYPICAL/EXTREME PERIODS,0",
  "GROUND TEMPERATURES,0",
  "HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0",
  "COMMENTS 1,every number here is invented",
  "COMMENTS 2,",
  "DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31",
];

export function epwRows(): readonly string[] {
  return hours().map(({ month, day, hour, ghi, temp, wind }, i) => {
    const g = i === 1000 || i === 1001 ? "9999" : ghi;
    const t = i === 500 ? "99.9" : tenths(temp);
    const w = i === 77 ? "999" : tenths(wind);
    return (
      `${1990 + month},${month},${day},${hour},60,?9?9,${t},99.9,999,999999,9999,9999,9999,` +
      `${g},${Math.floor((ghi * 7) / 10)},${Math.floor((ghi * 3) / 10)},` +
      `999999,999999,999999,9999,180,${w},99,99,9999,99999,9,999999999,999,.999,999,99,999,999,99`
    );
  });
}

export function epwText(): string {
  return `${[...EPW_HEADER, ...epwRows()].join("\r\n")}\r\n`;
}

export const TMY3_HEADER: readonly string[] = [
  '999999,"INVENTED HOLLOW",NW,1.0,52.100,9.400,90',
  "Date (MM/DD/YYYY),Time (HH:MM),ETR (W/m^2),ETRN (W/m^2),GHI (W/m^2),GHI source,GHI uncert (%),DNI (W/m^2)," +
    "DNI source,DNI uncert (%),DHI (W/m^2),DHI source,DHI uncert (%),Dry-bulb (C),Dry-bulb source," +
    "Dry-bulb uncert (code),Wspd (m/s),Wspd source,Wspd uncert (code)",
];

export function tmy3Rows(): readonly string[] {
  const two = (n: number) => String(n).padStart(2, "0");
  return hours().map(({ month, day, hour, ghi, temp, wind }, i) => {
    const g = i === 1000 || i === 1001 ? "-9900" : ghi;
    const t = i === 500 ? "-9900" : tenths(temp);
    const w = i === 77 ? "-9900" : tenths(wind);
    return (
      `${two(month)}/${two(day)}/${1990 + month},${two(hour)}:00,0,0,` +
      `${g},1,13,${Math.floor((ghi * 7) / 10)},1,9,${Math.floor((ghi * 3) / 10)},1,9,${t},A,7,${w},A,7`
    );
  });
}

export function tmy3Text(): string {
  return `${[...TMY3_HEADER, ...tmy3Rows()].join("\n")}\n`;
}
