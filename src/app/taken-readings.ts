import { html, nothing, type TemplateResult } from "lit";
import type { Catalogue } from "../reed/catalogue.js";

/** How the readings that were taken are told, and taken out again. */
export interface TakenWords {
  readonly words: Catalogue["measure"]["step"];
  readonly shown: (value: number) => string;
  /** Whether they are repeats of one place rather than readings of several. */
  readonly isOnePlace: boolean;
  /** What does not go together with them. */
  readonly warnings: readonly string[];
  readonly remove: (index: number) => void;
}

/** The readings of a step that were taken, each with a button that takes it out, and their mean. */
export function takenReadings(
  readings: readonly number[],
  { words, shown, isOnePlace, warnings, remove }: TakenWords,
): TemplateResult {
  const mean = readings.reduce((sum, one) => sum + one, 0) / readings.length;
  return html`<div class="taken">
    <h3>${words.taken}</h3>
    <ul>
      ${readings.map(
        (one, i) =>
          html`<li>
            ${shown(one)}
            <button aria-label=${words.remove(shown(one))} @click=${() => remove(i)}>×</button>
          </li>`,
      )}
    </ul>
    ${readings.length > 1 ? html`<p>${words.mean(shown(mean), readings.length)}</p>` : nothing}
    ${warnings.map((warning) => html`<p class="problem">${warning}</p>`)}
    ${isOnePlace && readings.length > 1 ? html`<p class="soft">${words.repeats}</p>` : nothing}
  </div>`;
}
