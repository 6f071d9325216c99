import type { BenchState } from "../app/bench-state.js";
import { viewPlace, type PlaceView } from "../app/place-view.js";
import type { reachOf } from "../app/reach-view.js";
import { css, html, nothing, type PropertyDeclarations } from "lit";
import { ownTarget } from "../reed/new-bench.js";
import { targetPlaceOf } from "../reed/target-places.js";
import { define } from "../widgets/define.js";
import { ReedShares } from "../widgets/reed-shares.js";
import { ReedTriangle } from "../widgets/reed-triangle.js";
import { BlendForm } from "./blend-form.js";
import { warnOnce } from "./warn-once.js";

define("triangle-plane", ReedTriangle);
define("reed-shares", ReedShares);

/**
 * `<reed-triangle>`: where a reed lies among the three purposes, to be moved by pointer, keys and three sliders.
 *
 * @tagname reed-triangle
 * @csspart triangle - the triangle
 * @csspart plane - its drawing, which takes the focus
 * @csspart shares - the three sliders
 */
export class TriangleElement extends BlendForm {
  static override styles = [
    ...BlendForm.styles,
    css`
      .shares {
        max-width: 44rem;
        margin: 0.5rem auto 0;
      }
      @media print {
        .shares {
          display: none;
        }
      }
    `,
  ];

  static override properties: PropertyDeclarations = { bare: { type: Boolean } };

  /** Without the three sliders under the triangle. */
  declare bare: boolean;

  constructor() {
    super();
    this.bare = false;
  }

  #reachOf: typeof reachOf | undefined;

  /** The code for the reach comes when that layer is asked for. */
  protected override look(state: BenchState): PlaceView {
    if (state.present.bench.layers.includes("reach") && !this.#reachOf) void this.#bringReach();
    return viewPlace(state, this.#reachOf);
  }

  async #bringReach(): Promise<void> {
    try {
      this.#reachOf = (await import("../app/reach-view.js")).reachOf;
      this.lookAgain();
    } catch (cause) {
      warnOnce(`layers: the reach could not be loaded: ${String(cause)}`);
    }
  }

  protected override parts() {
    const { text, view } = this;
    const { bench } = this.shared.state.present;
    const target = targetPlaceOf(bench, text.target.own);
    return html`<triangle-plane
        part="triangle"
        exportparts="plane"
        .blend=${view.placed?.raw}
        .ellipse=${view.drawnEllipse}
        .layers=${bench.layers}
        .chain=${view.chain}
        .reach=${view.reach}
        .target=${target && { ...target, own: target.id === ownTarget }}
        .way=${this.way}
        .still=${this.isStill}
        .text=${text}
      ></triangle-plane>
      ${
        this.bare || this.isStill
          ? nothing
          : html`<reed-shares
              class="shares"
              part="shares"
              .blend=${view.placed?.raw}
              .text=${text}
            ></reed-shares>`
      }`;
  }
}
