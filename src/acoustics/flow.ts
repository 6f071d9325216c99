import { requireGiven } from "./require-given.js";
/** Of air, kg/m³, at about 20 °C. */
const airDensity = 1.2;

/**
 * The air through a slit whose height closes in proportion to the pressure: the textbook reed.
 *
 * Shape   width and height at rest, closing pressure, pressure difference, air density (1.2) → volume a second.
 * Unit    m, Pa, kg/m³ → m³/s.
 * Domain  width and height from 0 on; 0 from the closing pressure on, and where nobody blows.
 * Throws  RangeError naming the argument.
 * Source  quasi-static reed: Wilson & Beavers (1974), JASA 56, 653; Dalmont, Gilbert & Ollivier (2003), JASA 114, 2253.
 *
 * @example flow({ width: 0.01, height: 0.001, closingPressure: 6000, pressure: 6000 }) → 0
 */
export function flow(slit: {
  readonly width: number;
  readonly height: number;
  readonly closingPressure: number;
  readonly pressure: number;
  readonly density?: number;
}): number {
  requireGiven(slit, "flow: slit", "an object with width, height, closingPressure and pressure");
  const { width, height, closingPressure, pressure, density = airDensity } = slit;
  requireFrom(0, { width, height });
  requireFrom(Number.MIN_VALUE, { closingPressure, density });
  if (!Number.isFinite(pressure)) {
    throw new RangeError(`flow: pressure is ${pressure} Pa; allowed: a finite number`);
  }
  if (pressure <= 0 || pressure >= closingPressure) return 0;
  return width * height * (1 - pressure / closingPressure) * jetSpeed(pressure, density);
}

/** Bernoulli's speed of air that falls through a pressure difference, m/s; 0 where nobody blows. */
export function jetSpeed(pressure: number, density: number): number {
  return Math.sqrt((2 * Math.max(0, pressure)) / density);
}

/**
 * One area that lets as much air through as two in a row.
 *
 * Unit    m².
 * Source  derived: the losses 1/A² of both add, Bernoulli.
 *
 * @example areaInRow(3, 4) → 2.4
 */
export function areaInRow(one: number, other: number): number {
  if (one === 0 || other === 0) return 0;
  return (one * other) / Math.hypot(one, other);
}

function requireFrom(least: number, values: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(values)) {
    if (value >= least && Number.isFinite(value)) continue;
    const allowed = least === 0 ? "from 0 on" : "above 0";
    throw new RangeError(`flow: ${name} is ${value}; allowed: a finite number ${allowed}`);
  }
}
