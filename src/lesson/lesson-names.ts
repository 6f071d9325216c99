import { compileModel } from "../engine/compile.js";
import type { Feature, FeatureId, ReedModel, Values } from "../engine/model.js";
import { demoReeds } from "../reed/demo-reeds.js";
import { type LessonFault, lessonWords } from "../reed/lesson-words.js";
import { duplicates } from "../reed/duplicate-problems.js";
import { typedValue } from "../reed/reading-text.js";

const { faults: words, kinds } = lessonWords;

/** Takes a fault of the field at a path. */
export type TellField = (path: string, fault: LessonFault) => void;

/** What the names in a lesson are held against. */
export interface Known {
  readonly model: ReedModel;
  /** The lesson's own features, or all of the model. */
  readonly counted: readonly FeatureId[];
}

/** Tells a name that is not among the known ones; whether it is. */
export function isKnown(
  kind: string,
  found: string,
  known: readonly string[],
  path: string,
  tell: TellField,
): boolean {
  if (known.includes(found)) return true;
  tell(path, words.unknownName(kind, found, known));
  return false;
}

/** The names of a list that are known, each once; the others are told. */
export function knownNames(
  kind: string,
  found: readonly string[] | undefined,
  known: readonly string[],
  path: string,
  tell: TellField,
): readonly string[] | undefined {
  if (found === undefined) return undefined;
  duplicates(
    found,
    (index) => [index],
    ([index], text) => tell(`${path}[${index}]`, words.twice(String(text))),
  );
  const good = found.filter((one, index) => isKnown(kind, one, known, `${path}[${index}]`, tell));
  return [...new Set(good)];
}

/** A feature that the model has and the lesson counts, or undefined and told. */
export function countedFeature(
  id: string,
  { model, counted }: Known,
  path: string,
  tell: TellField,
): Feature | undefined {
  const ids = model.features.map((one) => one.id);
  if (!isKnown(kinds.feature, id, ids, path, tell)) return undefined;
  if (!counted.includes(id)) {
    tell(path, words.notCounted(id, counted));
    return undefined;
  }
  return model.features.find((one) => one.id === id);
}

/** The good values of a field, in the model's units; whatever is wrong with the others is told. */
export function readValues(
  found: Readonly<Record<string, number | string>> | undefined,
  known: Known,
  path: string,
  tell: TellField,
): Values | undefined {
  if (found === undefined) return undefined;
  const values: Record<FeatureId, number> = {};
  for (const [id, written] of Object.entries(found)) {
    const at = `${path}.${id}`;
    const feature = countedFeature(id, known, at, tell);
    const value = feature && valueOf(feature, written, at, tell);
    if (value !== undefined) values[id] = value;
  }
  return values;
}

function valueOf(
  feature: Feature,
  written: number | string,
  path: string,
  tell: TellField,
): number | undefined {
  const { id, unit, min, max } = feature;
  const value = typeof written === "number" ? written : typedValue(feature, written, "mm");
  if (value === undefined) tell(path, words.noValue(id, String(written), unit));
  else if (value < min || value > max) tell(path, words.outOfRange(id, value, min, max, unit));
  else return value;
  return undefined;
}

/** Tells a demo reed that is none. */
export function checkReed(reed: string | undefined, path: string, tell: TellField): void {
  if (reed === undefined) return;
  isKnown(
    kinds.reed,
    reed,
    demoReeds.map((one) => one.reed),
    path,
    tell,
  );
}

/** Tells features that do not tell the three purposes apart. */
export function checkSeparation(features: readonly FeatureId[], model: ReedModel, tell: TellField) {
  try {
    compileModel(model, { features });
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    const why = error.message.replace(/^compileModel: /, "").replace(/; allowed: .*$/, ")");
    const ids = model.features.map(({ id }) => id);
    tell("features", words.cannotSeparate(why, ids));
  }
}
