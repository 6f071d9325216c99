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

/** The night look, for an element that asks for it itself; the same colours as the app's page.css. */
export const nightStyle = css`
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
  @media (prefers-color-scheme: dark) {
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
  @media print {
    :host([theme]) {
      color-scheme: light;
      --reed-ground: #ffffff;
      --reed-card: #ffffff;
      --reed-ink: #000000;
      --reed-ink-soft: #3a3a3a;
      --reed-rule: #bbbbbb;
      --reed-edge: #777777;
      --reed-grid: #aaaaaa;
      --reed-accent: #000000;
      --reed-high: #1b487c;
      --reed-low: #609d69;
      --reed-loud: #8a0509;
      --reed-high-word: #000000;
      --reed-low-word: #000000;
      --reed-loud-word: #000000;
    }
  }
`;
