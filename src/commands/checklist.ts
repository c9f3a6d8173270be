import type { Context } from "./context.ts";
import { printSheet } from "./sheet.ts";

export const run = (context: Context): number => printSheet(context, "md");
