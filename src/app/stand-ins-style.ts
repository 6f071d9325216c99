import { css } from "lit";

/** The list of stand-ins below a row of the recipe. */
export const standInsStyle = css`
  :host {
    display: block;
    container-type: inline-size;
    margin: 0.2rem 0 0.8rem;
    scroll-margin-top: 8.5rem; /* its row stays in sight above it */
  }
  section {
    padding: 0.6rem 0.75rem 0.75rem;
    border: 1px solid var(--accent);
    border-radius: 8px;
    background: var(--ground);
  }
  section:focus {
    outline: none;
  }
  .head,
  .ask,
  .modes,
  .pair {
    display: flex;
    flex-wrap: wrap;
    gap: 0.3rem 0.8rem;
    align-items: center;
  }
  .head {
    justify-content: space-between;
  }
  .head button {
    width: 2.25rem;
    padding: 0;
    border-color: transparent;
    background: none;
    font-size: 1.125rem;
  }
  h4 {
    margin: 0;
    font-size: 0.8125rem;
  }
  fieldset {
    min-width: 0;
    margin: 0;
    padding: 0;
    border: 0;
  }
  .modes label {
    display: inline-flex;
    gap: 0.35rem;
    align-items: center;
    min-height: 1.75rem;
  }
  .ask label {
    display: inline-flex;
    flex-wrap: wrap;
    gap: 0.35rem;
    align-items: center;
    min-width: 0;
  }
  input[type="number"] {
    width: 5.5rem;
    min-height: 2.25rem;
    padding: 0 0.4rem;
  }
  .sentence {
    margin: 0.5rem 0 0.4rem;
    font-family: var(--serif);
    font-size: 1.0625rem;
  }
  .soft {
    margin: 0.2rem 0;
    color: var(--ink-soft);
    font-size: 0.8125rem;
  }
  .lists {
    display: grid;
    gap: 0.7rem 1.2rem;
    grid-template-columns: minmax(0, 1fr);
  }
  ol {
    margin: 0.2rem 0 0;
    padding: 0;
    list-style: none;
  }
  li {
    padding: 0.35rem 0;
    border-top: 1px solid var(--rule);
    overflow-wrap: anywhere;
  }
  li.on {
    padding-inline-start: 0.5rem;
    border-inline-start: 3px solid var(--accent);
  }
  li p {
    margin: 0 0 0.25rem;
    hyphens: auto;
  }
  .pair {
    gap: 0.4rem;
  }
  .caution {
    padding: 0.3rem 0.5rem;
    border-inline-start: 4px solid var(--loud-word);
    background: var(--card);
    font-size: 0.875rem;
  }
  .final {
    color: var(--loud-word);
    font-weight: 600;
  }
  .differences {
    margin: 0.7rem 0 0;
    padding-top: 0.4rem;
    border-top: 1px solid var(--rule);
  }
  @container (min-width: 27rem) {
    .lists {
      grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
    }
  }
`;
