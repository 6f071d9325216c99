import type { Block, Lesson } from "./lesson.js";
import { wordCount } from "./prose.js";

/** Reading with a drawing to look at; an assumption. */
const wordsPerMinute = 130;

/** Minutes that a student needs to do and think about each kind of block, beyond reading it; assumptions. */
const minutesToDo: Readonly<Record<Block["kind"], number>> = {
  prose: 0,
  claim: 0,
  show: 0.5,
  predict: 1,
  aim: 2,
  choose: 0.75,
  order: 1,
  read: 1,
  "stand-in": 2,
};

/**
 * How long a lesson takes a student: reading at 130 words a minute, and doing.
 *
 * Unit    minutes.
 *
 * @example readingTime({ steps: [] }) → 0
 */
export function readingTime({ steps }: Pick<Lesson, "steps">): number {
  const blocks = steps.flatMap((step) => step.blocks);
  const titles = steps.map(({ title }) => title).join(" ");
  const words = blocks.reduce((sum, block) => sum + wordsOf(block), wordCount(titles));
  return words / wordsPerMinute + blocks.reduce((sum, { kind }) => sum + minutesToDo[kind], 0);
}

function wordsOf(block: Block): number {
  if (block.kind === "prose") return wordCount(block.html);
  if (block.kind === "claim") return wordCount(block.says);
  if (block.kind === "show") return wordCount(block.caption ?? "");
  const options =
    block.kind === "choose" ? block.options.flatMap(({ text, why }) => [text, why]) : [];
  return wordCount([block.ask, block.why ?? "", ...options].join(" "));
}
