import type { BlendMap } from "../engine/compile.js";
import { pullDirection } from "../engine/direction.js";
import type { RecipeDifference } from "../engine/differences.js";
import type { Actions, FeatureId, Purpose, Triple } from "../engine/model.js";
import type { LessonCatalogue } from "../reed/lesson-catalogue.js";
import { readingWithUnit } from "../reed/reading-text.js";
import type { LengthUnit } from "../reed/units.js";
import { wholeShares } from "../reed/whole-shares.js";
import type { Sureness } from "./answer.js";
import type { ExerciseView } from "./lesson-view.js";
import type { ChooseMark, OrderMark } from "./mark-answer.js";
import type { PredictMark } from "./mark-predict.js";
import type { ReadMark } from "./mark-read.js";
import type { RecipeMark } from "./mark-recipe.js";
import { pullRows } from "./pull-rows.js";
import { inSentence } from "../reed/in-sentence.js";

/** How good an answer was. */
export type Grade = "right" | "partly" | "wrong";

/** A row of the pulls that made a move, in words. */
export interface FeedbackRow {
  readonly label: string;
  /** "27.3 → 26.3 mm" */
  readonly change: string;
  readonly points: readonly [string, string, string];
}

/** What a student is told of an answer, in words. */
export interface Feedback {
  readonly grade: Grade;
  readonly verdict: string;
  readonly says: readonly string[];
  /** Absent where nothing was moved; the points of the rows sum to `sum`. */
  readonly pulls?: {
    readonly rows: readonly FeedbackRow[];
    readonly sum: readonly [string, string, string];
  };
}

/** What the words of lessons are made with. */
export interface Telling {
  readonly map: BlendMap;
  readonly actions: Actions;
  readonly text: LessonCatalogue;
  readonly unit: LengthUnit;
}

const order: readonly [Purpose, Purpose, Purpose] = ["high", "low", "loud"];

/** In shares: nearer than this is on the spot, for nobody's finger is finer. */
const onTheSpot = 0.02;

/**
 * An answer that was handed in, in words: how good it was, what happened, and why.
 *
 * Shape   an exercise with its mark, map and words → sentences, and the pulls in tenths of a point.
 * Error   the rows of the pulls sum to the move that is shown, exactly.
 */
export function feedbackOn(view: ExerciseView, telling: Telling): Feedback | undefined {
  const { mark, answer } = view;
  if (!mark) return undefined;
  switch (mark.kind) {
    case "predict":
      return onPredict(mark, view, answer?.kind === "predict" ? answer.sure : undefined, telling);
    case "read":
      return onRead(mark, telling);
    case "choose":
      return onChoose(mark, view, telling);
    case "order":
      return onOrder(mark, view, telling);
    default:
      return onRecipe(mark, view, telling);
  }
}

function graded(grade: Grade, says: readonly string[], { text }: Telling): Feedback {
  const told = says.filter((one) => one !== "");
  return { grade, verdict: text.lessons.feedback.grades[grade], says: told };
}

function onPredict(
  mark: PredictMark,
  { from }: ExerciseView,
  sure: Sureness | undefined,
  telling: Telling,
): Feedback {
  const { points, predict: words } = telling.text.lessons.feedback;
  const { right, move, outcome, direction, length, distance } = mark;
  const grade = right
    ? "right"
    : direction === "wrong" || direction === "none"
      ? "wrong"
      : "partly";
  const way = pullDirection(move);
  const by = way ? points(Math.abs(move[order.indexOf(way.purpose)]!)) : "";
  const says = [
    way ? words.outcome(way.way, way.purpose, by) : words.hardly,
    outcome.some((share) => share < -1e-9) ? words.outside : "",
    // How far a guess goes that does not go there says nothing.
    `${words.direction[direction]}${direction === "right" || direction === "partly" ? words.length[length] : ""}.`,
    distance < onTheSpot ? words.onTheSpot : words.distance(points(distance)),
    ...mark.pulls.slice(0, 3).map(({ feature }) => cornersOf(feature, telling)),
    sure === 3 && grade === "wrong" ? words.sureAndWrong : "",
    sure === 1 && grade === "right" ? words.guessedRight : "",
  ];
  return { ...graded(grade, says, telling), ...pullsOf(mark.pulls, from, telling) };
}

/** Why a change leads where it leads: what the three corner reeds have there. */
export function cornersOf(id: FeatureId, telling: Telling): string {
  const { text, map } = telling;
  const { label, corners } = map.model.features.find((one) => one.id === id)!;
  const [high, low, loud] = order.map((purpose) => shown(id, corners[purpose], telling));
  return text.lessons.feedback.cornersAre(label, high!, low!, loud!);
}

