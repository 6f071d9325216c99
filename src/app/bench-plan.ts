import { LitElement, html, nothing } from "lit";
import { live } from "lit/directives/live.js";
import { english, sentenceText, type Catalogue } from "../reed/catalogue.js";
import { ownTarget } from "../reed/bench.js";
import type { Sitting } from "../reed/done-steps.js";
import { doubtLeast } from "../reed/sentence.js";
import { bassoonSymptoms } from "../reed/symptoms.js";
import { define } from "../widgets/define.js";
import type { StepDoneEvent } from "../widgets/advice-events.js";
import { look } from "../widgets/look.js";
import { ReedShares } from "../widgets/reed-shares.js";
import { ReedSteps } from "../widgets/reed-steps.js";
import type { Handle } from "../widgets/triangle-drag.js";
import { today } from "./advice-state.js";
import { BenchActionEvent } from "./bench-action-event.js";
import { OwnTarget } from "./own-target.js";
import { MovesPickedEvent } from "./bench-options.js";
import type { BenchAction } from "./bench-state.js";
import type { Shown } from "./bench-words.js";
import { planPageStyle } from "./plan-page-style.js";
import { isUnsound } from "./measured-map.js";
import type { PlanView, ToldPlan } from "./plan-view.js";
import { movesChoice, targetChoice } from "./target-choice.js";
import { doneText } from "./told-advice.js";
import { unsoundText } from "./unsound-text.js";

define("own-target", OwnTarget);
define("reed-steps", ReedSteps);
define("reed-shares", ReedShares);

/**
 * The way to the part to play: which part, the plans, the steps of the one that is looked at, what was done already.
 *
 * @fires bench-action - another part, another plan, a step that was done
 * @fires moves-picked - the point or one's own target shall be moved
 */
export class BenchPlan extends LitElement {
  static override styles = [look, planPageStyle];

  static override properties = {
    shown: { attribute: false },
    plan: { attribute: false },
    resting: { type: Boolean },
    embedded: { type: Boolean },
    moves: { type: String },
    text: { attribute: false },
  };

  declare shown: Shown;
  /** Undefined where there is no part or no place; while the point is on its way, the last one. */
  declare plan: PlanView | undefined;
  declare resting: boolean;
  /** On somebody else's page: what is printed there is not ours to say, and the same may stand there several times. */
  declare embedded: boolean;
  declare moves: Handle;
  declare text: Catalogue;

  constructor() {
    super();
    this.text = english;
    this.resting = true;
    this.embedded = false;
    this.moves = "point";
  }

  override render() {
    const { text, shown } = this;
    const { bench } = shown.state.present;
    return html`<section
      class="card"
      tabindex="-1"
      role=${this.embedded ? "group" : nothing}
      aria-label=${text.advice.plan.title}
    >
      <h2>${text.advice.plan.title}</h2>
      <p class="printOnly">${sentenceText(shown.view.sentence)}</p>
      <div class="choices">
        ${targetChoice(bench, text, (target) => this.#act({ type: "target-set", target }))}
        ${movesChoice(bench, this.moves, text, (moves) => this.dispatchEvent(new MovesPickedEvent(moves)))}
      </div>
      ${this.#ownTarget()} ${this.#done()} ${this.#trouble()} ${this.#answer()}
    </section>`;
  }

