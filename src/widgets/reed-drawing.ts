import { LitElement, html, nothing, svg, type PropertyValues, type SVGTemplateResult } from "lit";
import { bladeThickness, bladeWidth, type BladeRecipe } from "../acoustics/blade.js";
import type { FeatureId, ReedModel, Values } from "../engine/model.js";
import { openingShape, tubeShape } from "../drawing/end-view.js";
import { lampView, type LampView } from "../drawing/lamp-view.js";
import { longSection, thicknessExaggeration } from "../drawing/long-section.js";
import { reedLayout, type ReedLayout } from "../drawing/reed-layout.js";
import { round } from "../drawing/triangle-layout.js";
import { allRoundValues } from "../reed/bench.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { inSentence } from "../reed/in-sentence.js";
import { readingWithUnit } from "../reed/reading-text.js";
import type { LengthUnit } from "../reed/units.js";
import { AtRest } from "./at-rest.js";
import { dimensionMark } from "./dimension-mark.js";
import { FeaturePointedEvent } from "./events.js";
import { lampPicture } from "./lamp-picture.js";
import { look } from "./look.js";
import { partNames } from "./part-names.js";
import { OwnWidth } from "./own-width.js";
import { reedDrawingStyle } from "./reed-drawing-style.js";

/**
 * The reed drawn from its recipe: against the lamp, end-on at tip and wires, and cut along spine and rail.
 *
 * @fires feature-pointed - the pointer is at a place where a feature is read, or has left it
 */
export class ReedDrawing extends LitElement {
  static override styles = [look, reedDrawingStyle];

  static override properties = {
    model: { attribute: false },
    values: { attribute: false },
    unit: { type: String },
    lying: { type: Boolean },
    brief: { type: Boolean },
    crop: { type: String },
    pointed: { type: String },
    text: { attribute: false },
    layoutWidth: { state: true },
    named: { state: true },
    readout: { state: true },
  };

  declare model: ReedModel;
  /** Readings; what is not measured is drawn as on the all-round reed, and said. */
  declare values: Values;
  declare unit: LengthUnit;
  /** On its side, as a strip. */
  declare lying: boolean;
  /** Without the remarks and switches that another drawing beside it has already. */
  declare brief: boolean;
  /** A part of the lying drawing alone, where room is scarce. */
  declare crop: "blade" | "ends" | undefined;
  /** The feature whose place is to be marked, or several with blanks between them. */
  declare pointed: FeatureId | undefined;
  declare text: Catalogue;
  declare layoutWidth: number;
  declare named: boolean;
  declare readout: string;
  readonly #rest = new AtRest(this);

  constructor() {
    super();
    this.values = {};
    this.unit = "mm";
    this.lying = false;
    this.brief = false;
    this.text = english;
    this.layoutWidth = 300;
    this.named = false;
    this.readout = "";
    this.addController(new OwnWidth(this));
  }

