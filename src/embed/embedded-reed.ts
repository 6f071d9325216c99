import type { PropertyDeclarations, PropertyValues } from "lit";
import { pointEvents, translated } from "../app/point-events.js";
import type { Announcement } from "../app/announcer.js";
import type { BenchAction, BenchState } from "../app/bench-state.js";
import { viewPlace, type PlaceView } from "../app/place-view.js";
import { wayBetween } from "../app/way-between.js";
import type { Blend } from "../engine/blend.js";
import type { ReedModel, Values } from "../engine/model.js";
import { bassoonModel } from "../reed/bassoon.js";
import { demoReadings } from "../reed/demo-readings.js";
import { triangleWords, type TriangleWords } from "../reed/triangle-words.js";
import { sharesText } from "../reed/whole-shares.js";
import { shownValues } from "../reed/tried.js";
import { EmbeddedElement } from "./embedded-element.js";
import {
  given,
  readFeatures,
  readJson,
  readLayers,
  readModelOf,
  readReed,
  readTarget,
  readValues,
} from "./read-attributes.js";
import { onlyFeatures, SharedReed } from "./shared-reed.js";
import { warnOnce } from "./warn-once.js";

/** Said of `locked`: every feature, so that nothing can be moved. */
const everything = "all";

/** What every event of a public element carries: plain data that can be stored and sent. */
export interface ReedDetail {
  readonly reed: string;
  readonly values: Values;
  /** High, low, loud; null while the readings cannot place the reed. */
  readonly blend: Blend | null;
  readonly target: string;
  readonly layers: readonly string[];
  readonly locked: readonly string[];
}

/**
 * What every public element with a reed is: a reed that the page names, shown in some way.
 * Every event carries the reed as plain data: `reed`, `values`, `blend`, `target`, `layers`, `locked`.
 *
 * @fires input - the user has changed the reed; in a drag after every move
 * @fires change - the user has come to an end of changing it
 */
export class EmbeddedReed extends EmbeddedElement {
  static override properties: PropertyDeclarations = {
    reed: { type: String },
    values: { converter: (text: string | null) => text && readJson(text, "values") },
    target: { type: String },
    layers: { type: String },
    features: { type: String },
    locked: { converter: (text: string | null) => (text === "" ? everything : text) },
    still: { type: Boolean },
    model: { type: String },
    for: { type: String, attribute: "for" },
    text: { attribute: false },
  };

  /** Name of a demo reed, in any case; empty for the all-round reed. */
  declare reed: string;
  /** Kind of part aimed for, by its id, or three shares such as "20 50 30"; empty for none. */
  declare target: string;
  /** Names of what lies over the triangle, with blanks between them; "none" for nothing. */
  declare layers: string;
  /** Ids of the features that count, with blanks between them; empty for all. */
  declare features: string;
  /** Ids of features that stay, with blanks between them; bare or "all": as `still`. */
  declare locked: string | null;
  /** Nothing can be moved: a picture. */
  declare still: boolean;
  /** Id of another Reedpoint element whose reed is shown. */
  declare for: string;
  /** Words of another language or school. */
  declare text: TriangleWords;

  /** Along which the point is seen going to its new place. */
  protected way: readonly Blend[] = [];
  #values: unknown;
  #model: ReedModel = bassoonModel;
  readonly #own = new SharedReed();
  #leader: SharedReed | undefined;
  #unsubscribe: (() => void) | undefined;
  #changedInGesture = false;
  #seen: { readonly of: unknown; readonly view: PlaceView } | undefined;

  constructor() {
    super();
    this.reed = "";
    this.target = "";
    this.layers = "certainty";
    this.features = "";
    this.locked = null;
    this.still = false;
    this.for = "";
    this.text = triangleWords;
  }

  /** The recipe that this element shows, alone or with others. */
  get shared(): SharedReed {
    return this.#leader ?? this.#own;
  }

  /** Readings by feature, in the model's units. Set: what the page says. Read: what is shown now. */
  get values(): Values {
    return shownValues(this.shared.state.present.bench);
  }

  /** What the reed has, by feature: what the page says, and what was read since. */
  get measured(): Values {
    return this.shared.state.present.bench.values;
  }

  set values(values: unknown) {
    this.#values = values ?? undefined;
    this.requestUpdate("values");
  }

  /** The model by its id, or a model of one's own as `readModel` returns it. */
  get model(): ReedModel {
    return this.shared.model;
  }

  set model(model: ReedModel | string | null | undefined) {
    this.#model = readModelOf(model);
    this.requestUpdate("model");
  }

  /** Where the reed lies now: high, low, loud; null while its readings cannot place it. */
  get blend(): Blend | null {
    return this.view.placed?.blend ?? null;
  }

