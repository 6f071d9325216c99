import { readFileSync, writeFileSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, Page } from "playwright";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { shippedLessons } from "../../src/app/shipped-lessons.js";
import { dist } from "./built-sizes.js";
import { chromiumPath, launch } from "./chromium.js";
import { heard, openCoursePage, scripts } from "./course-page.js";
import { axeProblems, stickingOut } from "./page-faults.js";

const shape = readFileSync(new URL("../../lessons/en/06-shape.md", import.meta.url), "utf8");
/** The same, with a claim that is false and a step whose question lacks its change. */
const broken = `${shape.replace("shorter bladeLength → high", "shorter bladeLength → loud")}
## A step that lacks something

\`\`\`predict
ask: Where to?
\`\`\`
`;

interface LessonOnPage extends HTMLElement {
  source: unknown;
  run: { step: number; exercises: Record<string, { locked: boolean }> } | null;
  step: unknown;
  reset(): void;
}

interface LessonHeard {
  readonly type: string;
  readonly detail: Readonly<Record<string, unknown>>;
}

const told = async (page: Page) => (await heard(page)) as unknown as LessonHeard[];
const title = (page: Page, of = "reed-lesson") => page.locator(`${of} lesson-step h2`).innerText();

/** Puts the point somewhere, says how sure, and locks in; by keys alone. */
async function predict(page: Page): Promise<void> {
  await page.locator("lesson-predict .plane").focus();
  await page.keyboard.press("ArrowUp");
  await page.getByRole("radio", { name: "Fairly sure" }).check();
  await page.getByRole("button", { name: "Lock in" }).click();
  await page.locator("lesson-feedback .verdict").waitFor();
}

