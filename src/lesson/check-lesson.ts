import type { BlendMap } from "../engine/compile.js";
import type { Actions, ReedModel } from "../engine/model.js";
import { type LessonFault, lessonWords } from "../reed/lesson-words.js";
import { checkExercise } from "./check-exercise.js";
import { type ClaimNames, claimNames, isClaim, readClaim } from "./claim.js";
import { type ClaimTruth, claimTruth, uncounted } from "./claim-truth.js";
import { lessonMap } from "./exercise-reed.js";
import {
  type Block,
  type ChooseBlock,
  type ClaimBlock,
  isExercise,
  type Lesson,
  type OrderBlock,
  type Places,
  type ShowBlock,
  type TextPlace,
} from "./lesson.js";
import { isKnown, type TellField } from "./lesson-names.js";
import { inFileOrder, lessonProblem, type LessonProblem } from "./lesson-problem.js";
import { orderFaults } from "./order-rules.js";
import { readingTime } from "./reading-time.js";

const { faults: words, kinds } = lessonWords;

/** What a lesson is held against. */
interface Held {
  readonly lesson: Lesson;
  readonly model: ReedModel;
  readonly actions: Actions;
  readonly map: BlendMap;
  readonly names: ClaimNames;
}

/**
 * Holds a lesson against the model: every claim under the lesson's own features, every aim and stand-in within reach
 * under its locks, every key of a choice, every order, reading time, notes, cautions before hands act.
 *
 * Shape   a lesson from `parseLesson`, any model and actions → problems in the order of the file; none: it may be taught.
 * Throws  nothing for a lesson from `parseLesson` with a model from `readModel`.
 *
 * @example checkLesson(lesson, bassoonModel, bassoonActions) → []
 */
export function checkLesson(lesson: Lesson, model: ReedModel, actions: Actions): LessonProblem[] {
  const problems: LessonProblem[] = [];
  const tellAt =
    (block: { readonly places: Places }, step?: number): TellField =>
    (path, fault) => {
      const place = nearest(block.places, path);
      problems.push(lessonProblem(lesson.file, place, fault, step));
    };
  checkWhole(lesson, tellAt(lesson));
  const map = mapOrTold(lesson, model, tellAt(lesson));
  if (!map) return inFileOrder(problems);
  const held: Held = { lesson, model, actions, map, names: claimNames(model, actions) };
  const shown = new Set<string>();
  lesson.steps.forEach(({ blocks }, step) => {
    for (const block of blocks) {
      if (block.kind === "prose") continue;
      checkBlock(block, held, shown, tellAt(block, step));
    }
  });
  return inFileOrder(problems);
}

/** The place of a field, or of what it stands in. */
function nearest(places: Places, path: string): TextPlace {
  for (let at = path; at !== ""; at = at.replace(/(?:^|\.)[^.[\]]*$|\[[^[]*\]$/, "")) {
    if (Object.hasOwn(places, at)) return places[at]!;
  }
  return places[""] ?? { line: 1, column: 1 };
}

function mapOrTold(lesson: Lesson, model: ReedModel, tell: TellField): BlendMap | undefined {
  try {
    return lessonMap(lesson, model);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    const ids = model.features.map(({ id }) => id);
    tell("features", words.cannotSeparate(error.message.replace(/^compileModel: /, ""), ids));
    return undefined;
  }
}

function checkWhole(lesson: Lesson, tell: TellField): void {
  const needed = readingTime(lesson);
  const [least, most] = [0.8 * needed, Math.max(2 * needed, needed + 2)];
  const isOff = lesson.minutes < least || lesson.minutes > most;
  // What could not be read takes time, too, so that nobody knows how much.
  if (isOff && lesson.steps.every(({ sound }) => sound)) {
    const around = Math.max(1, Math.round(needed));
    const [from, to] = [Math.max(1, Math.ceil(least)), Math.floor(most)];
    tell("minutes", words.readingTime(around, lesson.minutes, from, to));
  }
  if (!lesson.steps.some(({ notes }) => notes.length > 0)) tell("", words.noNotes);
  if (!lesson.steps.some(({ blocks }) => blocks.some(isExercise))) tell("", words.noExercise);
}

function checkBlock(
  block: Exclude<Block, { readonly kind: "prose" }>,
  held: Held,
  shown: Set<string>,
  tell: TellField,
): void {
  if (block.kind === "show") checkShow(block, held, shown, tell);
  else if (block.kind === "claim") checkClaim(block, held, tell);
  else if (block.kind === "choose") checkChoose(block, held, tell);
  else if (block.kind === "order") checkOrder(block, held, shown, tell);
  else checkExercise(block, held.lesson, held.map, tell);
}

function checkShow(
  { cautions = [] }: ShowBlock,
  { actions }: Held,
  shown: Set<string>,
  tell: TellField,
) {
  cautions.forEach((caution, index) => {
    const known = Object.keys(actions.cautions);
    if (isKnown(kinds.caution, caution, known, `cautions[${index}]`, tell)) shown.add(caution);
  });
}

/** A claim held against the model, or what is wrong with it. */
function truthOf(text: string, { names, map, actions }: Held): ClaimTruth | LessonFault {
  const claim = readClaim(text, names);
  if (!isClaim(claim)) return claim;
  const [left] = uncounted(claim, map);
  return left === undefined
    ? claimTruth(claim, map, actions)
    : words.notCounted(left, map.features);
}

function checkClaim({ says, means }: ClaimBlock, held: Held, tell: TellField): void {
  means.forEach((text, index) => {
    const path = `means[${index}]`;
    const truth = truthOf(text, held);
    if ("why" in truth) tell(path, truth);
    else if (!truth.isTrue) tell(path, words.falseClaim(says, text, truth.computed));
  });
}

function checkChoose({ options }: ChooseBlock, held: Held, tell: TellField): void {
  options.forEach(({ text, right, claim }, index) => {
    if (claim === undefined) return;
    const truth = truthOf(claim, held);
    const path = `options[${index}].claim`;
    if ("why" in truth) tell(path, truth);
    else if (truth.isTrue !== right) tell(path, words.wrongKey(text, right, claim, truth.computed));
  });
}

function checkOrder(
  block: OrderBlock,
  { actions }: Held,
  shown: ReadonlySet<string>,
  tell: TellField,
) {
  const known = actions.actions.map(({ id }) => id);
  const named = block.actions.filter((id, index) =>
    isKnown(kinds.action, id, known, `actions[${index}]`, tell),
  );
  const found = named.map((id) => actions.actions.find((one) => one.id === id)!);
  const faults = found.length === block.actions.length ? orderFaults(found) : [];
  for (const { index, fault } of faults)
    tell(index === undefined ? "actions" : `actions[${index}]`, fault);
  found.forEach(({ id, caution }, index) => {
    if (!shown.has(caution)) tell(`actions[${index}]`, words.noCaution(id, caution));
  });
}
