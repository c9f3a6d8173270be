import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { breachesOf, circlesOf, importsOf, roomCirclesOf, type Sources } from "./breaches.ts";
import { rooms } from "./rooms.ts";

const root = join(dirname(fileURLToPath(import.meta.url)), "..", "..");
const isSource = (path: string): boolean => /\.(?:ts|tsx|mts|cts|js|jsx|mjs|cjs)$/.test(path);

function sourcesIn(folder: string, into: Map<string, string>): void {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) sourcesIn(path, into);
    else if (isSource(entry.name)) into.set(relative(root, path), readFileSync(path, "utf8"));
  }
}

const sources = new Map<string, string>();
for (const folder of ["src", "flows"]) sourcesIn(join(root, folder), sources);

describe("the floors", () => {
  test("every source file was read: a gate that reads nothing must not pass", () => {
    const onDisk = ["src", "flows"].flatMap((folder) =>
      readdirSync(join(root, folder), { recursive: true, encoding: "utf8" }).filter(isSource),
    );
    expect(sources.size).toBeGreaterThan(100);
    expect(sources.size).toBe(onDisk.length);
    const arrows = [...sources.values()].reduce((count, text) => count + importsOf(text).length, 0);
    expect(arrows).toBeGreaterThan(sources.size);
  });

  test("arrows go down only, by the doors, and pure rooms stay pure", () => {
    expect(breachesOf(sources)).toEqual([]);
  });

  test("there is no circle of files", () => {
    expect(circlesOf(sources)).toEqual([]);
  });

  test("there is no circle of rooms", () => {
    expect(roomCirclesOf(sources)).toEqual([]);
  });

  test("every listed room exists", () => {
    for (const room of Object.keys(rooms)) expect(existsSync(join(root, room)), room).toBe(true);
  });

  test("the list itself has no arrow up", () => {
    const reaches = (from: string, to: string): boolean =>
      rooms[from]!.below.some((room) => room === to || reaches(room, to));
    for (const room of Object.keys(rooms)) expect(reaches(room, room), room).toBe(false);
  });
});

describe("planted breaches are found", () => {
  const with_ = (path: string, text: string): Sources => new Map([...sources, [path, text]]);
  const planted: readonly (readonly [what: string, path: string, text: string])[] = [
    ["an arrow up", "src/core/sun/planted.ts", 'import { x } from "../../design/index.ts";'],
    ["a re-export", "src/design/planted.ts", 'export * from "../interview/define.ts";'],
    ["a dynamic import", "src/report/planted.ts", 'const x = await import("../store/index.ts");'],
    ["an import for its side effect", "flows/planted.ts", 'import "../src/store/index.ts";'],
    ["an inline type", "src/interview/planted.ts", 'type X = import("../store/index.ts").X;'],
    ["a type-only import", "src/store/planted.ts", 'import type { X } from "../interview/define.ts";'],
    ["an import over several lines", "src/core/sun/planted.ts", 'import {\n  x,\n} from "../link/index.ts";'],
    ["a window instead of the door", "src/design/planted.ts", 'import { x } from "../core/sun/position.ts";'],
    [
      "flows reaching the engine",
      "flows/planted.ts",
      'import { update } from "../src/interview/session.ts";',
    ],
    ["a package in a pure room", "src/core/link/planted.ts", 'import x from "geographiclib-geodesic";'],
    ["a node module in a pure room", "src/design/planted.ts", 'import { readFileSync } from "node:fs";'],
    ["prompts beside ink", "src/screen/planted.tsx", 'import { input } from "@inquirer/prompts";'],
    ["ink in the plain face", "src/plain/planted.ts", 'import { render } from "ink";'],
    ["an unlisted room", "src/planted/index.ts", "export const x = 1;"],
    ["an unlisted field", "src/core/planted/index.ts", "export const x = 1;"],
    ["a file on the stairs", "src/planted.ts", "export const x = 1;"],
    ["chance", "src/core/numerics/planted.ts", "export const x = () => Math.random();"],
    ["the clock", "src/design/planted.ts", "export const x = () => new Date();"],
    ["the environment", "src/report/planted.ts", "export const x = process.env.HOME;"],
    ["module-level state", "src/interview/planted.ts", "let count = 0;\nexport const x = () => ++count;"],
    ["exported module-level state", "flows/planted.ts", "export let count = 0;"],
  ];
  test.each(planted)("%s", (_what, path, text) => {
    const fresh = breachesOf(with_(path, text)).filter((breach) => breach.startsWith(`${path}:`));
    expect(fresh).toHaveLength(1);
  });

  test("a circle of files", () => {
    const circled = new Map([
      ["src/core/sun/a.ts", 'import { b } from "./b.ts";'],
      ["src/core/sun/b.ts", 'export { c } from "./c.ts";'],
      ["src/core/sun/c.ts", 'import type { A } from "./a.ts";'],
    ]);
    expect(circlesOf(circled)).toEqual([
      "src/core/sun/a.ts -> src/core/sun/b.ts -> src/core/sun/c.ts -> src/core/sun/a.ts",
    ]);
  });

  test("a circle of rooms that is none of files", () => {
    const circled = new Map([
      ["src/plain/a.ts", 'import { b } from "../screen/b.ts";'],
      ["src/screen/c.ts", 'import { d } from "../plain/d.ts";'],
    ]);
    expect(roomCirclesOf(circled)).toEqual(["src/plain", "src/screen"]);
    expect(circlesOf(circled)).toEqual([]);
  });

  test("comments and prose are no breach", () => {
    const text = [
      '/** Never import { x } from "../../design/index.ts", nor Math.random. */',
      '// import "node:fs"',
      'export const says = "the process takes a Date";',
      "export const url = 'https://example.org';",
    ].join("\n");
    expect(
      breachesOf(with_("src/core/sun/planted.ts", text)).filter((line) => line.includes("planted")),
    ).toEqual([]);
  });
});
