import { html, nothing, type TemplateResult } from "lit";
import type { FeatureId } from "../engine/model.js";
import type { Catalogue } from "../reed/catalogue.js";
import { placesOf } from "../reed/places.js";
import { meanReading, type Reading } from "../reed/readings.js";

/** How the readings that were taken are told, and taken out again. */
export interface TakenWords {
  readonly words: Catalogue["measure"]["step"];
  readonly feature: FeatureId;
  readonly shown: (value: number) => string;
  readonly places: Catalogue["measure"]["places"];
  /** What does not go together with them. */
  readonly warnings: readonly string[];
  readonly remove: (index: number) => void;
}

/** The readings of a step that were taken, each with its place and a button that takes it out, and their mean. */
export function takenReadings(
  readings: readonly Reading[],
  { words, feature, shown, places, warnings, remove }: TakenWords,
): TemplateResult {
  const isOnePlace = placesOf(feature).length === 1;
  return html`<div class="taken">
    <h3>${words.taken}</h3>
    <ul>
      ${readings.map(({ place, value }, i) => {
        const told = words.takenAt(shown(value), places[place]);
        return html`<li>
          ${told}
          <button aria-label=${words.remove(told)} @click=${() => remove(i)}>×</button>
        </li>`;
      })}
    </ul>
    ${readings.length > 1 ? html`<p>${words.mean(shown(meanReading(feature, readings)), readings.length)}</p>` : nothing}
    ${warnings.map((warning) => html`<p class="problem">${warning}</p>`)}
    ${isOnePlace && readings.length > 1 ? html`<p class="soft">${words.repeats}</p>` : nothing}
  </div>`;
}
