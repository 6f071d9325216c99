import {
  LitElement,
  html,
  type PropertyDeclarations,
  type PropertyValues,
  type TemplateResult,
} from "lit";
import { Announcer } from "../app/announcer.js";
import { look } from "../widgets/look.js";
import { version } from "./define-element.js";
import { embedStyle, nightStyle } from "./embed-style.js";
import { stopInside } from "./stop-inside.js";
import { warnOnce } from "./warn-once.js";

/**
 * What every public element is: a look that fits its page, words in a language, a status region of its own, and
 * events for what the user did.
 *
 * @attr {string} lang - language of the words; English is what there is
 * @slot - words in place of the element for who reads without scripts, and on paper
 * @cssproperty --reed-ground - ground of the element
 * @cssproperty --reed-card - ground of cards and fields
 * @cssproperty --reed-ink - text and lines
 * @cssproperty --reed-ink-soft - lesser text
 * @cssproperty --reed-rule - quiet lines
 * @cssproperty --reed-edge - borders of what can be pressed
 * @cssproperty --reed-grid - grid of the triangle
 * @cssproperty --reed-accent - what can be acted on
 * @cssproperty --reed-high - tint of the corner for the high register
 * @cssproperty --reed-low - tint of the corner for soft and low playing
 * @cssproperty --reed-loud - tint of the corner for full volume
 * @cssproperty --reed-high-word - words of that corner
 * @cssproperty --reed-low-word - words of that corner
 * @cssproperty --reed-loud-word - words of that corner
 * @cssproperty --reed-glow - contours of a quality over the triangle
 * @cssproperty --reed-hole - the dark between the blades
 * @cssproperty --reed-sans - typeface of labels and numbers
 * @cssproperty --reed-serif - typeface of sentences and titles
 */
export class EmbeddedElement extends LitElement {
  /** The version of the element's code. */
  static readonly version: string = version;

  static override styles = [look, embedStyle, nightStyle];

  static override properties: PropertyDeclarations = {
    theme: { type: String, reflect: true, useDefault: true },
    said: { state: true },
  };

  /** "paper", "night" or "auto" (as the device); empty: the colours of the page around it. */
  declare theme: string;
  declare said: string;

  protected readonly announcer = new Announcer((words) => (this.said = words));

  constructor() {
    super();
    this.theme = "";
    this.said = "";
  }

  /** What the parts inside say to their owner, by name; none of it is for the page. */
  protected get inner(): readonly string[] {
    return ["blend-picked", "aim-picked", "gesture-ended"];
  }

  protected override createRenderRoot(): HTMLElement | DocumentFragment {
    const root = super.createRenderRoot();
    stopInside(root, this.inner, (event) => this.takeInner?.(event));
    return root;
  }

  static override get observedAttributes(): string[] {
    return [...super.observedAttributes, "lang"];
  }

  override attributeChangedCallback(name: string, before: string | null, now: string | null): void {
    super.attributeChangedCallback(name, before, now);
    if (name === "lang" && now && !/^en\b/i.test(now))
      warnOnce(`lang: “${now}” is not there yet; the words are English`);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.announcer.stop();
  }

  override willUpdate(changed: PropertyValues): void {
    const speaking = this as { text?: unknown };
    // Words taken back: those before stay.
    if (changed.has("text")) speaking.text ??= changed.get("text");
    if (changed.has("theme") && !/^(auto|paper|night|)$/.test(this.theme ?? ""))
      warnOnce(`theme: “${this.theme}” is not known; allowed: auto, paper, night`);
  }

  /** What the parts inside ask for. */
  protected takeInner?(event: Event): void;

  /** Tells the page of something that the user did, as plain data. */
  protected tellPage(type: string, detail: object): void {
    const plain = JSON.parse(JSON.stringify(detail)) as object;
    this.dispatchEvent(new CustomEvent(type, { bubbles: true, composed: true, detail: plain }));
  }

  /** The element's own parts. */
  protected parts?(): TemplateResult;

  override render(): TemplateResult {
    return html`<div class="frame">${this.parts?.()}</div>
      <div class="description"><slot></slot></div>
      <div class="unseen" role="status" aria-live="polite">${this.said}</div>`;
  }
}
