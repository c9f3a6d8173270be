import { posix } from "node:path";
import { impureWords, narrowArrows, type Room, rooms } from "./rooms.ts";

/** Source files by path from the root of the repository. */
export type Sources = ReadonlyMap<string, string>;

/** The text without its comments, strings kept: what a comment says imports nothing. */
export function withoutComments(text: string): string {
  return text.replace(
    /("(?:\\.|[^"\\\n])*"|'(?:\\.|[^'\\\n])*'|`(?:\\.|[^`\\])*`)|\/\*[\s\S]*?\*\/|(?<![:\\])\/\/[^\n]*/g,
    (whole, string: string | undefined) => string ?? whole.replace(/[^\n]/g, " "),
  );
}

/** The text without what stands in strings: prose may say "process". */
function withoutStrings(text: string): string {
  return text
    .replace(/"(?:\\.|[^"\\\n])*"|'(?:\\.|[^'\\\n])*'/g, '""')
    .replace(/`(?:\\.|[^`\\$]|\$(?!\{))*`/g, "``");
}

/** Every module that a file names: imports, re-exports, dynamic and type-only ones alike. */
export function importsOf(text: string): readonly string[] {
  const found = withoutComments(text).matchAll(/\b(?:from|import|require)\s*\(?\s*(["'`])([^"'`\n]+)\1/g);
  return Array.from(found, (match) => match[2]!);
}

/** The room a file is in: the longest listed folder that holds it, but no folder of core or src may hide in its parent. */
export function roomOf(path: string): string | null {
  const parts = path.split("/");
  if (parts[0] === "flows") return "flows";
  if (parts[0] !== "src" || parts.length < 3) return null;
  if (parts[1] === "core") return parts.length === 3 ? "src/core" : `src/core/${parts[2]}`;
  return `src/${parts[1]}`;
}

function importBreach(
  path: string,
  room: string,
  rules: Room,
  imported: string,
  sources: Sources,
): string | null {
  if (!imported.startsWith(".")) {
    const name = imported.startsWith("node:")
      ? "node"
      : imported
          .split("/")
          .slice(0, imported.startsWith("@") ? 2 : 1)
          .join("/");
    const isAllowed = rules.packages.includes(name) || (name === "react" && rules.packages.includes("react"));
    return isAllowed ? null : `${path}: ${room} may not import the package ${imported}`;
  }
  const target = posix.normalize(posix.join(posix.dirname(path), imported));
  if (room === "src/commands" && target === "package.json") return null;
  const targetRoom = roomOf(target);
  if (targetRoom === null || !sources.has(target))
    return `${path}: imports ${imported}, which is no source file of a room`;
  if (targetRoom === room) return null;
  if (!rules.below.includes(targetRoom)) return `${path}: ${room} may not import ${targetRoom}`;
  const file = target.slice(targetRoom.length + 1);
  const doors = narrowArrows[`${room} -> ${targetRoom}`] ?? rooms[targetRoom]?.doors ?? [];
  return doors.includes(file)
    ? null
    : `${path}: ${targetRoom} is entered by ${doors.join(", ")}, not by ${file}`;
}

/** Every import, forbidden word and unlisted folder that breaks the rules, as one line each. */
export function breachesOf(sources: Sources): readonly string[] {
  const breaches: string[] = [];
  for (const [path, text] of sources) {
    const room = roomOf(path);
    const rules = room === null ? undefined : rooms[room];
    if (room === null || rules === undefined) {
      breaches.push(`${path}: lies in no listed room`);
      continue;
    }
    for (const imported of importsOf(text)) {
      const breach = importBreach(path, room, rules, imported, sources);
      if (breach !== null) breaches.push(breach);
    }
    if (!rules.isPure) continue;
    const code = withoutStrings(withoutComments(text));
    for (const [word, why] of impureWords) {
      if (word.test(code)) breaches.push(`${path}: ${room} is pure, and this is ${why} (${word.source})`);
    }
  }
  return breaches;
}

/** Circles of imports between files, each as the path round it; type-only imports count. */
export function circlesOf(sources: Sources): readonly string[] {
  const circles: string[] = [];
  const done = new Set<string>();
  const walk = (path: string, trail: readonly string[]): void => {
    const start = trail.indexOf(path);
    if (start >= 0) {
      circles.push([...trail.slice(start), path].join(" -> "));
      return;
    }
    if (done.has(path)) return;
    for (const imported of importsOf(sources.get(path) ?? "")) {
      if (!imported.startsWith(".")) continue;
      const target = posix.normalize(posix.join(posix.dirname(path), imported));
      if (sources.has(target)) walk(target, [...trail, path]);
    }
    done.add(path);
  };
  for (const path of sources.keys()) walk(path, []);
  return circles;
}

/** Circles of arrows between rooms. */
export function roomCirclesOf(sources: Sources): readonly string[] {
  const arrows = new Map<string, Set<string>>();
  for (const [path, text] of sources) {
    const room = roomOf(path);
    if (room === null) continue;
    const targets = arrows.get(room) ?? new Set<string>();
    arrows.set(room, targets);
    for (const imported of importsOf(text)) {
      if (!imported.startsWith(".")) continue;
      const target = roomOf(posix.normalize(posix.join(posix.dirname(path), imported)));
      if (target !== null && target !== room) targets.add(target);
    }
  }
  const reaches = (from: string, to: string, seen: Set<string>): boolean => {
    if (seen.has(from)) return false;
    seen.add(from);
    const next = arrows.get(from) ?? new Set<string>();
    return next.has(to) || [...next].some((room) => reaches(room, to, seen));
  };
  return [...arrows.keys()].filter((room) => reaches(room, room, new Set()));
}
