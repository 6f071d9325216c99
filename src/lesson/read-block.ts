import type * as v from "valibot";
import type { Blend } from "../engine/blend.js";
import { lipPresets, type LipPresetId } from "../acoustics/lip-presets.js";
import { type Layer, layerNames } from "../reed/layer-names.js";
import { lessonWords } from "../reed/lesson-words.js";
import { targetRadius, targets } from "../reed/targets.js";
import type { BlockName, blockSchemas } from "./block-schemas.js";
import type { Block, LessonReed, Places } from "./lesson.js";
import {
  checkReed,
  isKnown,
  type Known,
  knownNames,
  readValues,
  type TellField,
} from "./lesson-names.js";

const { faults: words, kinds } = lessonWords;

/** The fields of a block as its schema lets them through. */
export type Fields<Name extends BlockName> = v.InferOutput<(typeof blockSchemas)[Name]>;

/** In a share: what lies in the drawn zone of a part is always within it, for no share differs by more there. */
const zoneWithin = targetRadius / Math.sqrt(1.5);

/** Per cents of a share within which a reading or a stand-in counts as right, where the author says nothing. */
const readWithin = 0.05;
const standInWithin = 0.03;

/** What every reader of a block is given besides its fields. */
interface Given {
  readonly known: Known;
  readonly places: Places;
  readonly tell: TellField;
}

/**
 * A block with its names looked up and its values in the model's units; what does not fit is told.
 *
 * Shape   a block's name and fields that keep to its schema → the block.
 */
export function readBlock(
  name: BlockName,
  fields: unknown,
  known: Known,
  places: Places,
  tell: TellField,
): Block {
  const given: Given = { known, places, tell };
  if (name === "show") return readShow(fields as Fields<"show">, given);
  if (name === "predict") return readPredict(fields as Fields<"predict">, given);
  if (name === "aim") return readAim(fields as Fields<"aim">, given);
  if (name === "choose") return readChoose(fields as Fields<"choose">, given);
  if (name === "order") return { kind: "order", ...(fields as Fields<"order">), places };
  if (name === "read") return readRead(fields as Fields<"read">, given);
  if (name === "stand-in") return readStandIn(fields as Fields<"stand-in">, given);
  const { says, means } = fields as Fields<"claim">;
  return { kind: "claim", says, means: typeof means === "string" ? [means] : means, places };
}

/** Leaves out what is undefined. */
function stated<T extends object>(fields: T): { [Key in keyof T]: Exclude<T[Key], undefined> } {
  const entries = Object.entries(fields).filter(([, value]) => value !== undefined);
  return Object.fromEntries(entries) as { [Key in keyof T]: Exclude<T[Key], undefined> };
}

function readReed(
  { reed, values }: Pick<Fields<"predict">, "reed" | "values">,
  { known, tell }: Given,
  path = "",
): LessonReed {
  checkReed(reed, `${path}reed`, tell);
  return stated({ reed, values: readValues(values, known, `${path}values`, tell) }) as LessonReed;
}

function readShow(fields: Fields<"show">, given: Given): Block {
  const { known, places, tell } = given;
  const { caption, cautions, place, target, lips } = fields;
  const ids = known.model.features.map(({ id }) => id);
  if (place !== undefined) isKnown(kinds.feature, place, ids, "place", tell);
  if (target !== undefined) isKnown(kinds.target, target, partNames(), "target", tell);
  if (lips !== undefined) isKnown(kinds.lips, lips, Object.keys(lipPresets), "lips", tell);
  const layers = knownNames(kinds.layer, fields.layers, layerNames, "layers", tell);
  return {
    kind: "show",
    ...readReed(fields, given),
    ...stated({
      beside: fields.beside && readReed(fields.beside, given, "beside."),
      caption,
      layers: layers as readonly Layer[] | undefined,
      place,
      target,
      lips: lips as LipPresetId | undefined,
      cautions,
    }),
    places,
  };
}

function exerciseOf(fields: Pick<Fields<"predict">, "ask" | "why" | "hints">) {
  const { ask, why, hints } = fields;
  return { ask, ...(stated({ why, hints }) as { why?: string; hints?: [string, string, string] }) };
}

