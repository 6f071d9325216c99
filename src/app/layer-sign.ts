import { css, html, svg, type SVGTemplateResult } from "lit";

/** A layer that has a line of its own among the switches. */
export type LayerLine = "readingLines" | "certainty" | "pulls" | "reach";

const signs: Readonly<Record<LayerLine, SVGTemplateResult>> = {
  readingLines: svg`<path class="dashed" d="M2,12L26,4"></path>`,
  certainty: svg`<ellipse class="soft" cx="14" cy="8" rx="11" ry="5.5"></ellipse>`,
  pulls: svg`<path class="ink" d="M2,13L11,5L21,8"></path><path class="head" d="M27,9.5L19.5,11.2L20.8,4.9Z"></path>`,
  reach: svg`<path class="full" d="M2,3L26,6"></path><path class="easy" d="M2,9L26,13"></path>`,
};

/** How the lines of signs look: as the layers do on the triangle. */
export const layerSignStyle = css`
  .sign {
    flex: none;
  }
  .sign path,
  .sign ellipse {
    fill: none;
    stroke: var(--ink);
    stroke-width: 1.8;
  }
  .sign .dashed {
    stroke: var(--high-word);
    stroke-dasharray: 6 4;
  }
  .sign .soft {
    fill: var(--ink);
    fill-opacity: 0.08;
    stroke: var(--ink-soft);
  }
  .sign .head {
    fill: var(--ink);
    stroke: none;
  }
  .sign .easy,
  .sign .full {
    stroke: var(--accent);
  }
  .sign .full {
    stroke-dasharray: 9 3 2 3;
  }
  @media (forced-colors: active) {
    .sign path,
    .sign ellipse,
    .sign .dashed,
    .sign .soft,
    .sign .easy,
    .sign .full {
      stroke: CanvasText;
    }
    .sign .head {
      fill: CanvasText;
    }
  }
`;

/** A small sample of a layer's lines, beside its switch; the words next to it say what it is. */
export function layerSign(layer: LayerLine) {
  return html`<svg class="sign" width="28" height="16" viewBox="0 0 28 16" aria-hidden="true">
    ${signs[layer]}
  </svg>`;
}
