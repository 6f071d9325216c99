import { LitElement, css, html, nothing } from "lit";
import { qualityPlaces, type Quality, type SevenValues } from "../engine/qualities.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { gainsAt, gainsSentence } from "../reed/gains.js";
import type { QualityPickedEvent } from "../widgets/advice-events.js";
import { define } from "../widgets/define.js";
import { look } from "../widgets/look.js";
import { ReedGains, type GainsPlace } from "../widgets/reed-gains.js";
import { BenchActionEvent } from "./bench-action-event.js";
import type { BenchAction } from "./bench-state.js";
import type { Shown } from "./bench-words.js";
import { planPageStyle } from "./plan-page-style.js";
import { judgedQualities, type PlanView } from "./plan-view.js";

define("reed-gains", ReedGains);

/**
 * What the reed gains and pays against the all-round reed: now, at the part to play, at the end of every plan; one
 * quality at a time over the triangle, with its seven values to be judged otherwise.
 *
 * @fires bench-action - a quality is shown or judged
 */
export class BenchGains extends LitElement {
  static override styles = [
    look,
    planPageStyle,
    css`
      .legend {
        margin: 0.7rem 0 0;
        padding: 0.5rem 0.75rem;
        border-inline-start: 3px solid var(--accent);
        background: var(--ground);
      }
      .values {
        display: grid;
        gap: 0.35rem 1rem;
        grid-template-columns: repeat(auto-fill, minmax(min(100%, 14rem), 1fr));
        margin: 0.3rem 0 0.5rem;
      }
      .values label {
        display: flex;
        flex-wrap: wrap;
        gap: 0.3rem;
        align-items: center;
        justify-content: space-between;
      }
      input[type="number"] {
        width: 4.5rem;
        min-height: 2.25rem;
        padding: 0 0.4rem;
      }
      @media print {
        :host {
          display: none;
        }
      }
    `,
  ];

  static override properties = {
    shown: { attribute: false },
    plan: { attribute: false },
    text: { attribute: false },
  };

  declare shown: Shown;
  declare plan: PlanView | undefined;
  declare text: Catalogue;

  constructor() {
    super();
    this.text = english;
  }

  override render() {
    const { text, shown } = this;
    const { placed } = shown.view;
    const { bench } = shown.state.present;
    const words = text.advice.qualities;
    const qualities = judgedQualities(bench.judged);
    const picked = qualities.qualities.find(({ id }) => id === bench.quality);
    const places = this.#places();
    return html`<section class="card" aria-label=${words.title}>
      <h2>${words.title}</h2>
      ${
        placed
          ? html`<p class="sentence">${gainsSentence(places[0]!.gains, text.advice)}</p>
              ${(this.plan?.plans ?? [])
                .filter(({ plan }) => plan.steps.length > 0)
                .map(
                  ({ plan }, index) =>
                    html`<p class="soft">
                      ${this.#planName(index)}:
                      ${gainsSentence(gainsAt(qualities, plan.blend), text.advice)}
                    </p>`,
                )}`
          : nothing
      }
      <reed-gains
        .qualities=${qualities.qualities}
        .places=${places}
        .picked=${picked?.id}
        .text=${text}
        @quality-picked=${this.#onPicked}
      ></reed-gains>
      <p class="soft">${text.planPage.gains.scale}</p>
      ${this.#judgement(picked)}
    </section>`;
  }

  /** The columns: now, the part, the end of every plan that has steps; without a place the part alone. */
  #places(): GainsPlace[] {
    const { text, shown, plan } = this;
    const qualities = judgedQualities(shown.state.present.bench.judged);
    const words = text.planPage.gains;
    const { placed } = shown.view;
    const column = (name: string, blend: Parameters<typeof gainsAt>[1]): GainsPlace => ({
      name,
      gains: gainsAt(qualities, blend),
    });
    const ends = (plan?.plans ?? []).filter((one) => one.plan.steps.length > 0);
    return [
      ...(placed ? [column(words.now, placed.raw)] : []),
      ...(plan ? [column(words.part, plan.target.blend)] : []),
      ...ends.map((one, index) => column(this.#planName(index), one.plan.blend)),
    ];
  }

  #planName(index: number): string {
    const { text, plan } = this;
    const words = text.planPage.gains;
    return (plan?.plans.length ?? 0) > 1 ? words.endShort(index + 1) : words.onlyEnd;
  }

  /** What lies over the triangle, and whose judgement it is. */
  #judgement(picked: Quality | undefined) {
    const { text, shown } = this;
    const words = text.planPage.gains;
    const isOwn =
      picked !== undefined && shown.state.present.bench.judged?.[picked.id] !== undefined;
    const whose = isOwn ? words.yours : text.advice.qualities.judgement;
    if (!picked) return html`<p class="soft">${words.hint} ${text.advice.qualities.judgement}</p>`;
    return html`<div class="legend">
      <p>${picked.says} ${words.contours(picked.label)} ${whose}</p>
      <p>
        <button @click=${() => this.#act({ type: "quality-shown", quality: undefined })}>
          ${words.hide}
        </button>
      </p>
      <details>
        <summary>${words.change}</summary>
        <p class="soft">${words.range}</p>
        <div class="values">
          ${qualityPlaces.map((place, index) => this.#value(picked, place, index))}
        </div>
        <button
          ?disabled=${!isOwn}
          @click=${() => this.#act({ type: "quality-judged", quality: picked.id, values: undefined })}
        >
          ${words.reset}
        </button>
      </details>
    </div>`;
  }

  #value(quality: Quality, place: string, index: number) {
    return html`<label
      >${this.text.planPage.gains.places[place]}
      <input
        type="number"
        min="0"
        max="10"
        step="0.5"
        .value=${String(quality.values[index])}
        @change=${(event: Event) => this.#onValue(event, quality, index)}
    /></label>`;
  }

  /** A number beyond the scale is its end; what is no number changes nothing. */
  #onValue(event: Event, { id, values }: Quality, index: number): void {
    const field = event.target as HTMLInputElement;
    const typed = field.valueAsNumber;
    if (!Number.isFinite(typed)) {
      field.value = String(values[index]);
      return;
    }
    const value = Math.min(10, Math.max(0, typed));
    field.value = String(value);
    const changed = values.map((before, i) => (i === index ? value : before));
    this.#act({
      type: "quality-judged",
      quality: id,
      values: changed as unknown as SevenValues,
    });
  }

  #onPicked({ quality }: QualityPickedEvent): void {
    this.#act({ type: "quality-shown", quality });
  }

  #act(action: BenchAction): void {
    this.dispatchEvent(new BenchActionEvent(action));
  }
}
