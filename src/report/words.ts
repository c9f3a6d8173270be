/** The words for how grave a finding is: colour and signs only ever come on top of them. */
export const severityWord = { note: "Note", caution: "Caution", stop: "Stop" } as const;

export const monthShort = [
  "Jan",
  "Feb",
  "Mar",
  "Apr",
  "May",
  "Jun",
  "Jul",
  "Aug",
  "Sep",
  "Oct",
  "Nov",
  "Dec",
] as const;
