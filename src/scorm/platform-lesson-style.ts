import { css } from "lit";

/** The page around a lesson on a learning platform. */
export const platformLessonStyle = css`
  :host {
    display: block;
    max-width: 60rem;
    margin-inline: auto;
    padding: 1rem clamp(0.75rem, 3vw, 2rem) 2rem;
  }
  header {
    display: flex;
    flex-wrap: wrap;
    gap: 0.3rem 1.2rem;
    align-items: center;
    margin-bottom: 1rem;
    padding-bottom: 0.6rem;
    border-bottom: 1px solid var(--rule);
    font-size: 0.875rem;
  }
  header p {
    margin: 0;
  }
  .soft {
    color: var(--ink-soft);
  }
  .progress {
    display: flex;
    gap: 0.5rem;
    align-items: center;
  }
  progress {
    width: 6rem;
    height: 0.5rem;
    border: 1px solid var(--edge);
    border-radius: 4px;
    overflow: hidden;
    background: var(--card);
    appearance: none;
  }
  progress::-webkit-progress-bar {
    background: var(--card);
  }
  progress::-webkit-progress-value {
    background: var(--accent);
  }
  progress::-moz-progress-bar {
    background: var(--accent);
  }
  .result {
    margin: 1.2rem 0 0;
    padding: 0.6rem 0.9rem;
    border-inline-start: 3px solid var(--accent);
    background: var(--card);
  }
  details {
    margin-top: 2rem;
    padding-top: 0.8rem;
    border-top: 1px solid var(--rule);
    font-size: 0.875rem;
  }
  summary {
    min-height: 1.75rem;
    cursor: pointer;
  }
  details p,
  ul {
    max-width: 38em;
    margin: 0.4rem 0;
  }
  ul {
    padding-inline-start: 1.2rem;
  }
  @media print {
    header,
    details {
      display: none;
    }
  }
`;
