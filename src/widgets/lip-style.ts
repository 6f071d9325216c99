import { css } from "lit";

/** What the drawings of the lip panel share: plots with thin axes, the reed's own line thick, the other's thin. */
export const lipStyle = css`
  :host {
    display: block;
    min-width: 0;
  }
  h3 {
    margin-bottom: 0.2rem;
    color: var(--ink);
    font-family: var(--serif);
    font-size: 1rem;
    letter-spacing: 0;
  }
  p {
    margin: 0.3rem 0;
  }
  .soft {
    color: var(--ink-soft);
    font-size: 0.8125rem;
  }
  .counted {
    margin: 0.1rem 0 0.4rem;
    text-align: center;
  }
  .plot {
    display: block;
    max-width: 100%;
    direction: ltr; /* numbers grow to the right in every script */
  }
  text {
    fill: var(--ink-soft);
    font-family: var(--sans);
    font-size: 0.75rem;
  }
  .axis {
    fill: none;
    stroke: var(--edge);
    stroke-width: 1;
  }
  .grid {
    fill: none;
    stroke: var(--rule);
    stroke-width: 1;
  }
  .own {
    fill: none;
    stroke: var(--ink);
    stroke-width: 2.6;
    stroke-linejoin: round;
    stroke-linecap: round;
  }
  .unheld {
    fill: none;
    stroke: var(--ink-soft);
    stroke-width: 2.4;
    stroke-dasharray: 0.1 5;
    stroke-linecap: round;
  }
  .jump {
    fill: none;
    stroke: var(--ink);
    stroke-width: 1.4;
    stroke-dasharray: 5 3;
  }
  .other {
    fill: none;
    stroke: var(--ink-soft);
    stroke-width: 1.2;
  }
  .now {
    fill: var(--accent);
    stroke: var(--card);
    stroke-width: 2;
  }
  .mark {
    fill: var(--ink);
    stroke: var(--card);
    stroke-width: 1.5;
  }
  .name {
    fill: var(--ink);
    stroke: var(--card);
    stroke-width: 4;
    stroke-linejoin: round;
    paint-order: stroke;
    font-size: 0.8125rem;
  }
  .legend {
    display: flex;
    flex-wrap: wrap;
    gap: 0.15rem 1rem;
    margin: 0.35rem 0 0;
    padding: 0;
    color: var(--ink-soft);
    font-size: 0.8125rem;
    list-style: none;
  }
  .legend li {
    display: inline-flex;
    gap: 0.4rem;
    align-items: center;
  }
  .swatch {
    flex: none;
  }
  button,
  input,
  summary,
  select {
    scroll-margin-block: 9rem 1rem;
  }
  @media print {
    .plot {
      max-width: min(100%, 24rem);
      height: auto;
    }
  }
  @media (forced-colors: active) {
    .axis,
    .own,
    .unheld,
    .jump,
    .other {
      stroke: CanvasText;
    }
    .grid {
      stroke: CanvasText;
      stroke-width: 0.5;
      stroke-dasharray: 1 4;
    }
    .now {
      fill: Highlight;
      stroke: Canvas;
    }
    .mark {
      fill: CanvasText;
      stroke: Canvas;
    }
    text,
    .name {
      fill: CanvasText;
    }
    .name {
      stroke: Canvas;
    }
  }
`;
