import { readdirSync, readFileSync } from "node:fs";
import type { Locator, Page } from "playwright";
import { expect } from "vitest";
import { exerciseReed, lessonMap, readingPlace } from "../../src/lesson/exercise-reed.js";
import { hintsFor } from "../../src/lesson/hints.js";
import { isExercise, type ExerciseBlock, type Lesson } from "../../src/lesson/lesson.js";
import { parseLesson } from "../../src/lesson/parse-lesson.js";
import { bassoonActions, bassoonModel } from "../../src/reed/bassoon.js";
import type { BenchPage } from "./bench-page.js";
import { describeWalks, phone } from "./walks.js";

const folder = new URL("../../lessons/en/", import.meta.url);
const course = readdirSync(folder)
  .toSorted()
  .map((file) => {
    const text = readFileSync(new URL(file, folder), "utf8");
    return {
      id: file.replace(/\.md$/, ""),
      lesson: parseLesson(text, { file, model: bassoonModel }).lesson!,
    };
  });

const exerciseAt = (page: Page, index: number): Locator =>
  page.locator("lesson-exercise").nth(index);

/** The last hint of an exercise: of a recipe its values, of a point one share, of an order the whole order. */
function lastHint(block: ExerciseBlock, lesson: Lesson) {
  const map = lessonMap(lesson, bassoonModel);
  const { hints: _own, ...bare } = block;
  return hintsFor(bare, { lesson, map, actions: bassoonActions })[2];
}

function sharesOf(block: ExerciseBlock & { readonly kind: "read" }, lesson: Lesson) {
  const reed = exerciseReed(lesson, block, bassoonModel);
  return readingPlace(block, reed, lessonMap(lesson, bassoonModel));
}

/** The element that has the focus, however deep it lies. */
const focused = (page: Page, what: string): Promise<boolean> =>
  page.evaluate((selector) => {
    let at = document.activeElement;
    while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
    return at?.matches(selector) ?? false;
  }, what);

/** Presses Tab until the focus is there; a keyboard user has no other way. */
async function tabTo(page: Page, what: string): Promise<void> {
  for (let presses = 0; presses < 90; presses += 1) {
    await page.keyboard.press("Tab");
    if (await focused(page, what)) return;
  }
  throw new Error(`Tab does not lead to ${what}`);
}

/** Values go into the fields in the order of the rows. */
async function typeRecipe(
  page: Page,
  card: Locator,
  values: Readonly<Record<string, number>>,
): Promise<void> {
  const rows = await card
    .locator("reed-feature-row")
    .evaluateAll((all) =>
      all.map((row) => (row as HTMLElement & { feature: { id: string } }).feature.id),
    );
  for (const id of rows) {
    await tabTo(page, "reed-feature-row input[type=text], input[type=text]");
    if (values[id] === undefined) continue;
    await page.keyboard.press("ControlOrMeta+a");
    await page.keyboard.type(String(values[id]));
    await page.keyboard.press("Enter");
  }
}

async function typeOrder(page: Page, card: Locator, wanted: readonly string[]): Promise<void> {
  const label = (id: string): string => bassoonActions.actions.find((one) => one.id === id)!.label;
  const now = async () => card.locator("lesson-order .move > span").allInnerTexts();
  await tabTo(page, "lesson-order button, button");
  for (const [place, id] of wanted.entries()) {
    const from = (await now()).indexOf(label(id));
    if (from === place) continue;
    // From the button that has the focus forward to "Earlier" of the move that has to rise.
    for (
      let presses = 0;
      !(await focused(page, `[aria-label="Earlier: ${label(id)}"]`));
      presses += 1
    ) {
      if (presses > 40) throw new Error(`Tab does not lead to ${id}`);
      await page.keyboard.press(presses < 12 ? "Tab" : "Shift+Tab");
    }
    for (let at = from; at > place; at -= 1) {
      await page.keyboard.press("Enter");
      await expect.poll(async () => (await now())[at - 1]).toBe(label(id));
      await expect.poll(() => focused(page, `[aria-label="Earlier: ${label(id)}"]`)).toBe(true);
    }
  }
}