function readPredict(fields: Fields<"predict">, given: Given): Block {
  const change = readValues(fields.change, given.known, "change", given.tell) ?? {};
  const { places } = given;
  return { kind: "predict", ...exerciseOf(fields), ...readReed(fields, given), change, places };
}

function readHeld(fields: Fields<"aim"> | Fields<"stand-in">, given: Given, otherwise: number) {
  const { locked, finished, within } = fields;
  const { known, tell } = given;
  const ids = knownNames(kinds.feature, locked, known.counted, "locked", tell);
  return {
    ...(ids === undefined ? {} : { locked: ids }),
    ...(finished === undefined ? {} : { finished }),
    within: within === undefined ? otherwise : within / 100,
  };
}

function partNames(): string[] {
  return targets.map(({ id }) => id);
}

function readAim(fields: Fields<"aim">, given: Given): Block {
  const { target, mostFeatures } = fields;
  const { places, tell } = given;
  const part = typeof target === "string" ? target : undefined;
  if (part !== undefined) isKnown(kinds.target, part, partNames(), "target", tell);
  const blend =
    typeof target === "string"
      ? targets.find(({ id }) => id === target)?.blend
      : shares(target, "target", tell);
  return {
    kind: "aim",
    ...exerciseOf(fields),
    ...readReed(fields, given),
    ...readHeld(fields, given, zoneWithin),
    target: blend ?? [1 / 3, 1 / 3, 1 / 3],
    ...(part === undefined ? {} : { part }),
    ...(mostFeatures === undefined ? {} : { mostFeatures }),
    places,
  };
}

/** Per cents as shares; three thirds in whole per cents sum to 99, and that is near enough to mean them. */
function shares(perCents: readonly number[], path: string, tell: TellField): Blend {
  const sum = perCents.reduce((total, one) => total + one, 0);
  const bad = perCents.findIndex((one) => one < 0 || one > 100);
  const isSound = bad < 0 && Math.abs(sum - 100) <= 1;
  if (bad >= 0) tell(`${path}[${bad}]`, words.noShare(perCents[bad] ?? 0));
  else if (!isSound) tell(path, words.noSum(Math.round(sum * 100) / 100));
  const [high = 0, low = 0, loud = 0] = isSound ? perCents : [1, 1, 1];
  const whole = high + low + loud;
  return [high / whole, low / whole, loud / whole];
}

function readChoose(fields: Fields<"choose">, { places, tell }: Given): Block {
  const options = fields.options.map(({ text, why, right = false, claim }) => ({
    text,
    why,
    right,
    ...(claim === undefined ? {} : { claim }),
  }));
  options.forEach(({ text }, index) => {
    if (options.findIndex((one) => one.text === text) < index)
      tell(`options[${index}].text`, words.sameOption(text));
  });
  if (!options.some(({ right }) => right)) tell("options", words.noRightOption);
  if (options.every(({ right }) => right)) tell("options", words.onlyRightOptions);
  const shown = fields.shown?.map((number) => number - 1);
  const isWhole = options.every((_, index) => shown?.includes(index));
  if (shown && !(isWhole && shown.length === options.length))
    tell("shown", words.badOrder(fields.shown!, options.length));
  return { kind: "choose", ...exerciseOf(fields), options, ...(shown ? { shown } : {}), places };
}

function readRead(fields: Fields<"read">, given: Given): Block {
  const { at, within } = fields;
  return {
    kind: "read",
    ...exerciseOf(fields),
    ...readReed(fields, given),
    ...(at === undefined ? {} : { at: shares(at, "at", given.tell) }),
    within: within === undefined ? readWithin : within / 100,
    places: given.places,
  };
}

function readStandIn(fields: Fields<"stand-in">, given: Given): Block {
  const missing = readValues(fields.missing, given.known, "missing", given.tell) ?? {};
  const held = readHeld(fields, given, standInWithin);
  for (const [index, id] of (fields.locked ?? []).entries())
    if (Object.hasOwn(missing, id)) given.tell(`locked[${index}]`, words.lockedMoves(id));
  return {
    kind: "stand-in",
    ...exerciseOf(fields),
    ...readReed(fields, given),
    ...held,
    missing,
    places: given.places,
  };
}
