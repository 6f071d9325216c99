import { centreBlend, type Blend } from "../engine/blend.js";
import { nearestBlend } from "../engine/nearest-blend.js";

/** Steps of the arrow keys, in shares: plain, with Shift, with the Page keys. */
const steps = { plain: 0.02, fine: 0.004, coarse: 0.1 };

/** A move of the blend for a key: Up and Down along high, Left and Right from low to loud. */
export function keyMove(event: KeyboardEvent): Blend | "centre" | undefined {
  const size = event.shiftKey ? steps.fine : steps.plain;
  switch (event.key) {
    case "ArrowUp":
      return [size, -size / 2, -size / 2];
    case "ArrowDown":
      return [-size, size / 2, size / 2];
    case "ArrowLeft":
      return [0, size, -size];
    case "ArrowRight":
      return [0, -size, size];
    case "PageUp":
      return [steps.coarse, -steps.coarse / 2, -steps.coarse / 2];
    case "PageDown":
      return [-steps.coarse, steps.coarse / 2, steps.coarse / 2];
    case "Home":
      return "centre";
    default:
      return undefined;
  }
}

/** Where a move leads, inside the triangle. */
export function movedBy(from: Blend, move: Blend | "centre"): Blend {
  if (move === "centre") return centreBlend;
  return nearestBlend([from[0] + move[0], from[1] + move[1], from[2] + move[2]]);
}
