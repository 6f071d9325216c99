import type { FeatureId } from "../engine/model.js";
import symptomsJson from "./data/symptoms.json";
import { deepFreeze } from "./deep-freeze.js";

/** One line of the check that comes before any placing. */
export interface SoundnessCheck {
  readonly id: string;
  readonly look: string;
  readonly firstHelp: string;
}

/** What a reed with a symptom is likely to have more or less of than the all-round reed. */
export interface Cause {
  /** A feature or a ratio. */
  readonly what: FeatureId;
  readonly is: "more" | "less";
}

/** An action that helps, in its own whole units. */
export interface Help {
  readonly action: string;
  readonly amount: number;
  /** Where it may be more than `amount`. */
  readonly upTo?: number;
}

/** What is wrong, what is likely to cause it, and what helps. */
export interface Symptom {
  readonly id: string;
  readonly symptom: string;
  readonly causes: readonly Cause[];
  /** Causes that are no feature of the model, in words. */
  readonly otherCauses: readonly string[];
  /** What can be undone. */
  readonly first: readonly Help[];
  readonly firstNote?: string;
  /** What cannot, when the first did not help. */
  readonly after: readonly Help[];
  readonly afterNote?: string;
}

/** The symptom table, and the check before it. */
export interface Symptoms {
  readonly $comment?: string;
  readonly soundness: readonly SoundnessCheck[];
  readonly symptoms: readonly Symptom[];
}

/**
 * What is wrong with bassoon reeds and what helps, deeply frozen.
 *
 * Source  common practice, no source; see `$comment` of its file.
 */
export const bassoonSymptoms: Symptoms = /* @__PURE__ */ deepFreeze(
  symptomsJson as unknown as Symptoms,
);
