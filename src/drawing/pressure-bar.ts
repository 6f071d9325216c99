import { scaleLinear } from "d3";
import { round } from "./triangle-layout.js";

/** Lip and blowing pressure laid end to end, in px from the left. */
export interface PressureBar {
  readonly width: number;
  /** Where the lips' part ends and the breath's begins, and where both end. */
  readonly lips: number;
  readonly both: number;
  /** Where the blades snap on by themselves; undefined without a fold. */
  readonly snaps: number | undefined;
  /** Where the reed is closed; undefined beyond the end of the bar. */
  readonly closes: number | undefined;
}

/** Pa at the end of the bar: both controls as far as they go. */
const most = 20000;

/**
 * The two pressures that press the blades together, end to end, with where they snap and where they close.
 *
 * Unit    Pa → px.
 *
 * @example pressureBar({ lip: 5000, blow: 5000, closes: 40000 }, 100).both → 50
 */
export function pressureBar(
  pressures: {
    readonly lip: number;
    readonly blow: number;
    readonly closes: number;
    readonly snaps?: number | undefined;
  },
  width: number,
): PressureBar {
  const { lip, blow, closes, snaps } = pressures;
  const x = scaleLinear([0, most], [0, width]).clamp(true);
  const mark = (pressure: number | undefined): number | undefined =>
    pressure === undefined || pressure > most ? undefined : round(x(pressure));
  return {
    width,
    lips: round(x(lip)),
    both: round(x(lip + blow)),
    snaps: mark(snaps),
    closes: mark(closes),
  };
}
