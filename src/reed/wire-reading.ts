import type { Feature } from "../engine/model.js";
import type { Catalogue } from "./catalogue.js";
import { measuringSteps } from "./measuring-steps.js";
import { typedValue } from "./reading-text.js";
import { typedReading } from "./typed-reading.js";
import type { LengthUnit } from "./units.js";

/** A wire as it is typed: its height and width, or its roundness. */
export interface TypedWire {
  readonly height: string;
  readonly width: string;
  readonly roundness: string;
}

/** Whether a feature is read as height and width, as on the measuring sheet. */
export function isWire(feature: string): boolean {
  return measuringSteps.some((step) => step.feature === feature && step.asks === "heightAndWidth");
}

/**
 * The roundness of a wire by height and width, or as it was typed; what is wrong with it; undefined where nothing was typed.
 *
 * Domain  any texts; never throws.
 *
 * @example wireReading(firstWire, { height: "6.3", width: "8.75", roundness: "" }, "mm", english) → { value: 0.72, problem: "" }
 */
export function wireReading(
  feature: Feature,
  { height, width, roundness }: TypedWire,
  unit: LengthUnit,
  text: Catalogue,
): { readonly value: number | undefined; readonly problem: string } | undefined {
  const lengths = [height, width].map((one) => one.trim());
  if (lengths.every((one) => one === ""))
    return roundness.trim() === ""
      ? undefined
      : typedReading(feature, roundness, undefined, unit, text);
  if (lengths.includes("")) return { value: undefined, problem: text.planPage.plan.wireNeedsBoth };
  const [tall, wide] = lengths.map((one) => typedValue({ ...feature, unit: "mm" }, one, unit));
  const bad = [tall, wide].findIndex((one) => one === undefined || !(one > 0));
  if (bad >= 0)
    return { value: undefined, problem: text.planPage.plan.wireReadings.cannotRead(lengths[bad]!) };
  const { problem } = typedReading(feature, String(tall! / wide!), undefined, unit, text);
  if (problem === "") return { value: tall! / wide!, problem };
  return {
    value: undefined,
    problem: text.planPage.plan.wireFarOff(text.number(tall! / wide!, 2)),
  };
}
