import { homedir } from "node:os";
import { join } from "node:path";

export interface Folders {
  readonly data: string;
  readonly settings: string;
}

/** Where the platform keeps a program's data and settings; MASTWRIGHT_HOME puts both in one place. */
export function foldersFrom(
  env: Readonly<Record<string, string | undefined>>,
  about: { readonly platform: string; readonly home: string } = {
    platform: process.platform,
    home: homedir(),
  },
): Folders {
  const own = env.MASTWRIGHT_HOME;
  if (own) return { data: own, settings: own };
  const { home } = about;
  if (about.platform === "darwin") {
    return {
      data: join(home, "Library", "Application Support", "mastwright"),
      settings: join(home, "Library", "Preferences", "mastwright"),
    };
  }
  if (about.platform === "win32") {
    return {
      data: join(env.LOCALAPPDATA || join(home, "AppData", "Local"), "mastwright", "Data"),
      settings: join(env.APPDATA || join(home, "AppData", "Roaming"), "mastwright", "Config"),
    };
  }
  return {
    data: join(env.XDG_DATA_HOME || join(home, ".local", "share"), "mastwright"),
    settings: join(env.XDG_CONFIG_HOME || join(home, ".config"), "mastwright"),
  };
}
