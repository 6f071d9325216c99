import { html } from "lit";
import { BenchPlace } from "../app/bench-place.js";
import { BenchPlan } from "../app/bench-plan.js";
import type { Shown } from "../app/bench-words.js";
import { drawnAdvice } from "../app/drawn-advice.js";
import { planner } from "../app/plan-view.js";
import type { Blend } from "../engine/blend.js";
import type { Catalogue } from "../reed/catalogue.js";
import { define } from "../widgets/define.js";
import type { Handle } from "../widgets/triangle-drag.js";

define("bench-place", BenchPlace);
define("bench-plan", BenchPlan);

/** What the inside of a plan element shows. */
export interface PlanInside extends Shown {
  readonly way: readonly Blend[];
  readonly moves: Handle;
  readonly still: boolean;
  readonly text: Catalogue;
}

/** Draws the triangle with the plan's arrows, and the plan; the search is kept from one drawing to the next. */
export function planInside(): (shown: PlanInside) => unknown {
  const planFor = planner();
  return ({ state, view, way, moves, still, text }) => {
    const plan = planFor(state, text);
    return html`<div class="inside">
      <bench-place
        part="triangle"
        .bench=${state.present.bench}
        .view=${view}
        .advice=${drawnAdvice(state, plan, text)}
        .way=${way}
        .moves=${moves}
        .still=${still}
        .embedded=${true}
        .text=${text}
      ></bench-place>
      <bench-plan
        part="plan"
        .shown=${{ state, view }}
        .plan=${plan}
        .moves=${moves}
        .embedded=${true}
        .text=${text}
      ></bench-plan>
    </div>`;
  };
}
