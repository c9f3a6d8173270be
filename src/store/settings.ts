import { join } from "node:path";
import Conf from "conf";
import * as z from "zod";

const settingsShape = z.object({
  /** ISO 4217, of briefs still to be begun. */
  currency: z
    .string()
    .regex(/^[A-Z]{3}$/)
    .optional(),
  /** What a bare number is taken in, of briefs still to be begun. */
  units: z.enum(["metric", "us"]).optional(),
});
export type Settings = z.output<typeof settingsShape>;

/** What `Conf` is always opened with; no `schema`: compiling one takes longer than everything else it does. */
export const confOptions = {
  projectName: "mastwright",
  projectSuffix: "",
  accessPropertiesByDotNotation: false,
  configFileMode: 0o600,
} as const;

export interface SettingsStore {
  read(): Settings;
  /** false where they could not be kept. */
  write(settings: Settings): boolean;
  readonly path: string;
}

/** The builder's settings. Unreadable ones count as none: there is nothing in them that cannot be asked again. */
export function openSettings(folder: string): SettingsStore {
  const open = () =>
    new Conf<Record<string, unknown>>({ ...confOptions, cwd: folder, configName: "settings" });
  return {
    path: join(folder, "settings.json"),
    read() {
      try {
        const read = settingsShape.safeParse(open().store);
        return read.success ? read.data : {};
      } catch {
        return {};
      }
    },
    write(settings) {
      try {
        open().store = { ...settings };
        return true;
      } catch {
        return false;
      }
    },
  };
}
