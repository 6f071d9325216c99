import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, Page } from "playwright";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { dist } from "./built-sizes.js";
import { chromiumPath, launch } from "./chromium.js";
import { axeProblems } from "./page-faults.js";

describe.skipIf(chromiumPath === undefined)("the whole product in one file", () => {
  let browser: Browser;
  const folder = mkdtempSync(join(tmpdir(), "reedpoint-page-"));
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true, force: true });
  });

  /** A file from the disk, with the network cut; what it asks for beside itself, and what goes wrong. */
  async function openFile(path: string): Promise<[Page, string[]]> {
    const context = await browser.newContext({
      offline: true,
      reducedMotion: "reduce",
      acceptDownloads: true,
    });
    const page = await context.newPage();
    const faults: string[] = [];
    const own = pathToFileURL(path).href;
    page.on("request", (request) => {
      const url = request.url();
      if (url.split("#")[0] !== own && !/^(data|blob):/.test(url)) faults.push(`asked for ${url}`);
    });
    page.on("console", (message) => {
      if (message.type() === "error") faults.push(message.text());
    });
    page.on("pageerror", (error) => faults.push(error.message));
    await page.goto(own);
    await page.locator("triangle-plane svg").waitFor();
    return [page, faults];
  }

  async function saveIn(page: Page, name: string): Promise<string> {
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save as one page" }).click(),
    ]);
    expect(download.suggestedFilename()).toMatch(/^reedpoint(-[a-z]+)?-\d{4}-\d\d-\d\d\.html$/);
    const path = join(folder, name);
    await download.saveAs(path);
    return path;
  }

  const reedOf = (page: Page) =>
    page
      .getByRole("combobox", { name: "Reed", exact: true })
      .evaluate((one) => (one as HTMLSelectElement).selectedOptions[0]!.text.trim());
  const tip = (page: Page) => page.locator("reed-feature-row#tip input[type=text]");

  test("opens from the disk without a request, page by page", async () => {
    const [page, faults] = await openFile(join(dist, "reedpoint.html"));
    for (const [tab, part] of [
      ["Plan", "bench-plan"],
      ["Lip and opening", "lip-panel"],
      ["Measure", "measure-page"],
      ["Bench", "bench-drawing"],
    ] as const) {
      await page.locator("page-tabs").getByRole("button", { name: tab, exact: true }).click();
      await page.locator(part).first().waitFor();
    }
    await page.locator("reed-feature-row#wings .name").click();
    await page.locator("reed-feature-row#wings .ask").click();
    await page.locator("bench-stand-ins .try").first().waitFor();
    await page.getByRole("button", { name: "Paste readings" }).click();
    await page.locator("dialog textarea").fill("tip\t0.13");
    await page.getByRole("button", { name: "Take the good cells" }).click();
    expect(await tip(page).inputValue()).toBe("0.13");
    expect(await axeProblems(page)).toEqual([]);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  test("what is saved holds the reed as it is, and can be changed and saved again from the disk", async () => {
    const app = await browser.newPage({ acceptDownloads: true });
    await app.goto(`${inject("appUrl")}#v=1&model=bassoon&target=softLow&reed=%22%3E%3Cb%3E%24%26`);
    await app.locator("triangle-plane svg").waitFor();
    const first = await saveIn(app, "first.html");
    await app.close();
    const [page, faults] = await openFile(first);
    expect(await reedOf(page)).toBe('"><b>$&');
    expect(await page.getByRole("combobox", { name: "Part to play" }).inputValue()).toBe("softLow");
    await tip(page).fill("0.14");
    await tip(page).press("Enter");
    await page.waitForTimeout(400);
    await page.reload();
    expect(await tip(page).inputValue()).toBe("0.14");
    const second = await saveIn(page, "second.html");
    expect(faults).toEqual([]);
    await page.context().close();
    const [again, more] = await openFile(second);
    expect(await tip(again).inputValue()).toBe("0.14");
    expect(await reedOf(again)).toBe('"><b>$&, tried');
    expect(more).toEqual([]);
    await again.context().close();
  });

  test("where the file cannot be had the app says so", async () => {
    const page = await browser.newPage();
    await page.goto(inject("appUrl"));
    await page.route("**/reedpoint.html", (route) => route.abort());
    await page.getByRole("button", { name: "Save as one page" }).click();
    const notice = page.getByText("The page could not be made");
    await notice.waitFor();
    expect(await notice.isVisible()).toBe(true);
    await page.close();
  });
});
