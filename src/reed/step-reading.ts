import type { ReedModel, Values } from "../engine/model.js";
import type { MeasuringStep } from "./measuring-steps.js";
import { riseFrom, slipQuestions, type SlipQuestion } from "./slip-questions.js";
import type { LengthUnit } from "./units.js";

/** The reading that a number comes to, and what it may have been instead. */
export interface StepReading {
  readonly value: number;
  readonly questions: readonly SlipQuestion[];
}

/** A number as it was typed at a step of the sheet. */
interface TypedNumber {
  /** In the feature's unit, or mm where a length stands for something else. */
  readonly value: number;
  readonly unit: LengthUnit;
  /** The height of a wire, mm, when this is its width. */
  readonly tall?: number | undefined;
}

/**
 * What a number means at a step of the sheet: itself, the roundness of a wire by height and width, or the rise over the
 * spine where that is measured.
 *
 * Shape   model, step, values so far, the number → reading and questions.
 * Unit    the feature's own.
 *
 * @example stepReading(bassoonModel, firstWireStep, {}, { value: 8.7, unit: "mm", tall: 6.264 }).value → 0.72
 */
export function stepReading(
  model: ReedModel,
  { feature: id, asks }: MeasuringStep,
  values: Values,
  { value, unit, tall }: TypedNumber,
): StepReading {
  const feature = model.features.find((one) => one.id === id)!;
  const spine = values["spine"];
  if (asks === "thicknessOverSpine" && spine !== undefined) {
    const { rise, questions } = riseFrom(feature, spine, { value, unit });
    return { value: rise, questions };
  }
  const read = asks === "heightAndWidth" ? (tall ?? value) / value : value;
  return { value: read, questions: slipQuestions(model, feature, { value: read, unit }) };
}
