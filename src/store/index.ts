export {
  type BriefFile,
  type BriefReading,
  briefJsonSchema,
  type FileAnswer,
  migrateBrief,
  readBriefText,
  type SchemaQuestion,
  schemaVersion,
} from "./brief-file.ts";
export { type BriefStore, idOf, type Loaded, openBriefs, type Saved } from "./briefs.ts";
export { type Folders, foldersFrom } from "./folders.ts";
export { openSettings, type Settings, type SettingsStore } from "./settings.ts";
