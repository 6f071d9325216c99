import type { BlendMap } from "../engine/compile.js";
import type { Answer } from "../lesson/answer.js";
import { changedFeatures, exerciseReed, missingReed } from "../lesson/exercise-reed.js";
import type { ExerciseBlock, Lesson } from "../lesson/lesson.js";

/** An answer that was handed in, as a platform is told of it. */
export interface MarkedAnswer {
  /** Letters, digits, hyphens: "step-2-predict-1", both numbers counted from 1. */
  readonly id: string;
  readonly ask: string;
  readonly response: Response;
  readonly right: boolean;
  /** From when the exercise could be answered. */
  readonly seconds: number;
  readonly at: Date;
}

/** What was answered: options or actions by their places in the question, or named numbers. */
export type Response =
  | { readonly kind: "choice" | "sequencing"; readonly picked: readonly number[] }
  | {
      readonly kind: "performance";
      readonly parts: readonly (readonly [name: string, value: string])[];
    };

const shareNames = ["high", "low", "loud"] as const;

/** The name of an exercise for a platform. */
export function interactionId(exercise: string, { kind }: Pick<ExerciseBlock, "kind">): string {
  const [step, block] = exercise.split(".").map((part) => Number(part) + 1);
  return `step-${step}-${kind}-${block}`;
}

/**
 * An answer as a platform is told of it: shares in whole per cents, of a recipe only what was moved.
 *
 * @example responseOf(block, { kind: "choose", option: 1 }, lesson, map) → { kind: "choice", picked: [1] }
 */
export function responseOf(
  block: ExerciseBlock,
  answer: Answer,
  lesson: Lesson,
  map: BlendMap,
): Response {
  switch (answer.kind) {
    case "choose":
      return { kind: "choice", picked: [answer.option] };
    case "order": {
      const listed = block.kind === "order" ? block.actions : [];
      return { kind: "sequencing", picked: answer.actions.map((id) => listed.indexOf(id)) };
    }
    case "predict": {
      const sure = answer.sure === undefined ? [] : [["sure", String(answer.sure)] as const];
      return { kind: "performance", parts: [...shareParts(answer.guess), ...sure] };
    }
    case "read":
      return { kind: "performance", parts: shareParts(answer.shares) };
    default:
      return { kind: "performance", parts: movedParts(block, answer.values, lesson, map) };
  }
}

function shareParts(shares: readonly number[]): [string, string][] {
  return shareNames.map((name, k) => [name, String(Math.round(100 * shares[k]!))]);
}

function movedParts(
  block: ExerciseBlock,
  values: Readonly<Record<string, number>>,
  lesson: Lesson,
  map: BlendMap,
): [string, string][] {
  const whole = exerciseReed(lesson, block, map.model);
  const from = block.kind === "stand-in" ? missingReed(whole, block) : whole;
  const to = { ...from, ...values };
  const moved = changedFeatures(map, from, to);
  // An empty response is none to some platforms.
  if (moved.length === 0) return [["moved", "nothing"]];
  return moved.map((id) => [id, String(Math.round(to[id]! * 1e3) / 1e3)]);
}
