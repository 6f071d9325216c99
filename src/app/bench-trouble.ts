import { LitElement, html, nothing } from "lit";
import { planNotes } from "../engine/plan-notes.js";
import type { PlanStep } from "../engine/plan-adjustments.js";
import type { Action, FeatureId } from "../engine/model.js";
import { bassoonActions } from "../reed/bassoon.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { likelyCauses, type LikelyCause } from "../reed/likely-causes.js";
import { stepSentences } from "../reed/plan-sentences.js";
import type { Spoken } from "../reed/stand-in-sentences.js";
import { bassoonSymptoms, type Help, type Symptom } from "../reed/symptoms.js";
import { troubleSentences } from "../reed/trouble-sentences.js";
import type { StepDoneEvent } from "../widgets/advice-events.js";
import { define } from "../widgets/define.js";
import { look } from "../widgets/look.js";
import { ReedCompass } from "../widgets/reed-compass.js";
import { ReedDrawing } from "../widgets/reed-drawing.js";
import { ReedSteps } from "../widgets/reed-steps.js";
import { today } from "./advice-state.js";
import { BenchActionEvent } from "./bench-action-event.js";
import type { BenchAction } from "./bench-state.js";
import type { Shown } from "./bench-words.js";
import { isUnsound } from "./measured-map.js";
import { planPageStyle } from "./plan-page-style.js";
import { spokenOf } from "./stand-in-list.js";
import { doneText } from "./told-advice.js";
import { troubleStyle } from "./trouble-style.js";
import { unsoundText } from "./unsound-text.js";

define("reed-steps", ReedSteps);
define("reed-drawing", ReedDrawing);
define("reed-compass", ReedCompass);

/**
 * The symptom table as a guided choice: is it sound, what is wrong, where to look, what to do first, what only after.
 *
 * @fires bench-action - a symptom, a step that was done
 * @fires plan-asked - on to the plan
 */
export class BenchTrouble extends LitElement {
  static override styles = [look, planPageStyle, troubleStyle];

  static override properties = {
    shown: { attribute: false },
    toward: { type: String },
    text: { attribute: false },
  };

  declare shown: Shown;
  /** The part that a plan with steps leads toward, as a sentence names it; empty where there is none. */
  declare toward: string;
  declare text: Catalogue;

  constructor() {
    super();
    this.text = english;
    this.toward = "";
  }

  override render() {
    const { text, shown } = this;
    const { symptom: id } = shown.state.advice;
    const symptom = bassoonSymptoms.symptoms.find((one) => one.id === id);
    return html`<section class="card" aria-label=${text.advice.trouble.title}>
      <h2>${text.advice.trouble.title}</h2>
      ${this.#soundness()} ${symptom ? this.#guided(symptom) : this.#choice()}
    </section>`;
  }

