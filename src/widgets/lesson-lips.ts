import { LitElement, css, html, nothing, type PropertyValues } from "lit";
import { withAssumptions } from "../acoustics/assumptions.js";
import { presetState, type LipPresetId, type LipState } from "../acoustics/lip-presets.js";
import { respond } from "../acoustics/lip-response.js";
import type { ReedModel } from "../engine/model.js";
import { allRoundValues } from "../reed/all-round-values.js";
import { lipMechanics, type LipReed } from "../reed/lip-reed.js";
import { lessonEnglish, type LessonCatalogue } from "../reed/lesson-catalogue.js";
import { withLip } from "../reed/lip-catalogue.js";
import type { LengthUnit } from "../reed/units.js";
import { define } from "./define.js";
import { lessonStyle } from "./lesson-style.js";
import type { LipPresetPickedEvent, PressurePickedEvent } from "./lip-events.js";
import { look } from "./look.js";
import type { NamedReed } from "./reed-lip.js";
import { ReedLipDials } from "./reed-lip-dials.js";
import { ReedLipOpening } from "./reed-lip-opening.js";
import { ReedLipPresets } from "./reed-lip-presets.js";
import { ReedLipPressures } from "./reed-lip-pressures.js";
import { ReedLipRegion } from "./reed-lip-region.js";
import { remembered } from "./remembered.js";

define("reed-lip-dials", ReedLipDials);
define("reed-lip-opening", ReedLipOpening);
define("reed-lip-presets", ReedLipPresets);
define("reed-lip-pressures", ReedLipPressures);
define("reed-lip-region", ReedLipRegion);

/** A reed of a lesson under lips and breath, with another one as an outline. What is tried here is kept nowhere. */
export class LessonLips extends LitElement {
  static override styles = [
    look,
    lessonStyle,
    css`
      .dials {
        margin-top: 0.8rem;
      }
    `,
  ];

  static override properties = {
    model: { attribute: false },
    mine: { attribute: false },
    second: { attribute: false },
    preset: { type: String },
    unit: { type: String },
    text: { attribute: false },
    at: { state: true },
  };

  declare model: ReedModel;
  declare mine: NamedReed;
  declare second: NamedReed | undefined;
  /** How it is played at the beginning. */
  declare preset: LipPresetId;
  declare unit: LengthUnit;
  declare text: LessonCatalogue;
  declare at: Required<LipState>;

  readonly #given = remembered((place: number) => withAssumptions({ lipPlace: place }));
  readonly #allRound = remembered(allRoundValues);
  readonly #mechanics = {
    mine: remembered(lipMechanics),
    second: remembered(lipMechanics),
    allRound: remembered(lipMechanics),
  };

  constructor() {
    super();
    this.unit = "mm";
    this.text = lessonEnglish;
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("preset")) this.at = presetState(this.preset);
  }

  override render() {
    const { at, model, unit } = this;
    const text = withLip(this.text);
    const mine = this.#under(this.mine, "mine");
    const second = this.second && this.#under(this.second, "second");
    const allRound = this.#under({ name: "", values: this.#allRound(model) }, "allRound");
    if (!mine || !allRound) return html`<p>${text.lip.panel.cannot}</p>`;
    return html`<div
        @lip-preset-picked=${this.#onPreset}
        @pressure-picked=${this.#onPressure}
        @gesture-ended=${stop}
      >
        <reed-lip-presets .at=${at} .text=${text}></reed-lip-presets>
        <reed-lip-pressures .mine=${mine} .at=${at} .text=${text}></reed-lip-pressures>
        <p class="soft">${text.lip.simpleModel} ${text.lip.cautions.lips}</p>
      </div>
      <div class="parts two">
        <reed-lip-opening
          .model=${model}
          .mine=${mine}
          .other=${second}
          .unit=${unit}
          .text=${text}
        ></reed-lip-opening>
        <reed-lip-region
          .model=${model}
          .mine=${mine}
          .other=${second}
          .place=${at.place}
          .unit=${unit}
          .text=${text}
        ></reed-lip-region>
      </div>
      ${
        second
          ? html`<reed-lip-dials
              class="dials"
              .mine=${mine}
              .allRound=${allRound.response}
              .other=${second}
              .text=${text}
            ></reed-lip-dials>`
          : nothing
      }`;
  }

  #under({ name, values }: NamedReed, which: "mine" | "second" | "allRound"): LipReed | undefined {
    const reed = this.#mechanics[which](this.model, values, this.#given(this.at.place));
    return reed && { name, reed, response: respond(reed, this.at) };
  }

  #onPreset(event: LipPresetPickedEvent): void {
    event.stopPropagation();
    this.at = presetState(event.preset);
  }

  #onPressure(event: PressurePickedEvent): void {
    event.stopPropagation();
    this.at = { ...this.at, [event.which]: event.pressure };
  }
}

function stop(event: Event): void {
  event.stopPropagation();
}
