import type { FlowCurve, FlowPoint } from "../acoustics/flow-curve.js";
import type { Point } from "../engine/frame.js";
import { plotAxes, type PlotAxes, type PlotBox } from "./plot-axes.js";

/** The air over the blowing pressure as lines and marks, in px; the axes count kPa and cm³/s. */
export interface FlowPlot {
  readonly axes: PlotAxes;
  /** What is held, and what is held again beyond the fold. */
  readonly held: string;
  readonly regained: string;
  /** Openings that no pressure holds. */
  readonly unheld: string;
  /** The snap from one to the other, straight down. */
  readonly jump: string;
  /** The other reed, as an outline. */
  readonly other: string;
  readonly operating: Point;
  /** Undefined where they lie beyond the axes. */
  readonly peak: Point | undefined;
  readonly closure: Point | undefined;
}

const kiloPascals = 1e-3;
const cubicCentimetres = 1e6;

/**
 * The flow curve of a reed, and of another one behind it.
 *
 * Shape   curve, what is blown now (Pa) and lets through (m³/s), px box; the ends of the axes stay as they are told, so
 *         that a curve does not stretch while the lips press.
 */
export function flowPlot(
  curve: FlowCurve,
  now: Pick<FlowPoint, "blow" | "flow">,
  box: PlotBox & { readonly mostBlow: number; readonly mostFlow: number },
  other?: FlowCurve,
): FlowPlot {
  const axes = plotAxes(box, box.mostBlow * kiloPascals, box.mostFlow * cubicCentimetres);
  const numbers = ({ blow, flow }: Pick<FlowPoint, "blow" | "flow">): Point => [
    blow * kiloPascals,
    flow * cubicCentimetres,
  ];
  const line = (points: readonly FlowPoint[]): string => axes.line(points.map(numbers));
  return {
    axes,
    held: line(curve.held),
    regained: line(curve.regained),
    unheld: line(curve.unheld),
    jump: curve.jump ? line([curve.jump.from, curve.jump.to]) : "",
    other: other ? otherLine(other, line) : "",
    operating: axes.place(...numbers(now)),
    peak: axes.mark(...numbers(curve.peak)),
    closure: axes.mark(curve.closure * kiloPascals, 0),
  };
}

/** What another reed does as the pressure rises: up to its snap, and beyond it where it is held again. */
function otherLine(
  { held, regained, jump }: FlowCurve,
  line: (points: readonly FlowPoint[]) => string,
): string {
  if (!jump) return line(held) + line(regained);
  return line([...held, jump.to]) + (jump.to.closed < 1 ? line(regained) : "");
}
