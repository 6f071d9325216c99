import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Browser } from "playwright";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { integrityOf } from "../../.ci/build-elements.mjs";
import { dist, packed, packedWith } from "./built-sizes.js";
import { chromiumPath, launch } from "./chromium.js";
import { dragPoint } from "./course-page.js";

const readme = readFileSync(fileURLToPath(new URL("../../README.md", import.meta.url)), "utf8");
const blocks = [...readme.matchAll(/^```html\n(.*?)^```$/gms)].map(([, body]) => body!);

test("the hashes of the build are those of its files", () => {
  const told = JSON.parse(readFileSync(`${dist}elements/integrity.json`, "utf8")) as Record<
    string,
    string
  >;
  expect(Object.keys(told)).toContain("reed-elements.classic.js");
  for (const [file, hash] of Object.entries(told))
    expect(hash).toBe(integrityOf(`${dist}elements/${file}`));
});

test("the README's sizes are what the build weighs", () => {
  const kB = (bytes: number): string => `${Math.round(bytes / 1000)} kB`;
  const row = (file: string): string =>
    readme.split("\n").find((line) => line.startsWith(`| \`${file}\``))!;
  expect(row("reed-elements.js")).toContain(kB(packedWith("elements/reed-elements.js")));
  expect(row("reed-triangle.js")).toContain(kB(packedWith("elements/reed-triangle.js")));
  expect(row("reed-elements.classic.js")).toContain(
    kB(packed("elements/reed-elements.classic.js")),
  );
  // It grows with every sentence of a lesson: a kilobyte more or less is the same to a page.
  const lesson = Number(/(\d+) kB/.exec(row("reed-lesson.classic.js"))?.[1]);
  expect(Math.abs(packed("elements/reed-lesson.classic.js") / 1000 - lesson)).toBeLessThan(2);
  const door = readme.split("\n").find((line) => line.includes("`dist/lib/engine-alone.js`"))!;
  expect(door).toContain(kB(packedWith("lib/engine-alone.js")));
  expect(door).toContain(` ${Math.round(packedWith("lib/engine.js") / 1000)} (gzip)`);
});

describe.skipIf(chromiumPath === undefined)("the README's snippets", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(async () => {
    await browser.close();
  });

  async function run(body: string) {
    const page = await browser.newPage({ reducedMotion: "reduce" });
    const faults: string[] = [];
    page.on("console", (message) => faults.push(message.text()));
    page.on("pageerror", (error) => faults.push(error.message));
    await page.route("**/course.html", (route) =>
      route.fulfill({
        contentType: "text/html",
        body: `<!doctype html><html lang="en"><head><title>x</title><link rel="icon" href="data:," /></head><body>${body.replaceAll("https://school.example/reedpoint/", inject("appUrl"))}</body></html>`,
      }),
    );
    await page.goto(`${inject("appUrl")}course.html`);
    return { page, faults };
  }

  test("an element with a reed and a part", async () => {
    const { page, faults } = await run(blocks[0]!);
    await page.locator("reed-triangle triangle-plane .target").first().waitFor();
    expect(await page.locator("reed-triangle p").first().isVisible()).toBe(false);
    expect(faults).toEqual([]);
    await page.close();
  });

  test("two elements with one reed, and a script that listens", async () => {
    const { page, faults } = await run(blocks[1]!);
    await page.locator("reed-lamp reed-drawing svg").waitFor();
    await dragPoint(page, "#ours", [20, -20]);
    const [share, values] = await page.evaluate(() => {
      const element = (id: string) =>
        document.querySelector(id) as unknown as { blend: number[]; values: object };
      return [
        [
          document.querySelector("output")!.value,
          `${Math.round(100 * element("#ours").blend[0]!)} %`,
        ],
        [element("#ours").values, element("reed-lamp").values],
      ] as const;
    });
    expect(share[0]).toBe(share[1]);
    expect(values[0]).toEqual(values[1]);
    expect(faults).toEqual([]);
    await page.close();
  });

  test("a lesson that tells of answers", async () => {
    const { page, faults } = await run(blocks[2]!);
    await page.locator("reed-lesson lesson-predict .plane").focus();
    await page.keyboard.press("ArrowUp");
    await page.getByRole("radio", { name: "Fairly sure" }).check();
    await page.getByRole("button", { name: "Lock in" }).click();
    expect(await page.locator("output").innerText()).toMatch(/^1 of \d$/);
    expect(faults).toEqual([]);
    await page.close();
  });

  test("a frame as tall as its content", async () => {
    const { page, faults } = await run(blocks[3]!);
    await page
      .frameLocator("iframe")
      .locator("reed-triangle triangle-plane .target")
      .first()
      .waitFor();
    await page.waitForTimeout(400);
    expect(
      await page.locator("iframe").evaluate((one) => (one as HTMLElement).style.height),
    ).toMatch(/px$/);
    expect(faults).toEqual([]);
    await page.close();
  });

  test("there is a test for every snippet", () => {
    expect(blocks).toHaveLength(4);
  });

  test("a script that is pinned by its hash runs, and one that was changed does not", async () => {
    const path = `${dist}elements/reed-elements.classic.js`;
    const tag = (hash: string): string =>
      `<script src="${inject("appUrl")}elements/reed-elements.classic.js" integrity="${hash}" crossorigin="anonymous"></script><reed-lamp></reed-lamp>`;
    const good = await run(tag(integrityOf(path)));
    await good.page.locator("reed-lamp reed-drawing svg").waitFor();
    await good.page.close();
    const bad = await run(tag(integrityOf(`${dist}elements/reed-frame.js`)));
    await bad.page.waitForTimeout(500);
    expect(await bad.page.evaluate(() => customElements.get("reed-lamp"))).toBeUndefined();
    expect(bad.faults.join(" ")).toContain("integrity");
    await bad.page.close();
  });
});
