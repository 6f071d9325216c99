import { css } from "lit";

/** The app around its pages. */
export const appStyle = css`
  :host {
    display: block;
    min-height: 100vh;
    background: var(--ground);
  }
  @media print {
    bench-header,
    page-tabs,
    notice-bar,
    .noPrint {
      display: none;
    }
  }
`;
