import { css } from "lit";

/** The cards of the plan page: plan, qualities, trouble. */
export const planPageStyle = css`
  :host {
    display: block;
    isolation: isolate; /* painted by itself: a drag elsewhere leaves it as it is */
    container-type: inline-size;
    min-width: 0;
  }
  .card {
    padding: 0.9rem 1rem 1rem;
    border: 1px solid var(--rule);
    border-radius: 10px;
    background: var(--card);
  }
  .card:focus {
    outline: none;
  }
  h2 {
    margin-bottom: 0.4rem;
  }
  p {
    max-width: 38em;
    margin: 0 0 0.5rem;
  }
  .soft {
    color: var(--ink-soft);
    font-size: 0.8125rem;
  }
  .printOnly {
    display: none;
  }
  .choices {
    display: flex;
    flex-wrap: wrap;
    gap: 0.4rem 1rem;
    margin-bottom: 0.6rem;
  }
  .choices label {
    display: inline-flex;
    flex-wrap: wrap;
    gap: 0.4rem;
    align-items: center;
    min-width: 0;
    max-width: 100%;
  }
  select {
    max-width: 100%;
  }
  fieldset {
    min-width: 0;
    margin: 0 0 0.6rem;
    padding: 0;
    border: 0;
  }
  legend {
    padding: 0;
    color: var(--ink-soft);
    font-size: 0.8125rem;
    font-weight: 650;
  }
  .kinds label {
    display: flex;
    gap: 0.45rem;
    align-items: center;
    min-height: 1.9rem;
    cursor: pointer;
  }
  input[type="radio"] {
    flex: none;
  }
  .sentence {
    font-family: var(--serif);
    font-size: 1.0625rem;
    line-height: 1.45;
    text-wrap: pretty;
  }
  .doneSoFar {
    margin: 0 0 0.7rem;
    padding: 0.5rem 0.75rem;
    border-inline-start: 3px solid var(--edge);
    background: var(--ground);
  }
  .doneSoFar ol {
    margin: 0.2rem 0;
    padding-inline-start: 1.3rem;
  }
  .own {
    margin-bottom: 0.7rem;
  }
  .card {
    position: relative;
  }
  .stale {
    opacity: 0.45;
  }
  /* Over the dimmed plan, so that nothing moves to make room for it. */
  .working {
    position: absolute;
    z-index: 1;
    padding: 0.2rem 0.5rem;
    border-radius: 6px;
    background: var(--card);
  }
  .foot {
    margin: 0.9rem 0 0;
  }
  details summary {
    min-height: 1.75rem;
    color: var(--ink-soft);
    cursor: pointer;
  }
  @media print {
    .noPrint,
    .choices,
    .kinds {
      display: none;
    }
    .printOnly {
      display: block;
    }
    .card {
      padding: 0;
      border: 0;
    }
    .sentence {
      font-size: 1rem;
    }
    .doneSoFar {
      background: none;
    }
  }
`;
