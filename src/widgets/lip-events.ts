import type { AssumptionId } from "../acoustics/assumptions.js";
import type { LipPresetId } from "../acoustics/lip-presets.js";
import type { LipPurpose } from "../acoustics/trade-and-model.js";

const upward = { bubbles: true, composed: true } as const;

/** Asks the owner for another pressure of lips or breath, Pa. */
export class PressurePickedEvent extends Event {
  readonly which: "lip" | "blow";
  readonly pressure: number;
  constructor(which: "lip" | "blow", pressure: number) {
    super("pressure-picked", upward);
    this.which = which;
    this.pressure = pressure;
  }
}

/** Asks the owner for the lips and the breath of a preset. */
export class LipPresetPickedEvent extends Event {
  readonly preset: LipPresetId;
  constructor(preset: LipPresetId) {
    super("lip-preset-picked", upward);
    this.preset = preset;
  }
}

/** Asks the owner for another value of a constant, in its own unit; undefined: its first value. */
export class AssumptionPickedEvent extends Event {
  readonly assumption: AssumptionId;
  readonly value: number | undefined;
  constructor(assumption: AssumptionId, value: number | undefined) {
    super("assumption-picked", upward);
    this.assumption = assumption;
    this.value = value;
  }
}

/** Asks the owner for the first value of every constant. */
export class AssumptionsResetEvent extends Event {
  constructor() {
    super("assumptions-reset", upward);
  }
}

/** Asks the owner to show the table for one purpose; undefined: for all. */
export class LipPurposePickedEvent extends Event {
  readonly purpose: LipPurpose | undefined;
  constructor(purpose: LipPurpose | undefined) {
    super("lip-purpose-picked", upward);
    this.purpose = purpose;
  }
}
