import { css } from "lit";

/** How a step of the guided sheet looks: one thing to read, one thing to type, large enough for a thumb. */
export const measureStepStyle = css`
  :host {
    display: block;
    min-width: 0;
  }
  h2 {
    font-size: 1.375rem;
  }
  dl {
    display: grid;
    grid-template-columns: auto minmax(0, 1fr);
    gap: 0.2rem 0.75rem;
    max-width: 40rem;
    margin: 0.5rem 0;
  }
  dt {
    color: var(--ink-soft);
  }
  dd {
    margin: 0;
  }
  .usual {
    margin: 0 0 0.6rem;
    color: var(--ink-soft);
  }
  .field {
    display: grid;
    gap: 0.25rem;
    max-width: 22rem;
    font-weight: 600;
  }
  .field span {
    display: flex;
    gap: 0.5rem;
    align-items: center;
  }
  .field input {
    width: 100%;
    min-width: 0;
    min-height: 3.25rem;
    padding: 0 0.7rem;
    font-size: 1.5rem;
    text-align: end;
  }
  .again {
    min-height: 2.75rem;
  }
  number-pad {
    max-width: 22rem;
    margin-top: 0.6rem;
  }
  @media (pointer: coarse) {
    dl {
      margin: 0.3rem 0;
      font-size: 0.875rem;
    }
    .usual {
      margin-bottom: 0.3rem;
    }
  }
  .problem {
    margin: 0.3rem 0 0;
    color: var(--loud-word);
    font-weight: 600;
  }
  .asked {
    max-width: 32rem;
    margin-top: 0.6rem;
    padding: 0.7rem 0.9rem;
    border: 2px solid var(--accent);
    border-radius: 8px;
    background: var(--card);
  }
  .asked p {
    margin: 0.4rem 0 0.3rem;
  }
  .asked button {
    min-height: 2.75rem;
    margin-inline-end: 0.4rem;
    margin-bottom: 0.3rem;
  }
  .taken ul {
    display: flex;
    flex-wrap: wrap;
    gap: 0.4rem;
    margin: 0.3rem 0;
    padding: 0;
    list-style: none;
  }
  .taken li {
    display: inline-flex;
    gap: 0.3rem;
    align-items: center;
    padding-inline-start: 0.6rem;
    border: 1px solid var(--rule);
    border-radius: 999px;
  }
  .taken li button {
    min-width: 2.25rem;
    padding: 0;
    border: 0;
    background: none;
  }
  .taken p {
    margin: 0.2rem 0;
  }
  .taken h3 {
    margin-top: 0.8rem;
  }
  .soft {
    color: var(--ink-soft);
    font-size: 0.8125rem;
  }
`;
