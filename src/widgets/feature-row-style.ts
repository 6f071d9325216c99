import { css } from "lit";

/** A row is one line where there is room, two on a phone. */
export const featureRowStyle = css`
  :host {
    contain: layout style;
    isolation: isolate; /* painted by itself: a slider's drag leaves the other rows as they are */
    display: block;
    container-type: inline-size;
  }
  .row {
    display: grid;
    grid-template-columns: minmax(6.5rem, 9.6rem) minmax(5rem, 1fr) 7.2rem 1.75rem 1.75rem 46px;
    gap: 0 0.5rem;
    align-items: center;
    min-height: 2.6rem;
  }
  .row.pointed {
    border-radius: 6px;
    box-shadow: -4px 0 0 var(--accent);
  }
  .name {
    min-width: 0;
    min-height: 2rem;
    overflow-wrap: break-word;
    padding: 0;
    border: 0;
    background: none;
    text-align: start;
    text-decoration: underline dotted var(--edge);
    text-underline-offset: 0.25em;
  }
  .name:hover {
    text-decoration-color: var(--accent);
  }
  .number {
    display: flex;
    gap: 0.3rem;
    align-items: baseline;
  }
  .number input {
    width: calc(7ch + 1.2rem);
    min-height: 2rem;
    padding: 0 0.4rem;
    text-align: end;
  }
  .number input[aria-invalid] {
    border: 2px solid var(--loud-word);
  }
  .unit {
    color: var(--ink-soft);
    font-size: 0.8125rem;
  }
  .icon {
    display: grid;
    place-items: center;
    width: 1.75rem;
    min-height: 1.75rem;
    padding: 0;
    border-color: transparent;
    background: none;
    color: var(--ink-soft);
  }
  .icon[aria-pressed="true"] {
    border-color: var(--accent);
    color: var(--accent);
  }
  .forget {
    font-size: 1.125rem;
  }
  .blank {
    color: var(--ink-soft);
    font-style: italic;
  }
  .number input::placeholder {
    color: var(--ink-soft);
    font-size: 0.75rem;
    opacity: 1;
  }
  .number input:read-only {
    border-style: dashed;
  }
  .was {
    display: flex;
    flex-wrap: wrap;
    gap: 0.2rem 0.5rem;
    align-items: center;
    margin: 0;
    color: var(--ink-soft);
  }
  .was button {
    min-height: 1.75rem;
    padding-block: 0;
  }
  .remark,
  .how {
    margin: 0 0 0.35rem;
    color: var(--ink-soft);
    font-size: 0.8125rem;
  }
  .remark.problem {
    color: var(--loud-word);
    font-weight: 600;
  }
  .how {
    max-width: 36rem;
    padding-inline-start: 0.6rem;
    border-inline-start: 3px solid var(--rule);
  }
  .how p {
    margin: 0 0 0.3rem;
  }
  @container (max-width: 27.5rem) {
    .row {
      grid-template-columns: minmax(0, 1fr) 2.25rem 2.25rem 46px;
      padding-block: 0.3rem;
    }
    .name {
      grid-column: 1;
    }
    .number {
      grid-column: 2 / -1;
      grid-row: 1;
      justify-self: end;
    }
    .slide {
      grid-column: 1;
      grid-row: 2;
    }
    .icon {
      width: 2.25rem;
      min-height: 2.25rem;
    }
    /* The room is kept, so that nothing moves under a finger when something is tried. */
    .was {
      min-height: 2.75rem;
      font-size: 1rem;
    }
    .was button {
      min-height: 2.75rem;
    }
  }
  @media print {
    .row,
    :host .row {
      grid-template-columns: minmax(0, 1fr) auto 26px;
      min-height: 0;
      padding: 0;
    }
    .name,
    .number,
    .number input {
      min-height: 0;
      border: 0;
      text-decoration: none;
      grid-column: auto;
      grid-row: auto;
    }
    .slide,
    .icon,
    .was button,
    .was:empty,
    .how {
      display: none;
    }
    reed-compass {
      grid-column: 3;
    }
  }
`;
