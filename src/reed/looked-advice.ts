import type { PlanKind } from "../engine/plan-adjustments.js";
import type { SevenValues } from "../engine/qualities.js";

/** A teacher's own seven values, by the id of the quality. */
export type Judged = Readonly<Record<string, SevenValues>>;

/** The kinds of plan, as a link names them. */
export const planKinds: readonly PlanKind[] = ["undoable", "fewest", "gentlest"];

/** The qualities that a link may name: those of the file, which only the page that shows them carries. */
export const qualityIds: readonly string[] = [
  "highEntries",
  "lowEntries",
  "softest",
  "loudest",
  "steadyPitch",
  "dynamicRange",
  "evenTone",
  "easeOfBlowing",
];

/** Hundredths of a point are enough for a judgement. */
const parts = 100;

/**
 * A judgement as a link keeps it: from 0 to 10, in whole hundredths.
 *
 * @example judgement(4.567) → 4.57
 */
export function judgement(value: number): number {
  return Math.round(Math.min(10, Math.max(0, value)) * parts) / parts;
}

/**
 * A teacher's own values as one short text.
 *
 * @example encodeJudged({ loudest: [1, 2, 3, 4, 5, 6, 7] }) → "loudest-100.200.300.400.500.600.700"
 */
export function encodeJudged(judged: Judged): string {
  return Object.entries(judged)
    .map(([id, values]) => `${id}-${values.map((one) => Math.round(one * parts)).join(".")}`)
    .join("~");
}

/**
 * The inverse of `encodeJudged`.
 *
 * Shape   text, a function that takes what cannot be read → the rest.
 * Domain  any text; never throws.
 */
export function decodeJudged(text: string, refuse: (cell: string) => void): Judged {
  const judged: Record<string, SevenValues> = {};
  for (const cell of text.split("~")) {
    const [, id = "", numbers = ""] = /^(\w+)-(\d{1,4}(?:\.\d{1,4}){6})$/.exec(cell) ?? [];
    const values = numbers.split(".").map((one) => Number(one) / parts);
    const isRead = qualityIds.includes(id) && values.every((one) => one <= 10);
    if (isRead) judged[id] = values as unknown as SevenValues;
    else if (cell !== "") refuse(cell);
  }
  return judged;
}