describe.skipIf(chromiumPath === undefined)("a lesson on somebody else's page", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(async () => {
    await browser.close();
  });

  test("tells of answers, hints and steps as plain data, and goes on from what the page has kept", async () => {
    const body = '<div style="width: 300px"><reed-lesson lesson="06-shape"></reed-lesson></div>';
    const page = await openCoursePage(browser, body);
    await page.locator("reed-lesson lesson-step h2").waitFor();
    expect(await page.evaluate(() => document.activeElement!.localName)).toBe("body");
    await page.getByRole("button", { name: "Hint" }).click();
    await predict(page);
    const all = await told(page);
    expect(all.filter(({ type }) => type === "reed-lesson-worked")).toHaveLength(2);
    expect(all.filter(({ type }) => type === "change")).toHaveLength(2);
    expect(all.filter(({ type }) => type === "input").length).toBeGreaterThan(2);
    const { detail } = all.at(-1)!;
    expect(detail).toMatchObject({ lesson: "06-shape", step: 1, exercise: "0.1", done: 1 });
    expect(detail["grade"]).toMatch(/right|partly|wrong/);
    expect(await page.locator("reed-lesson > *, reed-lesson").first().getAttribute("style")).toBe(
      null,
    );
    const verdict = await page.locator("lesson-feedback .verdict").innerText();
    // What is told of the answer has the focus, and is said by nothing else.
    await page.locator("lesson-feedback .told:focus").waitFor();
    expect(await page.getByRole("group", { name: verdict, exact: true }).count()).toBe(1);
    const said = await page.locator("reed-lesson").getByRole("status").allInnerTexts();
    expect(said.join(" ")).not.toContain(verdict);
    await page.getByRole("button", { name: "Next step" }).click();
    expect(await title(page)).toBe("Its neighbour");
    await page.locator("lesson-step h2:focus").waitFor();
    expect((await told(page)).at(-1)).toMatchObject({
      type: "reed-step-turned",
      detail: { step: 2 },
    });
    expect(await stickingOut(page)).toEqual([]);
    expect(await page.evaluate(() => [localStorage.length, document.cookie])).toEqual([0, ""]);
    const kept = (await told(page)).at(-1)!.detail["run"];
    const told2 = (await told(page)).length;
    const runs = await page.evaluate(async (run) => {
      const other = document.createElement("reed-lesson") as LessonOnPage;
      other.setAttribute("lesson", "06-shape");
      other.run = run as LessonOnPage["run"];
      document.body.replaceChildren(other);
      while (!other.shadowRoot?.querySelector("lesson-player"))
        await new Promise((resolve) => setTimeout(resolve, 50));
      const before = other.run;
      other.reset();
      const after = other.run;
      other.run = run as LessonOnPage["run"];
      await new Promise((resolve) => setTimeout(resolve, 50));
      other.setAttribute("lesson", "08-scrape");
      await new Promise((resolve) => setTimeout(resolve, 50));
      while (!other.shadowRoot?.querySelector("lesson-player"))
        await new Promise((resolve) => setTimeout(resolve, 50));
      return { before, after, elsewhere: other.run };
    }, kept);
    // Answers belong to the lesson they were given in.
    expect(runs.elsewhere).toEqual({ step: 0, exercises: {} });
    expect(runs.before).toEqual(kept);
    expect(runs.after).toEqual({ step: 0, exercises: {} });
    expect((await told(page)).length).toBe(told2);
    await page.close();
  });

  test("reads a lesson file of the page's own server with all its problems, and plays its sound steps", async () => {
    const page = await openCoursePage(browser, "");
    await page.route("**/own/shape.md", (route) => route.fulfill({ body: broken }));
    await page.evaluate(() => {
      const lesson = document.createElement("reed-lesson");
      lesson.setAttribute("lesson", "own/shape.md");
      document.querySelector("main")!.append(lesson);
    });
    await page.locator("reed-lesson lesson-problems li").nth(1).waitFor();
    const problems = await page.locator("lesson-problems li").allInnerTexts();
    expect(problems.join("\n")).toMatch(/shape\.md, line \d+.*change is missing/);
    expect(problems.join("\n")).toMatch(/bladeLength → loud/);
    await page.locator("reed-lesson .step").nth(1).click();
    await predict(page);
    await page.locator("reed-lesson .step").last().click();
    expect(await page.locator("lesson-step p").innerText()).toMatch(/has a problem/);
    // What stands there for the teacher alone is nowhere on the page.
    const notes = /:::notes\n+(.{20})/.exec(shape)![1]!;
    for (const step of await page.locator("reed-lesson .step").all()) {
      await step.click();
      const written = (await page.locator("reed-lesson *").allTextContents()).join(" ");
      expect(written).not.toContain(notes);
    }
    expect(await axeProblems(page)).toEqual([]);
    await page.close();
  });

  test("plays a text or a lesson that the page gives as a property", async () => {
    const page = await openCoursePage(browser, "<reed-lesson></reed-lesson>");
    const given = await page.evaluate(async (text) => {
      const element = document.querySelector("reed-lesson") as LessonOnPage;
      const until = async (selector: string): Promise<void> => {
        if (element.shadowRoot?.querySelector(selector)) return;
        await new Promise((resolve) => setTimeout(resolve, 50));
        await until(selector);
      };
      await until("[role=alert]");
      element.source = text;
      await until("lesson-player");
      const read = element.source as { title: string };
      element.source = { ...read, title: "Another title" };
      element.setAttribute("step", "3");
      await until("lesson-player");
      return [read.title, element.step];
    }, shape);
    expect(given).toEqual(["Long, short, wide, narrow", 3]);
    await page.getByRole("heading", { name: "Another title" }).waitFor();
    expect(await title(page)).toBe("The one that is different");
    expect(await told(page)).toEqual([]);
    await page.close();
  });

  test("says on the page what cannot be played, and warns once of what it does not understand", async () => {
    const warnings: string[] = [];
    const page = await openCoursePage(browser, "");
    await page.route("**/missing.md", (route) => route.fulfill({ status: 404 }));
    page.on("console", (message) => {
      if (message.type() === "warning") warnings.push(message.text());
    });
    await page.evaluate(() => {
      document.querySelector("main")!.innerHTML = `
        <reed-lesson lesson="66-nothing"></reed-lesson><reed-lesson lesson="66-nothing"></reed-lesson>
        <reed-lesson lesson="https://elsewhere.example/a.md"></reed-lesson>
        <reed-lesson lesson="missing.md"></reed-lesson>
        <reed-lesson lesson="06-shape" step="99" theme="pink" lang="xx" model="flute"></reed-lesson>`;
    });
    await page.locator("reed-lesson lesson-player").waitFor();
    await page.waitForFunction(
      () =>
        [...document.querySelectorAll("reed-lesson")].filter((one) =>
          one.shadowRoot?.querySelector("[role=alert]"),
        ).length === 4,
    );
    const alerts = await page.locator("reed-lesson [role=alert]").allInnerTexts();
    expect(alerts[0]).toBe("There is no lesson “66-nothing”.");
    expect(alerts[2]).toMatch(/lies on another server/);
    expect(alerts[3]).toMatch(/missing\.md .* answers 404/);
    expect(await title(page)).toBe("One change");
    for (const name of ["lesson", "step", "theme", "lang", "model"])
      expect(
        warnings.filter((line) => line.startsWith(`Reedpoint: ${name}: `)),
        name,
      ).toHaveLength(1);
    // A model that lacks what the lesson speaks of.
    await page.evaluate(() => {
      const element = document.querySelector("reed-lesson[step]") as HTMLElement & {
        model: { features: readonly { id: string }[]; ratios: readonly unknown[] };
      };
      const { model } = element;
      const features = model.features.filter(({ id }) => id !== "tipWidth");
      element.model = { ...model, features, ratios: [] };
    });
    await page.locator("reed-lesson[step] [role=alert]").waitFor();
    expect(await page.locator("reed-lesson[step] [role=alert]").innerText()).toMatch(
      /needs features/,
    );
    await page.close();
  });

  test("from a disk the classic script has the lessons and their readers inside", async () => {
    const folder = mkdtempSync(join(tmpdir(), "reedpoint-lesson-"));
    const script = pathToFileURL(join(dist, "elements/reed-lesson.classic.js")).href;
    const path = join(folder, "course.html");
    writeFileSync(
      path,
      `<!doctype html><html lang="en"><title>Course</title><script src="${script}"></script>
      <reed-lesson id="one" lesson="14-casebook"></reed-lesson><reed-lesson id="two"></reed-lesson>
      <reed-lesson id="three" lesson="own.md"></reed-lesson>
      <script>two.source = ${JSON.stringify(shape)};</script>`,
    );
    const page = await browser.newPage();
    await page.goto(pathToFileURL(path).href);
    await page.locator("#one lesson-step h2").waitFor();
    await page.locator("#two lesson-step h2").waitFor();
    expect(await page.locator("#three [role=alert]").innerText()).toMatch(/may fetch nothing/);
    rmSync(folder, { recursive: true });
    await page.close();
  });

  test("in a frame with a sandbox it plays, too, and tells the page around which step is shown", async () => {
    const frame = `${inject("appUrl")}lesson-frame.html#v=1&model=bassoon&lesson=06-shape.2`;
    const page = await browser.newPage();
    await page.setContent(
      `<script>window.said = []; addEventListener("message", ({ data }) => said.push(data));</script>
      <iframe sandbox="allow-scripts" src="${frame.replaceAll("&", "&amp;")}"></iframe>`,
    );
    const inside = page.frameLocator("iframe");
    await inside.getByRole("heading", { name: "Its neighbour" }).waitFor();
    await page.evaluate(() => {
      const { contentWindow } = document.querySelector("iframe")!;
      contentWindow!.postMessage({ reedpoint: 1, type: "tell" }, "*");
    });
    await inside.getByRole("button", { name: "Next step" }).click();
    await inside.getByRole("heading", { name: "The one that is different" }).waitFor();
    const said = await page.evaluate(
      () => (window as unknown as { said: { type: string; code?: string }[] }).said,
    );
    expect(said.filter(({ type }) => type === "changed").map(({ code }) => code)).toEqual([
      "v=1&model=bassoon&page=lessons&lesson=06-shape.3",
    ]);
    await page.evaluate(() => {
      const { contentWindow } = document.querySelector("iframe")!;
      const code = "v=1&model=bassoon&page=lessons&lesson=01-parts.1";
      contentWindow!.postMessage({ reedpoint: 1, type: "open", code }, "*");
    });
    const { title: first } = shippedLessons.find(({ id }) => id === "01-parts")!;
    await inside.getByRole("heading", { name: first }).waitFor();
    await page.close();
  });

  test("both classic scripts on one page get along", async () => {
    const body = '<reed-triangle></reed-triangle><reed-lesson lesson="06-shape"></reed-lesson>';
    const faults: string[] = [];
    const page = await openCoursePage(browser, body, { script: scripts.classic }, (fault) =>
      faults.push(fault),
    );
    await page.locator("reed-lesson lesson-step h2").waitFor();
    await predict(page);
    expect(faults).toEqual([]);
    await page.close();
  });
});
