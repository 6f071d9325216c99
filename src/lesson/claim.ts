import type { Actions, FeatureId, Purpose, ReedModel } from "../engine/model.js";
import { demoReeds } from "../reed/demo-reeds.js";
import { type LessonFault, lessonWords } from "../reed/lesson-words.js";
import type { LipPresetId } from "../acoustics/lip-presets.js";
import { lipPresetIds, lipQuantities, type LipQuantity } from "./lip-change.js";
import { targets } from "../reed/targets.js";

const { faults: words, kinds } = lessonWords;

/** Something that moves the point: more or less of a feature or ratio, or an action. */
export type Mover =
  | { readonly kind: "feature" | "ratio"; readonly id: FeatureId; readonly sign: 1 | -1 }
  | { readonly kind: "action"; readonly id: string };

/** Which way a mover is said to go: most toward or away from a purpose, or simply more or less of its share. */
export type Sense = "toward" | "away" | "more" | "less";

/** A statement that the model decides. */
export type Claim =
  | {
      readonly kind: "goes";
      readonly mover: Mover;
      readonly sense: Sense;
      readonly purpose: Purpose;
    }
  | {
      readonly kind: "like" | "unlike" | "against" | "stronger";
      readonly a: Mover;
      readonly b: Mover;
    }
  | {
      readonly kind: "gives";
      readonly mover: Mover & { readonly kind: "feature" };
      readonly more: boolean;
      readonly quantity: LipQuantity;
      readonly preset: LipPresetId;
    }
  | { readonly kind: "raises" | "lowers"; readonly action: string; readonly feature: FeatureId }
  | { readonly kind: "undone"; readonly action: string; readonly can: boolean }
  | { readonly kind: "leans"; readonly reed: string; readonly purpose: Purpose }
  | { readonly kind: "near" | "far"; readonly reed: string; readonly place: string };

const more = "more longer wider rounder thicker taller higher steeper stronger larger".split(" ");
const less = "less shorter narrower flatter thinner lower shallower weaker smaller".split(" ");

/** The names that a claim may use. */
export interface ClaimNames {
  readonly features: readonly string[];
  readonly ratios: readonly string[];
  readonly actions: readonly string[];
  readonly reeds: readonly string[];
  readonly places: readonly string[];
}

/** The names of a model, its actions, and the reeds and parts that lessons may speak of. */
export function claimNames(model: ReedModel, actions: Actions): ClaimNames {
  const reeds = demoReeds.map(({ reed }) => reed);
  return {
    features: model.features.map(({ id }) => id),
    ratios: model.ratios.map(({ id }) => id),
    actions: actions.actions.map(({ id }) => id),
    reeds,
    places: [...targets.map(({ id }) => id), ...reeds],
  };
}

/** How claims are written; the first that fits is taken. */
const forms: readonly (readonly [
  form: RegExp,
  read: (parts: readonly string[], names: ClaimNames) => Claim | LessonFault,
])[] = [
  [/^(.+?) (?:→|->) (?:(away from|more|less) )?(high|low|loud)$/, readGoes],
  [/^(.+?) (like|unlike|against|stronger than) (.+)$/, readTwo],
  [/^(\S+ \S+) gives (more|less) (\S+) at (\S+)$/, readGives],
  [/^(\S+) (raises|lowers) (\S+)$/, readEffect],
  [/^(\S+) (can|cannot) be undone$/, readUndone],
  [/^(\S+) (near|far from) (\S+)$/, readNear],
];

/**
 * A claim as its author wrote it, understood, or what is wrong with it.
 *
 * Domain  any text; never throws.
 *
 * @example readClaim("shorter bladeLength → high", names).kind → "goes"
 */
export function readClaim(text: string, names: ClaimNames): Claim | LessonFault {
  const plain = text.trim().replace(/\s+/g, " ");
  for (const [form, read] of forms) {
    const parts = form.exec(plain);
    if (parts) return read(parts.slice(1), names);
  }
  return words.badClaim(text);
}

/** Whether this is a claim and no fault. */
export function isClaim(read: Claim | LessonFault): read is Claim {
  return "kind" in read;
}

function readGoes(
  [who = "", how, purpose = ""]: readonly string[],
  names: ClaimNames,
): Claim | LessonFault {
  const toward = purpose as Purpose;
  if (!who.includes(" ") && names.reeds.includes(who))
    return how === undefined
      ? { kind: "leans", reed: who, purpose: toward }
      : words.badClaim(`${who} → ${how} ${purpose}`);
  const mover = readMover(who, names);
  if ("why" in mover) return mover;
  const senses: Readonly<Record<string, Sense>> = {
    "away from": "away",
    more: "more",
    less: "less",
  };
  return { kind: "goes", mover, sense: senses[how ?? ""] ?? "toward", purpose: toward };
}

function readTwo(
  [first = "", how = "", second = ""]: readonly string[],
  names: ClaimNames,
): Claim | LessonFault {
  const [a, b] = [readMover(first, names), readMover(second, names)];
  if ("why" in a) return a;
  if ("why" in b) return b;
  const kind = how === "stronger than" ? "stronger" : (how as "like" | "unlike" | "against");
  return { kind, a, b };
}

function readMover(text: string, { features, ratios, actions }: ClaimNames): Mover | LessonFault {
  const [first = "", second, ...rest] = text.split(" ");
  if (rest.length > 0) return words.badClaim(text);
  if (second === undefined) {
    return actions.includes(first)
      ? { kind: "action", id: first }
      : words.unknownName(kinds.action, first, actions);
  }
  const sign = more.includes(first) ? 1 : less.includes(first) ? -1 : undefined;
  if (sign === undefined) return words.unknownName(kinds.comparative, first, [...more, ...less]);
  if (features.includes(second)) return { kind: "feature", id: second, sign };
  if (ratios.includes(second)) return { kind: "ratio", id: second, sign };
  return words.unknownName(kinds.featureOrRatio, second, [...features, ...ratios]);
}

function readGives(
  [who = "", how, quantity = "", preset = ""]: readonly string[],
  names: ClaimNames,
): Claim | LessonFault {
  const mover = readMover(who, { ...names, ratios: [] });
  if ("why" in mover) return mover;
  const dial = lipQuantities.find((one) => one === quantity);
  if (!dial) return words.unknownName(kinds.lipQuantity, quantity, lipQuantities);
  const state = lipPresetIds.find((one) => one === preset);
  if (!state) return words.unknownName(kinds.lips, preset, lipPresetIds);
  const feature = mover as Mover & { readonly kind: "feature" };
  return { kind: "gives", mover: feature, more: how === "more", quantity: dial, preset: state };
}

function readEffect(
  [action = "", how, feature = ""]: readonly string[],
  names: ClaimNames,
): Claim | LessonFault {
  if (!names.actions.includes(action))
    return words.unknownName(kinds.action, action, names.actions);
  if (!names.features.includes(feature))
    return words.unknownName(kinds.feature, feature, names.features);
  return { kind: how as "raises" | "lowers", action, feature };
}

function readUndone([action = "", how]: readonly string[], names: ClaimNames): Claim | LessonFault {
  if (!names.actions.includes(action))
    return words.unknownName(kinds.action, action, names.actions);
  return { kind: "undone", action, can: how === "can" };
}

function readNear(
  [reed = "", how, place = ""]: readonly string[],
  names: ClaimNames,
): Claim | LessonFault {
  if (!names.reeds.includes(reed)) return words.unknownName(kinds.reed, reed, names.reeds);
  if (!names.places.includes(place)) return words.unknownName(kinds.place, place, names.places);
  return { kind: how === "near" ? "near" : "far", reed, place };
}
