import { css, html } from "lit";
import type { Arrival } from "../app/late-parts.js";
import type { Catalogue } from "../reed/catalogue.js";

/** While a part is on its way; the words appear only if that takes long. */
export const lateStyle = css`
  .late {
    min-height: 8rem;
    margin: 1rem 0;
    color: var(--ink-soft);
  }
  .coming {
    animation: late-words 0s 0.4s both;
  }
  @keyframes late-words {
    from {
      visibility: hidden;
    }
  }
`;

export function lateWords(arrival: Arrival, { pages: words }: Catalogue) {
  return arrival === "failed"
    ? html`<p class="late" role="alert">${words.failed}</p>`
    : html`<p class="late coming">${words.coming}</p>`;
}
