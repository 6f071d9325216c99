import type { FeatureId, Values } from "../engine/model.js";

/** How far a person has come on the guided sheet. */
export interface Sheet {
  /** 0 soundness, 1 state, then the features in the order of measuring, last the summary. */
  readonly step: number;
  /** The answers to the look before measuring. */
  readonly sound: Readonly<Record<string, "ok" | "not">>;
  /** Whether the gauge's zero has been checked. */
  readonly zero: boolean;
  /** What was read before something was done to the reed: a guide where it is to be read again. */
  readonly before: Values;
  /** The height of a wire, mm, whose width is still to be read. */
  readonly height?: { readonly feature: FeatureId; readonly value: number };
}

/** The page of the sheet on which the first feature is read: soundness and state come before. */
export const firstFeatureStep = 2;

/** A sheet nobody has written on. */
export const blankSheet: Sheet = { step: 0, sound: {}, zero: false, before: {} };
