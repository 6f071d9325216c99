import type { Blend } from "../engine/blend.js";
import { compileModel, type BlendMap } from "../engine/compile.js";
import { finishingFreedom } from "../engine/freedom.js";
import type { FeatureId, Freedom, ReedModel, Values } from "../engine/model.js";
import { place } from "../engine/place.js";
import { allRoundValues } from "../reed/all-round-values.js";
import { demoReeds } from "../reed/demo-reeds.js";
import type { AimBlock, Lesson, LessonReed, ReadBlock, StandInBlock } from "./lesson.js";

/**
 * The model as a lesson sees it: only its own features count.
 *
 * Throws  RangeError when the lesson's features are not the model's or cannot separate the purposes.
 *
 * @example lessonMap({ features: ["throatWidth", "tipWidth", "spine"] }, bassoonModel).features.length → 3
 */
export function lessonMap({ features }: Pick<Lesson, "features">, model: ReedModel): BlendMap {
  return compileModel(model, features === undefined ? {} : { features });
}

/**
 * The reed that a block begins with: the all-round reed, over it the demo reed and the start of the lesson, over
 * these the block's own reed and values. A block that names a reed leaves the lesson's start behind.
 *
 * Shape   a lesson, one of its blocks, the model → a value for every feature of the model.
 */
export function exerciseReed(
  lesson: Pick<Lesson, "reed" | "start">,
  block: LessonReed,
  model: ReedModel,
): Values {
  const base =
    block.reed === undefined
      ? { ...readingsOf(lesson.reed), ...lesson.start }
      : readingsOf(block.reed);
  return { ...allRoundValues(model), ...base, ...block.values };
}

function readingsOf(reed: string | undefined): Values {
  return demoReeds.find((one) => one.reed === reed)?.readings ?? {};
}

/** The reed without what is missing: where a stand-in begins. */
export function missingReed(whole: Values, { missing }: Pick<StandInBlock, "missing">): Values {
  return { ...whole, ...missing };
}

/** How far each feature may move in an exercise; what is missing stays as it is. */
export function exerciseFreedom(
  block: AimBlock | StandInBlock,
  values: Values,
  model: ReedModel,
): Freedom {
  const held = [
    ...(block.locked ?? []),
    ...(block.kind === "stand-in" ? Object.keys(block.missing) : []),
  ];
  const finishing = block.finished ? finishingFreedom(model, values) : {};
  return { ...finishing, ...Object.fromEntries(held.map((id) => [id, { locked: true }])) };
}

/** Where the point is to go: the target, or the place that the whole reed had. */
export function exerciseTarget(
  block: AimBlock | StandInBlock,
  whole: Values,
  map: BlendMap,
): Blend {
  return block.kind === "aim" ? block.target : place(map, whole).raw;
}

/** Where the reading is to be made: the place itself, or that of the reed. */
export function readingPlace(block: ReadBlock, values: Values, map: BlendMap): Blend {
  return block.at ?? place(map, values).blend;
}

/** Whether two values differ by more than what the store of a bench rounds. */
export function differs(a: number, b: number): boolean {
  return Math.abs(a - b) > 5.001e-4;
}

/** The features that differ between two reeds, in the map's order. */
export function changedFeatures(map: BlendMap, from: Values, to: Values): FeatureId[] {
  return map.features.filter((id) => differs(from[id] ?? NaN, to[id] ?? NaN));
}

/**
 * How far two places are apart, as lessons count it: the greatest difference in a share. Six points are six hundredths.
 *
 * @example shareDistance([0.4, 0.3, 0.3], [0.34, 0.33, 0.33]) → 0.06
 */
export function shareDistance(a: Blend, b: Blend): number {
  return Math.max(...a.map((share, k) => Math.abs(share - b[k]!)));
}

/** Whether a place is as near as an exercise asks; a hair is for rounding. */
export function isWithin(a: Blend, b: Blend, within: number): boolean {
  return shareDistance(a, b) <= within + 1e-9;
}
