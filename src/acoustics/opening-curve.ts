import { closingLaw } from "./closing-law.js";
import type { ReedMechanics } from "./reed-mechanics.js";
import { requireGiven } from "./require-given.js";

/** A lip pressure (Pa) and the share of the opening's height that stays open under it. */
export interface OpeningPoint {
  readonly lip: number;
  readonly open: number;
}

/** What the lips can hold at one blowing pressure. */
export interface OpeningCurve {
  /** As the lips press harder; two pieces where the blades jump. */
  readonly held: readonly (readonly OpeningPoint[])[];
  /** Open shares that cannot be held, and the lip pressure of the jump. */
  readonly fold?: { readonly lip: number; readonly from: number; readonly to: number };
  /** The lip pressure that closes the reed. */
  readonly closure: number;
}

const steps = 48;

/**
 * The opening over the lip pressure, loading from rest.
 *
 * Shape   reed, blowing pressure → open shares from relaxed lips to closed.
 * Unit    Pa.
 * Domain  blowing pressure from 0 on.
 * Throws  RangeError for a blowing pressure outside the domain.
 * Source  see `closingLaw`: lip and blowing pressure add.
 */
export function openingCurve(reed: ReedMechanics, blow: number): OpeningCurve {
  requireGiven(reed, "openingCurve: reed", "what reedMechanics made");
  if (!(blow >= 0 && Number.isFinite(blow))) {
    throw new RangeError(`openingCurve: blow is ${blow} Pa; allowed: a finite number from 0 on`);
  }
  const { closingPressure, recipe, assumptions } = reed;
  const law = closingLaw(recipe.hinging, assumptions.elbow);
  const { fold } = law;
  const lipAt = (z: number): number => Math.max(0, law.pressureAt(z) * closingPressure - blow);
  const start = law.openAt(blow / closingPressure);
  const piece = (from: number, to: number): OpeningPoint[] =>
    from > to
      ? Array.from({ length: steps + 1 }, (_, i) => {
          // Closer together at both ends, where the curve bends most.
          const share = (1 - Math.cos((Math.PI * i) / steps)) / 2;
          const open = from * (1 - share) + to * share;
          return { lip: lipAt(open), open };
        })
      : [];
  const ahead = fold !== undefined && start > fold.from;
  const pieces =
    ahead && fold ? [piece(start, fold.from), piece(fold.landing, 0)] : [piece(start, 0)];
  return {
    held: pieces.filter((one) => one.length > 0),
    closure: Math.max(0, law.closure * closingPressure - blow),
    ...(ahead && fold
      ? { fold: { lip: lipAt(fold.from), from: fold.from, to: fold.landing } }
      : {}),
  };
}
