/** Builds, once a run and only where something has changed, the programs that the journeys start. */
import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const root = join(dirname(fileURLToPath(import.meta.url)), "..", "..");
const built = join(root, "node_modules", ".cache", "mastwright");

/** The real program, and the same faces and commands over the tiny three-question conversation. */
export const programs = {
  real: { file: join(built, "real", "mastwright.js"), flags: ["--out", join(built, "real")] },
  tiny: {
    file: join(built, "tiny", "mastwright.js"),
    flags: ["--out", join(built, "tiny"), "--program", join(root, "tests/helpers/tiny-program.ts")],
  },
} as const;

function stateOfSources(): string {
  const hash = createHash("sha256");
  const add = (path: string): void => {
    const { mtimeMs, size } = statSync(path);
    hash.update(`${path} ${mtimeMs} ${size}\n`);
  };
  for (const folder of ["src", "flows", "tests/helpers"]) {
    for (const name of readdirSync(join(root, folder), { recursive: true, encoding: "utf8" }).sort()) {
      if (!name.includes("/make/")) add(join(root, folder, name));
    }
  }
  for (const file of [".build/bundle.mjs", "package.json", "tsconfig.json"]) add(join(root, file));
  return hash.digest("hex");
}

export default function setup(): void {
  const state = stateOfSources();
  const stamp = join(built, "stamp");
  const isCurrent = existsSync(stamp) && readFileSync(stamp, "utf8") === state;
  if (isCurrent && Object.values(programs).every(({ file }) => existsSync(file))) return;
  mkdirSync(built, { recursive: true });
  for (const { flags } of Object.values(programs)) {
    execFileSync(process.execPath, [join(root, ".build/bundle.mjs"), ...flags], { stdio: "inherit" });
  }
  writeFileSync(stamp, state);
}
