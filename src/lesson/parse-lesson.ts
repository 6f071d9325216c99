import type * as v from "valibot";
import type { ReedModel } from "../engine/model.js";
import { lessonWords } from "../reed/lesson-words.js";
import { type Keys, pathText } from "../reed/problem-at.js";
import { compareShape } from "../reed/shape-problems.js";
import { blockSchemas } from "./block-schemas.js";
import { frontMatterSchema } from "./front-matter-schema.js";
import { layOut, type LaidPart, type LaidStep, type Stretch } from "./lay-out.js";
import type { Block, Lesson, Places, Step } from "./lesson.js";
import { checkReed, checkSeparation, type Known, knownNames, readValues } from "./lesson-names.js";
import { inFileOrder, lessonProblem, type LessonProblem, type Tell } from "./lesson-problem.js";
import { readYaml } from "./lesson-yaml.js";
import { proseFaults, proseHtml } from "./prose.js";
import { readBlock } from "./read-block.js";

const { faults: words, kinds } = lessonWords;

/** How a lesson file is to be read. */
export interface LessonOptions {
  /** Name of the file, for the problems. */
  readonly file: string;
  readonly model: ReedModel;
}

/** What a lesson file yields. */
export interface ParsedLesson {
  /** Absent when the front matter cannot be used or no step was found. */
  readonly lesson?: Lesson;
  /** Every problem of the file, in its order. */
  readonly problems: readonly LessonProblem[];
}

/**
 * Reads a lesson file: Markdown with YAML front matter, a step a heading, and blocks between three backticks.
 * A step with a problem stays in the lesson, marked as not sound; the sound ones may be played.
 * What the model decides (reach, claims, orders, reading time) is for `checkLesson`.
 *
 * Shape   any text, name of the file, model → a lesson and problems with line and column.
 * Unit    values as written, in mm where they name no unit → the model's units; per cents → shares.
 * Throws  nothing, whatever the text.
 *
 * @example parseLesson("", { file: "a.md", model: bassoonModel }).problems.length → 2
 */
export function parseLesson(text: string, { file, model }: LessonOptions): ParsedLesson {
  const laid = layOut(text);
  const problems = laid.faults.map(({ place, fault, step }) =>
    lessonProblem(file, place, fault, step),
  );
  const tellOf =
    (step: number | undefined): Tell =>
    (place, fault) =>
      void problems.push(lessonProblem(file, place, fault, step));
  const front = laid.frontMatter && readFrontMatter(laid.frontMatter, model, tellOf(undefined));
  const counted = front?.features ?? model.features.map(({ id }) => id);
  const steps = laid.steps.map((step, index) => readStep(step, { model, counted }, tellOf(index)));
  const lesson = front && steps.length > 0 ? { file, ...front, steps } : undefined;
  return { ...(lesson ? { lesson } : {}), problems: inFileOrder(problems) };
}

/** Data that keep to a schema, with the places of their fields; undefined and told otherwise. */
function readFields<Schema extends v.GenericSchema>(
  schema: Schema,
  { text, place }: Stretch,
  where: string,
  tell: Tell,
): { readonly data: v.InferOutput<Schema>; readonly places: Places } | undefined {
  const { data, places, faults } = readYaml(text, place);
  for (const { place: at, message } of faults) tell(at, words.yaml(message));
  if (faults.length > 0) return undefined;
  const placeOf = (keys: Keys, what: "key" | "value") =>
    nearestPlace(keys, (path) => places.get(path)?.[what]) ?? place;
  let sound = true;
  compareShape(schema, data, (keys, found, allowed, known) => {
    sound = false;
    const [path, last] = [pathText(keys), String(keys.at(-1) ?? "")];
    const what = [where, pathText(keys.slice(0, -1))].filter(Boolean).join(" ");
    if (known) tell(placeOf(keys, "key"), words.strayField(what, last, known));
    else if (found === undefined || (found === null && path === ""))
      tell(placeOf(keys, "value"), words.missing(where, path, allowed));
    else tell(placeOf(keys, "value"), words.wrong(where, path, written(found), allowed));
  });
  if (!sound) return undefined;
  const values = [...places].map(([path, { value }]) => [path, value] as const);
  return { data: data as v.InferOutput<Schema>, places: Object.fromEntries(values) };
}

/** The place of a field, or of the nearest one around it that exists. */
function nearestPlace<Place>(
  keys: Keys,
  placeAt: (path: string) => Place | undefined,
): Place | undefined {
  for (let length = keys.length; length >= 0; length -= 1) {
    const place = placeAt(pathText(keys.slice(0, length)));
    if (place !== undefined) return place;
  }
  return undefined;
}

function written(value: unknown): string {
  return typeof value === "number" ? String(value) : (JSON.stringify(value) ?? typeof value);
}

function readFrontMatter(
  stretch: Stretch,
  model: ReedModel,
  tell: Tell,
): Omit<Lesson, "file" | "steps"> | undefined {
  const read = readFields(frontMatterSchema, stretch, lessonWords.frontMatter, tell);
  if (!read) return undefined;
  const { data, places } = read;
  let sound = true;
  const tellField = (path: string, fault: Parameters<Tell>[1]): void => {
    sound = false;
    tell(places[path] ?? stretch.place, fault);
  };
  const ids = model.features.map(({ id }) => id);
  const features = knownNames(kinds.feature, data.features, ids, "features", tellField);
  if (sound && features) checkSeparation(features, model, tellField);
  checkReed(data.reed, "reed", tellField);
  const counted = features ?? ids;
  const start = readValues(data.start, { model, counted }, "start", tellField);
  if (!sound) return undefined;
  const { title, minutes, goal, reed } = data;
  return {
    title,
    minutes,
    ...(goal === undefined ? {} : { goal }),
    ...(features === undefined ? {} : { features }),
    ...(reed === undefined ? {} : { reed }),
    ...(start === undefined ? {} : { start }),
    places,
  };
}

function readStep({ title, line, parts, sound }: LaidStep, known: Known, tell: Tell): Step {
  const blocks: Block[] = [];
  const notes: string[] = [];
  let good = sound;
  const note: Tell = (place, fault) => {
    good = false;
    tell(place, fault);
  };
  for (const part of parts) {
    if (part.kind === "block") {
      const block = readPart(part, known, note);
      if (block) blocks.push(block);
      continue;
    }
    // HTML and dead links are told and shown as harmless text: the step may be played all the same.
    for (const { place, fault } of proseFaults(part.text))
      tell({ line: part.place.line + place.line - 1, column: place.column }, fault);
    const html = proseHtml(part.text);
    if (part.kind === "notes") notes.push(html);
    else blocks.push({ kind: "prose", html });
  }
  return { title, line, blocks, notes, sound: good };
}

function readPart(
  part: LaidPart & { readonly kind: "block" },
  known: Known,
  tell: Tell,
): Block | undefined {
  const read = readFields(blockSchemas[part.name] as v.GenericSchema, part, part.name, tell);
  if (!read) return undefined;
  const { data, places } = read;
  let sound = true;
  const block = readBlock(part.name, data, known, places, (path, fault) => {
    sound = false;
    tell(places[path] ?? part.place, fault);
  });
  return sound ? block : undefined;
}
