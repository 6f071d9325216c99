import type { Blend } from "../engine/blend.js";
import type { FeatureId, ReedModel, Values } from "../engine/model.js";
import type { PlanKind } from "../engine/plan-adjustments.js";
import { allRoundValues } from "./all-round-values.js";
import { english, type Catalogue } from "./catalogue.js";
import { demoNamed } from "./demo-readings.js";
import { decodeDone, encodeDone, type Sitting } from "./done-steps.js";
import { decodeJudged, encodeJudged, planKinds, qualityIds, type Judged } from "./looked-advice.js";
import { type Layer, layerNames } from "./layer-names.js";
import { bassoonSymptoms } from "./symptoms.js";
import { newBench, ownTarget, thousandthsBlend } from "./new-bench.js";
import { isShortAddress, pageOf } from "./route.js";
import { targets } from "./targets.js";
import type { LengthUnit } from "./units.js";
import { givenValues, shownValues, triedOver, type Tried } from "./tried.js";
import {
  decodeTried,
  decodeValues,
  encodeTried,
  encodeValues,
  type Telling,
} from "./value-cells.js";

export { allRoundValues } from "./all-round-values.js";
export { newBench, ownTarget, thousandthsBlend } from "./new-bench.js";
export type { Layer } from "./layer-names.js";

/** How a reed was when it was read. */
export type Wet = "" | "soaked" | "dry";

/** The page of the app that is open. */
export type PageName = (typeof pageNames)[number];

/** A lesson that is open, and at which step, counted from 0. */
export interface OpenLesson {
  readonly id: string;
  readonly step: number;
}

/** A reed laid beside the one on the bench. */
export interface PinnedReed {
  /** What it is called; empty for the all-round reed. */
  readonly reed: string;
  readonly values: Values;
}

/** The state of a bench: what a link, a lesson step, a saved file and a test fixture hold. */
export interface Bench {
  /** The model's id. */
  readonly model: string;
  /** What the reed is called; empty for the all-round reed. */
  readonly reed: string;
  /** What the reed has, in the model's units, whole thousandths; a feature that is not measured is absent. */
  readonly values: Values;
  /** What is tried on the bench, over what the reed has; absent where nothing is. */
  readonly tried?: Tried;
  readonly locked: readonly FeatureId[];
  /** Whether the recipe follows the point as on a finished reed (cane does not go back). */
  readonly finished: boolean;
  readonly unit: LengthUnit;
  /** Id of the kind of part aimed for, or "own" for the place in `aim`; empty for none. */
  readonly target: string;
  /** A target of one's own, in whole thousandths; kept while another target is picked. */
  readonly aim?: Blend;
  /** The reed to compare with. */
  readonly pinned?: PinnedReed;
  /** The steps that have been done to this reed, sitting by sitting; the last sitting is today's. */
  readonly done?: readonly Sitting[];
  /** Features whose value is what a step should have made of them, and was not read again. */
  readonly expected?: readonly FeatureId[];
  /** The kind of plan whose steps are looked at; absent: the first. */
  readonly plan?: PlanKind;
  /** The quality that lies over the triangle. */
  readonly quality?: string;
  /** A teacher's own seven values of qualities. */
  readonly judged?: Judged;
  readonly layers: readonly Layer[];
  readonly page: PageName;
  readonly lesson?: OpenLesson;
  /** Ids of the looks before measuring that the reed has failed; a reed that is not sound has no place. */
  readonly unsound: readonly string[];
  /** Whether it is placed all the same. */
  readonly overruled: boolean;
  /** How the reed was when it was read; empty: nobody has said. */
  readonly wet: Wet;
}

/** The version of the compact form; another one is refused with a clear word. */
export const benchVersion = 1;

/** The pages of the app, in the order of their tabs. */
export const pageNames = ["measure", "bench", "plan", "lip", "lessons"] as const;

const wetNames = ["soaked", "dry"] as const;

