import type { Blend } from "./blend.js";

/** Name of a feature inside its model, e.g. `bladeLength`. */
export type FeatureId = string;

/** Feature values in the model's own units (mm, ratio, 0–1), by feature. */
export type Values = Readonly<Record<FeatureId, number>>;

/** The three purposes in the order of every blend. */
export type Purpose = "high" | "low" | "loud";

/** Which way a feature can still move on a finished reed. */
export type Finishing = "both" | "down" | "up" | "fixed";

/** One measurable property of a reed. Lengths in mm; `ratio` and `0-1` have no unit. */
export interface Feature {
  readonly id: FeatureId;
  readonly label: string;
  readonly group: string;
  readonly unit: "mm" | "ratio" | "0-1";
  /** Digits behind the point that a reading is shown with. */
  readonly decimals: number;
  /** Slider step, in the feature's unit. */
  readonly step: number;
  /** Practical range, in the feature's unit. */
  readonly min: number;
  readonly max: number;
  /** 1 standard deviation of one reading, in the feature's unit. */
  readonly gaugeError: number;
  /** The value in each of the three corner reeds. */
  readonly corners: Readonly<Record<Purpose, number>>;
  /** How much the feature counts, > 0. */
  readonly weight: number;
  readonly howToMeasure: string;
  readonly finishing: Finishing;
}

/** Two thicknesses read against each other. */
export interface Ratio {
  readonly id: string;
  readonly label: string;
  readonly of: FeatureId;
  readonly to: FeatureId;
}

/** A reed model: data, checked by `readModel` before it comes here. */
export interface ReedModel {
  readonly $comment?: string;
  readonly id: string;
  readonly label: string;
  readonly purposes: readonly { readonly id: Purpose; readonly label: string }[];
  readonly groups: readonly { readonly id: string; readonly label: string }[];
  /** How far reeds of one blend differ in a feature, in half-spreads (z). */
  readonly recipeScatter: number;
  /** One zero error shared by all features read with the same dial: 1 sd, mm. */
  readonly commonGaugeError: { readonly amount: number; readonly features: readonly FeatureId[] };
  readonly features: readonly Feature[];
  readonly ratios: readonly Ratio[];
}

/** One thing a hand does to a finished reed. */
export interface Action {
  readonly id: string;
  readonly label: string;
  readonly how: string;
  /** What one unit of the action is, in words: "0.01 of roundness". */
  readonly unit: string;
  /** Whole units that are good practice in one sitting, and the most that is possible. */
  readonly easy: number;
  readonly max: number;
  /** Cost per unit, up to `easy` and beyond it. */
  readonly cost: number;
  readonly costBeyond: number;
  readonly reversible: boolean;
  /** Order of trying: what can be undone comes first. */
  readonly order: number;
  /** What one unit changes, by feature, in the feature's unit. The first is what the hand is after; the others are by-effects. */
  readonly effects: Readonly<Record<FeatureId, number>>;
  /** Key into `cautions`. */
  readonly caution: string;
  readonly pitch: string;
}

/** What hands can do, with the rules of a sensible sitting. */
export interface Actions {
  readonly $comment?: string;
  readonly actions: readonly Action[];
  readonly cautions: Readonly<Record<string, string>>;
  readonly rules: readonly string[];
  readonly housekeeping: readonly string[];
}

/**
 * How far each feature may move. Only what is stated narrows the model's range;
 * a value outside its range already may stay or move inward.
 */
export type Freedom = Readonly<
  Record<FeatureId, { readonly min?: number; readonly max?: number; readonly locked?: boolean }>
>;

/** Three numbers that sum to 0: a move in the order high, low, loud. */
export type Triple = readonly [high: number, low: number, loud: number];

export type { Blend };
