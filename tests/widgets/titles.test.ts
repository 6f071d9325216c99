import { afterEach, expect, test } from "vitest";
import { BenchHeader } from "../../src/app/bench-header.js";
import { lessonState } from "../../src/lesson/lesson-state.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { define } from "../../src/widgets/define.js";
import { LessonPlayer } from "../../src/widgets/lesson-player.js";
import { ReedFeatureRow } from "../../src/widgets/reed-feature-row.js";
import { ReedLipAssumption } from "../../src/widgets/reed-lip-assumption.js";
import { madeLesson } from "../scorm/made-lesson.js";

define("bench-header", BenchHeader);
define("lesson-player", LessonPlayer);
define("reed-feature-row", ReedFeatureRow);
define("reed-lip-assumption", ReedLipAssumption);

afterEach(() => document.body.replaceChildren());

/** What a button is called: its label, else its text but for what is hidden, else its title. */
function nameOf(button: Element): string {
  const content = button.cloneNode(true) as Element;
  for (const hidden of content.querySelectorAll("[aria-hidden=true]")) hidden.remove();
  const { textContent } = content;
  const text = textContent.trim();
  return button.getAttribute("aria-label") ?? (text || button.getAttribute("title") || "");
}

const places = [
  ["reed-feature-row", { feature: bassoonModel.features[0], value: 15 }, 3],
  ["reed-lip-assumption", { name: "youngsModulus", value: 9 }, 1],
  ["bench-header", { compact: true }, 2],
  ["lesson-player", { lesson: madeLesson, run: lessonState(madeLesson), model: bassoonModel }, 2],
] as const;

test.each(places)("%s says no name twice", async (tag, properties, least) => {
  const element = Object.assign(document.createElement(tag), properties) as ReedFeatureRow;
  document.body.append(element);
  await element.updateComplete;
  const titled = [...element.renderRoot.querySelectorAll("button[title]")];
  expect(titled.length).toBeGreaterThanOrEqual(least);
  for (const button of titled) {
    const [name, title] = [nameOf(button), button.getAttribute("title")!];
    expect(name).not.toBe("");
    // A title that is not itself the name describes the button: it is read after the name.
    const isName = !button.hasAttribute("aria-label") && name === title;
    expect(isName || !name.includes(title)).toBe(true);
  }
});

test("lock and × are called by their titles alone", async () => {
  const row = Object.assign(new ReedFeatureRow(), { feature: bassoonModel.features[0], value: 15 });
  document.body.append(row);
  await row.updateComplete;
  const names = [...row.renderRoot.querySelectorAll(".icon")].map(nameOf);
  expect(names).toEqual([
    row.text.recipe.lock(row.feature.label),
    row.text.recipe.forget(row.feature.label),
  ]);
});

test("× of a locked feature cannot be pressed", async () => {
  const row = Object.assign(new ReedFeatureRow(), {
    feature: bassoonModel.features[0],
    value: 15,
    locked: true,
  });
  document.body.append(row);
  await row.updateComplete;
  const forget = row.renderRoot.querySelector<HTMLButtonElement>(".forget")!;
  expect(forget.disabled).toBe(true);
});
