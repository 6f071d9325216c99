import { css } from "lit";

/**
 * What all elements share. Colours come from custom properties that the page sets (`--reed-…`), with the paper
 * theme as the fallback, so that an element alone on a page looks right too.
 */
export const look = css`
  :host {
    --ink: var(--reed-ink, #221d18);
    --ink-soft: var(--reed-ink-soft, #6a5f55);
    --ground: var(--reed-ground, #faf7f1);
    --card: var(--reed-card, #fffdf8);
    --rule: var(--reed-rule, #ddd5c8);
    --edge: var(--reed-edge, #8d8174);
    --accent: var(--reed-accent, #b25f00);
    --high: var(--reed-high, #1b487c);
    --low: var(--reed-low, #609d69);
    --loud: var(--reed-loud, #8a0509);
    --high-word: var(--reed-high-word, #1b487c);
    --low-word: var(--reed-low-word, #2f6a3a);
    --loud-word: var(--reed-loud-word, #8a0509);
    --sans: var(--reed-sans, system-ui, "Segoe UI", Roboto, "DejaVu Sans", sans-serif);
    --serif: var(
      --reed-serif,
      "Iowan Old Style",
      "Palatino Linotype",
      Palatino,
      "DejaVu Serif",
      Georgia,
      serif
    );
    color: var(--ink);
    font-family: var(--sans);
    font-size: 0.9375rem;
    font-variant-numeric: tabular-nums;
    line-height: 1.35;
  }
  *,
  *::before,
  *::after {
    box-sizing: border-box;
  }
  [hidden] {
    display: none !important;
  }
  :focus-visible {
    outline: 2px solid var(--accent);
    outline-offset: 2px;
  }
  h2,
  h3 {
    margin: 0;
    font-family: var(--serif);
    font-size: 1.0625rem;
    line-height: 1.3;
  }
  h3 {
    color: var(--ink-soft);
    font-family: var(--sans);
    font-size: 0.8125rem;
    letter-spacing: 0.02em;
  }
  button,
  select,
  input[type="text"],
  input[type="number"],
  textarea {
    border: 1px solid var(--edge);
    border-radius: 6px;
    background: var(--card);
    color: inherit;
    font: inherit;
  }
  button,
  select {
    min-height: 2.25rem;
    padding: 0.25rem 0.7rem;
    cursor: pointer;
  }
  button:hover:not(:disabled),
  select:hover {
    border-color: var(--accent);
  }
  button:disabled,
  [aria-disabled="true"] {
    border-color: var(--rule);
    color: var(--ink-soft);
    cursor: default;
  }
  .unseen {
    position: absolute;
    width: 1px;
    height: 1px;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
  }
  input,
  progress {
    accent-color: var(--accent);
  }
  input[type="range"] {
    appearance: none;
    width: 100%;
    height: 2rem;
    margin: 0;
    background: transparent;
    cursor: pointer;
  }
  input[type="range"]::-webkit-slider-runnable-track {
    height: 4px;
    border-radius: 2px;
    background: var(--edge);
  }
  input[type="range"]::-moz-range-track {
    height: 4px;
    border-radius: 2px;
    background: var(--edge);
  }
  input[type="range"]::-webkit-slider-thumb {
    appearance: none;
    width: 24px;
    height: 24px;
    margin-top: -10px;
    border: 2px solid var(--ink);
    border-radius: 50%;
    background: var(--card);
  }
  input[type="range"]::-moz-range-thumb {
    width: 20px;
    height: 20px;
    border: 2px solid var(--ink);
    border-radius: 50%;
    background: var(--card);
  }
  input[type="range"]:hover::-webkit-slider-thumb,
  input[type="range"]:focus-visible::-webkit-slider-thumb {
    border-color: var(--accent);
  }
  input[type="range"]:disabled {
    cursor: default;
  }
  input[type="range"]:disabled::-webkit-slider-thumb {
    border-color: var(--edge);
    background: var(--rule);
  }
  @media (forced-colors: active) {
    [aria-disabled="true"] {
      border-color: GrayText;
      color: GrayText;
    }
    input[type="range"]::-webkit-slider-runnable-track {
      background: CanvasText;
    }
    input[type="range"]::-webkit-slider-thumb {
      border-color: ButtonText;
      background: ButtonFace;
    }
  }
`;
