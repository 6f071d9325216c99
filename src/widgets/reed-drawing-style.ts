import { css } from "lit";

/** How the reed is drawn; the lamp view keeps its own colours, for it is a picture of light. */
export const reedDrawingStyle = css`
  :host {
    display: block;
    isolation: isolate; /* painted by itself: a drag elsewhere leaves it as it is */
    min-width: 0;
  }
  svg {
    display: block;
    max-width: 100%;
  }
  .lamp {
    forced-color-adjust: none;
  }
  .edge {
    fill: none;
    stroke: var(--ink-soft);
    stroke-width: 1;
  }
  .bark {
    fill: #7a4a1c;
    stroke: var(--ink-soft);
    stroke-width: 1;
  }
  .bark.pointed,
  .end.pointed .ring,
  .end.pointed .lens {
    stroke: var(--accent);
    stroke-width: 4;
  }
  .wire {
    fill: none;
    stroke: #c9a227;
    stroke-width: 2.6;
    stroke-linecap: round;
  }
  .wire.pointed {
    stroke: var(--accent);
    stroke-width: 5;
  }
  .dimension {
    fill: none;
    stroke: var(--accent);
    stroke-width: 3;
    pointer-events: none;
  }
  .grasp {
    fill: transparent;
  }
  .spot {
    fill: #fff8e6;
    fill-opacity: 0.75;
    stroke: #1d0d04;
    stroke-width: 1;
  }
  .zone.pointed .spot {
    r: 5px;
    fill: var(--accent);
    fill-opacity: 1;
    stroke: #fff8e6;
    stroke-width: 2.5;
  }
  .part {
    fill: #fff8e6;
    font-weight: 600;
    paint-order: stroke;
    stroke: #1d0d04;
    stroke-width: 3.5;
    stroke-linejoin: round;
    pointer-events: none;
  }
  text {
    fill: var(--ink-soft);
    font-family: var(--sans);
    font-size: 0.75rem;
  }
  .lens {
    fill: var(--ground);
    stroke: #b06a20;
    stroke-width: 2.5;
  }
  .ring {
    fill: none;
    stroke: #b06a20;
    stroke-width: 4;
  }
  .ideal {
    fill: none;
    stroke: var(--edge);
    stroke-dasharray: 2 3;
  }
  .alongSpine {
    fill: #b8742a;
    stroke: var(--ink-soft);
  }
  .alongRail {
    fill: #7a4a1c;
    stroke: var(--ink-soft);
  }
  .readout,
  .soft {
    margin: 0.25rem 0;
    color: var(--ink-soft);
    font-size: 0.8125rem;
  }
  .readout {
    min-height: 1.4em;
  }
  .names {
    display: inline-flex;
    gap: 0.4rem;
    align-items: center;
    min-height: 1.75rem;
    cursor: pointer;
  }
  .names input {
    width: 1.1rem;
    height: 1.1rem;
    margin: 0;
  }
  @media (forced-colors: active) {
    text {
      fill: CanvasText;
    }
    .part {
      forced-color-adjust: none;
    }
    .lens,
    .ring,
    .edge {
      stroke: CanvasText;
    }
  }
  @media print {
    svg {
      width: 100%;
      max-width: 14rem;
      height: auto;
      margin-inline: auto;
    }
    .readout,
    .names {
      display: none;
    }
  }
`;
