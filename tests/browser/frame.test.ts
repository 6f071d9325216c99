import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { chromium, type BrowserContext, type Frame, type Page } from "playwright";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { encodeBench, newBench } from "../../src/reed/bench.js";
import { demoReeds } from "../../src/reed/demo-reeds.js";
import { dist } from "./built-sizes.js";
import { chromiumPath, flags, launch } from "./chromium.js";
import { axeProblems, stickingOut } from "./page-faults.js";

const heron = encodeBench(
  {
    ...newBench(bassoonModel),
    reed: "Heron",
    values: demoReeds.find(({ reed }) => reed === "Heron")!.readings,
    target: "softLow",
  },
  bassoonModel,
);

/** A page around the frame; it counts what it hears and how often the frame becomes another height. */
function around(frameUrl: string, helper: string, attributes: string): string {
  return `<!doctype html><html lang="en"><head><title>Course</title><link rel="icon" href="data:,"></head><body>
    <script>window.said = []; addEventListener("message", (event) => said.push(event.data));</script>
    <iframe data-reedpoint title="A reed" ${attributes} style="width: 100%; height: 200px; border: 0" src="${frameUrl}"></iframe>
    <iframe data-reedpoint id="other" title="Another frame" srcdoc="x" style="height: 200px"></iframe>
    <script src="${helper}"></script></body></html>`;
}

type Setting = "same origin" | "another site" | "sandbox" | "file";
const settings: readonly Setting[] = ["same origin", "another site", "sandbox", "file"];

/** The other site: a page that really is served, for a browser keeps made-up pages away from this machine. */
const course = { page: "", url: "" };
const server = createServer((_request, response) => {
  response.setHeader("content-type", "text/html; charset=utf-8");
  response.end(course.page);
});

const folder = mkdtempSync(join(tmpdir(), "reedpoint-frame-"));

/** What stands in a frame: the page with its state, and what is there once it is ready. */
const reed = { page: `frame.html#${heron}`, ready: "reed-bench triangle-plane svg" };
const lesson = { page: "lesson-frame.html#lesson=06-shape.1", ready: "reed-lesson lesson-step h2" };

async function openIn(
  context: BrowserContext,
  setting: Setting,
  inside = reed,
): Promise<[Page, Frame, string[]]> {
  const page = await context.newPage();
  const faults: string[] = [];
  page.on("console", (message) => {
    if (message.type() === "error") faults.push(message.text());
  });
  page.on("pageerror", (error) => faults.push(error.message));
  const app = inject("appUrl");
  if (setting === "file") {
    const file = (name: string) => pathToFileURL(join(dist, name)).href;
    const path = join(folder, "course.html");
    writeFileSync(path, around(`${file("")}${inside.page}`, file("elements/reed-frame.js"), ""));
    await page.goto(pathToFileURL(path).href);
  } else {
    const sandbox = setting === "sandbox" ? 'sandbox="allow-scripts"' : "";
    course.page = around(`${app}${inside.page}`, `${app}elements/reed-frame.js`, sandbox);
    if (setting === "another site") await page.goto(course.url.replace("127.0.0.1", "localhost"));
    else {
      await page.route(`${app}course.html`, (route) =>
        route.fulfill({ contentType: "text/html", body: course.page }),
      );
      await page.goto(`${app}course.html`);
    }
  }
  const frame = page.frames().find((one) => one.url().includes("frame.html"))!;
  await frame.locator(inside.ready).waitFor();
  await page.waitForTimeout(400);
  return [page, frame, faults];
}

const heightOf = (page: Page) =>
  page
    .locator("iframe")
    .first()
    .evaluate((one) => (one as HTMLElement).offsetHeight);

