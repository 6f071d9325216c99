import type { Blend } from "../engine/blend.js";
import { certaintyEllipse, type CertaintyEllipse } from "../engine/certainty.js";
import type { BlendMap } from "../engine/compile.js";
import type { FeatureId, Values } from "../engine/model.js";
import { finishingFreedom } from "../engine/freedom.js";
import { pullChain, type ChainLink } from "../engine/pull-chain.js";
import { actionReach } from "../engine/reach.js";
import { bassoonActions } from "../reed/bassoon.js";
import { place, type Placed } from "../engine/place.js";
import { pulls, type Pull } from "../engine/pulls.js";
import type { Catalogue, Sentence } from "../reed/catalogue.js";
import { describeReed } from "../reed/sentence.js";
import { followPoint, type BenchState } from "./bench-state.js";
import { compareReeds, type Comparison } from "./comparison.js";
import { gaugeErrors } from "./gauge-errors.js";
import { isUnsound, mapFor } from "./measured-map.js";
import { unsoundText } from "./unsound-text.js";

/** Everything that the bench shows and does not store: computed from the state. */
export interface BenchView {
  readonly map?: BlendMap;
  readonly placed?: Placed;
  readonly pulls: readonly Pull[];
  readonly ellipse?: CertaintyEllipse;
  /** Greatest standard deviation of a share; absent without a place. */
  readonly doubt?: number;
  readonly gaugeEllipse?: CertaintyEllipse;
  /** The one that is drawn: at 68 % unless 95 % is asked for, which covers much of the triangle. */
  readonly drawnEllipse?: CertaintyEllipse;
  /** The pinned reed beside this one; absent when none is pinned. */
  readonly comparison?: Comparison;
  /** Where the point was before the last step. */
  readonly ghost?: Blend;
  /** The pulls head to tail, by group or one by one; empty when the layer is off. */
  readonly chain: readonly ChainLink[];
  /** Where hands can still bring the reed, with easy and with full amounts; absent when the layer is off. */
  readonly reach?: { readonly easy: readonly Blend[]; readonly full: readonly Blend[] };
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
  const { values, layers, pinned } = present.bench;
  const isStopped = isUnsound(present.bench);
  const map = isStopped ? undefined : mapFor(model, values);
  const comparison = pinned ? { comparison: compareReeds(model, values, pinned) } : {};
  if (!map)
    return {
      ...comparison,
      pulls: [],
      chain: [],
      earlier: {},
      sentence: isStopped
        ? [unsoundText(present.bench, text)]
        : describeReed({ model, values }, text),
      stoppedBy: [],
    };
  const placed = place(map, values);
  const gaugeError = gaugeErrors(present.readings);
  const ghost = placeBefore(state);
  const ellipse = certaintyEllipse(map, { gaugeError });
  const doubt = Math.sqrt(Math.max(...[0, 1, 2].map((k) => ellipse.covariance[k]![k]!)));
  const all = pulls(map, values);
  const reach = reachOf(state, map);
  return {
    ...comparison,
    map,
    placed,
    pulls: all,
    chain: chainOf(state, all),
    ...(reach ? { reach } : {}),
    ellipse,
    doubt,
    drawnEllipse: certaintyEllipse(map, {
      gaugeError,
      coverage: layers.includes("coverage95") ? 0.95 : 0.68,
      ...(layers.includes("gaugeAlone") ? { recipeScatter: 0 } : {}),
    }),
    // Only words ask for these two, and words have their own pace.
    get gaugeEllipse() {
      return certaintyEllipse(map, { gaugeError, recipeScatter: 0 });
    },
    ...(ghost ? { ghost } : {}),
    get sentence() {
      return describeReed({ model, values, place: { map, placed }, doubt }, text);
    },
    earlier: state.past.at(-1)?.bench.values ?? {},
    stoppedBy: followPoint(model, present)?.limits ?? [],
  };
}

function chainOf({ model, present: { bench } }: BenchState, all: readonly Pull[]): ChainLink[] {
  if (!bench.layers.includes("pulls")) return [];
  const groups = new Map(model.features.map(({ id, group }) => [id, group]));
  return pullChain(all, (id) => (bench.layers.includes("eachPull") ? id : groups.get(id)!));
}

function reachOf({ model, present: { bench } }: BenchState, map: BlendMap): BenchView["reach"] {
  if (!bench.layers.includes("reach")) return undefined;
  const { values } = bench;
  const locked = Object.fromEntries(bench.locked.map((id) => [id, { locked: true }]));
  const freedom = { ...finishingFreedom(model, values), ...locked };
  return {
    easy: actionReach(map, values, bassoonActions, freedom).polygon,
    full: actionReach(map, values, bassoonActions, freedom, { amounts: "max" }).polygon,
  };
}

function placeBefore({ model, past, present }: BenchState): Blend | undefined {
  const before = past.at(-1)?.bench.values;
  const map = before && before !== present.bench.values ? mapFor(model, before) : undefined;
  return map && before ? place(map, before).raw : undefined;
}