  #whyNot(): string {
    const { text, shown } = this;
    const { bench } = shown.state.present;
    return isUnsound(bench) ? unsoundText(bench, text) : text.planPage.trouble.noPlace;
  }

  #soundness() {
    const { text } = this;
    return html`<p>${text.planPage.trouble.soundFirst}</p>
      <details>
        <summary>${text.advice.trouble.soundness}</summary>
        <ol class="sound">
          ${bassoonSymptoms.soundness.map(
            ({ look: check, firstHelp }) =>
              html`<li>
                ${check} <span class="soft">${text.planPage.trouble.ifNot(firstHelp)}</span>
              </li>`,
          )}
        </ol>
      </details>`;
  }

  #choice() {
    const { text } = this;
    return html`<h3 id="choose">${text.advice.trouble.choose}</h3>
      <ul class="symptoms" aria-labelledby="choose">
        ${bassoonSymptoms.symptoms.map(
          ({ id, symptom }) =>
            html`<li>
              <button data-symptom=${id} @click=${() => this.#pick(id)}>${symptom}</button>
            </li>`,
        )}
      </ul>`;
  }

  #guided(symptom: Symptom) {
    const { text, shown } = this;
    const words = text.planPage.trouble;
    const spoken = spokenOf(shown.state, text);
    return html`<div class="picked" tabindex="-1" role="group" aria-label=${symptom.symptom}>
      <p class="what">${symptom.symptom}</p>
      <button class="another" @click=${() => this.#pick(undefined, symptom.id)}>
        ${words.another}
      </button>
      ${spoken && this.toward !== "" ? html`<p>${words.andPlan(this.toward)}</p>` : nothing}
      ${spoken ? this.#help(symptom, spoken) : html`<p>${this.#whyNot()}</p>`}
      ${this.toward === "" ? html`<p class="soft">${words.toPlanHint}</p>` : nothing}
      <button @click=${() => this.dispatchEvent(new Event("plan-asked"))}>${words.toPlan}</button>
    </div>`;
  }

  #help(symptom: Symptom, spoken: Spoken) {
    const { text, shown } = this;
    const { values } = shown.state.present.bench;
    const causes = likelyCauses(symptom, spoken.map.model, values);
    const words = text.planPage.trouble;
    const tried = symptom.first.filter((help) => this.#isDone(help));
    const help = html`${tried.map((one) => html`<p>${words.tried(doneText(shown.state, one, text))}</p>`)}
    ${tried.length > 0 ? html`<p><strong>${words.playFirst}</strong></p>` : nothing}
    ${this.#steps(this.#open(symptom.first), words.first, symptom.firstNote, spoken)}
    ${this.#held(symptom)} ${this.#after(symptom, spoken, this.#open(symptom.first).length === 0)}`;
    // Where the readings show no cause, nobody should reach for a tool before the reed is checked and read again.
    const isPlain = causes.length === 0 || causes.some(({ holds }) => holds !== false);
    return html`${this.#causes(causes, symptom, spoken)}
    ${
      isPlain || tried.length > 0
        ? help
        : html`<details>
            <summary>${words.allTheSame}</summary>
            ${help}
          </details>`
    }`;
  }

  /** What is neither done in this sitting nor held by a lock. */
  #open(helps: readonly Help[]): readonly Help[] {
    return helps.filter((help) => !this.#isDone(help) && !this.#isHeld(help));
  }

  #held({ first, after }: Symptom) {
    const held = [...first, ...after].filter((help) => this.#isHeld(help));
    const names = held.map(({ action }) => actionOf(action)?.label ?? action);
    return names.length > 0
      ? html`<p class="soft">${this.text.planPage.trouble.held(names)}</p>`
      : nothing;
  }

  #isHeld({ action }: Help): boolean {
    const { locked } = this.shown.state.present.bench;
    return Object.keys(actionOf(action)?.effects ?? {}).some((id) => locked.includes(id));
  }

  /** What it may come from, as a sentence, on the drawing and as pulls. */
  #causes(causes: readonly LikelyCause[], symptom: Symptom, spoken: Spoken) {
    const { text, shown } = this;
    const { model, present } = shown.state;
    const { firstNote: _first, afterNote: _after, ...asked } = symptom;
    const said = troubleSentences({ ...asked, ...nothingToDo }, present.bench.values, spoken);
    const marked = causes
      .filter(({ holds }) => holds)
      .flatMap(({ what }) => featuresOf(what, spoken));
    const shownPulls = shown.view.pulls.filter(({ feature }) => marked.includes(feature));
    return html`<h3>${text.planPage.trouble.causes}</h3>
      <p class="sentence">${said.join(" ")}</p>
      ${
        marked.length > 0
          ? html`<reed-drawing
                .model=${model}
                .values=${present.bench.values}
                .unit=${present.bench.unit}
                .lying=${true}
                .brief=${true}
                .pointed=${marked.join(" ")}
                .text=${text}
              ></reed-drawing>
              <p class="soft">${text.planPage.trouble.marked}</p>
              <ul class="pulls">
                ${shownPulls.map((pull) => {
                  const feature = model.features.find(({ id }) => id === pull.feature)!;
                  return html`<li>
                    <reed-compass .feature=${feature} .pull=${pull}></reed-compass
                    ><span>${feature.label}</span>
                  </li>`;
                })}
              </ul>`
          : nothing
      }`;
  }

  #steps(helps: readonly Help[], title: string, note: string | undefined, spoken: Spoken) {
    const { text, shown } = this;
    const { model, present } = shown.state;
    const { values, unit } = present.bench;
    if (helps.length === 0) return note === undefined ? nothing : html`<p>${note}</p>`;
    const notes = planNotes(spoken.map, values, spoken.actions, { steps: helps.map(toStep) });
    return html`<h3>${title}</h3>
      ${note === undefined ? nothing : html`<p>${note}</p>`}
      <p>${text.advice.plan.ownRules}</p>
      <reed-steps
        .model=${model}
        .notes=${notes.steps}
        .said=${stepSentences(notes, spoken, "help")}
        .measured=${Object.keys(values)}
        .unit=${unit}
        list="help"
        .text=${text}
        @step-done=${this.#onDone}
      ></reed-steps>`;
  }

  #isDone({ action }: Help): boolean {
    return today(this.shown.state).some((one) => one.action === action);
  }

  /** What cannot be undone stays folded until the first did not help. */
  #after({ after: all, afterNote }: Symptom, spoken: Spoken, isNext: boolean) {
    const words = this.text.planPage.trouble;
    const after = this.#open(all);
    if (after.length === 0) return afterNote === undefined ? nothing : html`<p>${afterNote}</p>`;
    return html`<details ?open=${isNext}>
      <summary>${words.after}</summary>
      ${this.#steps(after, words.after, afterNote, spoken)}
    </details>`;
  }

  #pick(symptom: string | undefined, before?: string): void {
    this.#act({ type: "symptom-picked", symptom });
    void this.#focusOn(symptom === undefined ? `[data-symptom=${before}]` : ".picked");
  }

  async #focusOn(selector: string): Promise<void> {
    await new Promise((done) => requestAnimationFrame(done)); // the new state has come down
    await this.updateComplete;
    const element = this.renderRoot.querySelector<HTMLElement>(selector);
    element?.focus({ preventScroll: true });
    element?.scrollIntoView({ block: selector === ".picked" ? "start" : "nearest" });
  }

  #onDone({ action, amount, readings }: StepDoneEvent): void {
    this.#act({ type: "step-done", step: { action, amount }, readings });
    void this.#focusOn(".picked");
  }

  #act(action: BenchAction): void {
    this.dispatchEvent(new BenchActionEvent(action));
  }
}

const nothingToDo = { first: [], after: [] } as const;

function actionOf(id: string): Action | undefined {
  return bassoonActions.actions.find((one) => one.id === id);
}

function toStep({ action, amount }: Help): PlanStep {
  return { action, amount, reversible: actionOf(action)?.reversible ?? false };
}

/** A feature, or the two features of a ratio. */
function featuresOf(what: string, { map }: Spoken): FeatureId[] {
  const ratio = map.model.ratios.find(({ id }) => id === what);
  return ratio ? [ratio.of, ratio.to] : [what];
}
