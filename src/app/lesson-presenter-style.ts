import { css } from "lit";

/** The presenter's desk: the lesson, beside it notes and controls; on a small screen one above the other. */
export const lessonPresenterStyle = css`
  :host {
    display: block;
    container-type: inline-size;
  }
  .desk {
    display: grid;
    gap: 1.2rem 2rem;
    grid-template-columns: minmax(0, 1fr);
  }
  .lesson {
    min-width: 0;
  }
  aside {
    display: grid;
    gap: 0.8rem;
    align-content: start;
    align-self: start;
    padding: 0.8rem 1rem;
    border: 1px solid var(--edge);
    border-radius: 10px;
    background: var(--card);
  }
  @container (max-width: 51.99rem) {
    aside {
      order: -1;
    }
  }
  @container (min-width: 52rem) {
    .desk {
      grid-template-columns: minmax(0, 1fr) 19rem;
    }
    aside {
      position: sticky;
      top: 0.6rem;
      max-height: calc(100svh - 1.2rem);
      overflow: auto;
    }
  }
  aside p,
  aside h3 {
    margin: 0;
  }
  .badge {
    font-weight: 650;
  }
  .badge::before {
    content: "";
    display: inline-block;
    width: 0.7em;
    height: 0.7em;
    margin-inline-end: 0.5em;
    border: 2px solid var(--ink);
    border-radius: 50%;
  }
  .badge.on::before {
    background: var(--low-word);
  }
  .buttons {
    display: flex;
    flex-wrap: wrap;
    gap: 0.5rem;
  }
  button {
    min-height: 2.75rem;
  }
  button[aria-pressed="true"] {
    border-color: var(--accent);
    box-shadow: inset 0 0 0 2px var(--accent);
    font-weight: 650;
  }
  .still {
    padding: 0.4rem 0.7rem;
    border-inline-start: 4px solid var(--accent);
    font-weight: 650;
  }
  .soft {
    color: var(--ink-soft);
    font-size: 0.8125rem;
  }
  .notes {
    display: grid;
    gap: 0.3rem;
  }
  .note {
    font-family: var(--serif);
    font-size: 1.0625rem;
  }
  .note p {
    margin: 0 0 0.4rem;
  }
  summary {
    min-height: 2rem;
    cursor: pointer;
  }
  label {
    display: flex;
    gap: 0.5rem;
    align-items: center;
    justify-content: space-between;
    margin: 0.3rem 0;
  }
  input {
    width: 6rem;
  }
  @media (forced-colors: active) {
    button[aria-pressed="true"] {
      outline: 2px solid Highlight;
      outline-offset: -4px;
    }
  }
  @media print {
    aside {
      display: none;
    }
  }
`;
