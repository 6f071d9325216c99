import { readFileSync } from "node:fs";
import type { Page } from "playwright";
import { expect } from "vitest";
import { isExercise } from "../../src/lesson/lesson.js";
import { parseLesson } from "../../src/lesson/parse-lesson.js";
import { progressText } from "../../src/lesson/progress-file.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { brokenLesson, soundLesson } from "../lesson/lesson-texts.js";
import type { BenchPage } from "./bench-page.js";
import { axeProblems, stickingOut } from "./page-faults.js";
import { describeWalks, phone } from "./walks.js";

const list = "v=1&model=bassoon&page=lessons";
const choose = `${list}&lesson=01-parts.1`;
const today = Math.floor(Date.UTC(2026, 9, 5) / 86_400_000);

async function openList(bench: BenchPage, page: Page = bench.page): Promise<void> {
  await page.goto(`${bench.url}#${list}`);
  await page.locator("lesson-list h2").waitFor();
}

/** Answers the first question of a lesson. */
async function answer(bench: BenchPage, page: Page = bench.page, code = choose): Promise<void> {
  await page.goto(`${bench.url}#${code}`);
  await page.locator("lesson-choice input").first().check();
  await page.getByRole("button", { name: "Check", exact: true }).click();
  await page.locator("lesson-feedback .told").waitFor();
}

const backToList = (page: Page) =>
  page.getByRole("button", { name: "All lessons" }).first().click();

/** What the browser keeps of the page. */
const stored = (page: Page) =>
  page.evaluate(async () => ({
    databases: (await indexedDB.databases()).map(({ name }) => name),
    others: localStorage.length + sessionStorage.length + document.cookie.length,
  }));

const cardOf = (page: Page, number: number) =>
  page.locator("lesson-list .lesson").nth(number).innerText();

const keep = (page: Page) =>
  page.getByRole("checkbox", { name: "Keep my progress on this device" });

const pickFile = (page: Page, part: string, name: string, text: string) =>
  page
    .locator(`${part} input[type=file]`)
    .setInputFiles({ name, mimeType: "text/plain", buffer: Buffer.from(text) });

