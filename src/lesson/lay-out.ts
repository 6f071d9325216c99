import { type LessonFault, lessonWords } from "../reed/lesson-words.js";
import type { BlockName } from "./block-schemas.js";
import { blockNames } from "./block-schemas.js";
import type { TextPlace } from "./lesson.js";
import { markdownTokens } from "./prose.js";

/** A stretch of the file. */
export interface Stretch {
  readonly text: string;
  readonly place: TextPlace;
}

/** What stands under one heading, in order. */
export type LaidPart =
  | ({ readonly kind: "prose" | "notes" } & Stretch)
  | ({ readonly kind: "block"; readonly name: BlockName } & Stretch);

export interface LaidStep {
  readonly title: string;
  readonly line: number;
  readonly parts: LaidPart[];
  /** False once something under the heading could not be made out. */
  sound: boolean;
}

/** A lesson file cut into its parts. */
export interface LaidOut {
  readonly frontMatter: Stretch | undefined;
  readonly steps: readonly LaidStep[];
  readonly faults: readonly {
    readonly place: TextPlace;
    readonly fault: LessonFault;
    readonly step: number | undefined;
  }[];
}

/** Far more than a lesson; longer or deeper texts only keep the reader of Markdown busy. */
const mostCharacters = 200_000;
const tooDeep = /^(?:[ \t]*(?:[-*+>]|\d{1,9}[.)])){21,}/;

/** A heading or a fence of the body, by the line that it begins on. */
type Mark =
  | { readonly kind: "heading"; readonly rank: number; readonly title: string }
  | {
      readonly kind: "fence";
      readonly name: string;
      readonly last: number;
      readonly closed: boolean;
      readonly nested: boolean;
    };

const { faults: words } = lessonWords;

/**
 * Cuts a lesson file into front matter, steps, blocks, notes and prose.
 *
 * Shape   text with any line ends → parts with their place in it. Never throws.
 */
export function layOut(text: string): LaidOut {
  const lines = text
    .replace(/^\uFEFF/, "")
    .replace(/\r\n?/g, "\n")
    .split("\n");
  const refused = refusal(text, lines);
  if (refused) return { frontMatter: undefined, steps: [], faults: [refused] };
  const found: { place: TextPlace; fault: LessonFault; step: number | undefined }[] = [];
  const bodyStart = frontMatterEnd(lines);
  if (bodyStart === 0) {
    const fault = isRule(lines[0]) ? words.openFrontMatter : words.noFrontMatter;
    found.push({ place: { line: 1, column: 1 }, fault, step: undefined });
  }
  const frontMatter =
    bodyStart === 0
      ? undefined
      : { text: lines.slice(1, bodyStart - 1).join("\n"), place: { line: 2, column: 1 } };
  const walk = new BodyWalk(lines, bodyStart, found);
  return { frontMatter, steps: walk.steps(), faults: found };
}

/** A file that is not read at all, and why. */
function refusal(text: string, lines: readonly string[]): LaidOut["faults"][number] | undefined {
  if (text.length > mostCharacters) {
    const fault = words.tooLong(text.length, mostCharacters);
    return { place: { line: 1, column: 1 }, fault, step: undefined };
  }
  const deep = lines.findIndex(
    (line) => tooDeep.test(line) && !/^[ \t]*([-*])(?:[ \t]*\1)*[ \t]*$/.test(line),
  );
  if (deep < 0) return undefined;
  const fault = words.tooDeep(lines[deep] ?? "");
  return { place: { line: deep + 1, column: 1 }, fault, step: undefined };
}

function isRule(line: string | undefined): boolean {
  return /^---\s*$/.test(line ?? "");
}

/** Index of the first line behind the front matter; 0 when there is none or it does not end. */
function frontMatterEnd(lines: readonly string[]): number {
  if (!isRule(lines[0])) return 0;
  return lines.findIndex((line, index) => index > 0 && isRule(line)) + 1;
}

