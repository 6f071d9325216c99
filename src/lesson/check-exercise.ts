import type { Blend } from "../engine/blend.js";
import type { BlendMap } from "../engine/compile.js";
import type { FeatureId, Freedom, Values } from "../engine/model.js";
import { place } from "../engine/place.js";
import { solveFor } from "../engine/solve.js";
import { lessonWords } from "../reed/lesson-words.js";
import {
  differs,
  exerciseFreedom,
  exerciseReed,
  exerciseTarget,
  missingReed,
  shareDistance,
} from "./exercise-reed.js";
import type { AimBlock, Lesson, PredictBlock, ReadBlock, StandInBlock } from "./lesson.js";
import type { TellField } from "./lesson-names.js";

const { faults: words } = lessonWords;

/** In a share: a move that can be seen on the triangle, and after a lock told from none. */
const leastMove = 0.014;

/** Tells why an exercise cannot be done, or is none. */
export function checkExercise(
  block: PredictBlock | AimBlock | ReadBlock | StandInBlock,
  lesson: Lesson,
  map: BlendMap,
  tell: TellField,
): void {
  const values = exerciseReed(lesson, block, map.model);
  if (block.kind === "predict") checkPredict(block, values, map, tell);
  else if (block.kind === "aim") checkAim(block, values, map, tell);
  else if (block.kind === "stand-in") checkStandIn(block, values, map, tell);
}

function changesAny(from: Values, to: Values): boolean {
  return Object.entries(to).some(([id, value]) => differs(value, from[id] ?? NaN));
}

function checkPredict(block: PredictBlock, from: Values, map: BlendMap, tell: TellField): void {
  if (!changesAny(from, block.change)) tell("change", words.noChange("predict"));
  else checkMove(map, from, { ...from, ...block.change }, "change", tell);
}

function checkMove(map: BlendMap, from: Values, to: Values, path: string, tell: TellField): void {
  const move = shareDistance(place(map, from).raw, place(map, to).raw);
  if (move < leastMove) tell(path, words.smallMove(move));
}

function checkAim(block: AimBlock, values: Values, map: BlendMap, tell: TellField): void {
  const { target, within, mostFeatures } = block;
  const away = shareDistance(place(map, values).raw, target);
  if (away <= within) tell("target", words.alreadyThere(away, within));
  const freedom = exerciseFreedom(block, values, map.model);
  const { left, limits } = nearestEnd(map, values, target, freedom, mostFeatures);
  if (left > within) tell("target", words.outOfReach(left, within, limits, mostFeatures));
}

function checkStandIn(block: StandInBlock, whole: Values, map: BlendMap, tell: TellField): void {
  const values = missingReed(whole, block);
  if (!changesAny(whole, block.missing)) {
    tell("missing", words.noChange("stand-in"));
    return;
  }
  const target = exerciseTarget(block, whole, map);
  const away = shareDistance(place(map, values).raw, target);
  if (away <= block.within) tell("missing", words.alreadyThere(away, block.within));
  const freedom = exerciseFreedom(block, values, map.model);
  const { left, limits } = nearestEnd(map, values, target, freedom);
  if (left > block.within) tell("missing", words.outOfReach(left, block.within, limits));
}

/** The least distance to a target that the free features leave, by as many of them as allowed. */
export function nearestEnd(
  map: BlendMap,
  values: Values,
  target: Blend,
  freedom: Freedom,
  mostFeatures: number = map.features.length,
): { readonly left: number; readonly values: Values; readonly limits: readonly FeatureId[] } {
  const free = map.features.filter((id) => !freedom[id]?.locked);
  const sets = mostFeatures >= free.length ? [free] : subsets(free, mostFeatures);
  const holds = (id: FeatureId, set: readonly FeatureId[]): boolean =>
    set.includes(id) || freedom[id]?.locked === true;
  let best = { left: Infinity, values, limits: free };
  for (const set of sets) {
    const locked = free.filter((id) => !set.includes(id)).map((id) => [id, { locked: true }]);
    const solved = solveFor(map, values, target, { ...freedom, ...Object.fromEntries(locked) });
    const left = shareDistance(solved.blend, target);
    if (left < best.left - 1e-12)
      best = { left, values: solved.values, limits: solved.limits.filter((id) => holds(id, set)) };
    if (best.left < 1e-9) break;
  }
  return best;
}

/** Every set of `size` features. */
function subsets(features: readonly FeatureId[], size: number): FeatureId[][] {
  if (size === 0) return [[]];
  return features.flatMap((first, index) =>
    subsets(features.slice(index + 1), size - 1).map((rest) => [first, ...rest]),
  );
}
