import { css } from "lit";

/** The frame around a step of a lesson. */
export const lessonPlayerStyle = css`
  :host {
    display: block;
  }
  .title {
    font-size: 1.5rem;
  }
  .soft {
    max-width: 38em;
    margin: 0.2rem 0 0.8rem;
    color: var(--ink-soft);
    font-size: 0.875rem;
  }
  .steps {
    display: flex;
    flex-wrap: wrap;
    gap: 0.4rem;
    margin-bottom: 1.2rem;
  }
  .step {
    min-width: 2.75rem;
    min-height: 2.75rem;
    border-radius: 50%;
  }
  .step[aria-current] {
    border-color: var(--accent);
    border-width: 2px;
    font-weight: 650;
  }
  .ways {
    display: flex;
    flex-wrap: wrap;
    gap: 0.8rem;
    align-items: center;
    margin-top: 1.6rem;
    padding-top: 1rem;
    border-top: 1px solid var(--rule);
  }
  .ways button {
    min-height: 2.75rem;
  }
  .next {
    border-color: var(--accent);
    font-weight: 600;
  }
  @media print {
    .steps,
    .ways {
      display: none;
    }
  }
`;
