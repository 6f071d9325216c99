import { describe, expect, test } from "vitest";
import { shareDistance, lessonMap } from "../../src/lesson/exercise-reed.js";
import { feedbackOn } from "../../src/lesson/feedback.js";
import type { Answer } from "../../src/lesson/answer.js";
import { lessonState, reduceLesson } from "../../src/lesson/lesson-state.js";
import { stepView, type ExerciseView } from "../../src/lesson/lesson-view.js";
import { place } from "../../src/engine/place.js";
import { solveFor } from "../../src/engine/solve.js";
import { allRoundValues } from "../../src/reed/all-round-values.js";
import { bassoonActions, bassoonModel } from "../../src/reed/bassoon.js";
import { lessonEnglish } from "../../src/reed/lesson-catalogue.js";
import { targetRadius } from "../../src/reed/targets.js";
import { lessonFrom } from "../scorm/made-lesson.js";
import { fence, lessonOf } from "./lesson-texts.js";

const map = lessonMap({}, bassoonModel);
const telling = { map, actions: bassoonActions, text: lessonEnglish, unit: "mm" as const };

/** An exercise alone, answered and handed in. */
function handedIn(block: string, answer: Answer): ExerciseView {
  const lesson = lessonFrom(lessonOf(block));
  const open = reduceLesson(
    lessonState(lesson),
    { type: "answer", exercise: "0.0", answer },
    lesson,
  );
  const run = reduceLesson(open, { type: "lock", exercise: "0.0" }, lesson);
  return stepView(lesson, run, telling).blocks[0] as ExerciseView;
}
const saysOf = (view: ExerciseView): string => feedbackOn(view, telling)!.says.join(" ");

describe("a distance is the greatest difference in a share", () => {
  const aim = fence("aim", "ask: Get there.", "target: [50, 28, 22]", "within: 6", "why: Solved.");
  const to = (high: number, low: number): ExerciseView =>
    handedIn(aim, {
      kind: "aim",
      values: solveFor(map, allRoundValues(bassoonModel), [high, low, 1 - high - low], {}).values,
    });

  test("6 points off in a share is within 6", () => {
    const view = to(0.44, 0.31);
    expect(view.mark).toMatchObject({ there: true });
    expect(saysOf(view)).toContain("The point is there.");
  });

  test("what is told of a miss is more than what counts as there", () => {
    expect(saysOf(to(0.42, 0.36))).toContain(
      "The point is still 8 points away. Up to 6 points counts as there.",
    );
    expect(saysOf(to(0.437, 0.31))).toContain("still 6.3 points away. Up to 6 points counts");
  });

  test("whoever went the wrong way is told so, and nothing is told as if it were solved", () => {
    const view = to(0.2, 0.4);
    expect(saysOf(view)).toContain(
      "The point is 30 points away, further than at the start: that was 17 points.",
    );
    expect(view.why).toBe(undefined);
    expect(to(0.5, 0.28).why).toBe("Solved.");
  });

  test("every place in the drawn zone of a part is there", () => {
    const part = handedIn(fence("aim", "ask: Go.", "target: highSolo"), {
      kind: "aim",
      values: {},
    });
    const { within, target } = part.given;
    for (let angle = 0; angle < 360; angle += 5) {
      const [a, b] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
      const off = [
        a * Math.SQRT1_2 + b / Math.sqrt(6),
        -a * Math.SQRT1_2 + b / Math.sqrt(6),
        (-2 * b) / Math.sqrt(6),
      ];
      const at = target!.map((share, k) => share + targetRadius * off[k]!) as [
        number,
        number,
        number,
      ];
      expect(shareDistance(at, target!)).toBeLessThanOrEqual(within! + 1e-9);
    }
  });

  test("a guess is told as far from the outcome as the two differ in a share", () => {
    const block = fence("predict", "ask: Where?", "change: { bladeLength: 26.2 }");
    const [high, low, loud] = place(map, {
      ...allRoundValues(bassoonModel),
      bladeLength: 26.2,
    }).raw;
    const view = handedIn(block, {
      kind: "predict",
      guess: [high - 0.08, low + 0.04, loud + 0.04],
      sure: 2,
    });
    expect(saysOf(view)).toContain("It lies 8 points from where the point went.");
  });

  test("of a guess that goes another way it is not told how far it goes", () => {
    const block = fence("predict", "ask: Where?", "change: { bladeLength: 26.2 }");
    const view = handedIn(block, { kind: "predict", guess: [0.05, 0.7, 0.25], sure: 2 });
    expect(saysOf(view)).toContain("Your guess points another way. It lies");
  });
});
