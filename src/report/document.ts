import type { Severity } from "../design/index.ts";

/** A document before it has a format: what the Markdown, HTML and text writers all start from. */
export type Block =
  | { readonly kind: "heading"; readonly level: 1 | 2 | 3; readonly text: string }
  | { readonly kind: "paragraph"; readonly text: string }
  | { readonly kind: "facts"; readonly rows: readonly (readonly [label: string, value: string])[] }
  | {
      readonly kind: "table";
      readonly columns: readonly string[];
      /** One a column; numbers stand right. */
      readonly align: readonly ("left" | "right")[];
      readonly rows: readonly (readonly string[])[];
    }
  | { readonly kind: "steps"; readonly isOrdered: boolean; readonly steps: readonly DocumentStep[] }
  | { readonly kind: "warning"; readonly severity: Severity; readonly text: string }
  | {
      readonly kind: "drawing";
      /** In signs, no wider than asked. */
      readonly linesAt: (columns: number) => readonly string[];
      readonly svg: string;
      readonly caption: string;
    };

export interface DocumentStep {
  /** Read before the step is done. */
  readonly cautions: readonly string[];
  readonly does: string;
  readonly why: string;
  readonly expects: string;
}

export type Document = readonly Block[];
