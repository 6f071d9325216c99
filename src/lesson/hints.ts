import type { Blend } from "../engine/blend.js";
import type { BlendMap } from "../engine/compile.js";
import { recipeDifferences } from "../engine/differences.js";
import type { FeatureId, Purpose, Values } from "../engine/model.js";
import { place } from "../engine/place.js";
import { nearestEnd } from "./check-exercise.js";
import {
  exerciseFreedom,
  exerciseReed,
  exerciseTarget,
  missingReed,
  readingPlace,
} from "./exercise-reed.js";
import type {
  AimBlock,
  ChooseBlock,
  ExerciseBlock,
  OrderBlock,
  PredictBlock,
  StandInBlock,
} from "./lesson.js";
import type { Marker } from "./mark-answer.js";
import { sensibleOrder } from "./order-rules.js";

/** A hint as data; the words stand in the catalogue. Those of a prediction say nothing about the outcome. */
export type Hint =
  | { readonly kind: "text"; readonly text: string }
  | { readonly kind: "lookAt"; readonly features: readonly FeatureId[] }
  | { readonly kind: "compareCorners"; readonly features: readonly FeatureId[] }
  | { readonly kind: "oneAtATime" }
  | { readonly kind: "toward" | "awayFrom"; readonly purpose: Purpose }
  | { readonly kind: "move"; readonly feature: FeatureId; readonly more: boolean }
  | { readonly kind: "recipe"; readonly values: Values }
  | { readonly kind: "zeroOnOppositeSide" }
  | { readonly kind: "greatest"; readonly purpose: Purpose }
  | { readonly kind: "share"; readonly purpose: Purpose; readonly share: number }
  | { readonly kind: "undoableFirst" }
  | { readonly kind: "first"; readonly action: string }
  | { readonly kind: "order"; readonly actions: readonly string[] }
  | { readonly kind: "askWhy" }
  | { readonly kind: "notThis"; readonly option: number };

/** From a nudge to most of the way. */
export type Hints = readonly [Hint, Hint, Hint];

const order: readonly [Purpose, Purpose, Purpose] = ["high", "low", "loud"];

/**
 * Three hints for an exercise, each saying more than the one before: the author's where there are any, else computed.
 *
 * Shape   an exercise, lesson, map and actions → three hints as data.
 */
export function hintsFor(block: ExerciseBlock, marker: Marker): Hints {
  if (block.hints) {
    const [first, second, third] = block.hints;
    return [text(first), text(second), text(third)];
  }
  const values = exerciseReed(marker.lesson, block, marker.map.model);
  switch (block.kind) {
    case "predict":
      return predictHints(block);
    case "read":
      return readHints(readingPlace(block, values, marker.map));
    case "choose":
      return chooseHints(block);
    case "order":
      return orderHints(block, marker);
    default:
      return recipeHints(block, values, marker.map);
  }
}

function text(words: string): Hint {
  return { kind: "text", text: words };
}

/** Where to look, never where it goes: the outcome stays hidden until the guess is locked in. */
function predictHints({ change }: PredictBlock): Hints {
  const features = Object.keys(change);
  return [
    { kind: "lookAt", features },
    { kind: "compareCorners", features },
    { kind: "oneAtATime" },
  ];
}

function readHints(truth: Blend): Hints {
  const greatest = truth.indexOf(Math.max(...truth)) as 0 | 1 | 2;
  const purpose = order[greatest];
  return [
    { kind: "zeroOnOppositeSide" },
    { kind: "greatest", purpose },
    { kind: "share", purpose, share: truth[greatest] },
  ];
}

function chooseHints({ options }: ChooseBlock): Hints {
  const wrong = options.flatMap(({ right }, index) => (right ? [] : [index]));
  const strike = (index: number | undefined): Hint =>
    index === undefined ? { kind: "askWhy" } : { kind: "notThis", option: index };
  return [{ kind: "askWhy" }, strike(wrong.at(-1)), strike(wrong.at(-2) ?? wrong.at(-1))];
}

function orderHints({ actions: ids }: OrderBlock, { actions }: Marker): Hints {
  const found = ids.flatMap((id) => actions.actions.find((one) => one.id === id) ?? []);
  const sensible = sensibleOrder(found).map(({ id }) => id);
  return [
    { kind: "undoableFirst" },
    { kind: "first", action: sensible[0] ?? "" },
    { kind: "order", actions: sensible },
  ];
}

/** The purpose that is lacking or too strong most, the feature that helps most, one recipe that does it. */
function recipeHints(block: AimBlock | StandInBlock, whole: Values, map: BlendMap): Hints {
  const from = block.kind === "aim" ? whole : missingReed(whole, block);
  const target = exerciseTarget(block, whole, map);
  const { raw } = place(map, from);
  const lack = target.map((share, k) => share - raw[k]!);
  const most = lack.reduce((best, one, k) => (Math.abs(one) > Math.abs(lack[best]!) ? k : best), 0);
  const freedom = exerciseFreedom(block, from, map.model);
  const few = block.kind === "aim" ? block.mostFeatures : undefined;
  const { values } = nearestEnd(map, from, target, freedom, few);
  const [best] = recipeDifferences(map, from, values);
  return [
    { kind: lack[most]! > 0 ? "toward" : "awayFrom", purpose: order[most as 0 | 1 | 2] },
    { kind: "move", feature: best?.feature ?? "", more: (best?.change ?? 0) > 0 },
    { kind: "recipe", values },
  ];
}
