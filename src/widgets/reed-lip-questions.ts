import { LitElement, css, html, nothing, type PropertyValues } from "lit";
import { closingLaw } from "../acoustics/closing-law.js";
import { lipProofs, type LipProofs } from "../acoustics/lip-proofs.js";
import { lipEnglish, type LipCatalogue } from "../reed/lip-catalogue.js";
import { orNothing, type LipReed } from "../reed/lip-reed.js";
import { AtRest } from "./at-rest.js";
import { lipStyle } from "./lip-style.js";
import { look } from "./look.js";

/** The questions that the panel is there to answer, each with a sentence and with numbers of this reed. */
export class ReedLipQuestions extends LitElement {
  static override styles = [
    look,
    lipStyle,
    css`
      :host {
        container-type: inline-size;
      }
      .four {
        display: grid;
        gap: 0.9rem 1.8rem;
        grid-template-columns: minmax(0, 1fr);
      }
      h4 {
        margin: 0;
        font-size: 0.9375rem;
      }
      .answer {
        font-family: var(--serif);
      }
      .proof {
        padding-inline-start: 0.7rem;
        border-inline-start: 3px solid var(--accent);
      }
      @container (min-width: 46rem) {
        .four {
          grid-template-columns: repeat(2, minmax(0, 1fr));
        }
      }
      @container (min-width: 84rem) {
        .four {
          grid-template-columns: repeat(4, minmax(0, 1fr));
        }
      }
      @media (forced-colors: active) {
        .proof {
          border-color: CanvasText;
        }
      }
    `,
  ];

  static override properties = { mine: { attribute: false }, text: { attribute: false } };

  declare mine: LipReed;
  declare text: LipCatalogue;
  readonly #rest = new AtRest(this);
  #proofs: { readonly of: LipReed["reed"]; readonly found: LipProofs | undefined } | undefined;

  constructor() {
    super();
    this.text = lipEnglish;
  }

  override willUpdate(changed: PropertyValues<this>): void {
    const before = changed.get("mine");
    if (before && before.reed !== this.mine.reed) this.#rest.moved();
    const { reed } = this.mine;
    if (this.#proofs?.of === reed || !this.#rest.resting) return;
    this.#proofs = { of: reed, found: orNothing(() => lipProofs(reed)) };
  }

  override render() {
    const { answers, panel } = this.text.lip;
    const { questions } = panel;
    const proofs = this.#proofs?.found;
    return html`<h3>${questions.title}</h3>
      <div class="four">
        ${this.#one(questions.high.question, answers.high, proofs && this.#high(proofs))}
        ${this.#one(questions.loud.question, answers.loud, proofs && this.#loud(proofs))}
        ${this.#one(questions.hinges.question, answers.hinges, this.#hinges())}
        ${this.#one(questions.wire.question, answers.wire, proofs && this.#wire(proofs))}
      </div>`;
  }

  #one(question: string, answer: string, proof: string | undefined) {
    return html`<div>
      <h4>${question}</h4>
      <p class="answer">${answer}</p>
      ${proof === undefined ? nothing : html`<p class="proof">${proof}</p>`}
    </div>`;
  }

  #high({ areaHigh, areaLow }: LipProofs): string {
    const square = (area: number): string => this.text.number(area * 1e6, 0);
    return this.text.lip.panel.questions.high.proof(square(areaHigh), square(areaLow));
  }

  #loud({ tallerAir, widerAir, bothAir }: LipProofs): string {
    const { change, panel } = this.text.lip;
    return panel.questions.loud.proof(change(tallerAir), change(widerAir), change(bothAir));
  }

  #hinges(): string {
    const { reed, response } = this.mine;
    const usable = (hinging: number): number => closingLaw(hinging, reed.assumptions.elbow).usable;
    return this.text.lip.hinges.answer(usable(0), response.usable, usable(1));
  }

  #wire({ rounderClosing, rounderResonance, archAtCollar }: LipProofs): string {
    const { change, panel } = this.text.lip;
    const { wire } = panel.questions;
    const arch = wire.arch(this.text.number(archAtCollar, 0));
    return `${wire.proof(change(rounderClosing), change(rounderResonance))} ${arch}`;
  }
}
