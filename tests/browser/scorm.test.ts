import { readFileSync } from "node:fs";
import type { Browser, FrameLocator, Page } from "playwright";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { packageFiles, type PackageOrder } from "../../src/scorm/lesson-package.js";
import { madeLesson, shortLesson } from "../scorm/made-lesson.js";
import { strictFaults } from "../scorm/strict-platform.js";
import { dist } from "./built-sizes.js";
import { chromiumPath, launch } from "./chromium.js";
import { axeProblems, stickingOut } from "./page-faults.js";
import { callsOf, openInFrame, servePlatform, type HostWindow } from "./platform-host.js";

const player = {
  get script() {
    return readFileSync(`${dist}scorm/lesson.js`, "utf8");
  },
  get style() {
    return readFileSync(`${dist}scorm/lesson.css`, "utf8");
  },
};
const filesFor = (order: PackageOrder, lesson = madeLesson) =>
  packageFiles([lesson], order, player);

const names = async (page: Page): Promise<string[]> =>
  (await callsOf(page)).map(({ call }) => call);

/** Locks a guess in, by the keyboard. */
async function predict(sco: FrameLocator): Promise<void> {
  await sco.locator("lesson-predict .plane").focus();
  await sco.locator("lesson-predict .plane").press("ArrowUp");
  await sco.getByRole("radio", { name: "Fairly sure" }).check();
  await sco.getByRole("button", { name: "Lock in" }).click();
  await sco.locator("lesson-feedback .told").first().waitFor();
}

async function choose(sco: FrameLocator, option: number): Promise<void> {
  await sco.locator(`lesson-choice input[value="${option}"]`).check();
  await sco.locator("lesson-exercise").nth(1).getByRole("button", { name: "Check" }).click();
}

