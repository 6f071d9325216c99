import type { Blend } from "../engine/blend.js";
import type { BlendMap } from "../engine/compile.js";
import type { RecipeDifference } from "../engine/differences.js";
import { limitsOf } from "../engine/freedom.js";
import type { FeatureId, Values } from "../engine/model.js";
import { place } from "../engine/place.js";
import {
  changedFeatures,
  differs,
  exerciseFreedom,
  exerciseTarget,
  isWithin,
  missingReed,
  shareDistance,
} from "./exercise-reed.js";
import type { AimBlock, StandInBlock } from "./lesson.js";
import { pullsOf } from "./mark-predict.js";

/** What a recipe is told that was to bring the point somewhere. */
export interface RecipeMark {
  readonly kind: "aim" | "stand-in";
  readonly right: boolean;
  readonly target: Blend;
  readonly blend: Blend;
  /** From the point to the target: the greatest difference in a share. */
  readonly distance: number;
  /** The same before anything was moved. */
  readonly before: number;
  /** The distance that still counts as there. */
  readonly within: number;
  readonly there: boolean;
  /** Features that were moved, in the map's order. */
  readonly moved: readonly FeatureId[];
  /** Features that were to stay and did not. */
  readonly heldButMoved: readonly FeatureId[];
  /** Features outside what the exercise allows: range, and finishing where it counts. */
  readonly outside: readonly FeatureId[];
  readonly tooMany: boolean;
  /** How many features may be moved; Infinity where nobody counts. */
  readonly mostFeatures: number;
  /** The pulls of what was moved, strongest first; they sum to the way from the start to the blend. */
  readonly pulls: readonly RecipeDifference[];
}

/**
 * A recipe held against the engine; every recipe that is there within the rules is right.
 *
 * Shape   an aim or a stand-in, the reed it begins with (for a stand-in: with nothing missing), the lesson's map, the
 *         student's values, in which features that were not touched may be left out → the mark.
 * Error   the pulls sum to the way within 1e-12.
 */
export function markRecipe(
  block: AimBlock | StandInBlock,
  whole: Values,
  map: BlendMap,
  answer: Values,
): RecipeMark {
  const from = block.kind === "aim" ? whole : missingReed(whole, block);
  const to: Values = { ...from, ...answer };
  const target = exerciseTarget(block, whole, map);
  const freedom = exerciseFreedom(block, from, map.model);
  const blend = place(map, to).raw;
  const there = isWithin(blend, target, block.within);
  const moved = changedFeatures(map, from, to);
  const heldButMoved = moved.filter((id) => freedom[id]?.locked);
  const outside = map.mapped.flatMap(({ feature }) => {
    const [value, start] = [to[feature.id]!, from[feature.id]!];
    const [low, high] = limitsOf(feature, start, { ...freedom[feature.id], locked: false });
    const out = value < low ? differs(value, low) : value > high && differs(value, high);
    return out ? [feature.id] : [];
  });
  const most = block.kind === "aim" ? (block.mostFeatures ?? Infinity) : Infinity;
  const tooMany = moved.length > most;
  return {
    kind: block.kind,
    right: there && !tooMany && heldButMoved.length === 0 && outside.length === 0,
    target,
    blend,
    distance: shareDistance(blend, target),
    before: shareDistance(place(map, from).raw, target),
    within: block.within,
    there,
    moved,
    heldButMoved,
    outside,
    tooMany,
    mostFeatures: most,
    pulls: pullsOf(map, from, to),
  };
}
