import type { Blend } from "./blend.js";
import { requireFinite, requireShares, requireKeyed } from "./check.js";
import { along, requireMap, sumArrows, type BlendMap } from "./compile.js";
import { borderBand, dualNewton } from "./dual-newton.js";
import type { FeatureId, Freedom, Values } from "./model.js";
import { blendToVector, dot, vectorToBlend, type Vector } from "./plane.js";
import { featureRoom, type FeatureRoom } from "./feature-room.js";
import { nearestOnZonotope, type ZonotopeSpot } from "./zonotope-spot.js";

/** The recipe that goes with a point. */
export interface Solution {
  /** Every feature's value; what the map does not know comes back as it was. */
  readonly values: Values;
  /** Where that recipe lies (raw). */
  readonly blend: Blend;
  readonly reached: boolean;
  /** Features at a limit or locked that hold the point back, strongest first; empty when reached. */
  readonly limits: FeatureId[];
}

/**
 * The recipe nearest to the present one whose point is the target: minimise Σ k_j (z_j − z_j⁰)²
 * subject to λ(z) = target and every feature within its limits.
 *
 * Shape   map, present values, target, freedom → values, blend, reached, limits.
 * Unit    the model's own units; shares.
 * Domain  any finite target summing to 1 within 1e-5; one outside reach is moved to the nearest point in reach.
 * Error   the blend meets the target within 1e-9 when reached.
 * Throws  RangeError naming a missing value, an unknown feature, a reluctance below 0.01 or a bad target.
 *
 * @example solveFor(map, values, [0.5, 0.3, 0.2], finishingFreedom(bassoonModel, values)).values.spine <= values.spine
 */
export function solveFor(
  map: BlendMap,
  values: Values,
  target: Blend,
  freedom: Freedom,
  options: { readonly reluctance?: Readonly<Record<FeatureId, number>> } = {},
): Solution {
  requireMap(map, "solveFor");
  requireKeyed(options, "solveFor: options");
  requireShares(target, "solveFor: target");
  const reluctance = reluctances(map, options.reluctance);
  const room = featureRoom(map, values, freedom, "solveFor");
  const wanted = blendToVector(target);
  const spot = nearestOnZonotope(room.polygon, wanted);
  const inside = spot.depth > borderBand;
  const z =
    (inside ? dualNewton(map, room, reluctance, wanted) : undefined) ??
    alongBorder(map, room, reluctance, spot);
  const landed = sumArrows(map.mapped, z);
  // Told by where the recipe really lies, whichever way it was found.
  const reached = Math.hypot(wanted[0] - landed[0], wanted[1] - landed[1]) <= 10 * borderBand;
  return {
    values: toValues(map, room, values, z),
    blend: vectorToBlend(landed),
    reached,
    limits: reached ? [] : holdingBack(map, room, z, spot.point, wanted),
  };
}

function reluctances(
  map: BlendMap,
  stated: Readonly<Record<FeatureId, number>> = {},
): Float64Array {
  requireKeyed(stated, "solveFor: reluctance");
  for (const [id, value] of Object.entries(stated)) {
    if (!map.model.features.some((feature) => feature.id === id)) {
      const allowed = map.model.features.map((feature) => feature.id).join(", ");
      throw new RangeError(`solveFor: reluctance names feature "${id}"; allowed: ${allowed}`);
    }
    requireFinite(value, `solveFor: reluctance.${id}`);
    if (value < 0.01) {
      throw new RangeError(
        `solveFor: reluctance.${id} is ${value}; allowed: a finite number of at least 0.01`,
      );
    }
  }
  return Float64Array.from(map.mapped, (one) => stated[one.feature.id] ?? 1);
}

