import { css } from "lit";

/** The app around its pages. */
export const appStyle = css`
  :host {
    display: block;
    min-height: 100vh;
    background: var(--ground);
  }
  .notice {
    position: fixed;
    inset: auto 0 1rem;
    z-index: 3;
    display: flex;
    gap: 0.75rem;
    align-items: center;
    justify-content: space-between;
    width: fit-content;
    max-width: min(44rem, calc(100% - 1.5rem));
    margin: 0 auto;
    padding: 0.5rem 0.75rem;
    border: 1px solid var(--accent);
    border-radius: 8px;
    background: var(--card);
    box-shadow: 0 4px 16px rgb(0 0 0 / 20%);
  }
  @media print {
    bench-header,
    page-tabs,
    .notice,
    .noPrint {
      display: none;
    }
  }
`;