describeWalks(
  "progress in lessons",
  (walk) => {
    walk("nothing is stored before it is switched on, and nothing is left after", async (bench) => {
      const { page } = bench;
      await answer(bench);
      await backToList(page);
      expect(await cardOf(page, 0)).toContain("1 of 5 exercises answered");
      expect(await stored(page)).toEqual({ databases: [], others: 0 });
      await keep(page).check();
      await page.getByText("Kept in this browser").waitFor();
      expect(await axeProblems(page)).toEqual([]);
      await expect.poll(() => stored(page)).toEqual({ databases: ["reedpoint"], others: 0 });
      await keep(page).uncheck();
      await page.getByText("Nothing is kept: when").waitFor();
      expect(await stored(page)).toEqual({ databases: [], others: 0 });
      expect(await cardOf(page, 0)).toContain("1 of 5 exercises answered");
    });

    walk("another visit finds it; two pages do not overwrite each other", async (bench) => {
      const { page } = bench;
      await answer(bench);
      await backToList(page);
      await keep(page).check();
      const second = await page.context().newPage();
      await openList(bench, second);
      await expect.poll(() => cardOf(second, 0)).toContain("1 of 5");
      expect(await keep(second).isChecked()).toBe(true);
      await answer(bench, second, `${list}&lesson=02-sound.1`);
      await answer(bench, page, `${list}&lesson=01-parts.2`);
      const third = await page.context().newPage();
      await openList(bench, third);
      await expect.poll(() => cardOf(third, 0)).toContain("2 of 5");
      expect(await cardOf(third, 1)).toContain("1 of 5");
      await third.goto(`${bench.url}#${choose}`);
      await third.locator("lesson-feedback .told").waitFor();
    });

    walk("it is erased after one question, for every page that is open", async (bench) => {
      const { page } = bench;
      await answer(bench);
      await backToList(page);
      await keep(page).check();
      const second = await page.context().newPage();
      await openList(bench, second);
      await expect.poll(() => keep(second).isChecked()).toBe(true);
      await page.getByRole("button", { name: "Erase my progress …" }).click();
      await page.getByRole("button", { name: "Leave it" }).click();
      expect(await cardOf(page, 0)).toContain("1 of 5");
      await page.getByRole("button", { name: "Erase my progress …" }).click();
      await page.getByRole("button", { name: "Erase it" }).click();
      await expect.poll(() => cardOf(page, 0)).not.toContain("1 of 5");
      await expect.poll(() => keep(second).isChecked()).toBe(false);
      expect(await keep(page).isChecked()).toBe(true);
      await page.reload();
      await page.locator("lesson-list h2").waitFor();
      expect(await cardOf(page, 0)).not.toContain("1 of 5");
    });

    walk("what another page still holds does not come back after an erasure", async (bench) => {
      const { page } = bench;
      await answer(bench);
      await backToList(page);
      await keep(page).check();
      const second = await page.context().newPage();
      await openList(bench, second);
      await expect.poll(() => cardOf(second, 0)).toContain("1 of 5");
      await page.getByRole("button", { name: "Erase my progress …" }).click();
      await page.getByRole("button", { name: "Erase it" }).click();
      await second.locator(".told", { hasText: "Your progress is erased." }).waitFor();
      expect(await cardOf(second, 0)).not.toContain("1 of 5");
      expect(await keep(second).isChecked()).toBe(true);
      await second.reload();
      await openList(bench, second);
      await page.reload();
      await page.locator("lesson-list h2").waitFor();
      for (const one of [page, second]) expect(await cardOf(one, 0)).not.toContain("1 of 5");
    });

    walk("keeping that is switched off elsewhere is told, and no answer is lost", async (bench) => {
      const { page } = bench;
      await openList(bench);
      await keep(page).check();
      const second = await page.context().newPage();
      await answer(bench, second);
      await keep(page).uncheck();
      await second.locator(".told", { hasText: "Nothing is kept on this device" }).waitFor();
      await backToList(second);
      expect(await cardOf(second, 0)).toContain("1 of 5");
      expect(await stored(second)).toEqual({ databases: [], others: 0 });
    });

    walk("where the browser refuses, the page says so and goes on", async (bench) => {
      const { page } = bench;
      await page.addInitScript(() => {
        Object.defineProperty(window, "indexedDB", {
          get: () => {
            throw new DOMException("denied", "SecurityError");
          },
        });
      });
      await answer(bench);
      await backToList(page);
      await keep(page).check();
      await page.locator("progress-panel .refused").waitFor();
      await answer(bench, page, `${list}&lesson=01-parts.2`);
      await backToList(page);
      expect(await cardOf(page, 0)).toContain("2 of 5");
    });

    walk("where it begins to refuse later, that is said, too", async (bench) => {
      const { page } = bench;
      await openList(bench);
      await keep(page).check();
      await page.getByText("Kept in this browser").waitFor();
      await page.evaluate(() => {
        IDBObjectStore.prototype.put = () => {
          throw new DOMException("full", "QuotaExceededError");
        };
      });
      await page.locator("lesson-list .lesson").first().click();
      await page.locator("lesson-choice input").first().check();
      await bench.button("Check").click();
      await backToList(page);
      await page.locator("progress-panel .refused").waitFor();
      expect(await cardOf(page, 0)).toContain("1 of 5");
    });

    walk("goes out as a file and in again; a broken file is told by its place", async (bench) => {
      const { page } = bench;
      await answer(bench);
      await backToList(page);
      const download = page.waitForEvent("download");
      await page.getByRole("button", { name: "Save progress as a file" }).click();
      const file = await download;
      expect(file.suggestedFilename()).toMatch(/^reedpoint-progress-\d{4}-\d\d-\d\d\.json$/);
      const text = readFileSync(await file.path(), "utf8");
      await page.getByRole("button", { name: "Erase my progress …" }).click();
      await page.getByRole("button", { name: "Erase it" }).click();
      await expect.poll(() => cardOf(page, 0)).not.toContain("1 of 5");
      await pickFile(
        page,
        "progress-panel",
        "mine.json",
        text.replace('"locked": true', '"locked": 5'),
      );
      const told = page.locator("progress-panel .told");
      expect(await told.innerText()).toMatch(
        /mine\.json: runs\["01-parts"\].*locked is 5, but must be .*\nNothing was taken in\./,
      );
      await pickFile(page, "progress-panel", "mine.json", text);
      await expect.poll(() => cardOf(page, 0)).toContain("1 of 5");
      expect(await told.innerText()).toBe("Progress in 1 lesson was taken in.");
    });
  },
  { afresh: true },
);

/** The first question of three lessons, answered on a day. */
function oldProgress(day: number): string {
  const run = (file: string) => {
    const text = readFileSync(new URL(`../../lessons/en/${file}.md`, import.meta.url), "utf8");
    const { lesson } = parseLesson(text, { file, model: bassoonModel });
    const id = `0.${lesson!.steps[0]!.blocks.findIndex(isExercise)}`;
    const answered = { kind: "choose", option: 0 } as const;
    return {
      step: 0,
      day,
      exercises: { [id]: { locked: true, hints: 0, tries: 1, answer: answered } },
    };
  };
  const files = ["01-parts", "02-sound", "03-purposes"];
  return progressText({ runs: Object.fromEntries(files.map((file) => [file, run(file)])) });
}

