import { requireReadable } from "./check.js";
import type { BlendMap } from "./compile.js";
import { limitsOf } from "./freedom.js";
import type { Action, Feature, FeatureId, Freedom, Values } from "./model.js";
import type { Vector } from "./plane.js";

/** What the hand is after: the first feature that an action lists. */
export function mainEffect({ effects }: Action): FeatureId {
  return Object.keys(effects)[0]!;
}

/** The arrow of one unit of an action, over the features that the map knows. */
export function actionArrow(map: BlendMap, action: Action): Vector {
  let [x, y] = [0, 0];
  for (const id in action.effects) {
    const one = map.byId.get(id);
    if (!one) continue;
    const move = action.effects[id]! / one.halfSpread;
    x += move * one.arrow[0];
    y += move * one.arrow[1];
  }
  return [x, y];
}

/** How many units of an action the limits of everything it touches leave, from 0 to `most`. */
export function possibleAmount(
  map: BlendMap,
  values: Values,
  action: Action,
  freedom: Freedom,
  most: number,
  who: string,
): number {
  let amount = most;
  let main = true;
  for (const id in action.effects) {
    amount = Math.min(amount, roomFor(map, values, id, action.effects[id]!, freedom, main, who));
    main = false;
  }
  return Math.max(0, amount);
}

function roomFor(
  map: BlendMap,
  values: Values,
  id: string,
  effect: number,
  freedom: Freedom,
  main: boolean,
  who: string,
): number {
  const stated = freedom[id];
  if (stated?.locked) return 0;
  const feature = featureOf(map, id, who);
  const value = values[id];
  if (main && !finishingAllows(feature, effect)) return 0;
  if (value === undefined) return Infinity; // not measured: nothing is known that could stop it
  requireReadable(value, `${who}: feature "${id}"`);
  const [low, high] = limitsOf(
    feature,
    value,
    main ? stated : withoutFinishing(feature, value, stated),
  );
  return (effect > 0 ? high - value : value - low) / Math.abs(effect);
}

/** A feature that an action changes, whether the map knows it or not. */
export function featureOf(map: BlendMap, id: string, who: string): Feature {
  const feature = map.byId.get(id)?.feature ?? map.model.features.find((one) => one.id === id);
  if (feature) return feature;
  throw new RangeError(
    `${who}: an action changes feature "${id}", which is not in model "${map.model.id}"; ` +
      `allowed: ${map.model.features.map((one) => one.id).join(", ")}`,
  );
}

/** Whether finishing lets a hand move the feature this way. */
export function finishingAllows({ finishing }: Feature, effect: number): boolean {
  if (finishing === "both") return true;
  return finishing === (effect < 0 ? "down" : "up");
}

/** A limit at the present value on the side that finishing bars is finishing's own: it does not bind by-effects. */
export function withoutFinishing(
  feature: Feature,
  value: number,
  stated: Freedom[string] | undefined,
) {
  if (!stated) return stated;
  const { min, max } = stated;
  const hair = 1e-9 * (feature.max - feature.min);
  if (feature.finishing === "down" && max !== undefined && Math.abs(max - value) <= hair)
    return min === undefined ? {} : { min };
  if (feature.finishing === "up" && min !== undefined && Math.abs(min - value) <= hair)
    return max === undefined ? {} : { max };
  return stated;
}
