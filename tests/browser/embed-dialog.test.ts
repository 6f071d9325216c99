import type { Browser, Page } from "playwright";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { chromiumPath, launch } from "./chromium.js";
import { axeProblems, stickingOut } from "./page-faults.js";

describe.skipIf(chromiumPath === undefined)("put it into a page", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(async () => {
    await browser.close();
  });

  async function open(width = 1280): Promise<Page> {
    const page = await browser.newPage({
      viewport: { width, height: 800 },
      reducedMotion: "reduce",
    });
    await page.goto(inject("appUrl"));
    await page.getByRole("combobox", { name: "Reed", exact: true }).selectOption("Bittern");
    await page.locator("reed-feature-row#tip input[type=text]").isVisible();
    if (width < 500) await page.getByText("More", { exact: true }).click();
    await page.getByRole("button", { name: "Put it into a page" }).click();
    await page.locator("embed-dialog dialog").waitFor();
    return page;
  }

  const lines = (page: Page) => page.getByRole("textbox", { name: "Lines to copy" }).inputValue();

  /** The copied lines on a page that holds nothing else. */
  async function paste(text: string): Promise<Page> {
    const page = await browser.newPage({ reducedMotion: "reduce" });
    await page.route("**/course.html", (route) =>
      route.fulfill({
        contentType: "text/html",
        body: `<!doctype html><html lang="en"><head><title>Course</title></head><body>${text}</body></html>`,
      }),
    );
    await page.goto(`${inject("appUrl")}course.html`);
    return page;
  }

  test.each([
    "bench with recipe",
    "triangle",
    "reed against the lamp",
    "lip and opening",
    "stand-ins",
    "plan",
  ])("the lines for %s run on another page, and the preview shows the same", async (label) => {
    const page = await open();
    await page.getByRole("combobox", { name: "Show" }).selectOption({ label });
    const text = await lines(page);
    const name = /<(reed-[\w-]+)/.exec(text)![1]!;
    const inFrame = page.frameLocator("embed-dialog iframe").locator(`${name} .frame > *`).first();
    await inFrame.waitFor();
    const pasted = await paste(text);
    await pasted.locator(`${name} .frame > *`).first().waitFor();
    const reedIn = (where: Page | ReturnType<Page["frames"]>[number]) =>
      where.locator(name).evaluate((element) => (element as unknown as { values: object }).values);
    const frame = page.frames().find((one) => one.url().includes("frame.html"))!;
    expect(await reedIn(pasted)).toEqual(await reedIn(frame));
    await pasted.close();
    await page.close();
  });

  test("as a frame the lines run, too, as tall as their content", async () => {
    const page = await open();
    await page.getByRole("radio", { name: /a frame/ }).check();
    await page.getByRole("combobox", { name: "Show" }).selectOption("stand-ins");
    const pasted = await paste(await lines(page));
    await pasted.frameLocator("iframe").locator("reed-stand-ins bench-stand-ins").waitFor();
    await pasted.waitForTimeout(500);
    const height = await pasted
      .locator("iframe")
      .evaluate((one) => (one as HTMLElement).offsetHeight);
    expect(height).not.toBe(700);
    expect(height).toBeGreaterThan(300);
    await pasted.close();
    await page.close();
  });

  test("on the lessons' page it offers the open lesson, as an element and as a frame", async () => {
    const page = await browser.newPage({ reducedMotion: "reduce" });
    await page.goto(`${inject("appUrl")}#v=1&model=bassoon&page=lessons&lesson=06-shape.2`);
    await page.locator("lessons-page lesson-step h2").waitFor();
    await page.getByRole("button", { name: "Put it into a page" }).click();
    const title = "Its neighbour";
    await page
      .frameLocator("embed-dialog iframe")
      .getByRole("heading", { name: title, exact: true })
      .waitFor();
    expect(await page.getByRole("checkbox", { name: /picture only/ }).count()).toBe(0);
    const pasted = await paste(await lines(page));
    await pasted.locator("reed-lesson").getByRole("heading", { name: title }).waitFor();
    await pasted.close();
    await page.getByRole("radio", { name: /a frame/ }).check();
    const framed = await paste(await lines(page));
    await framed.frameLocator("iframe").getByRole("heading", { name: title }).waitFor();
    await framed.waitForTimeout(500);
    const height = await framed
      .locator("iframe")
      .evaluate((one) => (one as HTMLElement).offsetHeight);
    expect(height).toBeGreaterThan(900);
    await framed.close();
    await page.close();
  });

  test("options change lines and preview; the focus comes back to the button", async () => {
    const page = await open();
    await page
      .locator("embed-dialog")
      .getByRole("combobox", { name: "Look" })
      .selectOption("night");
    await page.getByRole("checkbox", { name: /picture only/ }).check();
    await page
      .getByRole("textbox", { name: "Where these files lie" })
      .fill("https://school.example/reeds");
    await page.keyboard.press("Tab");
    expect(await lines(page)).toContain(
      'src="https://school.example/reeds/elements/reed-elements.js"></script>\n<reed-triangle reed="Bittern" theme="night" locked>Bittern: This reed leans',
    );
    await page.waitForTimeout(500);
    const frame = page.frames().find((one) => one.url().includes("frame.html"))!;
    expect(await frame.locator("html").getAttribute("data-theme")).toBe("night");
    await page.keyboard.press("Escape");
    await page.locator("embed-dialog").waitFor({ state: "detached" });
    expect(
      await page.evaluate(() => {
        let at = document.activeElement;
        while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
        return at?.textContent?.trim();
      }),
    ).toBe("Put it into a page");
    await page.close();
  });

  test.each([280, 768])("axe finds nothing in it, and it fits %d px", async (width) => {
    const page = await open(width);
    await page
      .frameLocator("embed-dialog iframe")
      .locator("reed-triangle triangle-plane")
      .waitFor();
    expect(await axeProblems(page)).toEqual([]);
    expect(await stickingOut(page)).toEqual([]);
    await page.close();
  });
});
