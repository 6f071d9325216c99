import { actionArrow, mainEffect, possibleAmount } from "./action-room.js";
import { requireHolds } from "./check.js";
import type { BlendMap } from "./compile.js";
import type { Action, Actions, Freedom, Triple, Values } from "./model.js";
import { dot, vectorToTriple, type Vector } from "./plane.js";
import { wantedMove, type FeatureChange, type StandInRequest } from "./stand-ins.js";

/** Something hands do in place of a change of a feature. */
export interface HandStandIn {
  /** Of an action, or of a pair of them: `roundBothWires`, `flattenBothWires`. */
  readonly id: string;
  /** One action, or two that are done by the same amount. */
  readonly actions: readonly string[];
  /** Whole units of each action. */
  readonly amount: number;
  /** Cosine of the angle to the move that was asked for, by-effects included; above 0. */
  readonly likeness: number;
  /** What is still missing after the amount: the move that was asked for minus the move that is made. */
  readonly leftover: Triple;
  /** How much of the amount one easy sitting allows, within range, limits and finishing, 0…1. */
  readonly possible: number;
  /** What the amount does to each feature: first what the hand is after, then the by-effects. */
  readonly changes: readonly FeatureChange[];
}

/** Two actions that hands like to do together, by the same amount. */
const handPairs: readonly { readonly id: string; readonly actions: readonly string[] }[] = [
  { id: "roundBothWires", actions: ["roundFirstWire", "roundSecondWire"] },
  { id: "flattenBothWires", actions: ["flattenFirstWire", "flattenSecondWire"] },
];

/**
 * What hands can do in place of a change of a feature, or against it: the same question as `standIns`, but a hand
 * never moves one feature alone. By-effects count, so a feature that is a near-perfect stand-in may be a poor one
 * as an action, and two actions together may be better than either.
 *
 * Shape   map, values, what is to be made up for, actions, freedom → hand stand-ins, least left over first, then
 *         least done. Left out: what works the other way, what would make less than half a unit, what is
 *         after the requested feature itself or, instead of a change, makes that very change as a by-effect, and
 *         what touches a locked feature or is after one that was not measured.
 * Unit    whole units of the action; changes in the features' units; the leftover in shares.
 * Domain  any finite change.
 * Throws  RangeError or TypeError for an unknown feature or mode, a missing value, an impossible limit.
 *
 * @example handStandIns(map, values, { feature: "bladeLength", change: -0.5, mode: "instead" }, bassoonActions, {})
 *          .some(({ id }) => id === "roundBothWires")
 */
export function handStandIns(
  map: BlendMap,
  values: Values,
  request: StandInRequest,
  actions: Actions,
  freedom: Freedom,
): HandStandIn[] {
  requireHolds(actions, "actions", "handStandIns: actions", "actions from readActions");
  const wanted = wantedMove(map, values, request, freedom, "handStandIns");
  const byId = new Map(actions.actions.map((action) => [action.id, action]));
  const pairs = handPairs.map(({ id, actions: ids }) => ({
    id,
    parts: ids.flatMap((part) => byId.get(part) ?? []),
  }));
  const deeds = [
    ...actions.actions.map((action) => ({ id: action.id, parts: [action] })),
    ...pairs.filter(({ parts }) => parts.length === 2),
  ];
  return deeds
    .filter(({ parts }) => parts.every((part) => isProposed(map, part, request, freedom)))
    .filter(({ parts }) => !makesTheChange(parts, request))
    .flatMap(({ id, parts }) => handStandIn(map, values, wanted, freedom, id, parts) ?? [])
    .toSorted((a, b) => a.left - b.left || a.size - b.size)
    .map(({ one }) => one);
}

function isProposed(
  map: BlendMap,
  action: Action,
  request: StandInRequest,
  freedom: Freedom,
): boolean {
  const main = mainEffect(action);
  if (main === request.feature || !map.byId.has(main)) return false;
  return Object.keys(action.effects).every((id) => !freedom[id]?.locked);
}

/** "Instead of thinner wings" nobody is told to do what thins the wings. */
function makesTheChange(
  parts: readonly Action[],
  { feature, change, mode }: StandInRequest,
): boolean {
  const effect = parts.reduce((sum, { effects }) => sum + (effects[feature] ?? 0), 0);
  return mode === "instead" && effect * change > 0;
}

function handStandIn(
  map: BlendMap,
  values: Values,
  wanted: Vector,
  freedom: Freedom,
  id: string,
  parts: readonly Action[],
) {
  const arrow = parts.map((part) => actionArrow(map, part)).reduce(added);
  const square = dot(arrow, arrow);
  const along = dot(wanted, arrow);
  const amount = square > 0 ? Math.round(along / square) : 0;
  if (amount < 1) return undefined;
  const left: Vector = [wanted[0] - amount * arrow[0], wanted[1] - amount * arrow[1]];
  const room = parts.map((part) =>
    possibleAmount(map, values, part, freedom, Math.min(part.easy, amount), "handStandIns"),
  );
  const one: HandStandIn = {
    id,
    actions: parts.map((part) => part.id),
    amount,
    likeness: Math.min(1, along / (Math.hypot(...wanted) * Math.sqrt(square))),
    leftover: vectorToTriple(left),
    possible: Math.min(...room) / amount,
    changes: changesOf(parts, amount),
  };
  return { one, left: Math.hypot(...left), size: amount * parts.length };
}

function changesOf(parts: readonly Action[], amount: number): FeatureChange[] {
  const sums = new Map<string, number>(parts.map((part) => [mainEffect(part), 0]));
  for (const { effects } of parts) {
    for (const [id, effect] of Object.entries(effects))
      sums.set(id, (sums.get(id) ?? 0) + amount * effect);
  }
  return [...sums].map(([feature, change]) => ({ feature, change }));
}

function added(a: Vector, b: Vector): Vector {
  return [a[0] + b[0], a[1] + b[1]];
}
