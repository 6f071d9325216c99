import { requireKeyed, requireReadable, shown } from "./check.js";
import { requireMapAndValues, standardise, type BlendMap, type MappedFeature } from "./compile.js";
import { limitsOf, requireFreedom } from "./freedom.js";
import type { FeatureId, Freedom, Triple, Values } from "./model.js";
import { cross, dot, vectorToTriple, type Vector } from "./plane.js";

/** What is to be made up for. */
export interface StandInRequest {
  readonly feature: FeatureId;
  /** In the feature's unit. */
  readonly change: number;
  /** `instead`: the change is wanted but will not be made. `offset`: it has happened or will, and is to be cancelled. */
  readonly mode: "instead" | "offset";
}

/** One feature in place of another. */
export interface StandIn {
  readonly feature: FeatureId;
  /** The change that does best, in the feature's unit. */
  readonly change: number;
  /** |cos| of the angle between the two pulls: 1 does the same, 0 something else. */
  readonly likeness: number;
  /** What is still missing after the whole change: the move that was asked for minus the move that is made. */
  readonly leftover: Triple;
  /** How much of the change range, limits and finishing allow, 0…1. */
  readonly possible: number;
}

/** A feature with its change, in its own unit. */
export interface FeatureChange {
  readonly feature: FeatureId;
  readonly change: number;
}

/** Two features that together do it exactly, the one that changes more first. */
export interface StandInPair {
  readonly changes: readonly [FeatureChange, FeatureChange];
}

/** What can be done in place of a change, or against one. */
export interface StandIns {
  /** Least left over first, then least changed. */
  readonly singles: readonly StandIn[];
  /** Within freedom and exact, least changed first. */
  readonly pairs: readonly StandInPair[];
}

/** Two pulls closer than this (sine) make no pair: both changes would be large and mostly against each other. */
const leastSine = 0.2;

/** A share of the range by which rounding may overstep a limit. */
const hair = 1e-12;

/** A feature that may stand in, and how far it can go. */
interface Candidate {
  readonly one: MappedFeature;
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Features that make up for another: singles as near as one gets, pairs exactly.
 *
 * Shape   map, values, what is to be made up for, freedom → singles and pairs, best first. Locked features are
 *         never proposed; for features that were not measured compile a smaller map.
 * Unit    changes in each feature's own unit; the leftover in shares.
 * Domain  any finite change; the request's own feature may be locked.
 * Error   a pair makes or cancels the move within 1e-9 of a share.
 * Throws  RangeError or TypeError for an unknown feature or mode, a missing value, an impossible limit.
 *
 * @example standIns(map, values, { feature: "bladeLength", change: -0.5, mode: "instead" }, {}).singles.length → 13
 */
export function standIns(
  map: BlendMap,
  values: Values,
  request: StandInRequest,
  freedom: Freedom,
): StandIns {
  const wanted = wantedMove(map, values, request, freedom, "standIns");
  const candidates = candidatesOf(map, values, request.feature, freedom);
  const { arrow } = map.byId.get(request.feature)!;
  return { singles: singlesOf(wanted, arrow, candidates), pairs: pairsOf(wanted, candidates) };
}

/** The move that stand-ins should make: the request's own, or its opposite. Refuses a request that makes no sense. */
export function wantedMove(
  map: BlendMap,
  values: Values,
  request: StandInRequest,
  freedom: Freedom,
  who: string,
): Vector {
  requireMapAndValues(map, values, who);
  requireKeyed(request, `${who}: request`);
  requireFreedom(freedom, map.model, who);
  const { feature, change, mode } = request;
  const one = map.byId.get(feature);
  if (!one) {
    throw new RangeError(
      `${who}: request.feature is ${shown(feature)}; allowed: ${map.features.join(", ")}`,
    );
  }
  requireReadable(change, `${who}: request.change`);
  if (mode !== "instead" && mode !== "offset") {
    throw new RangeError(`${who}: request.mode is ${shown(mode)}; allowed: "instead", "offset"`);
  }
  const move = (mode === "instead" ? change : -change) / one.halfSpread;
  return [move * one.arrow[0], move * one.arrow[1]];
}

function candidatesOf(
  map: BlendMap,
  values: Values,
  except: FeatureId,
  freedom: Freedom,
): Candidate[] {
  const found: Candidate[] = [];
  for (const one of map.mapped) {
    standardise(one, values, "standIns"); // a value that is missing or no number is refused here
    const { id } = one.feature;
    if (id === except || freedom[id]?.locked) continue;
    const value = values[id]!;
    const [low, high] = limitsOf(one.feature, value, freedom[id]);
    found.push({ one, value, low, high });
  }
  return found;
}

function singlesOf(wanted: Vector, asked: Vector, candidates: readonly Candidate[]): StandIn[] {
  return candidates
    .map((candidate) => {
      const { arrow, halfSpread, feature } = candidate.one;
      const square = dot(arrow, arrow);
      const z = square > 0 ? dot(wanted, arrow) / square : 0;
      const left: Vector = [wanted[0] - z * arrow[0], wanted[1] - z * arrow[1]];
      const change = z * halfSpread + 0; // no −0
      const likeness = likenessOf(asked, arrow);
      const possible = possibleShare(candidate, change);
      const single = {
        feature: feature.id,
        change,
        likeness,
        leftover: vectorToTriple(left),
        possible,
      };
      return { single, left: Math.hypot(...left), size: Math.abs(z) };
    })
    .toSorted((a, b) => a.left - b.left || a.size - b.size)
    .map(({ single }) => single);
}

/** |cos| of the angle between two pulls; 0 where one of them pulls nowhere. */
function likenessOf(a: Vector, b: Vector): number {
  const lengths = Math.hypot(...a) * Math.hypot(...b);
  return lengths > 0 ? Math.min(1, Math.abs(dot(a, b)) / lengths) : 0;
}

function possibleShare({ value, low, high }: Candidate, change: number): number {
  if (change === 0) return 1;
  return Math.min(1, (change > 0 ? high - value : value - low) / Math.abs(change));
}

function pairsOf(wanted: Vector, candidates: readonly Candidate[]): StandInPair[] {
  const found: { readonly pair: StandInPair; readonly size: number }[] = [];
  candidates.forEach((a, i) => {
    for (const b of candidates.slice(i + 1)) {
      const whole = cross(a.one.arrow, b.one.arrow);
      const lengths = Math.hypot(...a.one.arrow) * Math.hypot(...b.one.arrow);
      if (!(Math.abs(whole) >= leastSine * lengths) || lengths === 0) continue;
      const za = cross(wanted, b.one.arrow) / whole;
      const zb = cross(a.one.arrow, wanted) / whole;
      if (!fits(a, za) || !fits(b, zb)) continue;
      const changes = [changeOf(a, za), changeOf(b, zb)] as const;
      const pair = Math.abs(za) >= Math.abs(zb) ? changes : ([changes[1], changes[0]] as const);
      found.push({ pair: { changes: pair }, size: Math.abs(za) + Math.abs(zb) });
    }
  });
  return found.toSorted((a, b) => a.size - b.size).map(({ pair }) => pair);
}

function fits({ one, value, low, high }: Candidate, z: number): boolean {
  const after = value + z * one.halfSpread;
  const slack = hair * (one.feature.max - one.feature.min);
  return after >= low - slack && after <= high + slack;
}

function changeOf({ one }: Candidate, z: number): FeatureChange {
  return { feature: one.feature.id, change: z * one.halfSpread + 0 };
}
