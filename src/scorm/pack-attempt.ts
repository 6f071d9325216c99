import type { Answer } from "../lesson/answer.js";
import { type ExerciseState, exerciseStateOf } from "../lesson/lesson-state.js";
import type { Attempt } from "./attempt.js";

/** The form of the text; another one is not read. */
export const packedForm = "1";

interface Entry {
  readonly id: string;
  readonly state: ExerciseState;
  readonly first: boolean | undefined;
}

/** Takes something of less worth out of what is kept. */
type Reduction = (entries: readonly Entry[]) => readonly Entry[];

/**
 * An attempt as a short text of letters, digits and signs, for a platform that keeps so many characters: answers, locks,
 * hints, tries, first marks. The step is not in it. What would be too long goes without what is worth least: first
 * digits that nobody sees, then answers that were not handed in, then handed-in answers from the front (those that may
 * be tried again before predictions). First marks, and so the score, go last.
 *
 * Shape   attempt, most characters → text; with room for all of it, `unpackAttempt` gives exactly the same back.
 *
 * @example packAttempt(newAttempt(lesson), 4096) → "1"
 */
export function packAttempt(attempt: Attempt, most: number): string {
  let entries = entriesOf(attempt);
  for (const reduce of reductions(entries)) {
    if (textOf(entries).length <= most) break;
    entries = reduce(entries);
  }
  return textOf(entries);
}

function entriesOf({ run, first }: Attempt): readonly Entry[] {
  const ids = new Set([...Object.keys(run.exercises), ...Object.keys(first)]);
  return [...ids]
    .map((id) => ({ id, state: exerciseStateOf(run, id), first: first[id] }))
    .toSorted((a, b) => a.id.localeCompare(b.id, "en", { numeric: true }));
}

function reductions(entries: readonly Entry[]): Reduction[] {
  const answered = entries.flatMap(({ id, state: { answer } }) => (answer ? [{ id, answer }] : []));
  const isGuess = ({ answer }: { readonly answer: Answer }): boolean => answer.kind === "predict";
  const inOrder = [...answered.filter((one) => !isGuess(one)), ...answered.filter(isGuess)];
  return [
    (all) => all.map((one) => withAnswer(one, one.state.answer && rounded(one.state.answer))),
    (all) => all.map((one) => (one.state.locked ? one : withAnswer(one, undefined))),
    ...inOrder.map(
      ({ id }): Reduction =>
        (all) =>
          all.map((one) => (one.id === id ? withAnswer(one, undefined) : one)),
    ),
    ...entries.map((): Reduction => (all) => all.slice(1)),
  ];
}

function withAnswer(entry: Entry, answer: Answer | undefined): Entry {
  const { answer: _before, ...state } = entry.state;
  return { ...entry, state: answer ? { ...state, answer } : state };
}

/** To a ten-thousandth: recipes stand in thousandths, and a share is shown in whole per cents. */
function rounded(answer: Answer): Answer {
  const near = (value: number): number => Math.round(value * 1e4) / 1e4;
  if ("guess" in answer) return { ...answer, guess: nearTriple(answer.guess, near) };
  if ("shares" in answer) return { ...answer, shares: nearTriple(answer.shares, near) };
  if (!("values" in answer)) return answer;
  const values = Object.entries(answer.values).map(([id, value]) => [id, near(value)] as const);
  return { ...answer, values: Object.fromEntries(values) };
}

function nearTriple(
  [a, b, c]: readonly [number, number, number],
  near: (value: number) => number,
): readonly [number, number, number] {
  return [near(a), near(b), near(c)];
}

function textOf(entries: readonly Entry[]): string {
  return [packedForm, ...entries.map(entryText)].join(";");
}

function entryText({ id, state: { answer, locked, hints, tries }, first }: Entry): string {
  const mark = first === undefined ? "" : first ? "r" : "w";
  const flags = `${tries}${locked ? "L" : ""}${hints > 0 ? `h${hints}` : ""}${mark}`;
  return `${id}:${flags}${answer ? `:${answerText(answer)}` : ""}`;
}

/** The shortest text that is read as the same number. */
function digits(value: number): string {
  return String(value).replace(/^(-?)0\./, "$1.");
}

function answerText(answer: Answer): string {
  switch (answer.kind) {
    case "predict":
      return `p${[...answer.guess, ...(answer.sure === undefined ? [] : [answer.sure])].map(digits).join(",")}`;
    case "read":
      return `s${answer.shares.map(digits).join(",")}`;
    case "choose":
      return `c${answer.option}`;
    case "order":
      return `o${answer.actions.join(",")}`;
    default: {
      const cells = Object.entries(answer.values).map(([id, value]) => `${id}=${digits(value)}`);
      return `${answer.kind === "aim" ? "a" : "i"}${cells.join(",")}`;
    }
  }
}
