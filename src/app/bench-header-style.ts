import { css } from "lit";

/** The bar above the page: one row where there is room, on a phone with the lesser tools in a menu. */
export const benchHeaderStyle = css`
  header {
    display: flex;
    flex-wrap: wrap;
    gap: 0.5rem 1rem;
    align-items: center;
    padding: 0.6rem clamp(0.75rem, 2.5vw, 2rem);
    border-bottom: 1px solid var(--rule);
  }
  h1 {
    margin: 0 auto 0 0;
    font-family: var(--serif);
    font-size: 1.375rem;
    line-height: 1.2;
  }
  .tools {
    min-width: 0;
    display: flex;
    flex-wrap: wrap;
    gap: 0.4rem;
    align-items: center;
  }
  .tools label {
    min-width: 0;
    max-width: 100%;
  }
  .tools select {
    max-width: 100%;
    min-width: 0;
  }
  .tools label {
    display: flex;
    gap: 0.35rem;
    align-items: center;
    color: var(--ink-soft);
  }
  .tools select {
    color: var(--ink);
  }
  .skip {
    position: absolute;
    inset-inline-start: -100rem;
    padding: 0.5rem 0.8rem;
    background: var(--card);
    color: inherit;
  }
  .skip:focus {
    inset-block-start: 0.3rem;
    inset-inline-start: 0.3rem;
    z-index: 4;
  }
  .compact {
    gap: 0.4rem;
    padding-block: 0.4rem;
  }
  .compact .tools {
    flex: 1 1 100%;
  }
  .compact .tools.alone {
    flex: 0 1 auto;
    margin-inline-start: auto;
  }
  .compact .choice {
    flex: 1 1 6rem;
  }
  .compact {
    position: relative;
  }
  .compact .choice select {
    width: 100%;
  }
  .icon {
    min-width: 2.75rem;
    padding-inline: 0.3rem;
    font-size: 1.25rem;
    line-height: 1;
  }
  summary {
    display: flex;
    align-items: center;
    min-height: 2.25rem;
    padding: 0.25rem 0.7rem;
    border: 1px solid var(--edge);
    border-radius: 6px;
    background: var(--card);
    cursor: pointer;
    list-style: none;
  }
  summary::-webkit-details-marker {
    display: none;
  }
  .menu {
    position: absolute;
    inset-block-start: calc(100% - 2px);
    inset-inline-end: clamp(0.75rem, 2.5vw, 2rem);
    z-index: 5;
    display: grid;
    gap: 0.4rem;
    width: max-content;
    max-width: calc(100vw - 1.5rem);
    padding: 0.6rem;
    border: 1px solid var(--edge);
    border-radius: 8px;
    background: var(--card);
    box-shadow: 0 6px 20px rgb(0 0 0 / 22%);
  }
  .menu button {
    min-height: 2.75rem;
    text-align: start;
  }
`;
