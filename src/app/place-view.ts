import type { Blend } from "../engine/blend.js";
import { certaintyEllipse, type CertaintyEllipse } from "../engine/certainty.js";
import type { BlendMap } from "../engine/compile.js";
import type { Values } from "../engine/model.js";
import { pullChain, type ChainLink } from "../engine/pull-chain.js";
import { place, type Placed } from "../engine/place.js";
import { pulls, type Pull } from "../engine/pulls.js";
import type { BenchState } from "./bench-state.js";
import { gaugeErrors } from "./gauge-errors.js";
import { mapFor } from "./measured-map.js";

/** Where hands can bring a reed. */
export interface ReachView {
  readonly easy: readonly Blend[];
  readonly full: readonly Blend[];
}

/** What the triangle shows of a reed that has a place: computed from the state. */
export interface PlaceView {
  readonly map?: BlendMap;
  readonly placed?: Placed;
  readonly pulls: readonly Pull[];
  readonly ellipse?: CertaintyEllipse;
  /** The one that is drawn: at 68 % unless 95 % is asked for, which covers much of the triangle. */
  readonly drawnEllipse?: CertaintyEllipse;
  /** Where the point was before the last step. */
  readonly ghost?: Blend;
  /** The pulls head to tail, by group or one by one; empty when the layer is off. */
  readonly chain: readonly ChainLink[];
  /** Where hands can still bring the reed, with easy and with full amounts; absent when the layer is off. */
  readonly reach?: ReachView;
}

/**
 * Derives from the state what lies on the triangle. What hands can do is much to carry for an element that may never
 * show it: whoever has `reachOf` passes it in.
 *
 * @example viewPlace(startState(bassoonModel)).placed.blend → about [⅓, ⅓, ⅓]
 */
export function viewPlace(
  state: BenchState,
  reachOf?: (state: BenchState, map: BlendMap) => ReachView,
): PlaceView {
  const { model, present } = state;
  const { values, layers } = present.bench;
  const map = mapFor(model, values);
  if (!map) return { pulls: [], chain: [] };
  const gaugeError = gaugeErrors(model, present.readings);
  const ghost = placeBefore(state);
  const all = pulls(map, values);
  const reach = layers.includes("reach") ? reachOf?.(state, map) : undefined;
  return {
    map,
    placed: place(map, values),
    pulls: all,
    chain: chainOf(state, all),
    ...(reach ? { reach } : {}),
    ellipse: certaintyEllipse(map, { gaugeError }),
    drawnEllipse: certaintyEllipse(map, {
      gaugeError,
      coverage: layers.includes("coverage95") ? 0.95 : 0.68,
      ...(layers.includes("gaugeAlone") ? { recipeScatter: 0 } : {}),
    }),
    ...(ghost ? { ghost } : {}),
  };
}

function chainOf({ model, present: { bench } }: BenchState, all: readonly Pull[]): ChainLink[] {
  if (!bench.layers.includes("pulls")) return [];
  const groups = new Map(model.features.map(({ id, group }) => [id, group]));
  return pullChain(all, (id) => (bench.layers.includes("eachPull") ? id : groups.get(id)!));
}

/** The values of this reed before the last step; undefined where another reed was on the bench. */
export function valuesBefore({ past, present }: BenchState): Values | undefined {
  const before = past.at(-1)?.bench;
  return before?.reed === present.bench.reed ? before.values : undefined;
}

function placeBefore(state: BenchState): Blend | undefined {
  const { model, present } = state;
  const before = valuesBefore(state);
  const map = before && before !== present.bench.values ? mapFor(model, before) : undefined;
  return map && before ? place(map, before).raw : undefined;
}
