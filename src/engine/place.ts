import { blendDistance, type Blend } from "./blend.js";
import { requireRows } from "./check.js";
import { requireMap, requireMapAndValues, standardise, type BlendMap } from "./compile.js";
import type { Values } from "./model.js";
import { nearestBlend } from "./nearest-blend.js";

/** Where a reed lies. */
export interface Placed {
  /** Inside the closed triangle. */
  readonly blend: Blend;
  /** As computed; negative shares outside. */
  readonly raw: Blend;
  /** How far outside the triangle `raw` lies, in sides of the triangle; 0 inside. */
  readonly beyond: number;
  /** Weighted root mean square of what no mix of the corner reeds explains, in half-spreads. */
  readonly mismatch: number;
}

/**
 * Places a reed in the triangle.
 *
 * Shape   one number for every feature of the map → blend, raw shares, beyond, mismatch.
 * Unit    the model's own units → dimensionless.
 * Domain  any finite values; extra keys are ignored.
 * Error   a mix of corner reeds comes back within 1e-10 (place.test.ts).
 * Throws  RangeError naming the feature whose value is missing or not finite.
 *
 * @example place(compileModel(bassoonModel), { ...allRound, bladeLength: 26.2 }).blend[0] > 1 / 3
 */
export function place(map: BlendMap, values: Values): Placed {
  requireMapAndValues(map, values, "place");
  const { mapped } = map;
  const count = mapped.length;
  let high = 1 / 3;
  let low = 1 / 3;
  let loud = 1 / 3;
  const z = new Array<number>(count);
  for (let j = 0; j < count; j += 1) {
    const one = mapped[j]!;
    const move = standardise(one, values, "place");
    z[j] = move;
    high += move * one.pull[0];
    low += move * one.pull[1];
    loud += move * one.pull[2];
  }
  const raw: Blend = [high, low, loud];
  const blend = nearestBlend(raw);
  return {
    blend,
    raw,
    beyond: blendDistance(raw, blend) / Math.SQRT2,
    mismatch: mismatchOf(map, z, raw),
  };
}

function mismatchOf(map: BlendMap, z: readonly number[], raw: Blend): number {
  let sum = 0;
  let weights = 0;
  for (let j = 0; j < z.length; j += 1) {
    const { corners, feature } = map.mapped[j]!;
    const rest = z[j]! - raw[0] * corners[0] - raw[1] * corners[1] - raw[2] * corners[2];
    sum += feature.weight * rest * rest;
    weights += feature.weight;
  }
  return Math.sqrt(sum / weights);
}

/**
 * Raw shares of many reeds at once.
 *
 * Shape   n rows of values in the map's feature order → n rows of 3 raw shares, into `out` where given.
 * Unit    the model's own units → dimensionless.
 * Throws  RangeError when a length does not fit, or naming row and feature of a value that is not finite; the
 *         rows before it are then in `out` already.
 *
 * @example placeMany(map, new Float64Array(map.features.map((id) => allRound[id]))) → about [⅓, ⅓, ⅓]
 */
export function placeMany(
  map: BlendMap,
  rows: Float64Array,
  out: Float64Array = new Float64Array(
    Math.ceil((rows?.length ?? 0) / (map?.features?.length ?? 1)) * 3,
  ),
): Float64Array {
  requireMap(map, "placeMany");
  requireRows(rows, "placeMany: rows");
  requireRows(out, "placeMany: out");
  const width = map.features.length;
  const count = rows.length / width;
  if (!Number.isInteger(count)) {
    throw new RangeError(`placeMany: rows has ${rows.length} numbers; allowed: rows of ${width}`);
  }
  if (out.length < count * 3) {
    throw new RangeError(
      `placeMany: out has ${out.length} numbers; allowed: at least ${count * 3}`,
    );
  }
  const { perUnit, offset } = map;
  for (let row = 0, from = 0; row < count; row += 1) {
    let [high, low, loud] = offset;
    for (let j = 0, k = 0; j < width; j += 1, k += 3, from += 1) {
      const value = rows[from]!;
      high += value * perUnit[k]!;
      low += value * perUnit[k + 1]!;
      loud += value * perUnit[k + 2]!;
    }
    if (!Number.isFinite(high + low + loud)) reportRow(map, rows, row);
    out[3 * row] = high;
    out[3 * row + 1] = low;
    out[3 * row + 2] = loud;
  }
  return out;
}

function reportRow(map: BlendMap, rows: Float64Array, row: number): never {
  const width = map.features.length;
  const bad = map.features.findIndex((_, j) => !Number.isFinite(rows[row * width + j]!));
  const what =
    bad < 0 ? "values too large" : `feature "${map.features[bad]}" is ${rows[row * width + bad]}`;
  throw new RangeError(`placeMany: row ${row}: ${what}; allowed: finite numbers`);
}
