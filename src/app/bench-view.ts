import { certaintyEllipse, type CertaintyEllipse } from "../engine/certainty.js";
import type { FeatureId, Values } from "../engine/model.js";
import type { Catalogue, Sentence } from "../reed/catalogue.js";
import { describeReed } from "../reed/sentence.js";
import { reedName } from "./bench-reed.js";
import { followPoint, type BenchState } from "./bench-state.js";
import { compareReeds, type Comparison } from "./comparison.js";
import { gaugeErrors } from "./gauge-errors.js";
import { isUnsound } from "./measured-map.js";
import { valuesBefore, viewPlace, type PlaceView } from "./place-view.js";
import { reachOf } from "./reach-view.js";
import { unsoundText } from "./unsound-text.js";

/** Everything that the bench shows and does not store: computed from the state. */
export interface BenchView extends PlaceView {
  /** What the reed is called. */
  readonly name: string;
  /** Greatest standard deviation of a share; absent without a place. */
  readonly doubt?: number;
  readonly gaugeEllipse?: CertaintyEllipse;
  /** The pinned reed beside this one; absent when none is pinned. */
  readonly comparison?: Comparison;
  /** Readings before the last step. */
  readonly earlier: Values;
  readonly sentence: Sentence;
  /** Features that kept the point from where it was asked to go; empty when it got there. */
  readonly stoppedBy: readonly FeatureId[];
}

/**
 * Derives the view from the state.
 *
 * @example viewBench(startState(bassoonModel), english).placed.blend → about [⅓, ⅓, ⅓]
 */
export function viewBench(state: BenchState, text: Catalogue): BenchView {
  const { model, present } = state;
  const { values, pinned } = present.bench;
  const isStopped = isUnsound(present.bench);
  const seen: PlaceView = isStopped ? { pulls: [], chain: [] } : viewPlace(state, reachOf);
  const { map, placed, ellipse } = seen;
  const name = reedName({ model, bench: present.bench }, text);
  const comparison = pinned ? { comparison: compareReeds(model, values, pinned) } : {};
  if (!map || !placed || !ellipse)
    return {
      ...seen,
      ...comparison,
      name,
      earlier: {},
      sentence: isStopped
        ? [unsoundText(present.bench, text)]
        : describeReed({ model, values }, text),
      stoppedBy: [],
    };
  const doubt = Math.sqrt(Math.max(...[0, 1, 2].map((k) => ellipse.covariance[k]![k]!)));
  return {
    ...seen,
    ...comparison,
    name,
    doubt,
    // Only words ask for these two, and words have their own pace.
    get gaugeEllipse() {
      return certaintyEllipse(map, {
        gaugeError: gaugeErrors(model, present.readings),
        recipeScatter: 0,
      });
    },
    get sentence() {
      return describeReed({ model, values, place: { map, placed }, doubt }, text);
    },
    earlier: valuesBefore(state) ?? {},
    stoppedBy: followPoint(model, present)?.limits ?? [],
  };
}
