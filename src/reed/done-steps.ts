import { bassoonActions } from "./bassoon.js";

/** Something that has been done to a reed, by whole units of an action. */
export interface DoneStep {
  /** Id of an action. */
  readonly action: string;
  readonly amount: number;
}

const mostSteps = 400;

/** What was done in one sitting, in order. */
export type Sitting = readonly DoneStep[];

/**
 * Sittings as one short text.
 *
 * @example encodeDone([[{ action: "thinWings", amount: 2 }], []]) → "thinWings-2~"
 */
export function encodeDone(sittings: readonly Sitting[]): string {
  return sittings
    .map((sitting) => sitting.map(({ action, amount }) => `${action}-${amount}`).join("."))
    .join("~");
}

/**
 * The inverse of `encodeDone`.
 *
 * Shape   text, a function that takes what cannot be read and what was allowed → the rest.
 * Domain  any text; never throws. More steps than any reed outlives are refused as a whole.
 */
export function decodeDone(
  text: string,
  refuse: (cell: string, allowed: readonly string[]) => void,
  refuseAll: (count: number, most: number) => void = () => {},
): Sitting[] {
  const count = text.split(/[.~]/).length;
  if (count > mostSteps) {
    refuseAll(count, mostSteps);
    return [];
  }
  const known = bassoonActions.actions.map(({ id }) => id);
  const sittings = text.split("~").map((sitting) =>
    sitting.split(".").flatMap((cell) => {
      const [, action = "", amount = ""] = /^(\w+)-([1-9]\d?)$/.exec(cell) ?? [];
      if (known.includes(action)) return { action, amount: Number(amount) };
      if (cell !== "") refuse(cell, known);
      return [];
    }),
  );
  // Only today's sitting may be empty still.
  return sittings.filter(
    (sitting, i) => sitting.length > 0 || (i > 0 && i === sittings.length - 1),
  );
}