describeWalks(
  "the mixed review",
  (walk) => {
    walk("becomes due after the gap, asks three things, and is done", async (bench) => {
      const { page } = bench;
      await page.clock.setSystemTime(new Date(2026, 9, 5, 12));
      await openList(bench);
      await pickFile(page, "progress-panel", "a.json", oldProgress(today - 2));
      await page.getByText("Progress in 3 lessons was taken in.").waitFor();
      expect(await page.locator("lesson-list .due").count()).toBe(0);
      await bench.code();
      await page.clock.setSystemTime(new Date(2026, 9, 6, 12));
      await page.reload();
      await page.getByRole("button", { name: "Begin the review" }).click();
      const titles: string[] = [];
      for (const number of [1, 2, 3]) {
        await page.locator("lesson-review .from").waitFor();
        expect(await bench.code()).toContain(`lesson=review.${number}`);
        titles.push(await page.locator("lesson-review .from").innerText());
        expect(await page.locator("lesson-feedback").count()).toBe(0);
        await page.locator("lesson-choice input").first().check();
        await bench.button("Check").click();
        await page.locator("lesson-feedback .told").waitFor();
        if (number === 1) expect(await axeProblems(page)).toEqual([]);
        if (number < 3) await bench.button("Next question").click();
      }
      expect(new Set(titles).size).toBe(3);
      await page.getByText("That was the review").waitFor();
      await page.reload();
      await page.getByText("That was the review").waitFor();
      await backToList(page);
      expect(await page.locator("lesson-list .due").count()).toBe(0);
    });
  },
  { afresh: true },
);

describeWalks(
  "a lesson file",
  (walk) => {
    walk("is picked, played, and there again after a reload", async (bench) => {
      const { page } = bench;
      await openList(bench);
      await pickFile(page, "lesson-file-drop", "two-moves.md", soundLesson);
      await page.locator("lesson-step h2").waitFor();
      expect(await page.locator("lesson-problems").innerText()).toBe("");
      expect(await page.locator("lesson-problems h2").innerText()).toBe(
        "two-moves.md: no problem was found.",
      );
      expect(await page.locator("lesson-player .title").innerText()).toBe("Two moves");
      await bench.button("Next step").click();
      expect(await page.locator("lesson-step h2").innerText()).toBe("Hands");
      expect(await bench.code()).toContain("lesson=file.2");
      await page.reload();
      await page.locator("lesson-step h2").waitFor();
      expect(await page.locator("lesson-step h2").innerText()).toBe("Hands");
      expect(await page.getByText("Let everybody point").count()).toBe(0);
    });

    walk("does not get the answers of another file, though progress is kept", async (bench) => {
      const { page } = bench;
      await openList(bench);
      await keep(page).check();
      await pickFile(page, "lesson-file-drop", "a.md", soundLesson);
      await page.locator("lesson-step h2").waitFor();
      await page.getByRole("button", { name: /^Step 2/ }).click();
      await page.locator("lesson-order button").nth(1).click();
      await bench.button("Check").click();
      await page.locator("lesson-feedback .told").waitFor();
      await pickFile(page, "lesson-file-drop", "b.md", soundLesson);
      await page.getByText("b.md").first().waitFor();
      await bench.code();
      await page.reload();
      await page.getByRole("button", { name: /^Step 2/ }).click();
      await page.locator("lesson-order").waitFor();
      expect(await page.locator("lesson-feedback").count()).toBe(0);
    });

    walk("that is dropped with faults: all are told, sound steps are played", async (bench) => {
      const { page } = bench;
      await openList(bench);
      const text = brokenLesson(
        "change: { bladeLength: 26.2 mm }",
        "change: { bladeLenght: 26.2 mm }",
      );
      const data = await page.evaluateHandle((content) => {
        const transfer = new DataTransfer();
        transfer.items.add(new File([content], "slip.md"));
        return transfer;
      }, text);
      await page.dispatchEvent("lessons-page", "dragover", { dataTransfer: data });
      await page.dispatchEvent("lessons-page", "drop", { dataTransfer: data });
      const problems = page.locator("lesson-problems li");
      await problems.first().waitFor();
      expect(await problems.allInnerTexts()).toEqual([
        expect.stringMatching(
          /^slip\.md, line 14, column \d+: .*bladeLenght.*Did you mean “bladeLength”\?$/,
        ),
      ]);
      expect(await page.locator("lesson-step").innerText()).toBe("");
      await page.getByText("This step has a problem, so it is not shown.").waitFor();
      await bench.button("Next step").click();
      await page.locator("lesson-order").waitFor();
      expect(await axeProblems(page)).toEqual([]);
    });

    walk("of which nothing can be played says so, and the next one opens", async (bench) => {
      const { page } = bench;
      await openList(bench);
      await pickFile(page, "lesson-file-drop", "empty.md", "");
      await page.locator("lesson-problems li").first().waitFor();
      expect(await page.locator("lesson-problems li").count()).toBe(2);
      await pickFile(page, "lesson-file-drop", "two-moves.md", soundLesson);
      await page.locator("lesson-step h2").waitFor();
    });

    walk(
      "on a phone: file, problems and progress fit",
      async (bench) => {
        const { page } = bench;
        await openList(bench);
        expect(await stickingOut(page)).toEqual([]);
        await pickFile(page, "lesson-file-drop", "empty.md", "");
        await page.locator("lesson-problems li").first().waitFor();
        expect(await stickingOut(page)).toEqual([]);
      },
      phone,
    );
  },
  { afresh: true },
);
