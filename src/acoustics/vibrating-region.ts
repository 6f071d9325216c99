import { bladeWidth } from "./blade.js";
import { gaussLegendre } from "./gauss-legendre.js";
import { archSagitta, type ReedMechanics } from "./reed-mechanics.js";

/** The part of a blade that swings. */
export interface VibratingRegion {
  /** How far it reaches behind the tip, m. */
  readonly length: number;
  /** Half of its width at x m from the tip, m. */
  readonly halfWidth: (x: number) => number;
  /** m². */
  readonly area: number;
}

const panels = 6;
const perPanel = gaussLegendre(6);

/**
 * What vibrates: the blade in front of the lips, less its closed corners. What closes at the tip goes on
 * behind it as far as the arch of the two blades leaves less room than they have come together; at the tip itself the
 * open share of the width is that of `cornerClosing`.
 *
 * Shape   reed, closed share of the opening's height, place of the lips (mm) → region.
 * Domain  closed 0 to 1; lips above 0, behind the collar they count as at the collar.
 * Error   of the area, below 1e-5 (measured in vibrating-region.test.ts).
 * Throws  RangeError naming the argument.
 * Source  a simple picture, derived: a blade comes down like (1 − x/L)², and the gap at u is 2c (1 − u²).
 */
export function vibratingRegion(
  { recipe, assumptions }: ReedMechanics,
  closed: number,
  place: number,
): VibratingRegion {
  if (!(closed >= 0 && closed <= 1)) {
    throw new RangeError(`vibratingRegion: closed is ${closed}; allowed: 0 to 1`);
  }
  if (!(place > 0)) {
    throw new RangeError(`vibratingRegion: place is ${place} mm; allowed: above 0`);
  }
  const blade = recipe.bladeLength / 1000;
  const sagitta = archSagitta(recipe);
  const halfWidth = (x: number): number => {
    const s = Math.min(1, x / blade);
    const down = (closed * recipe.openingHeight * (1 - s) ** 2) / 1000;
    const open = Math.sqrt(Math.max(0, 1 - down / (2 * sagitta(x))));
    return (bladeWidth(recipe, x, assumptions) / 2) * open;
  };
  const length = Math.min(blade, place / 1000);
  return { length, halfWidth, area: areaOf(halfWidth, length) };
}

/** Places lie as the squares of even steps: closed, the width starts from the tip like a root. */
function areaOf(halfWidth: (x: number) => number, length: number): number {
  let area = 0;
  for (let panel = 0; panel < panels; panel += 1) {
    perPanel.places.forEach((at, i) => {
      const s = (panel + at) / panels;
      area += (halfWidth(length * s * s) * 4 * s * length * perPanel.weights[i]!) / panels;
    });
  }
  return area;
}
