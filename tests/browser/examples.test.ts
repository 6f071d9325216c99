import type { Browser, Page } from "playwright";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { chromiumPath, launch } from "./chromium.js";
import { dragPoint } from "./course-page.js";
import { axeProblems, stickingOut } from "./page-faults.js";
import { serveStrictly, strictPolicy } from "./strict-server.js";

interface Reed {
  readonly values: Readonly<Record<string, number>>;
  readonly blend: readonly number[];
}

describe.skipIf(chromiumPath === undefined)("the page of examples", () => {
  let browser: Browser;
  let strict: Awaited<ReturnType<typeof serveStrictly>>;
  let page: Page;
  const faults: string[] = [];

  beforeAll(async () => {
    browser = await launch();
    strict = await serveStrictly(strictPolicy);
    page = await browser.newPage({ reducedMotion: "reduce" });
    page.on("console", (message) => faults.push(message.text()));
    page.on("pageerror", (error) => faults.push(error.message));
    await page.goto(`${strict.url}examples.html`);
    await page.locator("main > section:nth-of-type(8) lip-panel").waitFor();
    await page.locator("main > section:nth-of-type(6) bench-plan").waitFor();
    await page.locator("main > section:nth-of-type(7) bench-stand-ins").waitFor();
    await page.locator("main > section:nth-of-type(11) lesson-player").waitFor();
  });
  afterAll(async () => {
    await browser.close();
    strict.close();
  });

  const example = (n: number) => page.locator(`main > section:nth-of-type(${n})`);
  const reedIn = (n: number, element: string): Promise<Reed> =>
    example(n)
      .locator(element)
      .evaluate((one) => {
        const { values, blend } = one as unknown as Reed;
        return { values, blend };
      });

  test("has eleven snippets, and what is shown is what runs", async () => {
    expect(await page.locator("main > section").count()).toBe(11);
    const pairs = await page.locator("main > section").evaluateAll((sections) =>
      sections.map((section) => {
        const shown = (section.querySelector("code") as HTMLElement).textContent;
        return {
          shown,
          running: section.querySelector(".running")!.innerHTML,
        };
      }),
    );
    const plain = (html: string): string =>
      html
        .replaceAll(/<script type="module">.*?<\/script>/gs, "")
        .replaceAll(/&quot;|'/g, '"')
        .replaceAll("&amp;", "&")
        .replaceAll(/=""|\s+/g, "");
    for (const { shown, running } of pairs)
      expect(plain(running)).toContain(plain(shown).slice(0, 60));
  });

  test("1: the triangle shows Bittern and the part", async () => {
    expect((await reedIn(1, "reed-triangle")).blend[1]!).toBeGreaterThan(0.5);
    expect(await example(1).locator("triangle-plane .target").count()).toBeGreaterThan(0);
  });

  test("2: the reed lies on its side", async () => {
    const box = (await example(2).locator("reed-drawing svg").boundingBox())!;
    expect(box.width).toBeGreaterThan(box.height * 0.8);
  });

  test("3: the bench says what the reed is", async () => {
    expect(await example(3).locator("reed-sentence p").innerText()).toMatch(/^This reed/);
    expect(
      await example(3).locator("triangle-plane .chain, triangle-plane .pull").count(),
    ).toBeGreaterThan(0);
  });

  test("4: the lamp follows the triangle", async () => {
    const before = await reedIn(4, "reed-lamp");
    await dragPoint(page, "main > section:nth-of-type(4) reed-triangle", [40, -30]);
    const after = await reedIn(4, "reed-lamp");
    expect(after.values).not.toEqual(before.values);
    expect(after).toEqual(await reedIn(4, "reed-triangle"));
  });

  test("5: five features count, and the throat stays", async () => {
    const before = await reedIn(5, "reed-triangle");
    expect(Object.keys(before.values)).toHaveLength(5);
    await dragPoint(page, "main > section:nth-of-type(5) reed-triangle", [20, 10]);
    const after = await reedIn(5, "reed-triangle");
    expect(after.values["throatWidth"]).toBe(before.values["throatWidth"]);
    expect(after.values).not.toEqual(before.values);
  });

  test("6: the plan has steps with cautions", async () => {
    expect(
      await example(6).locator("bench-plan reed-steps li, bench-plan reed-steps .step").count(),
    ).toBeGreaterThan(0);
    expect(
      await example(6)
        .locator("reed-steps ol, reed-steps section, reed-steps div")
        .first()
        .innerText(),
    ).toContain("Caution");
  });

  test("7: stand-ins for the wings, on a dark ground", async () => {
    expect(await example(7).locator("bench-stand-ins .sentence").innerText()).toContain("wing");
    expect(
      await example(7)
        .locator("reed-stand-ins")
        .evaluate((one) => getComputedStyle(one).backgroundColor),
    ).toBe("rgb(25, 22, 19)");
  });

  test("8: the lip panel answers its sliders", async () => {
    const panel = example(8).locator("lip-panel");
    const dials = panel.locator("reed-lip-dials");
    const numbers = () => dials.evaluate((one) => one.shadowRoot!.textContent);
    const before = await numbers();
    await panel.locator("input[type=range]").first().focus();
    for (let times = 0; times < 6; times += 1) await page.keyboard.press("ArrowRight");
    await page.waitForTimeout(400);
    expect(await numbers()).not.toBe(before);
  });

  test("9: the form hands in three shares", async () => {
    await dragPoint(page, "main > section:nth-of-type(9) reed-triangle", [30, -30]);
    expect(await example(9).locator("output").innerText()).toMatch(
      /^Moved; high register has \d+ %\.$/,
    );
    await example(9).getByRole("button", { name: "Hand in" }).click();
    expect(await example(9).locator("output").innerText()).toMatch(
      /^Handed in: 0\.\d{3},0\.\d{3},0\.\d{3}$/,
    );
  });

  test("10: the frame is as tall as its content", async () => {
    const frame = page.frames().find((one) => one.url().includes("frame.html"))!;
    await frame.locator("reed-triangle triangle-plane svg").waitFor();
    await page.waitForTimeout(400);
    const content = await frame
      .locator("main")
      .evaluate((one) => one.getBoundingClientRect().height);
    const outer = await example(10)
      .locator("iframe")
      .evaluate((one) => (one as HTMLElement).offsetHeight);
    expect(Math.abs(outer - content)).toBeLessThanOrEqual(1);
  });

  test("11: the lesson is at its second step, and tells of an answer", async () => {
    const lesson = example(11).locator("reed-lesson");
    expect(await lesson.locator("lesson-step h2").innerText()).toBe("Its neighbour");
    await lesson.locator("lesson-predict .plane").focus();
    await page.keyboard.press("ArrowUp");
    await lesson.getByRole("radio", { name: "Fairly sure" }).check();
    await lesson.getByRole("button", { name: "Lock in" }).click();
    expect(await example(11).locator("output").innerText()).toMatch(
      /^1 of \d answered; the last one: (right|partly|wrong)\.$/,
    );
  });

  test("axe finds nothing, nothing breaks the strict policy, nothing is warned about", async () => {
    expect(await axeProblems(page)).toEqual([]);
    expect(faults).toEqual([]);
  });

  test.each([280, 360, 768, 1440])("nothing scrolls sideways at %d px", async (width) => {
    await page.setViewportSize({ width, height: 800 });
    await page.waitForTimeout(300);
    expect(await stickingOut(page)).toEqual([]);
  });
});
