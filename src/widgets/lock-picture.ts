import { html } from "lit";

/** A padlock, open or closed. */
export function lockPicture(locked: boolean) {
  const bow = locked ? "M4.5 7V5a3.5 3.5 0 0 1 7 0v2" : "M4.5 7V5a3.5 3.5 0 0 1 6.6-1.6";
  return html`<svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true">
    <path d=${bow} fill="none" stroke="currentColor" stroke-width="1.6"></path>
    <rect x="3" y="7" width="10" height="7" rx="1.5" fill="currentColor"></rect>
  </svg>`;
}
