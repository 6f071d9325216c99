import type { FeatureId, ReedModel, Values } from "../engine/model.js";
import { allRoundValues } from "./all-round-values.js";
import type { Bench } from "./bench.js";
import { demoReadings } from "./demo-readings.js";

/** What is tried on the bench, over what the reed has: other values, or `null` where a feature is left out. */
export type Tried = Readonly<Record<FeatureId, number | null>>;

/** What the reed has, and what is tried over it. */
type Layers = Pick<Bench, "values" | "tried">;

// What is shown of the same two layers is the same object, so that whoever remembers it by identity need not work again.
const shown = new WeakMap<Tried, { readonly base: Values; readonly values: Values }>();

/**
 * What the bench shows: what is tried, over what the reed has.
 *
 * Shape   both layers → the value of every feature that is neither unmeasured nor left out.
 *
 * @example shownValues({ values: { spine: 0.5, tip: 0.1 }, tried: { spine: 0.55, tip: null } }) → { spine: 0.55 }
 */
export function shownValues({ values: base, tried }: Layers): Values {
  if (!tried) return base;
  const known = shown.get(tried);
  if (known?.base === base) return known.values;
  const all = Object.entries({ ...base, ...tried });
  const values = Object.fromEntries(all.filter((one): one is [string, number] => one[1] !== null));
  shown.set(tried, { base, values });
  return values;
}

/**
 * The inverse of `shownValues`: what is tried where these values are shown over those that the reed has.
 *
 * Shape   values of the reed, values shown → what differs; undefined where nothing does.
 *
 * @example triedOver({ spine: 0.5, tip: 0.1 }, { spine: 0.55 }) → { spine: 0.55, tip: null }
 */
export function triedOver(base: Values, values: Values): Tried | undefined {
  const tried: Record<FeatureId, number | null> = {};
  for (const id of new Set([...Object.keys(base), ...Object.keys(values)])) {
    if (values[id] !== base[id]) tried[id] = values[id] ?? null;
  }
  return Object.keys(tried).length > 0 ? tried : undefined;
}

/** The bench with something else tried on it. */
export function withTried(bench: Bench, tried: Tried | undefined): Bench {
  const { tried: _before, ...base } = bench;
  return tried && Object.keys(tried).length > 0 ? { ...base, tried } : base;
}

/** The bench without a try of this feature. */
export function withoutTry(bench: Bench, feature: FeatureId): Bench {
  if (!bench.tried || !(feature in bench.tried)) return bench;
  const { [feature]: _try, ...others } = bench.tried;
  return withTried(bench, others);
}

/**
 * The values of a reed that the product brings along; undefined for a reed of one's own, which is also one on which a
 * step has been done.
 *
 * Shape   its name (empty: the all-round reed) and steps → values for features of the model.
 */
export function givenValues(
  model: ReedModel,
  { reed, done = [] }: Pick<Bench, "reed" | "done">,
): Values | undefined {
  if (done.length > 0) return undefined;
  if (reed === "") return allRoundValues(model);
  const given = Object.hasOwn(demoReadings, reed) ? demoReadings[reed]! : undefined;
  if (!given) return undefined;
  const known = model.features.filter(({ id }) => given[id] !== undefined);
  return Object.fromEntries(known.map(({ id }) => [id, given[id]!]));
}