  /** Everything that is computed of the present state. */
  protected get view(): PlaceView {
    const { state } = this.shared;
    if (this.#seen?.of !== state) this.#seen = { of: state, view: this.look(state) };
    return this.#seen.view;
  }

  /** What is computed has to be computed anew, though the state is the same. */
  protected lookAgain(): void {
    this.#seen = undefined;
    this.requestUpdate();
  }

  protected look(state: BenchState): PlaceView {
    return viewPlace(state);
  }

  /** Nothing can be moved. */
  protected get isStill(): boolean {
    return this.#isPicture;
  }

  /** Said by the page; `true` is a bare attribute in some templates. */
  get #isPicture(): boolean {
    return this.still || /^(all|true)$/.test(given(this.locked).trim());
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#refollow();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#unsubscribe?.();
    this.#unsubscribe = undefined;
    this.#leader = undefined;
  }

  override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    if (changed.has("for") && this.hasUpdated) this.#refollow();
    const isOther = (name: "features" | "reed"): boolean =>
      changed.has(name) && given(changed.get(name)) !== given(this[name]);
    const isNew = isOther("reed") || isOther("features");
    if (isNew || changed.has("values") || changed.has("model") || !this.hasUpdated) this.#start();
    else if (["target", "layers", "locked", "still"].some((name) => changed.has(name)))
      this.#own.look(this.#looked());
  }

  /** Begins anew with what the page says: the user's changes are gone. */
  reset(): void {
    this.shared.again();
  }

  #start(): void {
    const model = this.#model;
    const values = this.#values === undefined ? undefined : readValues(this.#values, model);
    // Readings of the page's own may have any name.
    const demo = values ? given(this.reed).trim() : (readReed(this.reed) ?? "");
    this.#own.start({
      model,
      reed: demo,
      values: values ?? demoReadings[demo],
      features: readFeatures(this.features, "features", model),
      ...this.#looked(),
    });
  }

  #looked() {
    const { target, aim } = readTarget(this.target);
    return {
      target,
      aim,
      layers: readLayers(this.layers),
      locked: this.#lockedFeatures(),
    };
  }

  #lockedFeatures(): readonly string[] {
    // What does not count cannot be held either.
    const model = onlyFeatures(this.#model, readFeatures(this.features, "features", this.#model));
    if (this.#isPicture) return model.features.map(({ id }) => id);
    return readFeatures(this.locked || "", "locked", model);
  }

  #follow(shared: SharedReed): void {
    this.#unsubscribe?.();
    this.#leader = shared === this.#own ? undefined : shared;
    this.followed?.(shared);
    let before = shared.state;
    this.#unsubscribe = shared.subscribe(() => {
      this.way = wayBetween(before, shared.state);
      before = shared.state;
      this.requestUpdate();
      this.changedOutside?.();
    });
    this.requestUpdate();
  }

  #refollow(): void {
    this.#follow(this.#own);
    if (given(this.for) !== "") void this.#findLeader();
  }

  /** The other element may come later in the page, or get its code later. */
  async #findLeader(): Promise<void> {
    if (document.readyState === "loading")
      await new Promise((resolve) => {
        document.addEventListener("DOMContentLoaded", resolve, { once: true });
      });
    const id = this.for;
    const other = (this.getRootNode() as Document | ShadowRoot).getElementById?.(id);
    if (other && other.localName.startsWith("reed-") && !(other instanceof EmbeddedReed))
      await customElements.whenDefined(other.localName);
    if (!this.isConnected || id !== this.for) return;
    if (other instanceof EmbeddedReed && other !== this && given(other.for) === "")
      this.#follow(other.shared);
    else warnOnce(`for: “${id}” is no other Reedpoint element with a reed of its own`);
  }

  /** Does what the user asked for, and tells the page. */
  protected act(action: BenchAction): void {
    const gesture = "gesture" in action ? action.gesture : undefined;
    const ended = action.type === "gesture-ended";
    if (this.isStill && !ended) return;
    const isChanged = this.shared.dispatch(action);
    if (isChanged && !ended) {
      this.tell("input");
      this.#changedInGesture = gesture !== undefined;
      if (gesture === undefined) this.tell("change");
      const words = (): string | Announcement => this.wordsOf(action);
      if (gesture === undefined) this.announcer.now(words());
      else this.announcer.later(words);
    }
    if (ended && this.#changedInGesture) {
      this.#changedInGesture = false;
      this.tell("change");
    }
  }

  /** Tells the page of something that the user did; `more` stands beside what every event carries. */
  protected tell(type: string, more: object = {}): void {
    const { bench } = this.shared.state.present;
    const { reed, values: measured, target, layers, locked } = bench;
    const { values, blend } = this;
    const told = { reed, values, measured, blend, target, layers, locked };
    const detail: ReedDetail = { ...told, ...more };
    this.tellPage(type, detail);
  }

  /** What a screen reader hears of an action. */
  protected wordsOf(_action: BenchAction): string | Announcement {
    const { placed } = this.view;
    if (!placed) return this.text.triangle.noPoint;
    return sharesText(placed.blend, this.text);
  }

  /** Another recipe is shown from now on. */
  protected followed?(shared: SharedReed): void;

  /** The reed has changed, by this element or by another one that shows it. */
  protected changedOutside?(): void;

  /** What an event of the parts inside asks for. */
  protected actionOf(event: Event): BenchAction | undefined {
    return translated(pointEvents, event);
  }

  protected override takeInner(event: Event): void {
    const action = this.actionOf(event);
    if (action) this.act(action);
  }
}