/** Headings and fences by line; Markdown's own reader finds them, so that what a quote or a list holds is none. */
function marksOf(lines: readonly string[], start: number): Map<number, Mark> {
  const marks = new Map<number, Mark>();
  for (const { type, start: from, end, depth } of markdownTokens(lines.slice(start).join("\n"))) {
    const line = start + from.line - 1;
    if (type === "atxHeading" && depth === 0) {
      const [, signs = "", title = ""] =
        /^\s*(#{1,6})\s*(.*?)\s*#*\s*$/.exec(lines[line] ?? "") ?? [];
      marks.set(line, { kind: "heading", rank: signs.length, title });
    } else if (type === "codeFenced") {
      const text = (lines[line] ?? "").slice(depth === 0 ? 0 : from.column - 1);
      const name = /^\s*(?:`{3,}|~{3,})\s*(\S*)/.exec(text)?.[1] ?? "";
      const last = start + end.line - 1;
      const closed = last > line && /^[\s>]*(?:`{3,}|~{3,})\s*$/.test(lines[last] ?? "");
      marks.set(line, { kind: "fence", name, last, closed, nested: depth > 0 });
    }
  }
  return marks;
}

/** Goes through the body line by line. */
class BodyWalk {
  private readonly found: { place: TextPlace; fault: LessonFault; step: number | undefined }[];
  private readonly lines: readonly string[];
  private readonly marks: ReadonlyMap<number, Mark>;
  private readonly all: LaidStep[] = [];
  private prose: string[] = [];
  private proseStart = 0;
  private notes: { readonly start: number; readonly lines: string[] } | undefined;
  private readonly start: number;
  private toldBefore: boolean;

  constructor(lines: readonly string[], start: number, found: BodyWalk["found"]) {
    this.lines = lines;
    this.start = start;
    this.found = found;
    // Without its end, nobody knows where front matter stops: what stands before the first step is then no second problem.
    this.toldBefore = start === 0;
    this.marks = marksOf(lines, start);
  }

  steps(): LaidStep[] {
    for (let index = this.start; index < this.lines.length; index += 1) {
      const mark = this.marks.get(index);
      if (mark?.kind === "heading" && mark.rank <= 2) this.heading(index, mark.rank, mark.title);
      else if (mark?.kind === "fence") index = this.fence(index, mark);
      else this.plain(index);
    }
    this.endNotes();
    this.endProse();
    if (this.all.length === 0) this.tell(this.start, words.noStep);
    return this.all;
  }

  private tell(index: number, fault: LessonFault, column = 1): void {
    const step = this.all.length > 0 ? this.all.length - 1 : undefined;
    const current = this.all.at(-1);
    if (current) current.sound = false;
    const line = Math.min(index, this.lines.length - 1) + 1;
    this.found.push({ place: { line, column }, fault, step });
  }

  private heading(index: number, rank: number, title: string): void {
    if (rank === 1) {
      this.tell(index, words.otherHeading(this.lines[index] ?? ""));
      return;
    }
    this.endNotes();
    this.endProse();
    this.all.push({ title, line: index + 1, parts: [], sound: true });
    if (title === "") this.tell(index, words.emptyTitle);
  }

  /** Takes a fence whole and returns its last line. */
  private fence(index: number, { name, last, closed, nested }: Mark & { kind: "fence" }): number {
    const isBlock = (blockNames as readonly string[]).includes(name);
    const inside = nested || this.notes !== undefined;
    if (inside || (name === "" && closed)) {
      if (isBlock) this.tell(index, words.nestedBlock(name));
      for (let line = index; line <= last; line += 1) this.line(line);
      return last;
    }
    const swallows = this.lines.slice(index + 1, last).some((line) => /^(`{3}|## |:::)/.test(line));
    if (!closed || (isBlock && swallows)) this.tell(index, words.openBlock(name));
    else if (!isBlock) this.tell(index, words.unknownBlock(name, blockNames));
    else if (this.all.length === 0) this.before(index);
    else {
      this.endProse();
      const text = this.lines.slice(index + 1, last).join("\n");
      const place = { line: index + 2, column: 1 };
      this.all.at(-1)?.parts.push({ kind: "block", name: name as BlockName, text, place });
    }
    return last;
  }

  private plain(index: number): void {
    const [, name] = /^:::\s*(.*?)\s*$/.exec(this.lines[index] ?? "") ?? [];
    if (name === undefined) this.line(index);
    else if (name === "" && this.notes) this.closeNotes(index);
    else if (name === "") this.tell(index, words.strayEnd);
    else if (name !== "notes") this.tell(index, words.unknownSection(name));
    else if (this.all.length === 0) this.before(index);
    else {
      this.endNotes();
      this.endProse();
      this.notes = { start: index, lines: [] };
    }
  }

  private line(index: number): void {
    const text = this.lines[index] ?? "";
    if (this.notes) {
      this.notes.lines.push(text);
    } else if (this.all.length === 0) {
      if (text.trim() !== "") this.before(index);
    } else {
      if (this.prose.length === 0) this.proseStart = index;
      this.prose.push(text);
    }
  }

  /** One problem for all that stands before the first step. */
  private before(index: number): void {
    if (!this.toldBefore) this.tell(index, words.beforeFirstStep((this.lines[index] ?? "").trim()));
    this.toldBefore = true;
  }

  private endProse(): void {
    const text = this.prose.join("\n");
    const place = { line: this.proseStart + 1, column: 1 };
    if (text.trim() !== "") this.all.at(-1)?.parts.push({ kind: "prose", text, place });
    this.prose = [];
  }

  private closeNotes(index: number): void {
    const { start, lines } = this.notes ?? { start: index, lines: [] };
    this.notes = undefined;
    const text = lines.join("\n");
    if (text.trim() === "") this.tell(start, words.emptyNotes);
    else
      this.all.at(-1)?.parts.push({ kind: "notes", text, place: { line: start + 2, column: 1 } });
  }

  /** Notes that are still open where a step or the file ends. */
  private endNotes(): void {
    if (!this.notes) return;
    this.tell(this.notes.start, words.openNotes);
    this.notes = undefined;
  }
}
