import type { FeatureId } from "../engine/model.js";
import type { ListedReadings } from "../reed/readings.js";

const upward = { bubbles: true, composed: true } as const;

/** Asks the owner for the stand-ins of a feature, or to close their list. */
export class StandInsAskedEvent extends Event {
  readonly feature: FeatureId | undefined;
  constructor(feature: FeatureId | undefined) {
    super("stand-ins-asked", upward);
    this.feature = feature;
  }
}

/** Hands a step that has been done to the owner, with what was read after it. */
export class StepDoneEvent extends Event {
  readonly action: string;
  readonly amount: number;
  readonly readings: ListedReadings;
  constructor(action: string, amount: number, readings: ListedReadings) {
    super("step-done", upward);
    this.action = action;
    this.amount = amount;
    this.readings = readings;
  }
}

/** Asks the owner to lay a quality over the triangle; undefined: none. */
export class QualityPickedEvent extends Event {
  readonly quality: string | undefined;
  constructor(quality: string | undefined) {
    super("quality-picked", upward);
    this.quality = quality;
  }
}
