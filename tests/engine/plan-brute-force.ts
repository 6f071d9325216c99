import {
  place,
  type Action,
  type Blend,
  type BlendMap,
  type Values,
} from "../../src/lib/engine.js";

/** What plain brute force finds. */
export interface BruteForce {
  /** Least cost of any set of amounts that ends in the zone; infinite when none does. */
  readonly leastCost: number;
  /** Fewest moves of those, and least cost of those that can be undone. */
  readonly fewestMoves: number;
  readonly leastUndoableCost: number;
  /** How near the nearest end comes. */
  readonly leastDistance: number;
  /** How many sets of amounts were looked at. */
  readonly count: number;
}

/** The rules of the actions file, by name. */
const never: readonly (readonly [string, string])[] = [
  ["roundFirstWire", "flattenFirstWire"],
  ["roundSecondWire", "flattenSecondWire"],
  ["cutHinges", "softenHinges"],
  ["thinHeart", "thinSpine"],
];

const clashes = (a: string, b: string): boolean =>
  never.some(([one, other]) => (a === one && b === other) || (a === other && b === one));

interface Task {
  readonly map: BlendMap;
  readonly values: Values;
  readonly target: Blend;
  readonly actions: readonly Action[];
  readonly radius: number;
  readonly mostMoves: number;
  /** Whether the reed may end with these values. */
  readonly allows: (values: Values) => boolean;
}

/** Every admissible set of at most so many moves, each by 1 to `easy` units, one after the other: no bounds, no cleverness. */
export function bruteForcePlan(task: Task): BruteForce {
  const { map, values, target, actions, radius, mostMoves, allows } = task;
  const start = place(map, values).raw;
  const arrows = actions.map((action) => {
    const moved = place(map, after(values, [{ action, amount: 1 }])).raw;
    return moved.map((share, k) => share - start[k]!);
  });
  const best = {
    leastCost: Infinity,
    fewestMoves: Infinity,
    leastUndoableCost: Infinity,
    leastDistance: Infinity,
    count: 0,
  };
  const chosen: { action: Action; amount: number }[] = [];
  const look = (high: number, low: number, loud: number, cost: number): void => {
    best.count += 1;
    const distance = Math.hypot(high - target[0], low - target[1], loud - target[2]);
    const undoable = chosen.every(({ action }) => action.reversible);
    const reached = distance <= radius + 1e-12;
    const helps =
      distance < best.leastDistance ||
      (reached &&
        (cost < best.leastCost ||
          chosen.length < best.fewestMoves ||
          (undoable && cost < best.leastUndoableCost)));
    if (!helps || !allows(after(values, chosen))) return;
    best.leastDistance = Math.min(best.leastDistance, distance);
    if (!reached) return;
    best.leastCost = Math.min(best.leastCost, cost);
    best.fewestMoves = Math.min(best.fewestMoves, chosen.length);
    if (undoable) best.leastUndoableCost = Math.min(best.leastUndoableCost, cost);
  };
  const goOn = (first: number, high: number, low: number, loud: number, cost: number): void => {
    look(high, low, loud, cost);
    if (chosen.length === mostMoves) return;
    for (let i = first; i < actions.length; i += 1) {
      const action = actions[i]!;
      const [a = NaN, b = NaN, c = NaN] = arrows[i]!;
      if (chosen.some((one) => clashes(one.action.id, action.id))) continue;
      for (let n = 1; n <= action.easy; n += 1) {
        chosen.push({ action, amount: n });
        goOn(i + 1, high + n * a, low + n * b, loud + n * c, cost + n * action.cost);
        chosen.pop();
      }
    }
  };
  goOn(0, start[0], start[1], start[2], 0);
  return best;
}

/** The reed after some moves. */
export function after(
  values: Values,
  moves: readonly { readonly action: Action; readonly amount: number }[],
): Values {
  const reed: Record<string, number> = { ...values };
  for (const { action, amount } of moves) {
    for (const [id, effect] of Object.entries(action.effects)) {
      if (id in reed) reed[id]! += amount * effect;
    }
  }
  return reed;
}