const longestName = 80;
const loneSurrogate = /[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g;

const unitNames: readonly LengthUnit[] = ["mm", "in", "thou"];

/**
 * A bench as one short text: `v=1&model=bassoon&reed=Bittern&values=27700.15300.…`.
 * Values are whole thousandths in the model's order, `_` where nothing was measured.
 *
 * @example encodeBench(newBench(bassoonModel), bassoonModel).startsWith("v=1&model=bassoon") → true
 */
export function encodeBench(bench: Bench, model: ReedModel): string {
  const { aim, pinned, done = [], expected = [], judged = {} } = bench;
  const parts = [
    ["v", String(benchVersion)],
    ["model", bench.model],
    ["reed", bench.reed],
    ["values", encodeValues(bench.values, model)],
    ["tried", bench.tried ? encodeTried(bench.tried, model) : ""],
    ["locked", bench.locked.join(".")],
    ["finished", bench.finished ? "1" : ""],
    ["unit", bench.unit === "mm" ? "" : bench.unit],
    ["target", bench.target],
    ["aim", aim ? `${Math.round(aim[0] * 1000)}.${Math.round(aim[1] * 1000)}` : ""],
    ["pinned", pinned ? encodeValues(pinned.values, model) : ""],
    ["pinnedReed", pinned?.reed ?? ""],
    ["done", encodeDone(done)],
    ["expected", expected.join(".")],
    ["plan", bench.plan ?? ""],
    ["quality", bench.quality ?? ""],
    ["judged", encodeJudged(judged)],
    ["layers", bench.layers.join(".") || "none"],
    ["page", bench.page === "bench" ? "" : bench.page],
    ["lesson", bench.lesson ? `${bench.lesson.id}.${bench.lesson.step + 1}` : ""],
    ["unsound", bench.unsound.join(".")],
    ["overruled", bench.overruled ? "1" : ""],
    ["wet", bench.wet],
  ];
  return parts
    .filter(([, value]) => value !== "")
    .map(([key, value]) => `${key}=${encodeURIComponent(value!.replace(loneSurrogate, ""))}`)
    .join("&");
}

/**
 * The inverse of `encodeBench`. What cannot be read is told and left as on a new bench; the rest is kept.
 *
 * Shape   text, model, catalogue → a bench and a sentence for every problem.
 * Domain  any text; never throws.
 */
export function decodeBench(
  text: string,
  model: ReedModel,
  words: Catalogue = english,
): { readonly bench: Bench; readonly problems: readonly string[] } {
  const problems: string[] = [];
  const told: Telling = { words: words.linkProblems, problems };
  const code = text.replace(/^#/, "");
  const isShort = isShortAddress(code);
  const fields = splitFields(isShort ? `v=${benchVersion}&model=${model.id}&${code}` : code, told);
  const fresh = newBench(model);
  const version = fields.get("v");
  if (version !== String(benchVersion)) {
    problems.push(told.words.version(version, benchVersion));
    return { bench: fresh, problems };
  }
  if (fields.get("model") !== model.id) {
    problems.push(told.words.model(fields.get("model"), model.id));
    return { bench: fresh, problems };
  }
  const ids = model.features.map((feature) => feature.id);
  const aim = readAim(fields.get("aim"), told);
  const pinned = readPinned(fields, model, told);
  const lesson = readLesson(fields.get("lesson"), told);
  const done = decodeDone(
    fields.get("done") ?? "",
    (cell, allowed) => problems.push(told.words.done(cell, allowed)),
    (count, most) => problems.push(told.words.doneMany(count, most)),
  );
  const name = readName(fields.get("reed"));
  // A name alone is that demo reed, which is finished.
  const demo = fields.has("values") ? undefined : demoNamed(name);
  const reed = demo ?? name;
  const { values, tried } = readLayers(fields, givenValues(model, { reed, done }), model, told);
  const bench: Bench = {
    model: model.id,
    reed,
    values,
    ...(tried ? { tried } : {}),
    locked: readNames(fields.get("locked"), ids, "locked", told),
    finished: demo !== undefined || readFlag(fields.get("finished"), "finished", told),
    unit: readNames(fields.get("unit"), unitNames, "unit", told)[0] ?? "mm",
    target:
      readNames(
        fields.get("target"),
        [...targets.map(({ id }) => id), ...(aim ? [ownTarget] : [])],
        "target",
        told,
      )[0] ?? "",
    ...(aim ? { aim } : {}),
    ...(pinned ? { pinned } : {}),
    ...(lesson ? { lesson } : {}),
    ...(done.length > 0 ? { done } : {}),
    ...readLooked(fields, told),
    ...readExpected(fields, Object.keys(values), told),
    layers: readLayerNames(fields.get("layers"), told),
    unsound: readNames(
      fields.get("unsound"),
      bassoonSymptoms.soundness.map(({ id }) => id),
      "unsound",
      told,
    ),
    overruled: readFlag(fields.get("overruled"), "overruled", told),
    wet: readNames(fields.get("wet"), wetNames, "wet", told)[0] ?? "",
    page: pageOf(
      readNames(fields.get("page"), pageNames, "page", told)[0],
      isShort && lesson !== undefined,
    ),
  };
  return { bench, problems };
}

function splitFields(text: string, { words, problems }: Telling): Map<string, string> {
  const fields = new Map<string, string>();
  for (const part of text.split("&")) {
    const [key = "", ...rest] = part.split("=");
    try {
      fields.set(key, decodeURIComponent(rest.join("=")));
    } catch {
      problems.push(words.encoding(key, rest.join("=")));
    }
  }
  return fields;
}

/** A name, cut to length; half a sign, at the cut or in the link, cannot be written into an address. */
function readName(text: string | undefined): string {
  return (text ?? "").slice(0, longestName).replace(loneSurrogate, "");
}

/**
 * What the reed has and what is tried. A reed that the product brings along has what it was given; where an older link
 * has other values under its name, they are tried.
 */
function readLayers(
  fields: ReadonlyMap<string, string>,
  given: Values | undefined,
  model: ReedModel,
  told: Telling,
): Pick<Bench, "values" | "tried"> {
  const cells = fields.get("values");
  const read = cells === undefined ? undefined : decodeValues(cells, "values", model, told);
  const base = given ?? read ?? allRoundValues(model);
  const differs = given && read ? triedOver(given, read) : undefined;
  const tried = { ...differs, ...readTried(fields.get("tried"), base, model, told) };
  return { values: base, ...(Object.keys(tried).length > 0 ? { tried } : {}) };
}

function readTried(
  cells: string | undefined,
  base: Values,
  model: ReedModel,
  told: Telling,
): Tried | undefined {
  const tried = cells === undefined ? {} : decodeTried(cells, "tried", model, told);
  // What is tried is another value than the reed has.
  return triedOver(base, shownValues({ values: base, tried }));
}

/** Two shares in whole thousandths; the third is what they leave. */
function readAim(text: string | undefined, { words, problems }: Telling): Blend | undefined {
  if (text === undefined) return undefined;
  const shares = /^(\d{1,4})\.(\d{1,4})$/.exec(text)?.slice(1).map(Number);
  if (!shares || shares[0]! + shares[1]! > 1000) {
    problems.push(words.aim(text));
    return undefined;
  }
  return thousandthsBlend(shares[0]!, shares[1]!);
}

function readLesson(
  text: string | undefined,
  { words, problems }: Telling,
): OpenLesson | undefined {
  if (text === undefined) return undefined;
  const [, id, step] = /^([\w-]{1,80})\.([1-9]\d{0,3})$/.exec(text) ?? [];
  if (id !== undefined) return { id, step: Number(step) - 1 };
  problems.push(words.lesson(text));
  return undefined;
}

function readPinned(
  fields: ReadonlyMap<string, string>,
  model: ReedModel,
  told: Telling,
): PinnedReed | undefined {
  const cells = fields.get("pinned");
  const values = cells === undefined ? undefined : decodeValues(cells, "pinned", model, told);
  return values && { reed: readName(fields.get("pinnedReed")), values };
}

/** What is looked at of the advice; each only where the link names it. */
function readLooked(
  fields: ReadonlyMap<string, string>,
  told: Telling,
): Pick<Bench, "plan" | "quality" | "judged"> {
  const [plan] = readNames(fields.get("plan"), planKinds, "plan", told);
  const [quality] = readNames(fields.get("quality"), qualityIds, "quality", told);
  const judged = decodeJudged(fields.get("judged") ?? "", (cell) =>
    told.problems.push(told.words.judged(cell, qualityIds)),
  );
  return {
    ...(plan ? { plan } : {}),
    ...(quality ? { quality } : {}),
    ...(Object.keys(judged).length > 0 ? { judged } : {}),
  };
}

function readExpected(
  fields: ReadonlyMap<string, string>,
  measured: readonly FeatureId[],
  told: Telling,
): Pick<Bench, "expected"> {
  const expected = readNames(fields.get("expected"), measured, "expected", told);
  return expected.length > 0 ? { expected } : {};
}

function readNames<T extends string>(
  text: string | undefined,
  allowed: readonly T[],
  field: string,
  { words, problems }: Telling,
): T[] {
  const names = (text ?? "").split(".").filter((name) => name !== "");
  return [...new Set(names)].filter((name): name is T => {
    const known = (allowed as readonly string[]).includes(name);
    if (!known) problems.push(words.name(field, name, allowed));
    return known;
  });
}

function readFlag(text: string | undefined, field: string, { words, problems }: Telling): boolean {
  if (text !== undefined && text !== "1" && text !== "0") {
    problems.push(words.flag(field, text));
  }
  return text === "1";
}

function readLayerNames(text: string | undefined, told: Telling): readonly Layer[] {
  if (text === undefined) return ["certainty"];
  return text === "none" ? [] : readNames(text, layerNames, "layers", told);
}