  #answer() {
    const { text, plan, shown, resting } = this;
    const words = text.planPage.plan;
    const { bench } = shown.state.present;
    if (bench.target === "") return html`<p>${words.pick}</p>`;
    if (isUnsound(bench)) return html`<p>${unsoundText(bench, text)}</p>`;
    if (!shown.view.placed) return html`<p>${words.noPlace}</p>`;
    if (!plan) return html`<p class="soft">${words.working}</p>`;
    if ((shown.view.doubt ?? 0) > doubtLeast)
      return html`<p>
        ${text.target.unsure(text.advice.plan.target(plan.target.id, plan.target.label))}
      </p>`;
    return html`<p class="soft working" ?hidden=${resting}>${words.working}</p>
      <div class=${resting ? "" : "stale"} ?inert=${!resting}>
        ${this.#kinds(plan)} ${this.#plan(plan.looked)}
      </div>`;
  }

  /** Trouble and plan are two questions, and may answer with two amounts of the same thing. */
  #trouble() {
    const { plan, shown, text } = this;
    const { symptom: id } = shown.state.advice;
    const symptom = bassoonSymptoms.symptoms.find((one) => one.id === id);
    if (!symptom || !plan || plan.looked.plan.steps.length === 0) return nothing;
    return html`<p class="noPrint">${text.planPage.plan.troubleFirst(symptom.symptom)}</p>`;
  }

  #kinds({ plans, looked }: PlanView) {
    const words = this.text.planPage.plan;
    if (plans.length < 2) return nothing;
    return html`<fieldset class="kinds">
      <legend>${words.choice}</legend>
      ${plans.map(
        ({ plan: { kind, steps } }, index) =>
          html`<label
            ><input
              type="radio"
              name="kind"
              .checked=${live(kind === looked.plan.kind)}
              @change=${() => this.#act({ type: "plan-looked-at", kind })}
            /><span
              >${words.numbered(index + 1, this.text.advice.plan.kinds[kind])}
              <span class="soft">${words.moves(steps.length)}</span></span
            ></label
          >`,
      )}
    </fieldset>`;
  }

  #plan({ before, notes, steps }: ToldPlan) {
    const { text, shown } = this;
    const { model, present } = shown.state;
    return html`<p class="sentence">${before.join(" ")}</p>
      ${
        notes.steps.length > 0
          ? html`<p class="soft noPrint">${text.planPage.plan.legend}</p>
              <reed-steps
                .model=${model}
                .notes=${notes.steps}
                .said=${steps}
                .measured=${Object.keys(present.bench.values)}
                .unit=${present.bench.unit}
                .text=${text}
                @step-done=${this.#onDone}
              ></reed-steps>
              ${this.#printButton()}`
          : nothing
      }`;
  }

  #printButton() {
    if (this.embedded) return nothing;
    return html`<p class="noPrint foot">
      <button @click=${() => window.print()}>${this.text.planPage.plan.print}</button>
    </p>`;
  }

  /** What has been done to this reed already, sitting by sitting. */
  #done() {
    const { text, shown } = this;
    const { done = [] } = shown.state.present.bench;
    if (done.length === 0) return nothing;
    const words = text.planPage.plan;
    const isOpen = today(shown.state).length > 0;
    return html`<section class="doneSoFar ${isOpen ? "" : "noPrint"}" aria-label=${words.doneSoFar}>
      <h3>${words.doneSoFar}</h3>
      ${done.map((sitting, index) => this.#sitting(sitting, index, index === done.length - 1))}
      <p class="soft noPrint">
        ${words.undoHint}${isOpen ? html` ${words.newSittingHint}` : nothing}
      </p>
      ${
        isOpen
          ? html`<button class="noPrint" @click=${this.#onSitting}>${words.newSitting}</button>`
          : nothing
      }
    </section>`;
  }

  #sitting(sitting: Sitting, index: number, isLast: boolean) {
    const { text, shown } = this;
    const words = text.planPage.plan;
    if (sitting.length === 0) return nothing;
    // The card is for today: what was done on other days stays on the screen.
    const shownOn = isLast ? "" : "noPrint";
    return html`<p class="soft ${shownOn}">${isLast ? words.today : words.sitting(index + 1)}</p>
      <ol class=${shownOn}>
        ${sitting.map((one) => html`<li>${doneText(shown.state, one, text)}</li>`)}
      </ol>`;
  }

  #onSitting(): void {
    this.#act({ type: "sitting-begun" });
    this.focus();
  }

  #ownTarget() {
    const { target, aim } = this.shown.state.present.bench;
    if (target !== ownTarget) return nothing;
    return html`<own-target .aim=${aim} .text=${this.text}></own-target>`;
  }

  /** On the panel itself: where who has entered readings, or comes from a trouble, goes on. */
  override focus(): void {
    const card = this.renderRoot.querySelector<HTMLElement>("section");
    card?.focus({ preventScroll: true });
    card?.scrollIntoView({ block: "start" });
  }

  #onDone({ action, amount, readings }: StepDoneEvent): void {
    this.#act({ type: "step-done", step: { action, amount }, readings });
    this.focus();
  }

  #act(action: BenchAction): void {
    this.dispatchEvent(new BenchActionEvent(action));
  }
}
