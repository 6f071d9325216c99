import type { PropertyValues, PropertyDeclarations } from "lit";
import { wholeThousandths } from "../app/moment.js";
import type { Blend } from "../engine/blend.js";
import { EmbeddedReed } from "./embedded-reed.js";

/** An element whose value in a form is its blend: three shares of 1 with three digits, "0.250,0.510,0.240". */
export class BlendForm extends EmbeddedReed {
  static readonly formAssociated = true;

  static override properties: PropertyDeclarations = {
    name: { type: String, reflect: true, useDefault: true },
  };

  /** Under which name a form sends the blend. */
  declare name: string;
  readonly #internals = this.attachInternals();
  #isDisabled = false;

  constructor() {
    super();
    this.name = "";
  }

  get form(): HTMLFormElement | null {
    return this.#internals.form;
  }

  /** The blend as a form sends it; empty while the reed has no place. */
  get value(): string {
    return blendValue(this.blend);
  }

  protected override get isStill(): boolean {
    return this.#isDisabled || super.isStill;
  }

  override updated(changed: PropertyValues): void {
    super.updated(changed);
    this.#internals.setFormValue(this.value);
  }

  protected override changedOutside(): void {
    this.#internals.setFormValue(this.value);
  }

  formResetCallback(): void {
    this.reset();
  }

  formDisabledCallback(isDisabled: boolean): void {
    this.#isDisabled = isDisabled;
    this.requestUpdate();
  }
}

/** Three shares that sum to 1 with three digits each. */
function blendValue(blend: Blend | null): string {
  if (!blend) return "";
  return wholeThousandths(blend)
    .map((share) => share.toFixed(3))
    .join(",");
}
