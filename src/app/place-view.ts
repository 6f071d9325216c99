import type { Blend } from "../engine/blend.js";
import { certaintyEllipse, type CertaintyEllipse } from "../engine/certainty.js";
import type { BlendMap } from "../engine/compile.js";
import type { ReedModel } from "../engine/model.js";
import { pullChain, type ChainLink } from "../engine/pull-chain.js";
import { place, type Placed } from "../engine/place.js";
import { pulls, type Pull } from "../engine/pulls.js";
import type { Bench } from "../reed/bench.js";
import { shownValues } from "../reed/tried.js";
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
  /** The place of what the reed has, while something else is tried: the ellipse lies round it. */
  readonly base?: Blend;
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
  const { bench } = present;
  const { layers } = bench;
  const values = shownValues(bench);
  const map = mapFor(model, values);
  if (!map) return { pulls: [], chain: [] };
  const gaugeError = gaugeErrors(model, present.readings);
  // A try has no gauge error: the ellipse is that of what was measured, and hands begin at the reed itself.
  const baseMap = mapFor(model, bench.values) ?? map;
  const base = basePlace(model, bench);
  const all = pulls(map, values);
  const reach = layers.includes("reach") ? reachOf?.(state, baseMap) : undefined;
  return {
    map,
    placed: place(map, values),
    pulls: all,
    chain: chainOf(state, all),
    ...(reach ? { reach } : {}),
    ellipse: certaintyEllipse(baseMap, { gaugeError }),
    drawnEllipse: certaintyEllipse(baseMap, {
      gaugeError,
      coverage: layers.includes("coverage95") ? 0.95 : 0.68,
      ...(layers.includes("gaugeAlone") ? { recipeScatter: 0 } : {}),
    }),
    ...(base ? { base } : {}),
  };
}

function chainOf({ model, present: { bench } }: BenchState, all: readonly Pull[]): ChainLink[] {
  if (!bench.layers.includes("pulls")) return [];
  const groups = new Map(model.features.map(({ id, group }) => [id, group]));
  return pullChain(all, (id) => (bench.layers.includes("eachPull") ? id : groups.get(id)!));
}

/** The place of what the reed has, while something else is tried on it. */
function basePlace(model: ReedModel, { values, tried }: Bench): Blend | undefined {
  const map = tried && mapFor(model, values);
  return map && place(map, values).raw;
}
