import type { Catalogue } from "../reed/catalogue.js";
import { adviceDrawing, type DrawnAdvice } from "../widgets/triangle-advice.js";
import type { BenchState } from "./bench-state.js";
import { judgedQualities, type PlanView } from "./plan-view.js";
import { leftoverOf } from "./stand-in-list.js";

/** What advice draws on the triangle now; undefined for nothing, so that the triangle is left alone. */
export function drawnAdvice(
  state: BenchState,
  plan: PlanView | undefined,
  text: Catalogue,
): DrawnAdvice | undefined {
  const { bench } = state.present;
  const leftover = leftoverOf(state);
  const quality =
    bench.page === "plan"
      ? judgedQualities(bench.judged).qualities.find(({ id }) => id === bench.quality)
      : undefined;
  const steps = plan?.looked.notes.steps ?? [];
  if (!leftover && !quality && steps.length === 0) return undefined;
  const words = text.planPage;
  const { blend, ellipse } = plan?.looked.plan ?? {};
  const isSure = bench.layers.includes("certainty");
  return {
    by: adviceDrawing,
    steps,
    ...(blend && steps.length > 0
      ? { end: { blend, ...(ellipse && isSure ? { ellipse } : {}) } }
      : {}),
    ...(leftover ? { leftover } : {}),
    ...(quality ? { contours: quality.values } : {}),
    says: [
      ...(quality ? [words.gains.drawn(quality.label)] : []),
      ...(steps.length > 0 ? [words.plan.drawn(steps.length)] : []),
      ...(leftover ? [words.standIns.leftoverDrawn] : []),
    ],
  };
}
