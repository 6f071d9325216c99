import { closingLaw, type ClosingLaw } from "./closing-law.js";
import { areaInRow, jetSpeed } from "./flow.js";
import { openingArea } from "./opening.js";
import type { ReedMechanics } from "./reed-mechanics.js";
import { requireGiven } from "./require-given.js";

/** A place on the curve: blowing pressure (Pa), air (m³/s), closed share of the opening's height. */
export interface FlowPoint {
  readonly blow: number;
  readonly flow: number;
  readonly closed: number;
}

/** The air over the blowing pressure at one lip pressure. */
export interface FlowCurve {
  /** What is held as the pressure rises from 0. */
  readonly held: readonly FlowPoint[];
  /** Openings that no pressure holds, drawn as a gap; empty without a fold. */
  readonly unheld: readonly FlowPoint[];
  /** What is held again beyond the fold, up to the closure; empty when the reed snaps shut. */
  readonly regained: readonly FlowPoint[];
  readonly peak: FlowPoint;
  /** The blowing pressure from which on the reed is closed, where it beats. */
  readonly closure: number;
  /** The jump: where it leaves, and where it lands at the same pressure. */
  readonly jump?: { readonly from: FlowPoint; readonly to: FlowPoint };
}

const steps = 48;

/**
 * The curve of air over blowing pressure, with its peak, its closure and its fold.
 *
 * Shape   reed, lip pressure → points in the order of closing.
 * Unit    Pa → Pa, m³/s.
 * Domain  lip pressure from 0 on; where the lips alone close the reed, or have brought it past its fold, the parts
 *         before are empty.
 * Throws  RangeError for a lip pressure outside the domain.
 * Source  Bernoulli; see `closingLaw`.
 */
export function flowCurve(reed: ReedMechanics, lip: number): FlowCurve {
  requireGiven(reed, "flowCurve: reed", "what reedMechanics made");
  const { law, pointAt, start, blowAt } = curveOf(reed, lip);
  const { fold } = law;
  // Beyond the fold the lips alone may be too much; a rounding below 0 is the curve's own start.
  const least = 1e-9 * reed.closingPressure;
  const along = (from: number, to: number): FlowPoint[] =>
    from > to ? spread(from, to).flatMap((z) => (blowAt(z) >= -least ? [pointAt(z)] : [])) : [];
  const before = fold !== undefined && start >= fold.from;
  return {
    held: !fold || before ? along(start, fold?.from ?? 0) : [],
    unheld: fold && before ? along(fold.from, fold.to) : [],
    regained: fold ? along(before ? fold.to : start, 0) : [],
    peak: peakOf(reed, lip),
    closure: Math.max(0, law.closure * reed.closingPressure - lip),
    ...(fold && before ? { jump: jumpAt(pointAt(fold.from), pointAt(fold.landing)) } : {}),
  };
}

/** Straight down: the blades land at the pressure they left at, closed ones whatever would hold them there. */
function jumpAt(from: FlowPoint, landing: FlowPoint): NonNullable<FlowCurve["jump"]> {
  return { from, to: { ...landing, blow: from.blow } };
}

/** Open shares from … to, closer together at both ends, where curves bend most. */
function spread(from: number, to: number): number[] {
  return Array.from({ length: steps + 1 }, (_, i) => {
    const share = (1 - Math.cos((Math.PI * i) / steps)) / 2;
    // Exact at both ends: an opening a rounding below 0 has no root.
    return from * (1 - share) + to * share;
  });
}

interface Curve {
  readonly law: ClosingLaw;
  /** Open share that the lips alone leave. */
  readonly start: number;
  readonly blowAt: (open: number) => number;
  readonly pointAt: (open: number) => FlowPoint;
}

function curveOf(reed: ReedMechanics, lip: number): Curve {
  if (!(lip >= 0 && Number.isFinite(lip))) {
    throw new RangeError(`flowCurve: lip is ${lip} Pa; allowed: a finite number from 0 on`);
  }
  const { recipe, assumptions, closingPressure, throatArea } = reed;
  const law = closingLaw(recipe.hinging, assumptions.elbow);
  const rest = openingArea({
    width: recipe.openingWidth / 1000,
    height: recipe.openingHeight / 1000,
  });
  const blowAt = (z: number): number => law.pressureAt(z) * closingPressure - lip;
  const pointAt = (z: number): FlowPoint => {
    const blow = Math.max(0, blowAt(z));
    const area = areaInRow(rest * z * Math.sqrt(z), throatArea);
    return { blow, flow: area * jetSpeed(blow, assumptions.airDensity), closed: 1 - z };
  };
  return { law, start: law.openAt(lip / closingPressure), blowAt, pointAt };
}

/**
 * The most air that a reed lets through at a lip pressure as the blowing pressure rises; nothing where the lips alone
 * close it.
 *
 * Error   of the blowing pressure about 1e-6 of itself, of the air rounding: at a peak it hardly depends on the pressure.
 */
export function peakOf(reed: ReedMechanics, lip: number): FlowPoint {
  const { law, start, pointAt } = curveOf(reed, lip);
  const { fold } = law;
  if (!fold || start < fold.from) return greatest(pointAt, 0, start);
  const first = greatest(pointAt, fold.from, start);
  const second = greatest(pointAt, 0, fold.landing);
  return second.flow > first.flow ? second : first;
}

const sections = 40;
const golden = (Math.sqrt(5) - 1) / 2;

/** Flow rises and falls once between two open shares: golden section. */
function greatest(pointAt: (z: number) => FlowPoint, low: number, high: number): FlowPoint {
  let [a, b] = [low, high];
  let [left, right] = [b - golden * (b - a), a + golden * (b - a)];
  let [atLeft, atRight] = [pointAt(left), pointAt(right)];
  for (let i = 0; i < sections; i += 1) {
    if (atLeft.flow > atRight.flow) {
      [b, right, atRight] = [right, left, atLeft];
      left = b - golden * (b - a);
      atLeft = pointAt(left);
    } else {
      [a, left, atLeft] = [left, right, atRight];
      right = a + golden * (b - a);
      atRight = pointAt(right);
    }
  }
  const ends = [pointAt(low), pointAt(high), atLeft];
  return ends.reduce((best, one) => (one.flow > best.flow ? one : best));
}