/** Faults of the page, once everything else has been seen to hold. */
async function works(context: BrowserContext, setting: Setting): Promise<string[]> {
  const [page, frame, faults] = await openIn(context, setting);
  // It shows the reed of the address, whole, and follows what the user does.
  expect(await frame.locator("reed-sentence p").innerText()).toContain("high register");
  const content = await frame.locator("main").evaluate((one) => one.getBoundingClientRect().height);
  expect(Math.abs((await heightOf(page)) - content)).toBeLessThanOrEqual(1);
  expect(content).toBeGreaterThan(600);
  const before = await frame
    .locator("reed-bench")
    .evaluate((one) => (one as unknown as { blend: number[] }).blend);
  await frame.locator("reed-bench triangle-plane .plane").focus();
  await page.keyboard.press("ArrowUp");
  const after = await frame
    .locator("reed-bench")
    .evaluate((one) => (one as unknown as { blend: number[] }).blend);
  expect(after[0]!).toBeGreaterThan(before[0]!);
  // No loop: at rest it says nothing more, and the other frame stays as it is.
  const said = () => page.evaluate<number>("window.said.length");
  await expect
    .poll(async () => {
      const earlier = await said();
      await page.waitForTimeout(500);
      return (await said()) - earlier;
    })
    .toBe(0);
  expect(await said()).toBeLessThan(12);
  expect(
    await page.locator("#other").evaluate((one) => (one as HTMLElement).offsetHeight),
  ).toBeLessThan(220);
  await page.close();
  return faults;
}

/** The same for a lesson: it is whole, and a step further. */
async function plays(context: BrowserContext, setting: Setting): Promise<string[]> {
  const [page, frame, faults] = await openIn(context, setting, lesson);
  const content = () => frame.locator("main").evaluate((one) => one.getBoundingClientRect().height);
  await expect
    .poll(async () => Math.abs((await heightOf(page)) - (await content())))
    .toBeLessThan(2);
  await frame.getByRole("button", { name: "Next step" }).click();
  await frame.locator("lesson-step h2", { hasText: "Its neighbour" }).waitFor();
  await page.close();
  return faults;
}

