/** Why a text could not be read, for the program and in one sentence for the builder. */
export interface FileRefused<Why extends string = string> {
  readonly kind: "refused";
  readonly why: Why;
  readonly reason: string;
}

export function refused<Why extends string>(why: Why, reason: string): FileRefused<Why> {
  return { kind: "refused", why, reason };
}
