import { cpSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Browser, BrowserContext, Page } from "playwright";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { buildServiceWorker } from "../../.ci/build-service-worker.mjs";
import { dist } from "./built-sizes.js";
import { chromiumPath, launch } from "./chromium.js";
import { axeProblems } from "./page-faults.js";
import { serveStrictly, strictPolicy } from "./strict-server.js";

const root = fileURLToPath(new URL("../../", import.meta.url));
const lessons = readdirSync(`${root}lessons/en`).map((file) => file.replace(".md", ""));
const folder = mkdtempSync(join(tmpdir(), "reedpoint-versions-"));

/** A version of the app without the files for other pages, so that it is soon kept. */
async function makeVersion(name: string, change: (page: string) => string): Promise<string> {
  const files = join(folder, name);
  const isApp = (path: string): boolean =>
    path === dist || /^(index\.html|assets)/.test(path.slice(dist.length));
  cpSync(dist, files, {
    recursive: true,
    filter: (path) => isApp(path) && !/(\.map|frame\.js)$/.test(path),
  });
  const page = readFileSync(join(files, "index.html"), "utf8");
  writeFileSync(join(files, "index.html"), change(page));
  await buildServiceWorker(root, files);
  return files;
}

describe.skipIf(chromiumPath === undefined)("without a connection", () => {
  let browser: Browser;
  let first: string;
  let next: string;
  beforeAll(async () => {
    browser = await launch();
    first = await makeVersion("first", (page) => page);
    next = await makeVersion("next", (page) =>
      page.replace("<html ", `<html data-version="next" `),
    );
  });
  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true });
  });

  /** A first visit to the app in a folder of a strict site, until everything is kept. */
  async function visit(files = dist) {
    const site = await serveStrictly(strictPolicy, {}, "/school/reeds/");
    site.serve(files);
    const context = await browser.newContext({ serviceWorkers: "allow", reducedMotion: "reduce" });
    const page = await context.newPage();
    const faults: string[] = [];
    const watch = (one: Page) => {
      one.on("console", (message) => {
        if (message.type() === "error") faults.push(message.text());
      });
      one.on("pageerror", (error) => faults.push(error.message));
    };
    watch(page);
    await page.goto(site.url);
    await controlled(page);
    return { site, context, page, faults };
  }

  async function controlled(page: Page): Promise<void> {
    await page.waitForFunction(() => navigator.serviceWorker.controller?.state === "activated");
  }

  async function cut(context: BrowserContext, site: { close(): void }): Promise<void> {
    site.close();
    await context.setOffline(true);
  }

  const isNext = (page: Page) =>
    page.evaluate(() => document.documentElement.dataset["version"] === "next");

  test("after one visit every file is kept and nothing else; every page, part, lesson, element and frame is there", async () => {
    const { site, context, page, faults } = await visit();
    const kept = await page.evaluate(async () => ({
      caches: await caches.keys(),
      databases: (await indexedDB.databases()).length,
      stored: [localStorage.length, sessionStorage.length, document.cookie.length],
      missing: (await fetch("own.md")).status,
    }));
    expect(kept.caches).toEqual([expect.stringContaining(`reedpoint ${site.url} `)]);
    expect(kept).toMatchObject({ databases: 0, stored: [0, 0, 0], missing: 404 });
    const urls = await page.evaluate(async () => {
      const cache = await caches.open((await caches.keys())[0]!);
      return (await cache.keys()).map(({ url }) => url);
    });
    const built = readdirSync(dist, { recursive: true, withFileTypes: true })
      .filter((one) => one.isFile() && !/\.(map|d\.ts)$|^service-worker\.js$/.test(one.name))
      .map((one) => site.url + join(one.parentPath, one.name).slice(dist.length));
    expect(urls.toSorted()).toEqual(built.toSorted());
    // The one file that the server does not have.
    expect(faults).toEqual([expect.stringContaining("404")]);
    faults.length = 0;
    await cut(context, site);
    for (const [tab, part] of [
      ["Plan", "bench-plan"],
      ["Lip and opening", "lip-panel"],
      ["Measure", "measure-page"],
      ["Lessons", "lesson-list"],
    ] as const) {
      await page.locator("page-tabs").getByRole("button", { name: tab, exact: true }).click();
      await page.locator(part).first().waitFor();
    }
    await page.goto(`${site.url}index.html?from=mail#v=1&model=bassoon&page=lessons`);
    await page.locator("lesson-list").waitFor();
    for (const id of lessons) {
      await page.evaluate(
        (code) => void (location.hash = code),
        `v=1&model=bassoon&lesson=${id}.1&page=lessons`,
      );
      await page.locator(".step[aria-current]").waitFor();
      const steps = await page.locator("lessons-page .step").count();
      expect(steps, id).toBeGreaterThan(1);
      await page.evaluate((code) => void (location.hash = code), "v=1&model=bassoon&page=lessons");
      await page.locator("lesson-list").waitFor();
    }
    for (const show of ["bench", "lip", "stand-ins"]) {
      await page.goto(`${site.url}frame.html?show=${show}#v=1&model=bassoon`);
      await page.locator(`reed-${show} .frame > *`).first().waitFor();
    }
    await page.goto(`${site.url}lesson-frame.html#lesson=01-parts.1`);
    await page.locator("reed-lesson lesson-step h2").waitFor();
    await page.goto(`${site.url}examples.html`);
    for (const part of ["reed-plan bench-plan", "reed-lip lip-panel", "reed-lesson lesson-step"])
      await page.locator(part).first().waitFor();
    const answers = await page.evaluate(async () => {
      const files = [
        "reedpoint.html",
        "elements/reed-elements.classic.js",
        "elements/reed-elements.lazy.js",
        "elements/reed-triangle.js",
        "elements/custom-elements.json",
        "lib/engine.js",
        "schema/model.json",
      ];
      return Promise.all(files.map(async (file) => (await fetch(file)).status));
    });
    expect(answers).toEqual(answers.map(() => 200));
    expect(faults).toEqual([]);
    await context.close();
  });

  test("a new version waits while a lesson runs, says so, and is taken when the lesson is left", async () => {
    const { site, context, page, faults } = await visit(first);
    await page.goto(`${site.url}#v=1&model=bassoon&page=lessons&lesson=06-shape.1`);
    await page.locator("lesson-predict .plane").focus();
    await page.keyboard.press("ArrowUp");
    site.serve(next);
    await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
    const bar = page.locator("new-version-bar");
    await bar.getByText("It waits until no lesson is open any more.").waitFor();
    expect(await bar.getByRole("button").allInnerTexts()).toEqual(["Later"]);
    expect(await axeProblems(page)).toEqual([]);
    // A reload in the middle of the lesson does not take it, either; the answer is still there.
    await page.reload();
    await bar.getByText("It waits until no lesson is open any more.").waitFor();
    expect(await isNext(page)).toBe(false);
    // Nor does another page, in which no lesson runs.
    const other = await context.newPage();
    await other.goto(site.url);
    const otherBar = other.locator("new-version-bar");
    await otherBar.getByText("It waits until no lesson is open any more.").waitFor();
    expect(await isNext(other)).toBe(false);
    await other.close();
    // What is put off in the lesson is said again after it.
    await bar.getByRole("button", { name: "Later" }).click();
    expect(await bar.getByText("A new version").count()).toBe(0);
    await page.getByRole("button", { name: "All lessons" }).first().click();
    await bar.getByText("A new version is ready.", { exact: true }).waitFor();
    await bar.getByRole("button", { name: "Use it now" }).click();
    await page.waitForFunction(() => document.documentElement.dataset["version"] === "next");
    expect(page.url()).toMatch(/page=lessons$/);
    await page.locator("lesson-list").waitFor();
    expect(await bar.count()).toBe(0);
    expect(faults).toEqual([]);
    site.close();
    await context.close();
  });

  test("a reload takes a new version that waits, and another page that is open keeps its own parts", async () => {
    const { site, context, page, faults } = await visit(first);
    const other = await context.newPage();
    await other.goto(site.url);
    site.serve(next);
    await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
    await page.locator("new-version-bar").getByRole("button", { name: "Later" }).click();
    expect(await isNext(page)).toBe(false);
    await page.reload();
    await page.waitForFunction(() => document.documentElement.dataset["version"] === "next");
    await cut(context, site);
    await other.locator("page-tabs").getByRole("button", { name: "Plan", exact: true }).click();
    await other.locator("bench-plan").waitFor();
    expect(await isNext(other)).toBe(false);
    await other.locator("new-version-bar").getByRole("button", { name: "Use it now" }).click();
    await other.waitForFunction(() => document.documentElement.dataset["version"] === "next");
    expect(faults).toEqual([]);
    await context.close();
  });

  test("a frame, a sandbox, the page of one file and a window for a class keep nothing", async () => {
    const site = await serveStrictly("frame-src *", {
      "around.html": `<!doctype html><title>x</title><iframe src="index.html"></iframe><iframe sandbox="allow-scripts" src="index.html"></iframe>`,
    });
    const context = await browser.newContext({ serviceWorkers: "allow" });
    const page = await context.newPage();
    const thrown: string[] = [];
    page.on("pageerror", (error) => thrown.push(error.message));
    for (const path of ["around.html", "reedpoint.html", "?audience=17"]) {
      await page.goto(site.url + path);
      const where = path === "around.html" ? page.frameLocator("iframe >> nth=0") : page;
      await where.locator("triangle-plane svg, audience-view").first().waitFor();
      await page.waitForTimeout(300);
      const count = () =>
        page.evaluate(async () => (await navigator.serviceWorker.getRegistrations()).length);
      expect(await count(), path).toBe(0);
    }
    expect(thrown).toEqual([]);
    site.close();
    await context.close();
  });
});
