import type { Browser, Page } from "playwright";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { chromiumPath, launch } from "./chromium.js";
import { allElements, drawn, scripts } from "./course-page.js";
import { elementsPolicy, serveStrictly, strictPolicy } from "./strict-server.js";

interface Watched extends Window {
  broken: string[];
}

describe.skipIf(chromiumPath === undefined)("a strict policy with Trusted Types", () => {
  let browser: Browser;
  let strict: Awaited<ReturnType<typeof serveStrictly>>;
  let bare: Awaited<ReturnType<typeof serveStrictly>>;
  const course = (script: string): string =>
    `<!doctype html><html lang="en"><head><title>Course</title>${script}</head><body>${Object.values(allElements).join("")}</body></html>`;

  beforeAll(async () => {
    browser = await launch();
    strict = await serveStrictly(strictPolicy, {
      "broken.html": `<!doctype html><title>x</title><body onload="1"><p style="color: red">x</p>`,
    });
    bare = await serveStrictly(
      elementsPolicy,
      Object.fromEntries(
        Object.entries(scripts).map(([kind, script]) => [`${kind}.html`, course(script)]),
      ),
    );
  });
  afterAll(async () => {
    await browser.close();
    strict.close();
    bare.close();
  });

  /** A page that notes what breaks the policy from its first moment on. */
  async function watched(): Promise<[Page, () => Promise<string[]>]> {
    const page = await browser.newPage();
    const faults: string[] = [];
    await page.addInitScript(() => {
      const here = window as unknown as Watched;
      here.broken = [];
      document.addEventListener(
        "securitypolicyviolation",
        ({ violatedDirective, sample, blockedURI }) =>
          here.broken.push(`${violatedDirective} ${blockedURI} ${sample}`),
      );
    });
    page.on("console", (message) => {
      if (message.type() === "error") faults.push(message.text());
    });
    page.on("pageerror", (error) => faults.push(error.message));
    return [
      page,
      async () => {
        const all = await Promise.all(
          page
            .frames()
            .map((frame) => frame.evaluate(() => (window as unknown as Watched).broken ?? [])),
        );
        return [...faults, ...all.flat()];
      },
    ];
  }

  test("is seen to be broken where it is", async () => {
    const [page, faults] = await watched();
    await page.goto(`${strict.url}broken.html`);
    const found = (await faults()).join("\n");
    expect(found).toMatch(/script-src-attr/);
    expect(found).toMatch(/style-src-attr/);
    await page.close();
  });

  test("holds on every screen of the app, first render included", async () => {
    const [page, faults] = await watched();
    await page.goto(
      `${strict.url}#v=1&model=bassoon&target=softLow&layers=certainty.readingLines.pulls.eachPull.reach`,
    );
    await page.getByRole("combobox", { name: "Reed", exact: true }).selectOption("Heron");
    const press = (name: string | RegExp) =>
      page
        .getByRole("button", { name, exact: typeof name === "string" })
        .first()
        .click();
    await press("Undo");
    await press("Redo");
    await press("Pin to compare");
    await page.locator("reed-comparison").waitFor();
    await press("Paste readings");
    await page.locator("dialog textarea").waitFor();
    await page.keyboard.press("Escape");
    await page.locator("reed-feature-row#wings .name").click();
    await page.locator("reed-feature-row#wings .ask").click();
    await page.locator("bench-stand-ins .try").first().click();
    await press(/as PNG$/);
    for (const [tab, part] of [
      ["Plan", "bench-plan reed-steps"],
      ["Lip and opening", "lip-panel"],
      ["Measure", "measure-page"],
      ["Bench", "bench-drawing"],
    ] as const) {
      await page.locator("page-tabs").getByRole("button", { name: tab, exact: true }).click();
      await page.locator(part).first().waitFor();
      await page.waitForTimeout(300);
    }
    await press("Put it into a page");
    await page
      .frameLocator("embed-dialog iframe")
      .locator("reed-triangle triangle-plane")
      .waitFor();
    await page.keyboard.press("Escape");
    await press("Save as one page");
    await page.waitForTimeout(300);
    expect(await faults()).toEqual([]);
    await page.close();
  });

  test.each(["bench", "triangle", "lamp", "lip", "stand-ins", "plan"])(
    "holds in the frame page: %s",
    async (show) => {
      const [page, faults] = await watched();
      await page.goto(
        `${strict.url}frame.html?show=${show}&theme=night#v=1&model=bassoon&target=softLow`,
      );
      await drawn(page, `reed-${show}`);
      expect(await faults()).toEqual([]);
      await page.close();
    },
  );

  test("holds in a lesson: its text, a prediction before and after, a recipe, the list", async () => {
    const [page, faults] = await watched();
    const lessons = `${strict.url}#v=1&model=bassoon&page=lessons`;
    await page.goto(`${lessons}&lesson=06-shape.1`);
    await page.locator("lesson-step .prose").first().waitFor();
    await page.locator("lesson-predict .plane").focus();
    await page.keyboard.press("ArrowUp");
    await page.getByRole("radio", { name: "Fairly sure" }).check();
    await page.getByRole("button", { name: "Hint" }).click();
    await page.getByRole("button", { name: "Lock in" }).click();
    await page.locator("lesson-feedback table").waitFor();
    await page.locator("lessons-page .step").last().click();
    await page.locator("lesson-recipe input[type=range]").first().focus();
    await page.keyboard.press("ArrowRight");
    await page.getByRole("button", { name: "Check" }).click();
    await page.locator("lesson-feedback .verdict").waitFor();
    await page.getByRole("button", { name: "All lessons" }).first().click();
    await page.locator("lessons-page .lesson").first().waitFor();
    await page.getByRole("checkbox", { name: /Keep my progress/ }).check();
    await page.locator("lessons-page .lesson").first().click();
    await page.getByRole("button", { name: "Present it to a class" }).click();
    await page.locator("lesson-presenter lesson-step .prose").first().waitFor();
    await page.goto(`${strict.url}?audience=17`);
    await page.locator("audience-view").waitFor();
    expect(await faults()).toEqual([]);
    await page.goto(`${strict.url}lesson-frame.html#lesson=01-parts.1`);
    await page.locator("reed-lesson .prose").first().waitFor();
    expect(await faults()).toEqual([]);
    await page.close();
  });

  test.each(Object.keys(scripts))(
    "elements by the %s script need script-src and style-src only",
    async (kind) => {
      const [page, faults] = await watched();
      await page.goto(`${bare.url}${kind}.html`);
      await drawn(page, Object.keys(allElements).join(","));
      await page.locator("reed-lip lip-panel").waitFor();
      await page.locator("reed-lesson .prose").first().waitFor();
      expect(await faults()).toEqual([]);
      await page.close();
    },
  );
});
