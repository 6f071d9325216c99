import type { ReedModel } from "../engine/model.js";
import { allRoundValues, encodeBench, newBench, type Bench } from "../reed/bench.js";
import { demoReadings } from "../reed/demo-readings.js";
import { shownValues } from "../reed/tried.js";

/** What can be put into another page. */
export const embedded = [
  "bench",
  "triangle",
  "lamp",
  "lip",
  "stand-ins",
  "plan",
  "lesson",
] as const;

/** What of the bench goes into another page, and how. */
export interface Embedding {
  readonly show: (typeof embedded)[number];
  readonly as: "element" | "frame";
  readonly theme: "" | "paper" | "night" | "auto";
  readonly locked: boolean;
  /** The folder in which the built files lie, with a slash at its end. */
  readonly folder: string;
  /** What stands there for who reads without scripts. */
  readonly says: string;
}

/** Text as it may stand between double quotes, or between tags. */
function escaped(text: string): string {
  const signs: Readonly<Record<string, string>> = { "&": "&amp;", '"': "&quot;", "<": "&lt;" };
  return text.replaceAll(/[&"<]/g, (sign) => signs[sign]!);
}

function attribute([name, value]: readonly [string, string | true]): string {
  return value === true ? ` ${name}` : ` ${name}="${escaped(value)}"`;
}

/** Readings only where the name alone does not say them. */
function readingsOf(bench: Bench, model: ReedModel): readonly (readonly [string, string])[] {
  const known = bench.reed === "" ? allRoundValues(model) : demoReadings[bench.reed];
  const values = shownValues(bench);
  const ids = model.features.map(({ id }) => id);
  const isKnown = known && ids.every((id) => known[id] === values[id]);
  const name = bench.reed === "" ? [] : [["reed", bench.reed] as const];
  return isKnown ? name : [...name, ["values", JSON.stringify(values)] as const];
}

function targetOf({ target, aim }: Bench): string {
  const percent = (share: number): string => String(Math.round(share * 1000) / 10);
  return target === "own" && aim ? aim.map(percent).join(" ") : target;
}

type Attributes = readonly (readonly [string, string | true])[];

function reedAttributes(bench: Bench, model: ReedModel, how: Embedding): Attributes {
  const layers = bench.layers.join(" ") || "none";
  return [
    ...readingsOf(bench, model),
    ...(bench.target === "" ? [] : [["target", targetOf(bench)] as const]),
    ...(layers === "certainty" ? [] : [["layers", layers] as const]),
    ...themeAttribute(how),
    ...(how.locked ? [["locked", true] as const] : []),
    ...(how.locked || bench.locked.length === 0
      ? []
      : [["locked", bench.locked.join(" ")] as const]),
  ];
}

function themeAttribute({ theme }: Embedding): Attributes {
  return theme === "" ? [] : [["theme", theme]];
}

function lessonAttributes({ lesson }: Bench, how: Embedding): Attributes {
  const step = lesson?.step ?? 0;
  return [
    ["lesson", lesson?.id ?? ""],
    ...(step === 0 ? [] : [["step", String(step + 1)] as const]),
    ...themeAttribute(how),
  ];
}

function elementSnippet(bench: Bench, model: ReedModel, how: Embedding): string {
  const attributes =
    how.show === "lesson" ? lessonAttributes(bench, how) : reedAttributes(bench, model, how);
  const tag = `reed-${how.show}`;
  const script = `<script type="module" src="${escaped(how.folder)}elements/reed-elements.js"></script>`;
  return `${script}\n<${tag}${attributes.map(attribute).join("")}>${escaped(how.says)}</${tag}>\n`;
}

/** The address of the frame page that shows this bench, or the lesson that is open. */
export function frameAddress(
  bench: Bench,
  model: ReedModel,
  { folder, show, theme, locked }: Pick<Embedding, "folder" | "show" | "theme" | "locked">,
): string {
  const isLesson = show === "lesson";
  const asked = [
    ...(isLesson ? [] : [`show=${show}`]),
    ...(theme === "" ? [] : [`theme=${theme}`]),
    ...(locked && !isLesson ? ["locked"] : []),
  ].join("&");
  const { lesson } = bench;
  const shown = isLesson
    ? { ...newBench(model), page: "lessons" as const, ...(lesson ? { lesson } : {}) }
    : bench;
  const page = isLesson ? "lesson-frame.html" : "frame.html";
  return `${folder}${page}${asked === "" ? "" : `?${asked}`}#${encodeBench(shown, model)}`;
}

function frameSnippet(bench: Bench, model: ReedModel, how: Embedding): string {
  const address = escaped(frameAddress(bench, model, how));
  return `<iframe data-reedpoint sandbox="allow-scripts" title="${escaped(how.says)}" width="640" height="700" style="width: 100%" src="${address}"></iframe>
<script src="${escaped(how.folder)}elements/reed-frame.js"></script>\n`;
}

/**
 * The lines that put a bench into another page.
 *
 * @example snippet(newBench(bassoonModel), bassoonModel, { show: "lamp", as: "element", … }) → "<script …><reed-lamp>…"
 */
export function snippet(bench: Bench, model: ReedModel, how: Embedding): string {
  return (how.as === "element" ? elementSnippet : frameSnippet)(bench, model, how);
}
