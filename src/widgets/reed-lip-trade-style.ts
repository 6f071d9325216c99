import { css } from "lit";

/** The table of what the trade and the model say: rows of cells where there is room, else one block a row. */
export const lipTradeStyle = css`
  :host {
    container-type: inline-size;
  }
  fieldset {
    display: flex;
    flex-wrap: wrap;
    gap: 0.2rem 1.2rem;
    margin: 0.3rem 0;
    padding: 0;
    border: 0;
  }
  legend {
    padding: 0;
  }
  label {
    display: inline-flex;
    gap: 0.4rem;
    align-items: center;
    min-height: 1.9rem;
    cursor: pointer;
  }
  input[type="radio"] {
    width: 1.15rem;
    height: 1.15rem;
    margin: 0;
  }
  table {
    width: 100%;
    border-collapse: collapse;
  }
  caption {
    text-align: start;
  }
  th,
  td {
    padding-block: 0.35rem;
    padding-inline: 0 0.8rem;
    border-bottom: 1px solid var(--rule);
    text-align: start;
    vertical-align: baseline;
    overflow-wrap: break-word;
    font-weight: inherit;
  }
  thead th {
    color: var(--ink-soft);
    font-size: 0.8125rem;
  }
  tbody th {
    font-weight: 600;
  }
  td.agree {
    font-weight: 600;
  }
  .sign {
    display: inline-block;
    width: 1.6em;
    margin-inline-end: 0.35em;
    border: 1.5px solid var(--ink);
    border-radius: 0.3em;
    text-align: center;
    line-height: 1.25;
  }
  .no .sign {
    background: var(--ink);
    color: var(--card);
  }
  .high {
    color: var(--high-word);
  }
  .low {
    color: var(--low-word);
  }
  .loud {
    color: var(--loud-word);
  }
  .why {
    min-width: 13rem;
  }
  .cellName {
    display: none;
    color: var(--ink-soft);
    font-weight: 400;
  }
  @container (max-width: 48rem) {
    thead {
      display: none;
    }
    table,
    tbody {
      display: block;
    }
    tr {
      display: flex;
      flex-wrap: wrap;
      gap: 0.1rem 0.9rem;
      padding: 0.45rem 0;
      border-bottom: 1px solid var(--rule);
    }
    th,
    td {
      padding: 0;
      border: 0;
    }
    tbody th {
      flex: 1 0 100%;
    }
    td.why {
      flex: 1 0 100%;
      min-width: 0;
      color: var(--ink-soft);
    }
    .cellName {
      display: inline;
    }
  }
  @media (forced-colors: active) {
    .sign {
      border-color: CanvasText;
    }
    .no .sign {
      forced-color-adjust: none;
      background: CanvasText;
      color: Canvas;
    }
  }
  @media print {
    fieldset {
      display: none;
    }
    tr {
      break-inside: avoid;
    }
  }
`;
