import { LitElement, css, html, nothing } from "lit";
import { actionReach } from "../engine/reach.js";
import { centreBlend } from "../engine/blend.js";
import type { LipPresetId } from "../acoustics/lip-presets.js";
import type { BlendMap } from "../engine/compile.js";
import { finishingFreedom } from "../engine/freedom.js";
import type { Actions, Values } from "../engine/model.js";
import { place } from "../engine/place.js";
import { pullChain } from "../engine/pull-chain.js";
import { pulls } from "../engine/pulls.js";
import type { LessonReed, ShowBlock } from "../lesson/lesson.js";
import { lessonEnglish, withPoint, type LessonCatalogue } from "../reed/lesson-catalogue.js";
import { targets } from "../reed/targets.js";
import type { LengthUnit } from "../reed/units.js";
import { define } from "./define.js";
import { LessonLips } from "./lesson-lips.js";
import { lessonStyle } from "./lesson-style.js";
import { look } from "./look.js";
import { ReedDrawing } from "./reed-drawing.js";
import { ReedTriangle } from "./reed-triangle.js";

define("triangle-plane", ReedTriangle);
define("reed-drawing", ReedDrawing);
define("lesson-lips", LessonLips);

/** Something to look at: a reed against the lamp, two reeds, a place of the drawing, layers, cautions. */
export class LessonShow extends LitElement {
  static override styles = [
    look,
    lessonStyle,
    css`
      figure {
        margin: 0;
      }
      figcaption {
        max-width: 38em;
        font-family: var(--serif);
        font-size: 1.0625rem;
      }
      .cautions {
        margin: 0;
        padding: 0.6rem 0.9rem 0.6rem 2rem;
        border-inline-start: 4px solid var(--accent);
        background: var(--card);
      }
      .cautions li + li {
        margin-top: 0.4rem;
      }
    `,
  ];

  static override properties = {
    block: { attribute: false },
    reed: { attribute: false },
    beside: { attribute: false },
    map: { attribute: false },
    actions: { attribute: false },
    placeless: { type: Boolean },
    unread: { type: Boolean },
    unit: { type: String },
    text: { attribute: false },
  };

  declare block: ShowBlock;
  /** With every value. */
  declare reed: Values;
  declare beside: Values | undefined;
  declare map: BlendMap;
  declare actions: Actions;
  /** Without the triangle: where the reed lies would give an open question away. */
  declare placeless: boolean;
  /** Without shares: they are what is to be read. */
  declare unread: boolean;
  declare unit: LengthUnit;
  declare text: LessonCatalogue;

  constructor() {
    super();
    this.placeless = false;
    this.unread = false;
    this.unit = "mm";
    this.text = lessonEnglish;
  }

  override render() {
    const { block } = this;
    return html`<figure>
      ${block.cautions ? this.#cautions(block.cautions) : nothing}
      <div class="parts two">
        ${this.#isDrawn() ? html`<div>${this.#drawings()}</div>` : nothing}
        ${this.#hasReed() && !this.placeless ? this.#triangle() : nothing}
      </div>
      ${block.lips ? this.#lips(block.lips) : nothing}
      ${block.caption === undefined ? nothing : html`<figcaption>${block.caption}</figcaption>`}
      ${this.#isDemo() ? html`<p class="soft">${this.text.lessons.invented}</p>` : nothing}
    </figure>`;
  }

  /** The lesson's own reed where the block names none; only cautions may stand alone. */
  #hasReed(): boolean {
    const { reed, values, place: zone, beside, layers, target, lips, cautions } = this.block;
    const named = [reed, values, zone, beside, layers, target, lips].some(Boolean);
    return named || cautions === undefined;
  }

  /** Under lips a reed is drawn there, unless a place of the blade is to be pointed at. */
  #isDrawn(): boolean {
    return this.#hasReed() && (this.block.lips === undefined || this.block.place !== undefined);
  }

  #isDemo(): boolean {
    return this.block.reed !== undefined || this.block.beside?.reed !== undefined;
  }

  #cautions(ids: readonly string[]) {
    return html`<div>
      <p><strong>${this.text.lessons.cautions}</strong></p>
      <ul class="cautions">
        ${ids.map((id) => html`<li>${this.actions.cautions[id]}</li>`)}
      </ul>
    </div>`;
  }

  #lips(preset: LipPresetId) {
    const { block, beside, text } = this;
    const name = (one: LessonReed, other: string): string => one.reed ?? other;
    const mine = { name: name(block, text.lessons.first), values: this.reed };
    const second = beside && {
      name: name(block.beside ?? {}, text.lessons.beside),
      values: beside,
    };
    return html`<lesson-lips
      .model=${this.map.model}
      .mine=${mine}
      .second=${second}
      .preset=${preset}
      .unit=${this.unit}
      .text=${text}
    ></lesson-lips>`;
  }

  #drawings() {
    const words = this.text.lessons;
    const { block, beside } = this;
    const name = (one: LessonReed, other: string): string => one.reed ?? other;
    return html`${beside ? html`<strong>${name(block, words.first)}</strong>` : nothing}
    ${this.#drawing(this.reed, block.place)}
    ${
      beside
        ? html`<strong>${name(block.beside ?? {}, words.beside)}</strong> ${this.#drawing(beside)}`
        : nothing
    }`;
  }

  #drawing(values: Values, pointed?: string) {
    return html`<reed-drawing
      .model=${this.map.model}
      .values=${values}
      .unit=${this.unit}
      .lying=${true}
      .brief=${true}
      .crop=${this.#crop()}
      .pointed=${pointed}
      .text=${this.text}
      @feature-pointed=${(event: Event) => event.stopPropagation()}
    ></reed-drawing>`;
  }

  /** Blade alone, unless what is shown is seen end-on. */
  #crop(): "blade" | undefined {
    const { values = {}, beside, place: zone } = this.block;
    const shown = [...Object.keys(values), ...Object.keys(beside?.values ?? {}), zone ?? ""];
    return shown.some((id) => /Wire$|^opening/.test(id)) ? undefined : "blade";
  }

  #triangle() {
    const { block, map, text, beside } = this;
    const layers = block.layers ?? [];
    const target = targets.find(({ id }) => id === block.target);
    const label = block.beside?.reed ?? text.lessons.beside;
    const reach = layers.includes("reach")
      ? { easy: this.#reach("easy"), full: this.#reach("max") }
      : undefined;
    return html`<triangle-plane
      still
      .unread=${this.unread}
      .blend=${place(map, this.reed).raw}
      .chain=${layers.includes("pulls") ? pullChain(pulls(map, this.reed), (id) => id) : []}
      .reach=${reach}
      .target=${target}
      .layers=${this.unread ? [] : layers}
      .pinned=${beside && { blend: place(map, beside).raw, label }}
      .greatestHeight=${340}
      .text=${this.unread ? withPoint(text, text.lessons.toRead) : text}
    ></triangle-plane>`;
  }

  #reach(amounts: "easy" | "max") {
    const freedom = finishingFreedom(this.map.model, this.reed);
    const { polygon } = actionReach(this.map, this.reed, this.actions, freedom, { amounts });
    return polygon.length > 0 ? polygon : [centreBlend];
  }
}