/** On the border the limits are known from the polygon: only the features along the nearest side still have a choice. */
function alongBorder(
  map: BlendMap,
  room: FeatureRoom,
  reluctance: Float64Array,
  spot: ZonotopeSpot,
): Float64Array {
  const z = Float64Array.from(room.start);
  for (const { index, end } of spot.settled)
    z[index] = (end === "low" ? room.low : room.high)[index]!;
  const { sliding, direction } = spot;
  if (sliding.length === 0) return z;
  const size = Math.hypot(...direction);
  const unit: Vector = [direction[0] / size, direction[1] / size];
  let wanted = dot(unit, spot.point) - dot(unit, sumArrows(map.mapped, z));
  for (const j of sliding) wanted += z[j]! * along(map.mapped[j]!, unit);
  shareAlong(map, room, reluctance, sliding, unit, wanted, z);
  return z;
}

/**
 * One equation, Σ z_j a_j = wanted with z_j(μ) = clamp(z_j⁰ + a_j μ / 2k_j): its left side never falls with μ,
 * so the breakpoints, sorted, give the piece and the piece gives μ.
 */
function shareAlong(
  map: BlendMap,
  room: FeatureRoom,
  reluctance: Float64Array,
  sliding: readonly number[],
  unit: Vector,
  wanted: number,
  z: Float64Array,
): void {
  const slope = (j: number): number => along(map.mapped[j]!, unit) / (2 * reluctance[j]!);
  const valueAt = (j: number, mu: number): number =>
    Math.min(room.high[j]!, Math.max(room.low[j]!, room.start[j]! + slope(j) * mu));
  const sumAt = (mu: number): number =>
    sliding.reduce((sum, j) => sum + valueAt(j, mu) * along(map.mapped[j]!, unit), 0);
  const breaks = sliding
    .flatMap((j) => [
      (room.low[j]! - room.start[j]!) / slope(j),
      (room.high[j]! - room.start[j]!) / slope(j),
    ])
    .toSorted((a, b) => a - b);
  const after = breaks.findIndex((mu) => sumAt(mu) >= wanted);
  const right = breaks[after < 0 ? breaks.length - 1 : after]!;
  const left = breaks[Math.max(0, (after < 0 ? breaks.length : after) - 1)]!;
  const [sumLeft, sumRight] = [sumAt(left), sumAt(right)];
  const fraction =
    sumRight > sumLeft ? Math.min(1, Math.max(0, (wanted - sumLeft) / (sumRight - sumLeft))) : 1;
  const mu = left + fraction * (right - left);
  for (const j of sliding) {
    const [low, high, value] = [room.low[j]!, room.high[j]!, valueAt(j, mu)];
    // At a corner of reach a sliding feature stands at its end, but for rounding.
    const hair = 1e-9 * (high - low);
    z[j] = value - low <= hair ? low : high - value <= hair ? high : value;
  }
}

/** A limit comes back to the last digit, and a feature that did not move keeps the very number it had. */
function toValues(map: BlendMap, room: FeatureRoom, values: Values, z: Float64Array): Values {
  const result: Record<FeatureId, number> = { ...values };
  map.mapped.forEach((one, j) => {
    if (z[j] === room.start[j]) return;
    const [low, high] = room.limits[j]!;
    const value = one.mean + z[j]! * one.halfSpread;
    result[one.feature.id] =
      z[j] === room.low[j]
        ? low
        : z[j] === room.high[j]
          ? high
          : Math.min(high, Math.max(low, value));
  });
  return result;
}

function holdingBack(
  map: BlendMap,
  room: FeatureRoom,
  z: Float64Array,
  from: Vector,
  to: Vector,
): FeatureId[] {
  const away: Vector = [to[0] - from[0], to[1] - from[1]];
  const size = Math.hypot(...away);
  const unit: Vector = [away[0] / size, away[1] / size];
  const strength = map.mapped.map((one, j) => {
    const help = along(one, unit);
    const barred = help > 0 ? z[j]! >= room.high[j]! : z[j]! <= room.low[j]!;
    const counts = Math.abs(help) > 1e-9 * Math.hypot(...one.arrow);
    return { id: one.feature.id, help: barred && counts ? Math.abs(help) : 0 };
  });
  return strength
    .filter(({ help }) => help > 0)
    .toSorted((a, b) => b.help - a.help)
    .map(({ id }) => id);
}
