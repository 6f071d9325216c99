import { cornerClosing } from "../acoustics/opening.js";
import { openingShape } from "./end-view.js";
import { round } from "./triangle-layout.js";

/** The tip opening end-on while it closes, in px around its own middle. */
export interface ClosingView {
  readonly width: number;
  readonly height: number;
  /** The opening at rest, as an outline. */
  readonly rest: string;
  /** What is open now; empty when the blades meet all along. */
  readonly open: string;
  /** Where the blades lie on each other: from each corner inward, one line when all is closed. */
  readonly met: string;
}

/** px; a lens flatter than this is a line. */
const flat = 0.05;

/**
 * The opening closing from its corners.
 *
 * Shape   width and height at rest (mm), closed share of the height 0 … 1, px per mm.
 *
 * @example closingView({ openingWidth: 12, openingHeight: 1.2 }, 1, 10).open → ""
 */
export function closingView(
  {
    openingWidth,
    openingHeight,
  }: { readonly openingWidth: number; readonly openingHeight: number },
  closed: number,
  scale: number,
): ClosingView {
  const rest = openingShape(openingWidth, openingHeight, scale);
  const shares = cornerClosing(closed);
  const height = openingHeight * (1 - closed);
  const half = rest.width / 2;
  const inner = height * scale > flat ? half * shares.width : 0;
  const shape = inner > 0 ? openingShape(openingWidth * shares.width, height, scale).path : "";
  const [out, end] = [round(half), round(inner)];
  const met = end < out ? `M${-out},0H${-end}M${end},0H${out}` : "";
  return {
    width: rest.width,
    height: rest.height,
    rest: rest.path,
    open: shape,
    met: end > 0 ? met : `M${-out},0H${out}`,
  };
}
