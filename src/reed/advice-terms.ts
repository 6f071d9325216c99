import type { Purpose } from "../engine/model.js";

// English terms of the trade inside sentences; `advice-words.ts` makes the sentences.

/** A feature with the comparatives that the trade uses of it. */
interface ComparedFeature {
  readonly noun: string;
  readonly less: string;
  readonly more: string;
}

/** Features with the comparatives that the trade uses of them. */
export const compared: Readonly<Record<string, ComparedFeature>> = {
  bladeLength: { noun: "a blade", less: "shorter", more: "longer" },
  tipWidth: { noun: "a tip", less: "narrower", more: "wider" },
  throatWidth: { noun: "a throat", less: "narrower", more: "wider" },
  firstWire: { noun: "a first wire", less: "flatter", more: "rounder" },
  secondWire: { noun: "a second wire", less: "flatter", more: "rounder" },
  heart: { noun: "a heart", less: "thinner", more: "thicker" },
  wings: { noun: "wings", less: "thinner", more: "thicker" },
  spine: { noun: "a spine", less: "thinner", more: "thicker" },
  rails: { noun: "rails", less: "thinner", more: "thicker" },
  tip: { noun: "a tip", less: "thinner", more: "thicker" },
  backRise: { noun: "a profile", less: "flatter", more: "steeper" },
  hinging: { noun: "hinging", less: "weaker", more: "stronger" },
  openingHeight: { noun: "an opening", less: "lower", more: "taller" },
  openingWidth: { noun: "an opening", less: "narrower", more: "wider" },
};

/** What a by-effect does to the reed: "it also opens the tip". */
export interface ByEffect {
  readonly verb: string;
  readonly object: string;
}

const thicker = "brings thicker cane to";

/** By-effects: what they do, and to which part of the reed. */
export const byEffects: Readonly<Record<string, { object: string; less: string; more: string }>> = {
  bladeLength: { object: "the blade", less: "shortens", more: "lengthens" },
  tipWidth: { object: "the tip", less: "narrows", more: "widens" },
  heart: { object: "the heart", less: "thins", more: thicker },
  wings: { object: "the wings", less: "thins", more: thicker },
  spine: { object: "the spine", less: "thins", more: thicker },
  rails: { object: "the rails", less: "thins", more: thicker },
  tip: { object: "the tip", less: "thins", more: thicker },
  backRise: { object: "the profile", less: "flattens", more: "steepens" },
  openingHeight: { object: "the tip", less: "closes", more: "opens" },
  openingWidth: { object: "the opening", less: "narrows", more: "widens" },
};

/** Purposes inside a sentence. */
export const purposes: Readonly<Record<Purpose, string>> = {
  high: "the high register",
  low: "soft and low playing",
  loud: "full volume",
};

/** Parts to play inside a sentence. */
export const targetsInSentence: Readonly<Record<string, string>> = {
  everyday: "everyday rehearsal",
  softLow: "a soft low second part",
  highSolo: "an exposed high solo",
  concerto: "a concerto with full orchestra",
  continuo: "chamber continuo",
  quintet: "a wind quintet",
  audition: "mixed excerpts",
  own: "your own target",
  lowTutti: "a bass line in a wind band or a long loud tutti",
};

/** Qualities inside a sentence. */
export const qualitiesInSentence: Readonly<Record<string, string>> = {
  highEntries: "high entries",
  lowEntries: "soft low entries",
  softest: "how softly it plays",
  loudest: "how loudly it plays",
  steadyPitch: "steady pitch",
  dynamicRange: "range under the lip",
  evenTone: "even tone",
  easeOfBlowing: "ease",
};

/** What a reed has much or little of, as a cause of trouble. */
export const likelyNames: Readonly<
  Record<string, { readonly less: string; readonly more: string }>
> = {
  bladeLength: { less: "a short blade", more: "a long blade" },
  tipWidth: { less: "a narrow tip", more: "a wide tip" },
  throatWidth: { less: "a narrow throat", more: "a wide throat" },
  firstWire: { less: "a flat first wire", more: "a round first wire" },
  secondWire: { less: "a flat second wire", more: "a round second wire" },
  heart: { less: "a thin heart", more: "a thick heart" },
  wings: { less: "thin wings", more: "thick wings" },
  spine: { less: "a thin spine", more: "a thick spine" },
  rails: { less: "thin rails", more: "thick rails" },
  tip: { less: "a thin tip", more: "a thick tip" },
  backRise: { less: "a parallel profile", more: "a steep profile" },
  hinging: { less: "weak hinging", more: "strong hinging" },
  openingHeight: { less: "a low opening", more: "a tall opening" },
  openingWidth: { less: "a narrow opening", more: "a wide opening" },
  heartToWings: {
    less: "a heart that is thin against the wings",
    more: "a heart that is thick against the wings",
  },
  spineToRails: {
    less: "a spine that is thin against the rails",
    more: "a spine that is thick against the rails",
  },
};
