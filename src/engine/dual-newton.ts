import type { BlendMap } from "./compile.js";
import { dot, type Vector } from "./plane.js";
import type { FeatureRoom } from "./feature-room.js";

/** Within this distance (share space) of the border a target counts as on it: Newton stalls there. */
export const borderBand = 1e-9;
/** How closely the recipe meets the target, in share space. */
const tolerance = 1e-12;
const mostSteps = 60;

/**
 * Semismooth Newton on the dual: z_j(μ) = clamp(z_j⁰ + p_j·μ / 2k_j), two equations λ(z(μ)) = target.
 * The dual is concave and piecewise quadratic, so with a line search it ends after finitely many pieces.
 */
export function dualNewton(
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
