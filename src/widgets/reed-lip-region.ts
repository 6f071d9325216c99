import { LitElement, css, html, nothing, svg, type PropertyValues } from "lit";
import type { BladeRecipe } from "../acoustics/blade.js";
import { vibratingRegion } from "../acoustics/vibrating-region.js";
import { lampView, type LampMesh, type LampView } from "../drawing/lamp-view.js";
import { round } from "../drawing/triangle-layout.js";
import { vibratingView } from "../drawing/vibrating-view.js";
import type { ReedModel } from "../engine/model.js";
import { lipEnglish, type LipCatalogue } from "../reed/lip-catalogue.js";
import type { LipReed } from "../reed/lip-reed.js";
import { readingWithUnit } from "../reed/reading-text.js";
import type { LengthUnit } from "../reed/units.js";
import { AtRest } from "./at-rest.js";
import { lampPicture } from "./lamp-picture.js";
import { legendItem } from "./lip-plot.js";
import { lipStyle } from "./lip-style.js";
import { look } from "./look.js";
import { OwnWidth, pageEm } from "./own-width.js";
import { remembered } from "./remembered.js";

/** mm: room for the widest tip and the longest blade. */
const widest = 17;
const longest = 31;

/** The blade held to a lamp, lit where it swings: in front of the lips, less its closed corners. */
export class ReedLipRegion extends LitElement {
  static override styles = [
    look,
    lipStyle,
    css`
      .plot {
        margin-inline: auto;
        forced-color-adjust: none;
      }
      .edge {
        fill: none;
        stroke: var(--ink-soft);
        stroke-width: 1;
      }
      .veil {
        fill: #1d0d04;
        fill-opacity: 0.62;
        fill-rule: evenodd;
      }
      .casing {
        fill: none;
        stroke: #1d0d04;
        stroke-width: 4;
      }
      .swings {
        fill: none;
        stroke: #fff8e6;
        stroke-width: 1.8;
      }
      .outline {
        fill: none;
        stroke: #fff8e6;
        stroke-width: 1.4;
        stroke-dasharray: 5 3;
      }
      .lipsCasing {
        fill: none;
        stroke: #fff8e6;
        stroke-width: 8;
        stroke-linecap: round;
      }
      .lips {
        fill: none;
        stroke: var(--accent);
        stroke-width: 5;
        stroke-linecap: round;
      }
      .word {
        fill: #fff8e6;
        stroke: #1d0d04;
        stroke-width: 3.5;
        stroke-linejoin: round;
        paint-order: stroke;
        font-size: 0.8125rem;
        font-weight: 600;
      }
    `,
  ];

  static override properties = {
    model: { attribute: false },
    mine: { attribute: false },
    other: { attribute: false },
    place: { type: Number },
    unit: { type: String },
    text: { attribute: false },
    layoutWidth: { state: true },
  };

  declare model: ReedModel;
  declare mine: LipReed;
  /** Laid over as an outline, tip on tip. */
  declare other: LipReed | undefined;
  /** Of the lips, mm behind the tip. */
  declare place: number;
  declare unit: LengthUnit;
  declare text: LipCatalogue;
  declare layoutWidth: number;
  readonly #rest = new AtRest(this);
  /** The bands of the lamp do not change while only lips and breath do. */
  readonly #lamp = remembered(
    (recipe: BladeRecipe, scale: number, middle: number, mesh: LampMesh): LampView =>
      lampView(recipe, { middle, tip: 10, scale, mesh }),
  );

  constructor() {
    super();
    this.text = lipEnglish;
    this.unit = "mm";
    this.place = 12;
    this.layoutWidth = 300;
    this.addController(new OwnWidth(this));
  }

  override willUpdate(changed: PropertyValues<this>): void {
    const before = changed.get("mine");
    if (before && before.reed.recipe !== this.mine.reed.recipe) this.#rest.moved();
  }

  override render() {
    const { mine, other, place } = this;
    const { region, panel, second } = this.text.lip;
    const scale = Math.min(10, (this.layoutWidth - 12) / widest);
    const [width, height] = [round(widest * scale + 12), round(longest * scale + 14)];
    const mesh = this.#rest.resting ? "fine" : "quick";
    const lamp = this.#lamp(mine.reed.recipe, scale, width / 2, mesh);
    const view = this.#swinging(mine, lamp);
    const outline = other && this.#swinging(other, this.#bare(other, scale, width / 2));
    const area = this.text.number(mine.response.vibratingArea * 1e6, 0);
    const whole = this.text.number(vibratingRegion(mine.reed, 0, place).area * 1e6, 0);
    const shownPlace = this.#length(place);
    return html`<h3>${region.title}</h3>
      <svg
        class="plot"
        width=${width}
        height=${height}
        viewBox="0 0 ${width} ${height}"
        role="img"
        aria-label=${panel.regionPicture(area, shownPlace)}
      >
        ${lampPicture(lamp)}
        <path class="veil" d=${lamp.outline + view.region}></path>
        <path class="casing" d=${view.region}></path>
        <path class="swings" d=${view.region}></path>
        ${outline ? svg`<path class="casing" d=${outline.region}></path><path class="outline" d=${outline.region}></path>` : nothing}
        <path class="lipsCasing" d=${view.lips}></path>
        <path class="lips" d=${view.lips}></path>
        <text
          class="word"
          x=${round(width / 2)}
          y=${round(16 + place * scale + 0.9 * pageEm())}
          text-anchor="middle"
        >
          ${region.lips}
        </text>
      </svg>
      <p>${panel.regionNow(area, whole)} ${panel.lipsAt(shownPlace)}.</p>
      <p class="soft">${region.hint}</p>
      <ul class="legend">
        ${legendItem(svg`<path class="casing" d="M2,7H22"></path><path class="outline" d="M2,7H22"></path>`, other && second.outline(other.name))}
      </ul>`;
  }

  #swinging({ reed, response }: LipReed, { at }: Pick<LampView, "at">) {
    return vibratingView(reed.recipe, vibratingRegion(reed, response.closed, this.place), at);
  }

  /** Only where its places are drawn: the other reed has no bands. */
  #bare({ reed }: LipReed, scale: number, middle: number): Pick<LampView, "at"> {
    return lampView(reed.recipe, { middle, tip: 10, scale, mesh: "quick" });
  }

  #length(millimetres: number): string {
    const feature = this.model.features.find(({ id }) => id === "bladeLength")!;
    return readingWithUnit(feature, millimetres, this.unit, this.text);
  }
}
