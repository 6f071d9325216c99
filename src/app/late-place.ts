import { css, html } from "lit";
import type { Catalogue } from "../reed/catalogue.js";
import type { Arrival } from "./late-parts.js";

/** The place of a part that is not here yet: quiet for the moment that most parts take, then it says why it is empty. */
export const latePlaceStyle = css`
  .late {
    min-height: 70vh;
  }
  .late p {
    margin: 2rem 0;
    color: var(--ink-soft);
  }
  .late .coming {
    animation: late-words 0s 0.4s both;
  }
  @keyframes late-words {
    from {
      visibility: hidden;
    }
  }
`;

export function latePlace(arrival: Arrival, text: Catalogue) {
  const words = text.pages;
  if (arrival !== "failed")
    return html`<div class="wide late"><p class="coming">${words.coming}</p></div>`;
  return html`<div class="wide late" role="alert">
    <p>${words.failed}</p>
    <button @click=${() => window.location.reload()}>${words.again}</button>
  </div>`;
}
