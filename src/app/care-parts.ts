import { html, nothing, type TemplateResult } from "lit";
import type { Catalogue } from "../reed/catalogue.js";
import type { HandCare } from "../reed/hand-care.js";

/** Caution and whether it can be undone; with how it is done and what to read again where it is about to be done. */
export function careParts(
  { how, caution, undo, pitch, readAgain }: HandCare,
  isWhole: boolean,
  text: Catalogue,
): TemplateResult {
  const isFinal = undo === text.advice.plan.irreversible;
  return html`${isWhole ? html`<p>${how} ${pitch}</p>` : nothing}
    <p class="caution"><strong>${text.planPage.plan.caution}</strong> ${caution}</p>
    <p><span class=${isFinal ? "final" : "soft"}>${undo}</span></p>
    ${isWhole ? html`<p>${readAgain} ${text.planPage.standIns.playAgain}</p>` : nothing}`;
}
