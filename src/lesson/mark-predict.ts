import type { Blend } from "../engine/blend.js";
import type { BlendMap } from "../engine/compile.js";
import { type RecipeDifference, recipeDifferences } from "../engine/differences.js";
import type { Triple, Values } from "../engine/model.js";
import { place } from "../engine/place.js";
import { shareDistance } from "./exercise-reed.js";
import type { PredictBlock } from "./lesson.js";

/** What a locked prediction is told. */
export interface PredictMark {
  readonly kind: "predict";
  readonly right: boolean;
  readonly from: Blend;
  readonly outcome: Blend;
  readonly guess: Blend;
  /** The outcome less the start; sums to 0. */
  readonly move: Triple;
  /** From the guess to the outcome: the greatest difference in a share. */
  readonly distance: number;
  /** Angle between the guessed move and the real one, degrees, 0 to 180; absent when nothing was moved. */
  readonly angle?: number;
  readonly direction: "right" | "partly" | "wrong" | "none";
  readonly length: "short" | "right" | "long";
  /** The pulls of what changed, strongest first; they sum to the move. */
  readonly pulls: readonly RecipeDifference[];
}

/** Up to here a direction is right, and beyond it partly right, degrees. Judgement, no source. */
const rightAngle = 35;
const partlyAngle = 80;

/** In shares: a guess nearer than this is right however short the move was. Judgement, no source. */
const rightDistance = 0.05;

/**
 * A prediction held against the engine: direction, length, distance, and the pulls that made the move.
 *
 * Shape   the block, the reed it begins with, the lesson's map, the guess → the mark.
 * Error   the pulls sum to the move within 1e-12.
 *
 * @example markPredict(block, values, map, place(map, { ...values, ...block.change }).raw).right → true
 */
export function markPredict(
  { change }: Pick<PredictBlock, "change">,
  values: Values,
  map: BlendMap,
  guess: Blend,
): PredictMark {
  const after = { ...values, ...change };
  const [from, outcome] = [place(map, values).raw, place(map, after).raw];
  const [move, guessed] = [minus(outcome, from), minus(guess, from)];
  const distance = shareDistance(guess, outcome);
  const angle = angleBetween(guessed, move);
  const ratio = Math.hypot(...guessed) / Math.hypot(...move);
  const direction = directionOf(angle);
  const length = ratio < 0.5 ? "short" : ratio > 2 ? "long" : "right";
  const right = distance <= rightDistance || (direction === "right" && length === "right");
  return {
    kind: "predict",
    right,
    from,
    outcome,
    guess,
    move,
    distance,
    ...(angle === undefined ? {} : { angle }),
    direction,
    length,
    pulls: pullsOf(map, values, after),
  };
}

/** The pulls of everything that differs between two reeds, strongest first. */
export function pullsOf(map: BlendMap, from: Values, to: Values): RecipeDifference[] {
  return recipeDifferences(map, from, to).filter(({ move }) => move.some((share) => share !== 0));
}

function minus(a: Blend, b: Blend): Triple {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

function angleBetween(a: Triple, b: Triple): number | undefined {
  const lengths = Math.hypot(...a) * Math.hypot(...b);
  if (!(lengths > 1e-9)) return undefined;
  const cosine = (a[0] * b[0] + a[1] * b[1] + a[2] * b[2]) / lengths;
  return (Math.acos(Math.min(1, Math.max(-1, cosine))) * 180) / Math.PI;
}

function directionOf(angle: number | undefined): PredictMark["direction"] {
  if (angle === undefined) return "none";
  return angle <= rightAngle ? "right" : angle <= partlyAngle ? "partly" : "wrong";
}
