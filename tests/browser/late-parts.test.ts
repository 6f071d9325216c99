import type { Browser } from "playwright";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { chromiumPath, launch } from "./chromium.js";
import { axeProblems } from "./page-faults.js";

const plan = "v=1&model=bassoon&target=softLow&page=plan";

describe.skipIf(chromiumPath === undefined)("parts that come when they are opened", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(async () => {
    await browser.close();
  });

  test("the bench opens without the code of the other pages, which come one by one", async () => {
    const page = await browser.newPage();
    const loaded: string[] = [];
    page.on("request", (request) => loaded.push(new URL(request.url()).pathname));
    const has = (name: string): boolean => loaded.some((path) => path.includes(name));
    await page.goto(inject("appUrl"));
    await page.locator("bench-recipe").waitFor();
    expect(["plan-parts", "bench-lip", "measure-page", "bench-stand-ins"].filter(has)).toEqual([]);
    await page.getByRole("button", { name: "Lip and opening" }).click();
    await page.locator("bench-lip h2").first().waitFor();
    expect(has("bench-lip")).toBe(true);
    expect(has("measure-page")).toBe(false);
    await page.close();
  });

  test("while a page is on its way its place is kept, and a word appears only if that takes long", async () => {
    const page = await browser.newPage();
    await page.route(/plan-parts-/, async (route) => {
      await new Promise((resolve) => setTimeout(resolve, 1500));
      await route.continue();
    });
    await page.goto(`${inject("appUrl")}#${plan}`);
    const coming = page.getByText("This part is on its way");
    await coming.waitFor({ state: "attached" });
    expect(await coming.isVisible()).toBe(false);
    await coming.waitFor({ state: "visible" });
    await page.locator("bench-plan h2").waitFor();
    expect(await coming.count()).toBe(0);
    await page.close();
  });

  test("a page that does not come says so, and the reed is still there after the second try", async () => {
    const page = await browser.newPage();
    await page.route(/plan-parts-/, (route) => route.abort());
    await page.goto(`${inject("appUrl")}#${plan}&reed=Sedge`);
    await page.getByRole("alert").waitFor();
    expect(await axeProblems(page)).toEqual([]);
    await page.unroute(/plan-parts-/);
    await page.getByRole("button", { name: "Try again" }).click();
    await page.locator("bench-plan h2").waitFor();
    const reed = page.getByRole("combobox", { name: "Reed" }).locator("option:checked");
    expect((await reed.innerText()).trim()).toBe("Sedge");
    await page.close();
  });
});
