import { micromark, parse, postprocess, preprocess } from "micromark";
import type { LessonFault } from "../reed/lesson-words.js";
import { lessonWords } from "../reed/lesson-words.js";
import type { TextPlace } from "./lesson.js";

// Raw HTML is shown as the text it is, a picture from elsewhere would tell its server who reads: neither is ever built.
const off = { disable: { null: ["htmlFlow", "htmlText", "labelStartImage"] } };

const mayLeadTo = /^(?:https?:\/\/|mailto:)/i;

/**
 * Prose as safe HTML: no element or attribute of the author's, no picture, no link that runs a script.
 *
 * Shape   any Markdown → HTML of the library's own elements; links lead to http, https or mail alone.
 *
 * @example proseHtml("*tip*") → "<p><em>tip</em></p>"
 */
export function proseHtml(text: string): string {
  const html = micromark(text, { extensions: [off] });
  // What the library lets through beyond the web and mail loses its address, too.
  return html.replace(/ href="([^"]*)"/g, (whole, address: string) =>
    mayLeadTo.test(address) ? whole : "",
  );
}

/** A token of Markdown with its lines; the library's own types are not its public face. */
export interface MarkdownToken {
  readonly type: string;
  readonly start: TextPlace & { readonly offset: number };
  readonly end: TextPlace & { readonly offset: number };
  /** How many quotes and lists it stands in. */
  readonly depth: number;
}

const containers = new Set(["blockQuote", "listUnordered", "listOrdered"]);

/** Every token of a Markdown text, in order. */
export function markdownTokens(text: string): MarkdownToken[] {
  const events = postprocess(
    parse()
      .document()
      .write(preprocess()(text, undefined, true)),
  );
  let depth = 0;
  return events.flatMap(([event, { type, start, end }]) => {
    if (containers.has(type)) depth += event === "enter" ? 1 : -1;
    return event === "enter" ? [{ type, start, end, depth }] : [];
  });
}

/**
 * What prose holds that is never shown as its author meant it: raw HTML, pictures, links to anything but web and mail.
 *
 * Shape   Markdown → faults with their place in it, line and column counted from 1.
 */
export function proseFaults(text: string): { place: TextPlace; fault: LessonFault }[] {
  const lines = text.split("\n");
  return markdownTokens(text).flatMap(({ type, start, end }) => {
    const written = (): string =>
      start.line === end.line
        ? (lines[start.line - 1] ?? "").slice(start.column - 1, end.column - 1)
        : (lines[start.line - 1] ?? "").slice(start.column - 1);
    const fault = faultOf(type, written);
    return fault ? [{ place: { line: start.line, column: start.column }, fault }] : [];
  });
}

function faultOf(type: string, written: () => string): LessonFault | undefined {
  const { faults } = lessonWords;
  if (type === "htmlFlow" || type === "htmlText") return faults.html(written());
  if (type === "image") return faults.picture(written());
  const leads =
    type === "resourceDestinationString" ||
    type === "definitionDestinationString" ||
    type === "autolinkProtocol";
  return leads && !mayLeadTo.test(written()) ? faults.link(written()) : undefined;
}

/** The words of a piece of safe HTML, for counting. */
export function wordCount(html: string): number {
  return html.replace(/<[^>]*>/g, " ").match(/\S+/g)?.length ?? 0;
}
