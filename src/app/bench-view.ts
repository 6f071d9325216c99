import { certaintyEllipse, type CertaintyEllipse } from "../engine/certainty.js";
import type { FeatureId } from "../engine/model.js";
import type { Catalogue, Sentence } from "../reed/catalogue.js";
import { describeReed } from "../reed/sentence.js";
import { shownValues } from "../reed/tried.js";
import { isGiven, reedName } from "./bench-reed.js";
import { followPoint, type BenchState } from "./bench-state.js";
import { compareReeds, type Comparison } from "./comparison.js";
import { gaugeErrors } from "./gauge-errors.js";
import { isUnsound, mapFor } from "./measured-map.js";
import { viewPlace, type PlaceView } from "./place-view.js";
import { reachOf } from "./reach-view.js";
import { unsoundText } from "./unsound-text.js";

/** Everything that the bench shows and does not store: computed from the state. */
export interface BenchView extends PlaceView {
  /** What the reed is called. */
  readonly name: string;
  /** Whether the product brings the reed along: what it has was given, not measured. */
  readonly isGiven: boolean;
  /** Greatest standard deviation of a share; absent without a place. */
  readonly doubt?: number;
  readonly gaugeEllipse?: CertaintyEllipse;
  /** The pinned reed beside this one; absent when none is pinned. */
  readonly comparison?: Comparison;
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
  const { pinned } = present.bench;
  const values = shownValues(present.bench);
  const isStopped = isUnsound(present.bench);
  const seen: PlaceView = isStopped ? { pulls: [], chain: [] } : viewPlace(state, reachOf);
  const { map, placed, ellipse } = seen;
  const reed = { model, bench: present.bench };
  const told = { name: reedName(reed, text), isGiven: isGiven(reed) };
  const comparison = pinned ? { comparison: compareReeds(model, values, pinned) } : {};
  if (!map || !placed || !ellipse)
    return {
      ...seen,
      ...comparison,
      ...told,
      sentence: isStopped
        ? [unsoundText(present.bench, text)]
        : describeReed({ model, values }, text),
      stoppedBy: [],
    };
  const doubt = Math.sqrt(Math.max(...[0, 1, 2].map((k) => ellipse.covariance[k]![k]!)));
  return {
    ...seen,
    ...comparison,
    ...told,
    doubt,
    // Only words ask for these two, and words have their own pace.
    get gaugeEllipse() {
      return certaintyEllipse(mapFor(model, present.bench.values) ?? map, {
        gaugeError: gaugeErrors(model, present.readings),
        recipeScatter: 0,
      });
    },
    get sentence() {
      const measured = present.bench.values;
      const said = describeReed({ model, values, measured, place: { map, placed }, doubt }, text);
      return present.bench.tried ? [`${text.tried.begins} `, ...said] : said;
    },
    stoppedBy: followPoint(model, present)?.limits ?? [],
  };
}