  /** While values change many times a second the bands are drawn quickly; at rest, finely. */
  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("values")) this.#rest.moved();
  }

  override render() {
    const { text, model } = this;
    const recipe = this.#recipe();
    const layout = reedLayout(Math.max(220, this.layoutWidth), this.lying);
    const [top, bottom] = cropped(layout, this.crop);
    const view = lampView(recipe, { ...layout, mesh: this.#rest.resting ? "fine" : "quick" });
    const missing = model.features.filter(
      ({ id }) => this.values[id] === undefined && id !== "hinging",
    );
    return html`
      <svg
        width=${round(layout.width)}
        height=${round(bottom - top)}
        viewBox="0 ${round(top)} ${round(layout.width)} ${round(bottom - top)}"
        role="img"
        aria-label=${this.description}
        @pointerdown=${(event: PointerEvent) => this.#onMove(event, layout, recipe)}
        @pointermove=${(event: PointerEvent) => this.#onMove(event, layout, recipe)}
        @pointerleave=${this.#onLeave}
      >
        ${this.#tube(layout, view, recipe)} ${lampPicture(view)} ${this.#zones(view)}
        ${this.#ends(layout)} ${this.#section(layout, recipe)}
        ${dimensionMark(this.pointed, layout, view, recipe)}
        ${this.named ? partNames(layout, view, recipe.bladeLength, text.drawing.parts) : nothing}
      </svg>
      <p class="readout">${this.readout || (this.brief ? "" : text.drawing.readoutHint)}</p>
      ${this.brief ? nothing : this.#namesSwitch()}
      ${
        missing.length > 0 && !this.crop
          ? html`<p class="soft">
              ${text.drawing.filledIn(missing.map(({ label }) => inSentence(label)))}
            </p>`
          : nothing
      }
      ${
        this.brief
          ? nothing
          : html`<p class="soft">
              ${text.drawing.section(thicknessExaggeration)} ${text.drawing.computed}
            </p>`
      }
    `;
  }

  #namesSwitch() {
    return html`<label class="names"
      ><input
        type="checkbox"
        .checked=${this.named}
        @change=${this.#onNames}
      />${this.text.drawing.nameParts}</label
    >`;
  }

  /** Whether the place of a feature is to be marked; several are named with blanks between them. */
  #marks(id: FeatureId): boolean {
    return this.pointed?.split(" ").includes(id) ?? false;
  }

  #recipe(): Record<FeatureId, number> & BladeRecipe {
    return { ...allRoundValues(this.model), ...this.values } as Record<FeatureId, number> &
      BladeRecipe;
  }

  #shown(id: FeatureId, value: number): string {
    const feature = this.model.features.find((one) => one.id === id)!;
    return readingWithUnit(feature, value, this.unit, this.text);
  }

  /** The drawing as an element of its own, to be saved. */
  get picture(): SVGSVGElement {
    return this.renderRoot.querySelector("svg")!;
  }

  /** What it shows, in words. */
  get description(): string {
    const parts = this.model.features
      .filter(({ id }) => this.values[id] !== undefined)
      .map(({ id, label }) => `${inSentence(label)} ${this.#shown(id, this.values[id]!)}`);
    return this.text.drawing.describe(parts);
  }

  #tube(
    { scale, lying }: ReedLayout,
    { at }: LampView,
    recipe: Record<FeatureId, number> & BladeRecipe,
  ): SVGTemplateResult {
    const length = recipe.bladeLength;
    const middle = at(length, 0);
    const half = (recipe.throatWidth * scale) / 2;
    const place = (along: number, across: number): string =>
      lying
        ? `${round(middle[0] + along * scale)},${round(middle[1] + across)}`
        : `${round(middle[0] + across)},${round(middle[1] + along * scale)}`;
    const collar = half + scale / 2;
    const wire = (along: number, id: string): SVGTemplateResult =>
      svg`<path class="wire ${this.#marks(id) ? "pointed" : ""}" d="M${place(along, -half - 3)}L${place(along, half + 3)}M${place(along + 0.45, -half - 3)}L${place(along + 0.45, half + 3)}"></path>`;
    return svg`<path class="bark ${this.#marks("throatWidth") ? "pointed" : ""}"
        d="M${place(0, -collar)}L${place(0, collar)}L${place(1.6, half)}L${place(10, half * 0.94)}L${place(10, -half * 0.94)}L${place(1.6, -half)}Z"></path>
      ${wire(2.2, "firstWire")} ${wire(7.6, "secondWire")}`;
  }

  #zones({ zones }: LampView): SVGTemplateResult {
    return svg`${zones.map(
      ({
        feature,
        spots,
      }) => svg`<g class="zone ${this.#marks(feature) ? "pointed" : ""}" data-feature=${feature}>
        ${spots.map(({ x, y }) => svg`<circle class="grasp" cx=${x} cy=${y} r="12"></circle><circle class="spot" cx=${x} cy=${y} r="3"></circle>`)}
      </g>`,
    )}`;
  }

  #ends({ ends, captions, scale, lying }: ReedLayout): SVGTemplateResult {
    const { text } = this;
    const recipe = this.#recipe();
    const [opening, first, second] = ends;
    const lens = openingShape(recipe["openingWidth"]!, recipe["openingHeight"]!, scale);
    // Lying, the number stands under the word.
    const caption = (words: string, id: string, y: number): SVGTemplateResult => {
      // What nobody has measured is drawn as on the all-round reed, but has no number.
      const shown = this.values[id] === undefined ? "–" : this.#shown(id, recipe[id]!);
      return lying
        ? svg`<text y=${round(y)} text-anchor="middle">${words}</text><text y=${round(y + 14)} text-anchor="middle">${shown}</text>`
        : svg`<text y=${round(y)} text-anchor="middle">${words} ${shown}</text>`;
    };
    const tube = (
      which: "first" | "second",
      [x, y]: readonly [number, number],
    ): SVGTemplateResult => {
      const id = `${which}Wire`;
      const { rx, ry } = tubeShape(recipe.throatWidth, recipe[id]!, scale * 0.86);
      const circle = round((recipe.throatWidth * scale * 0.86) / 2);
      return svg`<g class="end ${this.#marks(id) ? "pointed" : ""}" data-feature=${id} transform="translate(${round(x)} ${round(y)})">
        <circle class="ideal" r=${circle}></circle><ellipse class="ring" rx=${rx} ry=${ry}></ellipse>
        ${caption(text.drawing.wire(which), id, captions[1] - y)}</g>`;
    };
    const isOpening = ["openingHeight", "openingWidth", "hinging"].some((id) => this.#marks(id));
    const on = isOpening ? "pointed" : "";
    return svg`<g class="end ${on}" data-feature="openingHeight" transform="translate(${round(opening[0])} ${round(opening[1])})">
        <path class="lens" d=${lens.path}></path>
        ${caption(text.drawing.opening, "openingHeight", captions[0] - opening[1])}</g>
      ${tube("first", first)} ${tube("second", second)}`;
  }

  #section({ section }: ReedLayout, recipe: BladeRecipe): SVGTemplateResult {
    const { spine, rail } = longSection(recipe, section);
    return svg`<g class="section"><path class="alongSpine" d=${spine}></path><path class="alongRail" d=${rail}></path></g>`;
  }

  /** Pointer → place on the blade: its thickness is told, and the feature read nearest to it is marked. */
  #onMove(event: PointerEvent, layout: ReedLayout, recipe: BladeRecipe): void {
    const { scale, middle, tip, lying } = layout;
    const box = (event.currentTarget as Element).getBoundingClientRect();
    const [top] = cropped(layout, this.crop);
    const [px, py] = [event.clientX - box.left, event.clientY - box.top + top];
    const along = ((lying ? px : py) - tip) / scale;
    const across = ((lying ? py : px) - middle) / scale;
    const u = (2 * across) / (bladeWidth(recipe, along / 1000) * 1000);
    const onBlade = along >= 0 && along <= recipe.bladeLength && Math.abs(u) <= 1;
    this.readout = onBlade
      ? this.text.drawing.readout(
          this.#shown("heart", bladeThickness(recipe, along / 1000, u) * 1000),
          this.#shown("bladeLength", along),
        )
      : "";
    const zone = (event.target as Element).closest<SVGElement>("[data-feature]")?.dataset[
      "feature"
    ];
    if (zone !== this.pointed) this.dispatchEvent(new FeaturePointedEvent(zone));
  }

  /** A lifted finger leaves the reading standing; a mouse that goes away takes it along. */
  #onLeave(event: PointerEvent): void {
    if (event.pointerType !== "touch") this.readout = "";
    this.dispatchEvent(new FeaturePointedEvent(undefined));
  }

  #onNames(event: Event): void {
    this.named = (event.target as HTMLInputElement).checked;
  }
}

/** From where to where the drawing is shown, px. */
function cropped(
  { lying, middle, captions, height }: ReedLayout,
  crop: ReedDrawing["crop"],
): readonly [top: number, bottom: number] {
  if (!lying || !crop) return [0, height];
  const seam = 2 * middle + 4;
  return crop === "blade" ? [0, seam] : [seam, captions[1] + 22];
}
