import { lessonWords } from "../reed/lesson-words.js";
import type { ChooseBlock, Lesson } from "./lesson.js";
import { listedOrder } from "./lesson-view.js";

/** From here on the right options are told by their place or length: two fifths, and one more for what chance does to few. */
function isTooOften(count: number, all: number): boolean {
  return count > 0.4 * all + 1.2;
}

/**
 * What would let a student find right options without reading them: they stand too often at one place as a class sees
 * them, or are the longest too often. Remarks, no problems; judgement, no source.
 *
 * Shape   lessons together → sentences; none where there is nothing to remark.
 *
 * @example choiceRemarks([]) → []
 */
export function choiceRemarks(lessons: readonly Pick<Lesson, "steps">[]): readonly string[] {
  const choices = lessons
    .flatMap(({ steps }) => steps.flatMap(({ blocks }) => blocks))
    .filter((block): block is ChooseBlock => block.kind === "choose");
  const words = lessonWords.remarks;
  const all = choices.length;
  const places = [0, 1, 2, 3, 4, 5].map(
    (place) => choices.filter((one) => one.options[listedOrder(one)[place] ?? -1]?.right).length,
  );
  const most = Math.max(...places);
  const longest = choices.filter(isLongestRight).length;
  return [
    ...(isTooOften(most, all) ? [words.samePlace(places.indexOf(most) + 1, most, all)] : []),
    ...(isTooOften(longest, all) ? [words.longest(longest, all)] : []),
  ];
}

/** Whether a right option has more letters than every wrong one. */
function isLongestRight({ options }: ChooseBlock): boolean {
  const lengths = (which: boolean): number[] =>
    options.filter(({ right }) => right === which).map(({ text }) => text.length);
  return Math.max(...lengths(true)) > Math.max(...lengths(false));
}
