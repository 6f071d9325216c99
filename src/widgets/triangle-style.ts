import { css } from "lit";

/** How the triangle is drawn; it stays quiet, ink is for the point. */
export const triangleStyle = css`
  :host {
    display: block;
    isolation: isolate; /* painted by itself: a drag elsewhere leaves it as it is */
    min-width: 0;
  }
  .plane {
    border-radius: 10px;
    outline: none;
  }
  .rem {
    position: absolute;
    width: 1rem;
    height: 0;
    visibility: hidden;
  }
  svg {
    display: block;
    direction: ltr; /* the corners stay where they are in every script, and so do anchors of words */
    overflow: hidden;
    user-select: none;
    -webkit-user-select: none;
  }
  .paper {
    fill: var(--card);
  }
  .tint {
    pointer-events: none;
  }
  stop.high {
    stop-color: var(--high);
  }
  stop.low {
    stop-color: var(--low);
  }
  stop.loud {
    stop-color: var(--loud);
  }
  .grid {
    stroke: var(--reed-grid, #fff);
    stroke-width: 1.2;
  }
  .side {
    fill: none;
    stroke: var(--ink);
    stroke-width: 1.6;
    stroke-linejoin: round;
  }
  text {
    fill: var(--ink);
    font-family: var(--sans);
    font-size: 0.875rem;
  }
  .corner {
    font-size: 1rem;
    font-weight: 650;
  }
  .corner.high,
  .tick.high {
    fill: var(--high-word);
  }
  .corner.low,
  .tick.low {
    fill: var(--low-word);
  }
  .corner.loud,
  .tick.loud {
    fill: var(--loud-word);
  }
  .tick {
    font-weight: 600;
  }
  .share {
    fill: var(--ink-soft);
  }
  circle.centre {
    fill: none;
    stroke: var(--ink-soft);
    stroke-width: 1.4;
  }
  .certainty {
    fill: var(--ink);
    fill-opacity: 0.06;
    stroke: var(--ink-soft);
    stroke-width: 1.3;
    pointer-events: none;
  }
  .reading {
    stroke-width: 1.6;
    stroke-dasharray: 6 4;
    pointer-events: none;
  }
  .reading.high {
    stroke: var(--high-word);
  }
  .reading.low {
    stroke: var(--low-word);
  }
  .reading.loud {
    stroke: var(--loud-word);
  }
  .ghost {
    fill: none;
    stroke: var(--ink-soft);
    stroke-width: 1.4;
    stroke-dasharray: 1 4;
    stroke-linecap: round;
    pointer-events: none;
  }
  .base {
    stroke: var(--ink);
    stroke-dasharray: none;
  }
  .reach path {
    stroke: var(--accent);
    stroke-width: 1.6;
    fill: var(--accent);
    fill-opacity: 0.07;
    pointer-events: none;
  }
  .reach .full {
    fill: none;
    stroke-dasharray: 9 3 2 3;
  }
  .target {
    pointer-events: none;
  }
  .target circle,
  .target path {
    fill: none;
    stroke: var(--ink);
    stroke-width: 1.5;
  }
  .diamond {
    fill: var(--accent);
    stroke: var(--card);
    stroke-width: 2;
  }
  .pinnedMark {
    fill: var(--card);
    stroke: var(--ink);
    stroke-width: 2.4;
    pointer-events: none;
  }
  .name {
    paint-order: stroke;
    stroke: var(--card);
    stroke-width: 4;
    stroke-linejoin: round;
    font-size: 0.8125rem;
    pointer-events: none;
  }
  .name.centre {
    fill: var(--ink-soft);
  }
  .chain {
    pointer-events: none;
  }
  .chain .shaft {
    fill: none;
    stroke: var(--ink);
    stroke-width: 2;
  }
  .chain .head {
    fill: var(--ink);
  }
  .onward path {
    fill: none;
    stroke: var(--ink);
    stroke-width: 2;
  }
  .onward .head {
    fill: var(--ink);
  }
  .handle,
  .aim {
    cursor: grab;
  }
  .grasp {
    fill: transparent;
  }
  .halo {
    fill: var(--card);
  }
  .dot {
    fill: var(--ink);
  }
  .handle:hover .halo {
    fill: var(--accent);
  }
  .plane:focus-visible {
    outline: 2px solid var(--accent);
    outline-offset: -2px;
  }
  .plane:focus-visible .halo {
    fill: var(--accent);
    stroke: var(--accent);
    stroke-width: 5;
  }
  @media (forced-colors: active) {
    svg {
      forced-color-adjust: none;
    }
    .onward path,
    .reach path,
    .target circle,
    .target path,
    .chain .shaft {
      stroke: CanvasText;
    }
    .reach path {
      fill: none;
    }
    .chain .head {
      fill: CanvasText;
    }
    .name,
    .name.centre {
      fill: CanvasText;
      stroke: Canvas;
    }
    .pinnedMark {
      fill: Canvas;
      stroke: CanvasText;
    }
    .diamond {
      fill: Highlight;
      stroke: Canvas;
    }
    .onward .head,
    .corner.high,
    .corner.low,
    .corner.loud,
    .tick.high,
    .tick.low,
    .tick.loud {
      fill: CanvasText;
    }
    .reading.high,
    .reading.low,
    .reading.loud {
      stroke: CanvasText;
    }
    .paper {
      fill: Canvas;
    }
    .tint {
      display: none;
    }
    .grid {
      stroke: CanvasText;
      stroke-width: 0.5;
      stroke-dasharray: 1 4;
    }
    .side,
    circle.centre,
    .ghost,
    .certainty,
    .reading {
      stroke: CanvasText;
    }
    text,
    .corner,
    .tick,
    .share {
      fill: CanvasText;
    }
    .dot {
      fill: CanvasText;
    }
    .halo {
      fill: Canvas;
    }
    .plane:focus-visible .halo {
      fill: Highlight;
      stroke: Highlight;
    }
  }
  @media print {
    svg {
      width: auto;
      max-width: 100%;
      height: 19rem;
      margin-inline: auto;
    }
  }
`;
