import { css } from "lit";

/** Qualities as rows, places as columns; on a phone every quality is a small card. */
export const reedGainsStyle = css`
  :host {
    display: block;
    container-type: inline-size;
    min-width: 0;
  }
  table {
    width: 100%;
    border-collapse: collapse;
    font-size: 0.8125rem;
  }
  th,
  td {
    padding: 0.3rem 0.35rem;
    border-top: 1px solid var(--rule);
    font-weight: inherit;
    text-align: start;
    vertical-align: top;
    overflow-wrap: anywhere;
  }
  thead th {
    border-top: 0;
    color: var(--ink-soft);
    vertical-align: bottom;
  }
  th:first-child {
    width: 30%;
    padding-inline-start: 0;
  }
  .name {
    width: 100%;
    min-height: 1.9rem;
    padding: 0.1rem 0.3rem;
    border-color: transparent;
    background: none;
    font-size: 0.9375rem;
    text-align: start;
    text-decoration: underline dotted var(--edge);
    text-underline-offset: 0.25em;
  }
  .name[aria-pressed="true"] {
    border-color: var(--accent);
    text-decoration: none;
  }
  .words {
    display: block;
  }
  svg {
    display: block;
    width: 100%;
    max-width: 7rem;
    height: 14px;
    direction: ltr;
  }
  .rail {
    stroke: var(--edge);
    stroke-width: 1;
  }
  .middle {
    stroke: var(--ink);
    stroke-width: 1.5;
  }
  .bar {
    fill: var(--ink-soft);
  }
  .bar.better {
    fill: var(--accent);
  }
  .label {
    display: none;
  }
  @container (max-width: 22rem) {
    table,
    tbody {
      display: block;
    }
    thead {
      position: absolute;
      width: 1px;
      height: 1px;
      overflow: hidden;
      clip-path: inset(50%);
    }
    tr {
      display: grid;
      grid-template-columns: repeat(auto-fit, minmax(5rem, 1fr));
      gap: 0.2rem 0.6rem;
      padding: 0.4rem 0;
      border-top: 1px solid var(--rule);
    }
    th,
    td {
      padding: 0;
      border: 0;
    }
    th:first-child {
      grid-column: 1 / -1;
      width: auto;
    }
    .label {
      display: block;
      color: var(--ink-soft);
    }
  }
  @container (max-width: 30rem) {
    table.many,
    .many tbody {
      display: block;
    }
    .many thead {
      position: absolute;
      width: 1px;
      height: 1px;
      overflow: hidden;
      clip-path: inset(50%);
    }
    .many tr {
      display: grid;
      grid-template-columns: repeat(auto-fit, minmax(5rem, 1fr));
      gap: 0.2rem 0.6rem;
      padding: 0.4rem 0;
      border-top: 1px solid var(--rule);
    }
    .many th,
    .many td {
      padding: 0;
      border: 0;
    }
    .many th:first-child {
      grid-column: 1 / -1;
      width: auto;
    }
    .many .label {
      display: block;
      color: var(--ink-soft);
    }
  }
  @media (forced-colors: active) {
    svg {
      forced-color-adjust: none;
    }
    .rail,
    .middle {
      stroke: CanvasText;
    }
    .bar,
    .bar.better {
      fill: CanvasText;
    }
  }
`;