export function shown(id: FeatureId, value: number, { map, unit, text }: Telling): string {
  return readingWithUnit(
    map.model.features.find((one) => one.id === id)!,
    value,
    unit,
    text,
  );
}

function labelsOf(ids: readonly FeatureId[], { map }: Telling): string[] {
  return ids.map((id) => map.model.features.find((one) => one.id === id)!.label);
}

function pullsOf(
  pulls: readonly RecipeDifference[],
  from: ExerciseView["from"],
  telling: Telling,
): Pick<Feedback, "pulls"> {
  if (pulls.length === 0) return {};
  const { rows, sum } = pullRows(pulls);
  const { signed } = telling.text.lessons.feedback;
  const cells = (tenths: Triple): [string, string, string] => [
    signed(tenths[0]),
    signed(tenths[1]),
    signed(tenths[2]),
  ];
  return {
    pulls: {
      rows: rows.map(({ feature, change, tenths }) => ({
        label: labelsOf([feature], telling)[0]!,
        change: changeText(feature, from[feature]!, from[feature]! + change, telling),
        points: cells(tenths),
      })),
      sum: cells(sum),
    },
  };
}

/** "27.3 → 26.3 mm" */
function changeText(id: FeatureId, before: number, after: number, telling: Telling): string {
  const [a, b] = [before, after].map((value) => shown(id, value, telling));
  const [, unit = ""] = /( [a-z]+)$/.exec(a!) ?? [];
  return `${unit ? a!.slice(0, -unit.length) : a} → ${b}`;
}

/** How far it is, in tenths where whole points would say that it is near enough. */
function awayText({ distance, within, before }: RecipeMark, { text }: Telling): string {
  const { points, tenths, recipe: words } = text.lessons.feedback;
  const count = points(distance) === points(within) ? tenths : points;
  const farther = distance - before > 0.005;
  return `${farther ? words.farther(count(distance), points(before)) : words.away(count(distance))} ${words.within(count(within))}`;
}

function onRecipe(mark: RecipeMark, { from }: ExerciseView, telling: Telling): Feedback {
  const { recipe: words } = telling.text.lessons.feedback;
  const { right, there, moved, heldButMoved, outside, tooMany } = mark;
  const grade = right ? "right" : there ? "partly" : "wrong";
  const reached = mark.kind === "aim" ? words.there : words.asIfWhole;
  const says = [
    there ? reached : awayText(mark, telling),
    moved.length === 0 ? words.stayed : "",
    tooMany ? words.tooMany(labelsOf(moved, telling), mark.mostFeatures) : "",
    heldButMoved.length > 0 ? words.heldButMoved(labelsOf(heldButMoved, telling)) : "",
    outside.length > 0 ? words.outside(labelsOf(outside, telling)) : "",
    right ? words.other : "",
  ];
  return { ...graded(grade, says, telling), ...pullsOf(mark.pulls, from, telling) };
}

function onRead(mark: ReadMark, telling: Telling): Feedback {
  const { read: words } = telling.text.lessons.feedback;
  const truth = wholeShares(mark.truth);
  const rows = order.map((id, k) => ({ id, share: truth[k]! }));
  if (mark.right) return graded("right", [words.all, words.truth(rows)], telling);
  const wrong = order.filter((_, k) => !mark.each[k]);
  const slip = mark.slip ? words.slips[mark.slip] : words.wrongOnes(wrong);
  return graded(wrong.length < 3 ? "partly" : "wrong", [slip], telling);
}

function onChoose(mark: ChooseMark, { given, tries }: ExerciseView, telling: Telling): Feedback {
  const { choose: words } = telling.text.lessons.feedback;
  // Who has missed it twice is told.
  const told = mark.right || tries < 2 ? [] : mark.rightOptions.map((k) => given.options![k]!);
  return graded(mark.right ? "right" : "wrong", [mark.why, ...told.map(words.rightIs)], telling);
}

function onOrder(mark: OrderMark, { tries }: ExerciseView, telling: Telling): Feedback {
  const { order: words } = telling.text.lessons.feedback;
  const reason = mark.right
    ? words.right
    : mark.irreversibleFirst
      ? words.irreversibleFirst
      : words.otherOrder;
  const told = !mark.right && tries >= 2 ? words.sensible(actionNames(mark.sensible, telling)) : "";
  return graded(mark.right ? "right" : "wrong", [reason, told], telling);
}

/** Labels of actions, inside a sentence. */
export function actionNames(
  ids: readonly string[],
  { actions }: Pick<Telling, "actions">,
): string[] {
  return ids.map((id) => {
    const action = actions.actions.find((one) => one.id === id);
    return action ? inSentence(action.label) : id;
  });
}
