import { html, nothing, type TemplateResult } from "lit";
import type { Catalogue } from "../reed/catalogue.js";
import type { SlipQuestion } from "../reed/slip-questions.js";

/** What the questions are told with. */
export interface SlipWords {
  readonly words: Catalogue["measure"]["ask"];
  readonly units: Catalogue["units"];
  /** The reading as it was understood, with its unit. */
  readonly typed: string;
  readonly shown: (value: number) => string;
  readonly usual: readonly string[];
  readonly label: (feature: string) => string;
}

/** The questions about a reading, each with its answer as a button; then keep it on purpose, or type again. */
export function slipButtons(
  { value, questions }: { readonly value: number; readonly questions: readonly SlipQuestion[] },
  told: SlipWords,
  answer: (value: number | undefined) => void,
): TemplateResult {
  const { words, typed, shown } = told;
  return html`<div class="asked" role="group" aria-label=${words.title}>
    <h3>${words.title}</h3>
    ${questions.map((one, i) => {
      const other = one.value;
      return html`<p id="why-${i}">${questionText(one, told)}</p>
        ${
          other === undefined
            ? nothing
            : html`<button
                class=${i === 0 ? "main" : nothing}
                aria-describedby="why-${i}"
                @click=${() => answer(other)}
              >
                ${words.take(shown(other))}
              </button>`
        }`;
    })}
    <button aria-describedby="why-0" @click=${() => answer(undefined)}>${words.correct}</button>
    <button aria-describedby="why-0" @click=${() => answer(value)}>${words.keep(typed)}</button>
  </div>`;
}

function questionText({ kind, value, unit, feature }: SlipQuestion, told: SlipWords): string {
  const { words, units, typed, shown, usual, label } = told;
  const other = value === undefined ? "" : shown(value);
  switch (kind) {
    case "unit":
      return words.unit(typed, other, units[unit!].spoken);
    case "otherFeature":
      return words.otherFeature(typed, label(feature!));
    case "upsideDown":
      return words.upsideDown(typed, other);
    case "riseItself":
      return words.riseItself(other);
    case "thicknessItself":
      return words.thicknessItself(typed);
    case "far":
      return words.far(typed, usual[0]!, usual[1]!);
  }
}
