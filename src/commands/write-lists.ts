import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Program, Said, State } from "./program.ts";

/** What an earlier list of ours says near its beginning. */
const ownMarks = ["Camera post:", "part,quantity,"];

/** Whether a file may be written: it does not exist, or is an earlier list of ours. */
function isOurs(path: string): boolean {
  try {
    const head = readFileSync(path, "utf8").slice(0, 4096);
    return ownMarks.some((mark) => head.includes(mark));
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === "ENOENT";
  }
}

/** A path that no file of somebody else's lies at. */
function freePath(folder: string, stem: string, ending: string): string {
  for (let number = 1; ; number++) {
    const path = join(folder, `${stem}${number === 1 ? "" : `-${number}`}.${ending}`);
    if (isOurs(path)) return path;
  }
}

/** Writes the lists where the builder is, as a page to print and as text, and says where they lie. */
export function writeLists(program: Program, state: State, id: string): Said {
  const folder = process.cwd();
  try {
    const written = (["html", "md", "csv"] as const).map((format) => {
      const path = freePath(folder, format === "csv" ? `${id}-parts` : id, format);
      writeFileSync(path, program.sheet(state, format));
      return path;
    });
    return {
      kind: "aside",
      title: "The lists are written",
      lines: [
        `To print or to send: ${written[0]}`,
        `To read as text: ${written[1]}`,
        `The parts for a spreadsheet: ${written[2]}`,
      ],
    };
  } catch (error) {
    return {
      kind: "aside",
      title: "The lists could not be written here",
      lines: [
        `${(error as Error).message}.`,
        `From another folder, this prints them: mastwright checklist ${id} --to md`,
      ],
    };
  }
}