/** Answers the open exercise with nothing but keys, and hands it in. */
async function answerByKeys(
  page: Page,
  card: Locator,
  block: ExerciseBlock,
  lesson: Lesson,
): Promise<void> {
  const { keyboard } = page;
  const hint = lastHint(block, lesson);
  switch (block.kind) {
    case "predict":
      await tabTo(page, ".plane");
      for (let k = 0; k < 5; k += 1) await keyboard.press("ArrowUp");
      await tabTo(page, "input[type=radio]");
      await keyboard.press("Space");
      break;
    case "choose": {
      await tabTo(page, "input[type=radio]");
      await keyboard.press("Space");
      const right = String(block.options.findIndex((option) => option.right));
      const below = await card
        .locator("lesson-choice input")
        .evaluateAll(
          (all, value) => all.findIndex((one) => one.getAttribute("value") === value),
          right,
        );
      for (let k = 0; k < below; k += 1) await keyboard.press("ArrowDown");
      break;
    }
    case "read": {
      for (const share of sharesOf(block, lesson)) {
        await tabTo(page, "input[type=number]");
        await keyboard.type(String(Math.round(share * 100)));
      }
      break;
    }
    case "order":
      if (hint.kind === "order") await typeOrder(page, card, hint.actions);
      break;
    default:
      if (hint.kind === "recipe") await typeRecipe(page, card, hint.values);
  }
  await tabTo(page, ".main");
  await keyboard.press("Enter");
  await card.locator("lesson-feedback:focus").waitFor();
  const verdict = await card.locator(".verdict").innerText();
  if (block.kind !== "predict")
    expect(`${lesson.title}: ${block.ask} ${verdict}`).toMatch(/Right\.$/);
}

async function playByKeys({ page, url }: BenchPage, id: string, lesson: Lesson): Promise<void> {
  page.setDefaultTimeout(10_000);
  await page.goto(`${url}#v=1&model=bassoon&page=lessons&lesson=${id}.1`);
  await page.locator("lesson-player h2").first().waitFor();
  for (const [index, { title, blocks }] of lesson.steps.entries()) {
    await page.locator("lesson-step h2", { hasText: title }).waitFor();
    for (const [k, block] of blocks.filter(isExercise).entries())
      await answerByKeys(page, exerciseAt(page, k), block, lesson);
    await tabTo(page, index < lesson.steps.length - 1 ? ".next" : ".back");
    await page.keyboard.press("Enter");
  }
  await page.locator("lesson-list").waitFor();
}

describeWalks("the course by keyboard alone", (walk) => {
  walk("every lesson is played from its first step to its last", async (bench) => {
    for (const { id, lesson } of course) await playByKeys(bench, id, lesson);
    const cards = await bench.page.locator("lesson-list .lesson").allInnerTexts();
    expect(cards.filter((card) => !card.includes("All answered"))).toEqual([]);
  });
});

/** Answers with a finger: whatever it is, the lesson goes on. */
async function answerByTouch(
  bench: BenchPage,
  card: Locator,
  block: ExerciseBlock,
  lesson: Lesson,
): Promise<void> {
  const { page } = bench;
  if (block.kind === "predict") {
    await card.locator("triangle-plane svg").scrollIntoViewIfNeeded();
    await bench.tapTriangle([0.5, 0.25, 0.25]);
    await card.getByRole("radio").first().tap();
  } else if (block.kind === "choose") {
    const right = block.options.findIndex((option) => option.right);
    await card.locator(`lesson-choice input[value="${right}"]`).tap();
  } else if (block.kind === "read") {
    for (const [k, share] of sharesOf(block, lesson).entries()) {
      await card.locator("lesson-reading input").nth(k).tap();
      await page.keyboard.type(String(Math.round(share * 100)));
    }
  } else if (block.kind === "order") {
    await card.locator("lesson-order button").nth(1).tap();
  } else {
    const slider = card.locator("input[type=range]").first();
    await slider.scrollIntoViewIfNeeded();
    const { x, y, width, height } = (await slider.boundingBox())!;
    await page.touchscreen.tap(x + 0.7 * width, y + height / 2);
  }
  await card.locator(".main").tap();
  await card.locator("lesson-feedback .told").waitFor();
}

describeWalks("three lessons by touch", (walk) => {
  for (const id of ["02-sound", "04-triangle", "06-shape"])
    walk(
      id,
      async (bench) => {
        const { page, url } = bench;
        const { lesson } = course.find((one) => one.id === id)!;
        await page.goto(`${url}#v=1&model=bassoon&page=lessons`);
        await page.locator("lesson-list .lesson", { hasText: lesson.title }).tap();
        for (const [index, { title, blocks }] of lesson.steps.entries()) {
          await page.locator("lesson-step h2", { hasText: title }).waitFor();
          for (const [k, block] of blocks.filter(isExercise).entries())
            await answerByTouch(bench, exerciseAt(page, k), block, lesson);
          await page.locator(index < lesson.steps.length - 1 ? ".next" : "button[slot=end]").tap();
        }
        const card = page.locator("lesson-list .lesson", { hasText: lesson.title });
        expect(await card.innerText()).toContain("All answered");
      },
      phone,
    );
});
