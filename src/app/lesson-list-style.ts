import { css } from "lit";

/** The list of lessons. */
export const lessonListStyle = css`
  :host {
    display: block;
  }
  .title {
    font-size: 1.5rem;
  }
  .title:focus {
    outline: none;
  }
  .soft {
    max-width: 38em;
    margin: 0.2rem 0 0.8rem;
    color: var(--ink-soft);
    font-size: 0.875rem;
  }
  .lessons {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(100%, 19rem), 1fr));
    gap: 0.8rem;
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .lesson {
    display: grid;
    gap: 0.3rem;
    align-content: start;
    width: 100%;
    height: 100%;
    padding: 0.8rem 1rem;
    border-color: var(--rule);
    border-radius: 10px;
    text-align: start;
  }
  .lesson strong {
    font-family: var(--serif);
    font-size: 1.0625rem;
  }
  .lesson .soft {
    margin: 0;
  }
  .due {
    display: flex;
    flex-wrap: wrap;
    gap: 0.4rem 1rem;
    align-items: center;
    margin-bottom: 0.9rem;
    padding: 0.6rem 1rem;
    border: 1px solid var(--accent);
    border-radius: 10px;
    background: var(--card);
  }
  .due p {
    margin: 0;
  }
  .due button {
    min-height: 2.75rem;
  }
`;
