import type { OpeningCurve } from "../acoustics/opening-curve.js";
import type { Point } from "../engine/frame.js";
import { plotAxes, type PlotAxes, type PlotBox } from "./plot-axes.js";

/** The opening over the lip pressure as lines and marks, in px; the axes count kPa and open shares. */
export interface OpeningPlot {
  readonly axes: PlotAxes;
  readonly held: string;
  /** From where the blades leave to where they land. */
  readonly jump: string;
  /** The other reed, as an outline. */
  readonly other: string;
  readonly now: Point;
}

/**
 * How the opening falls as the lips press.
 *
 * Shape   curve, lip pressure (Pa) and open share now, px box with the end of the axis → px.
 */
export function openingPlot(
  curve: OpeningCurve,
  now: { readonly lip: number; readonly open: number },
  box: PlotBox & { readonly mostLip: number },
  other?: OpeningCurve,
): OpeningPlot {
  const axes = plotAxes(box, box.mostLip / 1000, 1);
  const lines = ({ held }: OpeningCurve): string =>
    held
      .map((piece) => axes.line(piece.map(({ lip, open }): Point => [lip / 1000, open])))
      .join("");
  const { fold } = curve;
  return {
    axes,
    held: lines(curve),
    jump: fold
      ? axes.line([
          [fold.lip / 1000, fold.from],
          [fold.lip / 1000, fold.to],
        ])
      : "",
    other: other ? lines(other) : "",
    now: axes.place(now.lip / 1000, now.open),
  };
}
