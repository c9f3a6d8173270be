import type { Remember } from "../design/index.ts";

/** So many results of each task are kept; hours of many years weigh megabytes, a run's figures some kilobytes. */
const keptAtMost: Readonly<Record<string, number>> = { design: 6, weather: 4, yield: 8 };
const usuallyKept = 600;

/** A memory for long sums: the same task with the same facts is worked once; of each task the oldest goes first. */
export function remembering(): Remember {
  const byTask = new Map<string, Map<string, unknown>>();
  return (task, given, work) => {
    const kept = byTask.get(task) ?? new Map<string, unknown>();
    byTask.set(task, kept);
    const key = JSON.stringify(given);
    if (kept.has(key)) return kept.get(key) as ReturnType<typeof work>;
    const result = work();
    kept.set(key, result);
    const [oldest] = kept.keys();
    if (kept.size > (keptAtMost[task] ?? usuallyKept) && oldest !== undefined) kept.delete(oldest);
    return result;
  };
}
