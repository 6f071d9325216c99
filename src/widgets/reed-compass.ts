import { LitElement, css, html, nothing, svg } from "lit";
import type { Feature } from "../engine/model.js";
import type { Pull } from "../engine/pulls.js";
import { compass } from "../drawing/compass.js";
import { pullDirection } from "../engine/direction.js";
import { look } from "./look.js";
import { pullChanged } from "./pull-changed.js";

/** A feature's pull in a small triangle; a picture only, its words are said by the row it stands in. */
export class ReedCompass extends LitElement {
  static override styles = [
    look,
    css`
      :host {
        display: inline-block;
        line-height: 0;
      }
      .outline {
        fill: none;
        stroke: var(--edge);
        stroke-width: 1;
      }
      svg {
        overflow: hidden;
      }
      .way {
        fill: none;
        stroke: var(--edge);
        stroke-width: 1.4;
      }
      .more {
        fill: var(--edge);
      }
      .now {
        fill: var(--ink);
        stroke: var(--ink);
        stroke-width: 2;
      }
      .now.high {
        fill: var(--high-word);
        stroke: var(--high-word);
      }
      .now.low {
        fill: var(--low-word);
        stroke: var(--low-word);
      }
      .now.loud {
        fill: var(--loud-word);
        stroke: var(--loud-word);
      }
      @media print {
        svg {
          width: 26px;
          height: auto;
        }
      }
      @media (forced-colors: active) {
        .outline,
        .way,
        .now,
        .now.high,
        .now.low,
        .now.loud {
          stroke: CanvasText;
        }
        .more,
        .now {
          fill: CanvasText;
        }
      }
    `,
  ];

  static override properties = {
    feature: { attribute: false },
    pull: { attribute: false, hasChanged: pullChanged },
  };

  declare feature: Feature;
  declare pull: Pull;

  override render() {
    const { high, low, loud } = this.feature.corners;
    const drawn = compass(this.pull, (Math.max(high, low, loud) - Math.min(high, low, loud)) / 2);
    const direction = pullDirection(this.pull.now);
    const colour = direction?.way === "toward" ? direction.purpose : "";
    return html`<svg
      width=${drawn.width}
      height=${drawn.height}
      viewBox="0 0 ${drawn.width} ${drawn.height}"
      aria-hidden="true"
    >
      <path class="outline" d=${drawn.outline}></path>
      <path class="way" d=${drawn.way}></path>
      <circle class="more" cx=${drawn.more[0]} cy=${drawn.more[1]} r="1.8"></circle>
      ${
        drawn.now
          ? svg`<path class="now ${colour}" d=${drawn.now.shaft + drawn.now.head}></path>`
          : nothing
      }
    </svg>`;
  }
}
