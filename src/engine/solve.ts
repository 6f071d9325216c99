import type { Blend } from "./blend.js";
import { requireFinite, requireFiniteTuple, requireKeyed } from "./check.js";
import { along, requireMap, sumArrows, type BlendMap } from "./compile.js";
import type { FeatureId, Freedom, Values } from "./model.js";
import { blendToVector, dot, vectorToBlend, type Vector } from "./plane.js";
import { featureRoom, type FeatureRoom } from "./reach.js";
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

/** Within this distance (share space) of the border a target counts as on it: Newton stalls there. */
const borderBand = 1e-9;
/** How closely the recipe meets the target, in share space. */
const tolerance = 1e-12;
const mostSteps = 60;

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
  requireTarget(target);
  const reluctance = reluctances(map, options.reluctance);
  const room = featureRoom(map, values, freedom, "solveFor");
  const wanted = blendToVector(target);
  const spot = nearestOnZonotope(room.polygon, wanted);
  const inside = spot.depth > borderBand;
  const z =
    (inside ? newton(map, room, reluctance, wanted) : undefined) ??
    alongBorder(map, room, reluctance, spot);
  const reached =
    inside || Math.hypot(wanted[0] - spot.point[0], wanted[1] - spot.point[1]) <= borderBand;
  return {
    values: toValues(map, room, values, z),
    blend: vectorToBlend(sumArrows(map.mapped, z)),
    reached,
    limits: reached ? [] : holdingBack(map, room, z, spot.point, wanted),
  };
}

function requireTarget(target: Blend): void {
  requireFiniteTuple(target, 3, "solveFor: target");
  const sum = target[0] + target[1] + target[2];
  if (Math.abs(sum - 1) <= 1e-5) return; // targets are written down with six digits
  throw new RangeError(
    `solveFor: target ${target.join(", ")} sums to ${sum}; allowed: shares that sum to 1`,
  );
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

/**
 * Semismooth Newton on the dual: z_j(μ) = clamp(z_j⁰ + p_j·μ / 2k_j), two equations λ(z(μ)) = target.
 * The dual is concave and piecewise quadratic, so with a line search it ends after finitely many pieces.
 */
function newton(
  map: BlendMap,
  room: FeatureRoom,
  reluctance: Float64Array,
  wanted: Vector,
): Float64Array | undefined {
  let multiplier: Vector = [0, 0];
  const trial = new Float64Array(map.mapped.length);
  let state = respond(map, room, reluctance, wanted, multiplier, trial);
  for (let step = 0; step < mostSteps; step += 1) {
    if (Math.hypot(...state.gap) <= tolerance) return trial;
    const move = newtonMove(state);
    const tried: Vector = [multiplier[0] + move[0], multiplier[1] + move[1]];
    const next = respond(map, room, reluctance, wanted, tried, trial);
    // A full step that halves the gap is taken; otherwise the dual's highest point along the way.
    if (Math.hypot(...next.gap) <= 0.5 * Math.hypot(...state.gap)) {
      multiplier = tried;
      state = next;
      continue;
    }
    const length = bestLength(map, room, reluctance, multiplier, move, dot(state.gap, move));
    multiplier = [multiplier[0] + length * move[0], multiplier[1] + length * move[1]];
    state = respond(map, room, reluctance, wanted, multiplier, trial);
  }
  // Rounding can keep the line search from the last digits; that is still a recipe at the target.
  return Math.hypot(...state.gap) <= borderBand ? trial : undefined;
}

interface DualState {
  /** target − λ(z(μ)): the gradient of the dual. */
  readonly gap: Vector;
  readonly dual: number;
  readonly xx: number;
  readonly xy: number;
  readonly yy: number;
}

function respond(
  map: BlendMap,
  room: FeatureRoom,
  reluctance: Float64Array,
  wanted: Vector,
  multiplier: Vector,
  z: Float64Array,
): DualState {
  let [gapX, gapY] = wanted;
  let [xx, xy, yy, penalty] = [0, 0, 0, 0];
  for (let j = 0; j < z.length; j += 1) {
    const [px, py] = map.mapped[j]!.arrow;
    const k = reluctance[j]!;
    const free = room.start[j]! + (px * multiplier[0] + py * multiplier[1]) / (2 * k);
    const value = Math.min(room.high[j]!, Math.max(room.low[j]!, free));
    if (value === free && room.low[j]! < room.high[j]!) {
      xx += (px * px) / (2 * k);
      xy += (px * py) / (2 * k);
      yy += (py * py) / (2 * k);
    }
    z[j] = value;
    gapX -= value * px;
    gapY -= value * py;
    penalty += k * (value - room.start[j]!) ** 2;
  }
  const gap: Vector = [gapX, gapY];
  return { gap, dual: penalty + dot(multiplier, gap), xx, xy, yy };
}

/**
 * How far along a way the dual is highest: its slope there, gap·move, falls with the length, piece by piece
 * linear, with a kink wherever a feature meets or leaves a limit.
 */
function bestLength(
  map: BlendMap,
  room: FeatureRoom,
  reluctance: Float64Array,
  from: Vector,
  move: Vector,
  slope: number,
): number {
  const kinks: { length: number; bend: number }[] = [];
  let bend = 0; // how fast the slope falls
  map.mapped.forEach(({ arrow }, j) => {
    const rate = dot(arrow, move) / (2 * reluctance[j]!);
    const [low, high] = [room.low[j]!, room.high[j]!];
    if (rate === 0 || low === high) return;
    const free = room.start[j]! + dot(arrow, from) / (2 * reluctance[j]!);
    const part = rate * dot(arrow, move);
    const enter = ((rate > 0 ? low : high) - free) / rate;
    const leave = ((rate > 0 ? high : low) - free) / rate;
    if (enter > 0) kinks.push({ length: enter, bend: part });
    if (leave > 0) kinks.push({ length: leave, bend: -part });
    if (enter <= 0 && leave > 0) bend += part;
  });
  kinks.sort((a, b) => a.length - b.length);
  let length = 0;
  for (const kink of kinks) {
    const drop = bend * (kink.length - length);
    if (drop >= slope) break;
    slope -= drop;
    length = kink.length;
    bend += kink.bend;
  }
  return bend > 0 ? length + slope / bend : length;
}

/** Where all free pulls are parallel the matrix is singular: a little of the identity keeps the step going uphill. */
function newtonMove({ gap, xx, xy, yy }: DualState): Vector {
  const ridge = 1e-12 + 1e-10 * (xx + yy);
  const [a, d] = [xx + ridge, yy + ridge];
  const determinant = a * d - xy * xy;
  return [(d * gap[0] - xy * gap[1]) / determinant, (a * gap[1] - xy * gap[0]) / determinant];
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
