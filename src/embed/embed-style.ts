import { css } from "lit";

/** What the public elements share: they fill their container, from 280 px up, and carry their own ground. */
export const embedStyle = css`
  :host {
    display: block;
    position: relative;
    min-width: 0;
    background: var(--ground);
    container: reed / inline-size;
  }
  :host([hidden]) {
    display: none;
  }
  .frame {
    padding: 0.5rem;
  }
  @container reed (max-width: 24rem) {
    .frame {
      padding: 0.5rem 0;
    }
  }
  .description {
    display: none;
  }
  @media print {
    .description {
      display: block;
    }
    .frame {
      padding: 0;
    }
  }
`;

/** The night look, for an element that asks for it itself; the same colours as the app's page.css. Paper stays paper. */
export const nightStyle = css`
  @media screen {
    :host([theme="night"]) {
      color-scheme: dark;
      --reed-ground: #191613;
      --reed-card: #231f1b;
      --reed-ink: #f1eadf;
      --reed-ink-soft: #b9ad9f;
      --reed-rule: #453d35;
      --reed-edge: #8f8376;
      --reed-grid: #6b6158;
      --reed-accent: #f2a93b;
      --reed-high: #608de0;
      --reed-low: #bfe79e;
      --reed-loud: #da5a4b;
      --reed-high-word: #8fb2f2;
      --reed-low-word: #bfe79e;
      --reed-loud-word: #f08a7c;
    }
  }
  @media screen and (prefers-color-scheme: dark) {
    :host([theme="auto"]) {
      color-scheme: dark;
      --reed-ground: #191613;
      --reed-card: #231f1b;
      --reed-ink: #f1eadf;
      --reed-ink-soft: #b9ad9f;
      --reed-rule: #453d35;
      --reed-edge: #8f8376;
      --reed-grid: #6b6158;
      --reed-accent: #f2a93b;
      --reed-high: #608de0;
      --reed-low: #bfe79e;
      --reed-loud: #da5a4b;
      --reed-high-word: #8fb2f2;
      --reed-low-word: #bfe79e;
      --reed-loud-word: #f08a7c;
    }
  }
`;
