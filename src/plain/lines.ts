import { createInterface } from "node:readline";
import type { Readable } from "node:stream";

/** Lines as they come in, one asked for at a time; nothing typed ahead is lost between two askings. */
export interface Lines {
  /** The next line without its end; null when the input has ended, or at once when `cancelled` is aborted. */
  next(cancelled?: AbortSignal): Promise<string | null>;
  close(): void;
}

/**
 * Reads lines without any terminal control: the terminal's own line editing stays, and no escape sequence is written.
 */
export function openLines(input: Readable): Lines {
  const reader = createInterface({ input, terminal: false, crlfDelay: Number.POSITIVE_INFINITY });
  const waiting: string[] = [];
  let hasEnded = false;
  let wake: () => void = () => {};
  reader.on("line", (line) => {
    waiting.push(line);
    wake();
  });
  reader.on("close", () => {
    hasEnded = true;
    wake();
  });
  return {
    async next(cancelled) {
      while (waiting.length === 0 && !hasEnded && !cancelled?.aborted) {
        await new Promise<void>((resolve) => {
          wake = () => {
            cancelled?.removeEventListener("abort", wake);
            resolve();
          };
          cancelled?.addEventListener("abort", wake);
        });
      }
      if (cancelled?.aborted) return null;
      return waiting.shift() ?? null;
    },
    close() {
      reader.close();
      input.pause();
    },
  };
}
