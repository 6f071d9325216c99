import * as v from "valibot";
import type { Problem } from "./model-error.js";
import { type AddProblem, type Keys, pathText, problemAt } from "./problem-at.js";

/** The parts of a schema that are read here. */
interface Shape {
  readonly type: string;
  readonly entries?: Readonly<Record<string, Shape>>;
  readonly item?: Shape;
  readonly items?: readonly Shape[];
  readonly key?: Shape;
  readonly value?: Shape;
  readonly wrapped?: Shape;
}

/**
 * Everything in which a file departs from its schema.
 *
 * The schema library stops at the first stray key of an object and takes a list for an object;
 * keys are therefore compared here, and its own notes about keys are left out.
 *
 * Shape   a schema, the file as parsed JSON, what the file is called → problems, none if it fits.
 *
 * @example shapeProblems(modelSchema, [], "model").length → 1
 */
export function shapeProblems(schema: v.GenericSchema, json: unknown, what: string): Problem[] {
  const problems: Problem[] = [];
  compareShape(schema, json, (keys, found, allowed) =>
    problems.push(problemAt(json, what, keys, found, allowed)),
  );
  return problems;
}

/** Tells of a departure: as `AddProblem`; for a key that is not known here, also those that are. */
export type AddDeparture = (
  ...told: [...Parameters<AddProblem>, known?: readonly string[]]
) => void;

/**
 * The same departures, each told as keys, so that a caller may say where in a text they stand.
 *
 * @example compareShape(modelSchema, [], (keys, found, allowed) => …) → calls it once
 */
export function compareShape(schema: v.GenericSchema, json: unknown, add: AddDeparture): void {
  const root = schema as unknown as Shape;
  const lists: string[] = [];
  compareKeys(root, json, [], add, lists);
  for (const issue of v.safeParse(schema, json, { abortPipeEarly: true }).issues ?? []) {
    const keys = (issue.path ?? []).map(({ key }) => key as string | number);
    if (isAboutKeys(issue) || lists.some((list) => liesIn(list, pathText(keys)))) continue;
    const isKey = issue.path?.at(-1)?.origin === "key";
    add(keys, issue.input, allowedAt(root, keys, isKey));
  }
}

function isAboutKeys({ type, expected }: v.BaseIssue<unknown>): boolean {
  return (
    (type === "strict_object" && expected !== "Object") ||
    (type === "strict_tuple" && expected === "never")
  );
}

function liesIn(outer: string, path: string): boolean {
  return (
    outer === "" || path === outer || path.startsWith(`${outer}.`) || path.startsWith(`${outer}[`)
  );
}

/** Reports missing and stray keys, and lists that stand where an object should; `lists` gathers the latter. */
function compareKeys(
  told: Shape,
  value: unknown,
  keys: Keys,
  add: AddDeparture,
  lists: string[],
): void {
  if (typeof value !== "object" || value === null) return;
  const shape = told.wrapped ?? told;
  const descend = (part: Shape | undefined, key: string | number): void => {
    if (part)
      compareKeys(
        part,
        (value as Record<string | number, unknown>)[key],
        [...keys, key],
        add,
        lists,
      );
  };
  if (Array.isArray(value)) {
    if (shape.entries || shape.type === "record") {
      lists.push(pathText(keys));
      add(keys, value, describe(shape));
    }
    value.forEach((item: unknown, index) => {
      if (shape.items && index >= shape.items.length) add([...keys, index], item, "left out");
      else descend(shape.item ?? shape.items?.[index], index);
    });
  } else if (shape.entries) {
    compareEntries(shape.entries, value, keys, add);
    for (const [key, part] of Object.entries(shape.entries))
      if (Object.hasOwn(value, key)) descend(part, key);
  }
}

function compareEntries(
  entries: Readonly<Record<string, Shape>>,
  value: object,
  keys: Keys,
  add: AddDeparture,
): void {
  const known = Object.keys(entries);
  for (const [key, part] of Object.entries(entries)) {
    if (!part.wrapped && !Object.hasOwn(value, key)) add([...keys, key], undefined, describe(part));
  }
  for (const [key, stray] of Object.entries(value)) {
    if (Object.hasOwn(entries, key)) continue;
    add([...keys, key], stray, `left out: the keys known here are ${known.join(", ")}`, known);
  }
}

/** What may stand at a place, in words. */
function allowedAt(root: Shape, keys: Keys, isKey: boolean): string {
  const path = isKey ? keys.slice(0, -1) : keys;
  const place = path.reduce<Shape | undefined>((shape, key) => partOf(shape, key), root);
  return describe(isKey ? place?.key : place);
}

function partOf(outer: Shape | undefined, key: string | number): Shape | undefined {
  const shape = outer?.wrapped ?? outer;
  if (shape?.entries && Object.hasOwn(shape.entries, key)) return shape.entries[key];
  if (typeof key === "number") return shape?.item ?? shape?.items?.[key];
  return shape?.value;
}

function describe(shape: Shape | undefined): string {
  const described = shape?.wrapped ?? shape;
  return (
    (described && v.getDescription(described as unknown as v.GenericSchema)) ?? "something else"
  );
}