describe.skipIf(chromiumPath === undefined)("a lesson on a learning platform", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(async () => {
    await browser.close();
  });

  /** A platform's page; what goes wrong on it or in the lesson. */
  async function platform(order: PackageOrder = { edition: "1.2" }, lesson = madeLesson) {
    const server = await servePlatform(order.edition, filesFor(order, lesson));
    const context = await browser.newContext({ reducedMotion: "reduce" });
    const faults: string[] = [];
    context.on("console", (message) => faults.push(message.text()));
    context.on("weberror", (error) => faults.push(error.error().message));
    const page = await context.newPage();
    await page.goto(`${server.url}host.html`);
    const close = async (): Promise<void> => {
      expect(faults).toEqual([]);
      await context.close();
      server.close();
    };
    return { page, server, close };
  }

  test("two sittings in a frame that is removed: the second begins where the first ended", async () => {
    const { page, server, close } = await platform();
    await openInFrame(page, "index.html");
    const sco = page.frameLocator("iframe");
    expect(await sco.locator("header").innerText()).toMatch(
      /0 of 6 exercises answered\s+Connected/,
    );
    await predict(sco);
    await choose(sco, 0);
    expect(await sco.locator("lesson-feedback .verdict").last().innerText()).toMatch(
      /^Not this time/,
    );
    await sco.getByRole("button", { name: "Try again" }).click();
    await sco.locator("lesson-choice input[value='1']").check();
    await sco.getByRole("button", { name: "Step 2 of 2" }).click();
    await sco.locator("lesson-exercise .hint").click();
    const text = await sco.locator("lesson-step").innerText();
    await page.evaluate(() => document.querySelector("iframe")!.remove());
    const first = await callsOf(page);
    expect(strictFaults(first, "1.2")).toEqual([]);
    expect(first.at(-1)!.call).toBe("LMSFinish");
    const kept = () => page.evaluate(() => (window as unknown as HostWindow).kept().suspend_data);
    const packed = await kept();
    expect(packed).toMatch(/^1;0\.0:1L[rw]:p[\d.,e-]+,2;0\.1:1w:c1;1\.1:0h1/);

    await page.evaluate(() => (window as unknown as HostWindow).begin());
    await openInFrame(page, "index.html");
    expect(await sco.locator("lesson-step").innerText()).toBe(text);
    expect(await sco.locator("header").innerText()).toContain("2 of 6 exercises answered");
    await sco.getByRole("button", { name: "Step 1 of 2" }).click();
    expect(await sco.locator("lesson-predict reed-shares").count()).toBe(0);
    expect(await sco.locator("lesson-choice input[value='1']").isChecked()).toBe(true);
    await page.evaluate(() => document.querySelector("iframe")!.remove());
    expect(strictFaults(await callsOf(page), "1.2")).toEqual([]);
    expect(await kept()).toBe(packed);
    expect(new Set(server.asked.slice(3))).toEqual(
      new Set(["/package/index.html", "/package/lesson.js", "/package/lesson.css"]),
    );
    await close();
  });

  test("a frame that goes elsewhere ends the sitting once; hidden, it is kept", async () => {
    const { page, close } = await platform();
    await openInFrame(page, "index.html");
    const frame = page.frames()[1]!;
    await page.frameLocator("iframe").locator("lesson-predict .plane").press("ArrowUp");
    const before = (await names(page)).length;
    await frame.evaluate(() => {
      Object.defineProperty(document, "visibilityState", { value: "hidden" });
      document.dispatchEvent(new Event("visibilitychange"));
    });
    const since = (await callsOf(page)).slice(before);
    expect(since.find(({ words }) => words[0] === "cmi.suspend_data")!.words[1]).toMatch(
      /^1;0\.0:0:p/,
    );
    expect(since.at(-1)!.call).toBe("LMSCommit");
    await page.evaluate(() => (document.querySelector("iframe")!.src = "about:blank"));
    await page.waitForFunction(() =>
      (window as unknown as HostWindow).calls.some(({ call }) => call === "LMSFinish"),
    );
    await page.waitForTimeout(200);
    expect(strictFaults(await callsOf(page), "1.2")).toEqual([]);
    await close();
  });

  test("a window that the platform opened, SCORM 2004: passed; closing its tab ends the sitting", async () => {
    const { page, close } = await platform({ edition: "2004", mastery: 50 }, shortLesson);
    const [tab] = await Promise.all([
      page.context().waitForEvent("page"),
      page.evaluate(() => void window.open("package/index.html")),
    ]);
    await tab.locator("lesson-choice input[value='1']").check();
    expect(await tab.locator("[data-platform]").getAttribute("data-platform")).toBe("open");
    await tab.getByRole("button", { name: "Check" }).click();
    const result =
      "This lesson is completed. 1 of 1 right at the first try: 100 of 100. Passed; 50 were asked for.";
    expect(await tab.locator(".result").innerText()).toBe(result);
    expect(await tab.locator("[role=status]").last().innerText()).toContain(result);
    const kept = await page.evaluate(() => (window as unknown as HostWindow).kept());
    expect(kept).toMatchObject({ completion_status: "completed", success_status: "passed" });
    await tab.close({ runBeforeUnload: true });
    await page.waitForFunction(() =>
      (window as unknown as HostWindow).calls.some(({ call }) => call === "Terminate"),
    );
    await page.waitForTimeout(200);
    expect(strictFaults(await callsOf(page), "2004")).toEqual([]);
    await close();
  });

  test("a platform of another origin lets nobody in: the lesson works, and nothing goes wrong", async () => {
    const { page, server, close } = await platform();
    await page.goto(`${server.url.replace("127.0.0.1", "localhost")}host.html`);
    await openInFrame(page, "index.html", server.url);
    const sco = page.frameLocator("iframe");
    expect(await sco.locator("[data-platform]").getAttribute("data-platform")).toBe("absent");
    await predict(sco);
    expect(await callsOf(page)).toEqual([]);
    await close();
  });

  test("a platform that has closed, and a page that comes back: nothing more is sent, and it says so", async () => {
    const { page, close } = await platform();
    await openInFrame(page, "index.html");
    const frame = page.frames()[1]!;
    await frame.evaluate(() => window.dispatchEvent(new PageTransitionEvent("pagehide")));
    const sco = page.frameLocator("iframe");
    await predict(sco);
    expect(await sco.locator("header").innerText()).toMatch(/1 of 6 .*closed this sitting/s);
    expect((await names(page)).at(-1)).toBe("LMSFinish");
    await page.evaluate(() => document.querySelector("iframe")!.remove());
    expect(strictFaults(await callsOf(page), "1.2")).toEqual([]);
    await close();
  });

  test.each([
    [360, "light"],
    [1440, "dark"],
  ] as const)(
    "without a platform, %d px wide, %s: the lesson works and says what it does",
    async (width, colorScheme) => {
      const server = await servePlatform("1.2", filesFor({ edition: "1.2", mastery: 60 }));
      const page = await browser.newPage({
        viewport: { width, height: 900 },
        colorScheme,
        reducedMotion: "reduce",
      });
      const faults: string[] = [];
      page.on("console", (message) => faults.push(message.text()));
      page.on("pageerror", (error) => faults.push(error.message));
      await page.goto(`${server.url}package/index.html`);
      expect(await page.title()).toBe(madeLesson.title);
      expect(await page.locator("header").innerText()).toContain(
        "No learning platform found: nothing is sent and nothing kept.",
      );
      await page.locator("summary").click();
      expect(await page.locator("details").innerText()).toContain(
        "Your name and your number there are never read.",
      );
      await page.locator("lesson-predict .plane").press("ArrowUp");
      expect(await axeProblems(page)).toEqual([]);
      expect(await stickingOut(page)).toEqual([]);
      expect(faults).toEqual([]);
      expect(server.asked).toHaveLength(3);
      await page.close();
      server.close();
    },
  );
});
