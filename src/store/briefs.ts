/**
 * Saved briefs, one file each. Invariants:
 *
 * 1. A file is replaced whole and at once (conf writes beside it and renames): a crash leaves the old or the new one.
 * 2. A file that cannot be read is renamed `NAME.json.bad-N` and said; it is never overwritten. One made by a later
 *    version of the program is left alone.
 * 3. Where nothing can be written the interview goes on in memory, and that is said once.
 * 4. An id is `^[a-z0-9-]{1,64}$`: no path can be made of it.
 */
import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, statSync } from "node:fs";
import { join } from "node:path";
import Conf from "conf";
import { type BriefFile, migrateBrief } from "./brief-file.ts";
import { type Lock, takeLock } from "./lock.ts";
import { confOptions } from "./settings.ts";

export type Loaded =
  | { readonly kind: "brief"; readonly file: BriefFile }
  | { readonly kind: "missing" }
  | { readonly kind: "newer"; readonly version: number }
  /** It could not be read, and where it lies now; null where it could not even be renamed. */
  | { readonly kind: "damaged"; readonly says: string; readonly keptAs: string | null };

export interface Saved {
  readonly id: string;
  readonly name: string;
  readonly answered: number;
  /** ISO 8601; null in a file that was written by hand. */
  readonly savedUtc: string | null;
}

export interface BriefStore {
  readonly folder: string;
  pathOf(id: string): string;
  exists(id: string): boolean;
  /** The readable ones, latest saved first. */
  list(): readonly Saved[];
  load(id: string): Loaded;
  /** null when saved; else why not, worded for the builder, the first time only ("" after that). */
  save(id: string, file: BriefFile): string | null;
  remove(id: string): void;
  lock(id: string): Lock;
}

const idForm = /^[a-z0-9-]{1,64}$/;
const leftoverMs = 3_600_000;
const unwritable = new Set(["EACCES", "EPERM", "EROFS", "ENOSPC", "EDQUOT", "ENOTDIR", "EEXIST", "EISDIR"]);

/** The id of a brief by its name: "Hill gate" is hill-gate; null where nothing of it can stand in a file name. */
export function idOf(name: string): string | null {
  const id = name
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "")
    .slice(0, 64)
    .replace(/-+$/, "");
  return idForm.test(id) ? id : null;
}

function filesIn(folder: string): readonly string[] {
  try {
    return readdirSync(folder);
  } catch {
    return [];
  }
}

/** Removes what interrupted writes have left, an hour after. */
function sweep(folder: string): void {
  for (const name of filesIn(folder)) {
    if (!/\.json\.tmp-[0-9a-f]+$/.test(name)) continue;
    try {
      const path = join(folder, name);
      if (Date.now() - statSync(path).mtimeMs > leftoverMs) rmSync(path);
    } catch {
      // Not ours to remove, or gone: a leftover does no harm.
    }
  }
}

function setAside(path: string): string | null {
  for (let number = 1; number < 1000; number++) {
    const kept = `${path}.bad-${number}`;
    if (existsSync(kept)) continue;
    try {
      renameSync(path, kept);
      return kept;
    } catch {
      return null;
    }
  }
  return null;
}

export function openBriefs(dataFolder: string): BriefStore {
  const folder = join(dataFolder, "briefs");
  sweep(folder);
  let hasSaidUnwritable = false;

  const checked = (id: string): string => {
    if (!idForm.test(id)) throw new Error(`not an id of a brief: ${id}`);
    return id;
  };
  const pathOf = (id: string): string => join(folder, `${checked(id)}.json`);
  const exists = (id: string): boolean => existsSync(pathOf(id));
  const confOf = (id: string) =>
    new Conf<Record<string, unknown>>({
      ...confOptions,
      cwd: dataFolder,
      configName: `briefs/${checked(id)}`,
    });
  /** As it lies there, nothing renamed. */
  const readingOf = (id: string): ReturnType<typeof migrateBrief> => {
    try {
      return migrateBrief({ ...confOf(id).store });
    } catch (error) {
      return { kind: "damaged", says: (error as Error).message };
    }
  };

  return {
    folder,
    pathOf,
    exists,
    list() {
      const saved: Saved[] = [];
      for (const name of filesIn(folder)) {
        const id = name.replace(/\.json$/, "");
        if (!name.endsWith(".json") || !idForm.test(id)) continue;
        const reading = readingOf(id);
        if (reading.kind !== "brief") continue;
        const { file } = reading;
        saved.push({
          id,
          name: file.name,
          answered: Object.keys(file.answers).length,
          savedUtc: file.savedUtc ?? null,
        });
      }
      return saved.sort(
        (a, b) => (b.savedUtc ?? "").localeCompare(a.savedUtc ?? "") || a.id.localeCompare(b.id),
      );
    },
    load(id) {
      if (!exists(id)) return { kind: "missing" };
      const reading = readingOf(id);
      if (reading.kind !== "damaged") return reading;
      return { ...reading, keptAs: setAside(pathOf(id)) };
    },
    save(id, file) {
      try {
        confOf(id).store = { ...file };
        return null;
      } catch (error) {
        const { code } = error as NodeJS.ErrnoException;
        if (code === undefined || !unwritable.has(code)) throw error;
        if (hasSaidUnwritable) return "";
        hasSaidUnwritable = true;
        const why =
          code === "ENOSPC" || code === "EDQUOT" ? "there is no room left" : "it cannot be written to";
        return `Your answers cannot be saved in ${folder}: ${why}. The interview goes on, but they will be lost at its end.`;
      }
    },
    remove(id) {
      rmSync(pathOf(id));
    },
    lock(id) {
      try {
        mkdirSync(folder, { recursive: true });
      } catch {
        return { kind: "none" };
      }
      return takeLock(join(folder, `${checked(id)}.lock`));
    },
  };
}
