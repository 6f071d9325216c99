import { keptRun } from "../lesson/kept-run.js";
import type { Lesson } from "../lesson/lesson.js";
import { exerciseAt } from "../lesson/lesson-state.js";
import type { Attempt } from "./attempt.js";
import { packedForm } from "./pack-attempt.js";

/** What a platform has kept: the attempt, and the step counted from 1. Empty where there is none. */
export interface KeptText {
  readonly packed: string;
  readonly place: string;
}

/**
 * What can be used of an attempt that a platform kept.
 *
 * Shape   a lesson, texts → an attempt at that lesson.
 * Throws  nothing, whatever was kept.
 *
 * @example unpackAttempt(lesson, { packed: "1;0.1:2w", place: "1" }).first → { "0.1": false }
 */
export function unpackAttempt(lesson: Lesson, { packed, place }: KeptText): Attempt {
  const [form, ...texts] = packed.split(";");
  const entries = form === packedForm ? texts.flatMap((text) => entryFrom(text) ?? []) : [];
  const exercises = Object.fromEntries(entries.map(({ id, state }) => [id, state]));
  const first = entries.flatMap(({ id, first: mark }) =>
    mark !== undefined && exerciseAt(lesson, id) ? [[id, mark] as const] : [],
  );
  const step = /^\d{1,4}$/.test(place) ? Number(place) - 1 : 0;
  return { run: keptRun(lesson, { step, exercises }), first: Object.fromEntries(first) };
}

function entryFrom(text: string) {
  const [whole, id, tries, lock, hints, mark, answer] =
    /^(\d+\.\d+):(\d{1,4})(L?)(?:h([1-3]))?([rw]?)(?::(.+))?$/.exec(text) ?? [];
  if (whole === undefined) return undefined;
  const found = answer === undefined ? undefined : answerFrom(answer);
  const state = {
    ...(found ? { answer: found } : {}),
    locked: lock === "L",
    hints: Number(hints ?? 0),
    tries: Number(tries),
  };
  return { id: id!, state, first: mark ? mark === "r" : undefined };
}

/** Of some shape; `keptRun` judges whether it is an answer. */
function answerFrom(text: string): object | undefined {
  const cells = text.slice(1).split(",");
  switch (text[0]) {
    case "p": {
      const [sure] = cells.slice(3).map(Number);
      const guess = cells.slice(0, 3).map(Number);
      return { kind: "predict", guess, ...(isSure(sure) ? { sure } : {}) };
    }
    case "s":
      return { kind: "read", shares: cells.map(Number) };
    case "c":
      return { kind: "choose", option: Number(cells[0]) };
    case "o":
      return { kind: "order", actions: cells };
    case "a":
      return { kind: "aim", values: valuesFrom(cells) };
    case "i":
      return { kind: "stand-in", values: valuesFrom(cells) };
    default:
      return undefined;
  }
}

function isSure(sure: number | undefined): boolean {
  return sure === 1 || sure === 2 || sure === 3;
}

function valuesFrom(cells: readonly string[]): Readonly<Record<string, number>> {
  return Object.fromEntries(
    cells.filter(Boolean).map((cell) => {
      const [id, value] = cell.split("=");
      return [id!, Number(value)];
    }),
  );
}