describe.skipIf(chromiumPath === undefined)("the frame page", () => {
  let usual: BrowserContext;
  let strict: BrowserContext;
  beforeAll(async () => {
    await new Promise<void>((done) => {
      server.listen(0, "127.0.0.1", done);
    });
    course.url = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
    const browser = await launch();
    usual = await browser.newContext({ reducedMotion: "reduce" });
    // Without the driver's own switches: they turn the partitioning of storage off, which readers' browsers have on.
    const profile = join(folder, "profile");
    strict = await chromium.launchPersistentContext(profile, {
      executablePath: chromiumPath!,
      ignoreDefaultArgs: true,
      args: [
        ...flags,
        "--headless",
        "--remote-debugging-pipe",
        `--user-data-dir=${profile}`,
        "about:blank",
      ],
    });
  });
  afterAll(async () => {
    await usual.browser()!.close();
    await strict.close();
    server.close();
    rmSync(folder, { recursive: true, force: true });
  });

  test.each(settings)("works in a frame: %s", async (setting) => {
    expect(await works(usual, setting)).toEqual([]);
  });

  test.each(settings)("works in a browser as readers have it: %s", async (setting) => {
    expect(await works(strict, setting)).toEqual([]);
  });

  test.each(settings)("plays a lesson in a browser as readers have it: %s", async (setting) => {
    expect(await plays(strict, setting)).toEqual([]);
  });

  test("it does what the page around it asks by schema, and nothing else", async () => {
    const [page, frame] = await openIn(usual, "another site");
    const ask = async (message: unknown): Promise<void> => {
      await page.evaluate(
        (data) => document.querySelector("iframe")!.contentWindow!.postMessage(data, "*"),
        message,
      );
      await page.waitForTimeout(150);
    };
    const theme = () => frame.locator("html").getAttribute("data-theme");
    await ask({ reedpoint: 1, type: "theme", theme: "night" });
    expect(await theme()).toBe("night");
    for (const wrong of [
      { reedpoint: 1, type: "theme", theme: "paper", more: 1 },
      { reedpoint: 2, type: "theme", theme: "paper" },
      { reedpoint: 1, type: "theme", theme: "<b>" },
      { reedpoint: 1, type: "constructor" },
      '{"reedpoint":1,"type":"theme","theme":"paper"}',
      null,
    ])
      await ask(wrong);
    expect(await theme()).toBe("night");
    await ask({ reedpoint: 1, type: "open", code: "v=1&model=bassoon&page=plan&target=softLow" });
    await frame.locator("reed-plan bench-plan h2").waitFor();
    await page.close();
  });

  test("another frame of the same page is not its master", async () => {
    const [page, frame] = await openIn(usual, "same origin");
    const stranger = page.frames().find((one) => one.parentFrame() && one !== frame)!;
    await stranger.evaluate(() =>
      parent.frames[0]!.postMessage({ reedpoint: 1, type: "theme", theme: "night" }, "*"),
    );
    await page.waitForTimeout(200);
    expect(await frame.locator("html").getAttribute("data-theme")).toBeNull();
    await stranger.evaluate(() =>
      parent.postMessage({ reedpoint: 1, type: "height", height: 7000 }, "*"),
    );
    await page.waitForTimeout(200);
    expect(await heightOf(page)).toBeLessThan(6000);
    await page.close();
  });

  test("what the user does is told only where it was asked for, as a code that opens", async () => {
    const [page, frame] = await openIn(usual, "sandbox");
    const changes = () =>
      page.evaluate(() =>
        (window as unknown as { said: { type: string; code: string }[] }).said.filter(
          ({ type }) => type === "changed",
        ),
      );
    const move = async (): Promise<void> => {
      await frame.locator("reed-bench triangle-plane .plane").focus();
      await page.keyboard.press("ArrowUp");
      await page.keyboard.press("Tab");
      await page.waitForTimeout(150);
    };
    await move();
    expect(await changes()).toEqual([]);
    await page.evaluate(() =>
      document
        .querySelector("iframe")!
        .contentWindow!.postMessage({ reedpoint: 1, type: "tell" }, "*"),
    );
    await move();
    const [change] = await changes();
    expect(change!.code).toMatch(/^v=1&model=bassoon&reed=Heron/);
    expect(change!.code).not.toBe(heron);
    await page.close();
  });

  test.each([280, 360, 768, 1440])(
    "axe finds nothing and nothing sticks out at %d px",
    async (width) => {
      const page = await usual.newPage();
      await page.setViewportSize({ width, height: 800 });
      await page.goto(`${inject("appUrl")}frame.html?theme=night#${heron}`);
      await page.locator("reed-bench triangle-plane svg").waitFor();
      expect(await axeProblems(page)).toEqual([]);
      expect(await stickingOut(page)).toEqual([]);
      await page.close();
    },
  );

  test.each([
    ["a reed that has failed a look", `${heron}&unsound=wires`],
    ["a link that nobody can read", "v=1&model=bassoon&values=1.2&target=%FF&page=<b>"],
    ["a link of another version", "v=9"],
    ["no link", ""],
  ])("%s opens without a fault", async (_what, code) => {
    const page = await usual.newPage();
    const faults: string[] = [];
    page.on("pageerror", (error) => faults.push(error.message));
    for (const show of ["bench", "triangle", "lamp", "lip", "stand-ins", "plan"]) {
      await page.goto(`${inject("appUrl")}frame.html?show=${show}#${code}`);
      await page.locator(`reed-${show} .frame > *`).first().waitFor();
      await page.waitForTimeout(200);
    }
    expect(faults).toEqual([]);
    await page.close();
  });

  test("reset brings back the reed of the address", async () => {
    const page = await usual.newPage();
    await page.goto(`${inject("appUrl")}frame.html#${heron}`);
    const tip = page.locator("reed-feature-row#tip input[type=text]");
    const first = await tip.inputValue();
    await tip.fill("0.2");
    await tip.press("Enter");
    await page.getByRole("button", { name: "Reset" }).click();
    expect(await tip.inputValue()).toBe(first);
    await page.close();
  });
});
