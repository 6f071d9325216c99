import { requireGiven } from "./require-given.js";
/**
 * How far an opening that gives evenly stays open under pressure: linear at first, then a parabola that comes to its
 * closure without a kink.
 *
 * Shape   pressure, closing pressure, half-width of the parabola → open share of the height.
 * Unit    Pa.
 * Domain  elbow from 0 to the closing pressure. A pressure below 0 leaves the opening at its rest.
 * Throws  RangeError naming the argument.
 * Source  the parabola that joins with equal value and slope, after Gazengel et al. (2025), Acta Acustica 9.
 *
 * @example openFraction({ pressure: 3000, closingPressure: 6000, elbow: 1000 }) → 0.5
 */
export function openFraction(reed: {
  readonly pressure: number;
  readonly closingPressure: number;
  readonly elbow: number;
}): number {
  requireGiven(reed, "openFraction: reed", "an object with pressure, closingPressure and elbow");
  const { pressure, closingPressure, elbow } = reed;
  requirePressures(pressure, closingPressure, elbow);
  if (pressure <= 0) return 1;
  if (pressure >= closingPressure + elbow) return 0;
  if (pressure <= closingPressure - elbow) return 1 - pressure / closingPressure;
  return (closingPressure + elbow - pressure) ** 2 / (4 * closingPressure * elbow);
}

function requirePressures(pressure: number, closingPressure: number, elbow: number): void {
  if (!Number.isFinite(pressure)) {
    throw new RangeError(`openFraction: pressure is ${pressure} Pa; allowed: a finite number`);
  }
  if (!(closingPressure > 0 && Number.isFinite(closingPressure))) {
    throw new RangeError(
      `openFraction: closingPressure is ${closingPressure} Pa; allowed: a finite number above 0`,
    );
  }
  if (!(elbow >= 0 && elbow <= closingPressure)) {
    throw new RangeError(
      `openFraction: elbow is ${elbow} Pa; allowed: 0 to the closing pressure ${closingPressure} Pa`,
    );
  }
}

/** How the pressure on the blades and the share of the opening that is closed belong together. */
export interface ClosingLaw {
  /** Open share 0 … 1 → pressure that holds it, as a share of the closing pressure. */
  readonly pressureAt: (open: number) => number;
  /** The same the other way, loading from rest: the greatest open share that withstands the pressure. */
  readonly openAt: (pressure: number) => number;
  /** Openings that no pressure holds, because it would have to fall while they close. */
  readonly fold?: Fold;
  /** Measure of the openings that can be held. */
  readonly usable: number;
  /** The least pressure that closes the reed, loading from rest. */
  readonly closure: number;
}

/** Open shares between which the blades jump. */
export interface Fold {
  /** The last opening that is held as pressure rises, and the first that is held after the falling part. */
  readonly from: number;
  readonly to: number;
  /** Where the blades land when they jump at rising pressure. */
  readonly landing: number;
  /** The pressure they jump at, as a share of the closing pressure. */
  readonly pressure: number;
}

const halvings = 60;
/** Of z (1 − z²) at 1/√3, so that both laws climb to the same pressure. */
const foldingScale = (3 * Math.sqrt(3)) / 2;

/**
 * The law between pressure and opening for a reed that hinges more or less: between the even giving of a hinged blade
 * and the snapping of a shallow arch, in proportion.
 *
 * Shape   hinging 0 … 1, elbow as a share of the closing pressure → law in shares.
 * Domain  hinging is taken as 0 below 0 and as 1 above 1; elbow 0 to 1.
 * Error   openings are found to 1e-15 by halving.
 * Throws  RangeError naming an argument that is not finite or an elbow outside the domain.
 * Source  holding: see `openFraction`. Folding: shallow two-bar arch, p ∝ z (1 − z²). That hinges do this: craft
 *         observation with an elastic analogy; no measurement on bassoon blades was found.
 *
 * @example closingLaw(1, 0.1).usable → 1
 */
export function closingLaw(hinging: number, elbow: number): ClosingLaw {
  if (!Number.isFinite(hinging) || !(elbow >= 0 && elbow <= 1)) {
    throw new RangeError(
      `closingLaw: hinging ${hinging}, elbow ${elbow}; allowed: a finite number, and 0 to 1`,
    );
  }
  const h = Math.min(1, Math.max(0, hinging));
  const pressureAt = (z: number): number =>
    h * holding(z, elbow) + (1 - h) * foldingScale * z * (1 - z * z);
  const whole = foldOf(h, elbow, pressureAt);
  const openAt = (pressure: number): number => openUnder(pressure, pressureAt, whole);
  return {
    pressureAt,
    openAt,
    usable: whole ? 1 - (whole.from - whole.to) : 1,
    closure: Math.max(pressureAt(0), whole?.pressure ?? 0),
    ...(whole ? { fold: whole } : {}),
  };
}

/** `openFraction` the other way round, in shares of the closing pressure. */
function holding(z: number, elbow: number): number {
  return z >= elbow ? 1 - z : 1 + elbow - 2 * Math.sqrt(elbow * z);
}

/**
 * The part where pressure falls as the reed closes. The slope dp/dz is concave in z, so there is one such part or none;
 * above the elbow it is a parabola.
 */
function foldOf(h: number, elbow: number, pressureAt: (z: number) => number): Fold | undefined {
  const slope = (z: number): number =>
    -h * (z >= elbow ? 1 : Math.sqrt(elbow / z)) + (1 - h) * foldingScale * (1 - 3 * z * z);
  if (h === 1) return undefined;
  // Where the slope is greatest: below the elbow where its two parts balance, at the elbow at most.
  const balance = ((h * Math.sqrt(elbow)) / (12 * (1 - h) * foldingScale)) ** 0.4;
  const steepest = Math.min(elbow, balance);
  const greatest = steepest > 0 ? slope(steepest) : -h + (1 - h) * foldingScale;
  if (!(greatest > 0)) return undefined;
  const from = rootBetween(slope, steepest, 1);
  const to = h === 0 || steepest === 0 ? 0 : rootBetween((z) => -slope(z), 0, steepest);
  const pressure = pressureAt(from);
  const landing =
    pressureAt(0) <= pressure ? 0 : rootBetween((z) => pressureAt(z) - pressure, 0, to);
  return { from, to, landing, pressure };
}

function openUnder(pressure: number, pressureAt: (z: number) => number, fold?: Fold): number {
  if (pressure <= 0) return 1;
  if (!fold || pressure <= fold.pressure) {
    if (!fold && pressure >= pressureAt(0)) return 0;
    return rootBetween((z) => pressureAt(z) - pressure, fold?.from ?? 0, 1);
  }
  if (pressure >= pressureAt(0)) return 0;
  return rootBetween((z) => pressureAt(z) - pressure, 0, fold.to);
}

/** Where a function that falls from above 0 to below 0 crosses it. */
function rootBetween(f: (z: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  for (let i = 0; i < halvings; i += 1) {
    const middle = (a + b) / 2;
    if (f(middle) > 0) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}
