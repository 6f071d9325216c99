import { css } from "lit";

/** How plans, leftovers and qualities are drawn on the triangle. */
export const triangleAdviceStyle = css`
  .plan,
  .planEnd,
  .leftover,
  .contours {
    pointer-events: none;
  }
  .plan .under {
    fill: none;
    stroke: var(--card);
    stroke-width: 5;
  }
  .plan .shaft {
    fill: none;
    stroke: var(--accent);
    stroke-width: 2.4;
  }
  .plan .head {
    fill: var(--accent);
  }
  .plan .leader {
    fill: none;
    stroke: var(--ink-soft);
    stroke-width: 1;
  }
  .plan .number,
  .levelName {
    paint-order: stroke;
    stroke: var(--card);
    stroke-width: 3.5;
    stroke-linejoin: round;
    font-size: 0.75rem;
    font-weight: 650;
  }
  .planEnd .ring {
    fill: var(--card);
    stroke: var(--accent);
    stroke-width: 2.4;
  }
  .planEnd .certainty {
    fill: none;
    stroke: var(--accent);
    stroke-dasharray: 5 4;
  }
  .leftover .shaft {
    fill: none;
    stroke: var(--accent);
    stroke-width: 2.4;
  }
  .leftover .head {
    fill: var(--accent);
  }
  .contours .glow {
    fill: var(--reed-glow, #ffb53a);
    fill-opacity: 0.11;
  }
  .contours .level {
    fill: none;
    stroke: var(--ink-soft);
    stroke-width: 1;
  }
  .judged .tint,
  .judged .grid {
    opacity: 0.3;
  }
  .levelName {
    fill: var(--ink-soft);
    font-weight: 400;
  }
  @media (forced-colors: active) {
    .plan .shaft,
    .plan .leader,
    .planEnd .ring,
    .planEnd .certainty,
    .leftover .shaft,
    .contours .level {
      stroke: CanvasText;
    }
    .plan .under,
    .plan .number,
    .levelName {
      stroke: Canvas;
    }
    .plan .head,
    .leftover .head {
      fill: CanvasText;
    }
    .plan .number,
    .levelName {
      fill: CanvasText;
    }
    .planEnd .ring {
      fill: Canvas;
    }
    .contours .glow {
      fill: none;
    }
  }
`;
