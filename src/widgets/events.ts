import type { Blend } from "../engine/blend.js";
import type { FeatureId } from "../engine/model.js";
import type { ListedReadings } from "../reed/readings.js";

const upward = { bubbles: true, composed: true } as const;

/** Asks the owner for another blend; all events of one gesture carry its name. */
export class BlendPickedEvent extends Event {
  readonly blend: Blend;
  readonly gesture: string;
  constructor(blend: Blend, gesture: string) {
    super("blend-picked", upward);
    this.blend = blend;
    this.gesture = gesture;
  }
}

/** Asks the owner for another place of one's own target. */
export class AimPickedEvent extends Event {
  readonly aim: Blend;
  readonly gesture: string;
  constructor(aim: Blend, gesture: string) {
    super("aim-picked", upward);
    this.aim = aim;
    this.gesture = gesture;
  }
}

/** Asks the owner for another value of a feature, in its own unit; undefined: not measured. */
export class ValuePickedEvent extends Event {
  readonly feature: FeatureId;
  readonly value: number | undefined;
  readonly gesture: string | undefined;
  constructor(feature: FeatureId, value: number | undefined, gesture?: string) {
    super("value-picked", upward);
    this.feature = feature;
    this.value = value;
    this.gesture = gesture;
  }
}

/** The pointer is up, or the keyboard has left: what comes next is another step of undo. */
export class GestureEndedEvent extends Event {
  constructor() {
    super("gesture-ended", upward);
  }
}

/** Asks the owner to lock or free a feature. */
export class LockPickedEvent extends Event {
  readonly feature: FeatureId;
  readonly locked: boolean;
  constructor(feature: FeatureId, locked: boolean) {
    super("lock-picked", upward);
    this.feature = feature;
    this.locked = locked;
  }
}

/** Asks the owner to try a feature no more. */
export class TryLeftEvent extends Event {
  readonly feature: FeatureId;
  constructor(feature: FeatureId) {
    super("try-left", upward);
    this.feature = feature;
  }
}

/** Tells the owner that what is tried for a feature has been read. */
export class TryAcceptedEvent extends Event {
  readonly feature: FeatureId;
  constructor(feature: FeatureId) {
    super("try-accepted", upward);
    this.feature = feature;
  }
}

/** Hands readings from a table to the owner: all readings of each feature, in the model's units. */
export class ReadingsTakenEvent extends Event {
  readonly readings: ListedReadings;
  /** Whether every cell was good. */
  readonly complete: boolean;
  constructor(readings: ListedReadings, complete: boolean) {
    super("readings-taken", upward);
    this.readings = readings;
    this.complete = complete;
  }
}

/** The pointer is at the place of a feature, in the drawing or in the recipe; undefined: at none. */
export class FeaturePointedEvent extends Event {
  readonly feature: FeatureId | undefined;
  constructor(feature: FeatureId | undefined) {
    super("feature-pointed", upward);
    this.feature = feature;
  }
}
