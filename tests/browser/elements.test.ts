import type { Browser, ConsoleMessage, Page } from "playwright";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { chromiumPath, launch } from "./chromium.js";
import { allElements, dragPoint, drawn, heard, openCoursePage, scripts } from "./course-page.js";
import { axeProblems, stickingOut } from "./page-faults.js";

const names = Object.keys(allElements) as (keyof typeof allElements)[];
const all = Object.values(allElements).join("\n");

interface Shown {
  readonly values: Readonly<Record<string, number>>;
  readonly blend: readonly number[] | null;
  readonly value: string;
}

function shown(page: Page, selector: string): Promise<Shown> {
  return page.locator(selector).evaluate((element) => {
    const { values, blend, value } = element as unknown as Shown;
    return { values, blend, value };
  });
}

describe.skipIf(chromiumPath === undefined)("elements on somebody else's page", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(async () => {
    await browser.close();
  });

  async function open(body: string, options: Parameters<typeof openCoursePage>[2] = {}) {
    const page = await openCoursePage(browser, body, options);
    const warnings: string[] = [];
    const listen = (message: ConsoleMessage) => warnings.push(message.text());
    page.on("console", listen);
    return { page, warnings };
  }

  test.each(Object.keys(scripts) as (keyof typeof scripts)[])(
    "the %s script draws all of them, and fetches nothing but the elements' own code",
    async (kind) => {
      const thrown: string[] = [];
      const page = await openCoursePage(browser, all, { script: scripts[kind] }, (fault) =>
        thrown.push(fault),
      );
      await drawn(page, names.join(","));
      await page.locator("reed-lip lip-panel").waitFor();
      expect(thrown).toEqual([]);
      const paths = await page.evaluate(() =>
        performance.getEntriesByType("resource").map(({ name }) => new URL(name).pathname),
      );
      expect(paths.filter((path) => !path.startsWith("/elements/"))).toEqual([]);
      expect(await page.evaluate(() => [localStorage.length, document.cookie])).toEqual([0, ""]);
      await page.close();
    },
  );

  test("the lazy script fetches the code of one element only when one is put into the page", async () => {
    const page = await openCoursePage(browser, allElements["reed-lamp"], { script: scripts.lazy });
    await drawn(page, "reed-lamp");
    const has = (part: string) =>
      page.evaluate(
        (name) => performance.getEntriesByType("resource").some((one) => one.name.includes(name)),
        part,
      );
    expect(await has("triangle-element")).toBe(false);
    await page.evaluate(() => document.body.append(document.createElement("reed-triangle")));
    await drawn(page, "reed-triangle");
    expect(await has("triangle-element")).toBe(true);
    expect(await has("plan-element")).toBe(false);
    await page.close();
  });

  test.each(names)("axe finds nothing in <%s> alone, and it fits 280 px", async (name) => {
    const page = await openCoursePage(browser, allElements[name], {
      viewport: { width: 280, height: 800 },
    });
    await drawn(page, name);
    expect(await axeProblems(page)).toEqual([]);
    expect(await stickingOut(page)).toEqual([]);
    await page.close();
  });

  test.each(names)("<%s theme=night> stays readable on a white page at 768 px", async (name) => {
    const body = allElements[name].replace(name, `${name} theme="night"`);
    const page = await openCoursePage(browser, body, { viewport: { width: 768, height: 800 } });
    await drawn(page, name);
    expect(await axeProblems(page)).toEqual([]);
    expect(await page.locator(name).evaluate((one) => getComputedStyle(one).backgroundColor)).toBe(
      "rgb(25, 22, 19)",
    );
    await page.close();
  });

  test("axe finds nothing where every element stands twice", async () => {
    const page = await openCoursePage(browser, all + all);
    await drawn(page, names.join(","));
    await page.locator("reed-lip lip-panel").nth(1).waitFor();
    expect(await axeProblems(page)).toEqual([]);
    await page.close();
  });

  test("it writes no attribute that the page has not written, and a look that is set is seen", async () => {
    const { page } = await open("<reed-triangle></reed-triangle>");
    await drawn(page, "reed-triangle");
    const element = page.locator("reed-triangle");
    expect(await element.evaluate((one) => one.getAttributeNames())).toEqual([]);
    const ground = await element.evaluate(async (one) => {
      Object.assign(one, { theme: "night" });
      await (one as unknown as { updateComplete: Promise<unknown> }).updateComplete;
      return getComputedStyle(one).backgroundColor;
    });
    expect(ground).toBe("rgb(25, 22, 19)");
    await page.close();
  });

  test("it takes its layout from its container, not from the window", async () => {
    const narrow = `<div style="width: 300px">${allElements["reed-bench"]}</div>`;
    const page = await openCoursePage(browser, narrow, { viewport: { width: 1440, height: 900 } });
    await drawn(page, "reed-bench");
    const box = (part: string) => page.locator(`reed-bench ${part}`).first().boundingBox();
    const [place, recipe] = [(await box("bench-place"))!, (await box("bench-recipe"))!];
    expect(recipe.y).toBeGreaterThan(place.y + place.height);
    expect(recipe.x + recipe.width).toBeLessThanOrEqual(300);
    await page.close();
  });

  test("a drag tells the page of every move by input and of its end by one change, as plain data", async () => {
    const { page } = await open('<reed-triangle id="mine" reed="Bittern"></reed-triangle>');
    await drawn(page, "reed-triangle");
    expect(await heard(page)).toEqual([]);
    const before = await shown(page, "#mine");
    await dragPoint(page, "#mine", [30, -40]);
    const told = await heard(page);
    expect(told.filter(({ type }) => type === "change")).toHaveLength(1);
    expect(told.filter(({ type }) => type === "input").length).toBeGreaterThan(2);
    expect(told.at(-1)!.type).toBe("change");
    expect(told.every(({ from }) => from === "mine")).toBe(true);
    const { detail } = told.at(-1)!;
    const after = await shown(page, "#mine");
    expect(detail.reed).toBe("Bittern");
    expect(detail.values).toEqual(after.values);
    expect(after.blend![0]!).toBeGreaterThan(before.blend![0]!);
    expect(detail.blend).toEqual(after.blend);
    await page.close();
  });

  test("sliders and number fields inside say nothing of their own: the page hears of the reed alone", async () => {
    const { page } = await open('<reed-bench id="mine" reed="Bittern"></reed-bench>');
    await drawn(page, "reed-bench");
    const field = page.locator("#mine reed-feature-row#tip input[type=text]");
    await field.fill("0.15");
    await field.press("Enter");
    const told = await heard(page);
    expect(told.length).toBeGreaterThan(0);
    expect(told.every(({ detail }) => detail?.values["tip"] === 0.15)).toBe(true);
    expect(told.at(-1)!.type).toBe("change");
    await page.close();
  });

  test("what the page sets is no event, and begins anew with what it says", async () => {
    const { page } = await open('<reed-triangle id="mine"></reed-triangle>');
    await drawn(page, "reed-triangle");
    await page.locator("#mine").evaluate(async (element) => {
      const mine = element as HTMLElement & { values: unknown; updateComplete: Promise<unknown> };
      mine.values = { bladeLength: 27, tipWidth: 15, throatWidth: 8.4, spine: 0.6 };
      mine.setAttribute("target", "20 50 30");
      await mine.updateComplete;
    });
    expect(Object.keys((await shown(page, "#mine")).values)).toHaveLength(4);
    expect(
      await page.locator("#mine triangle-plane .target, #mine triangle-plane .aim").count(),
    ).toBeGreaterThan(0);
    expect(await heard(page)).toEqual([]);
    await page.close();
  });

  test("two elements go their own ways; one that names the other shows its reed, whichever comes first", async () => {
    const { page } = await open(`<reed-lamp id="follower" for="leader"></reed-lamp>
      <reed-triangle id="leader" reed="Bittern"></reed-triangle>
      <reed-triangle id="other" reed="Bittern"></reed-triangle>`);
    await drawn(page, "reed-lamp, reed-triangle");
    await dragPoint(page, "#leader", [30, -40]);
    const [leader, follower, other] = await Promise.all(
      ["#leader", "#follower", "#other"].map((one) => shown(page, one)),
    );
    expect(follower!.values).toEqual(leader!.values);
    expect(other!.values).not.toEqual(leader!.values);
    expect((await heard(page)).every(({ from }) => from === "leader")).toBe(true);
    await page.close();
  });

  test("what cannot be understood is left at its usual value and told once", async () => {
    const wrong =
      '<reed-triangle reed="Ostrich" target="moon" layers="certainty fog" features="x" theme="pink" lang="xx" values="{" model="flute" for="nobody" locked="beak"></reed-triangle>';
    const page = await browser.newPage();
    const told: string[] = [];
    const thrown: string[] = [];
    page.on("console", (message) => told.push(message.text()));
    page.on("pageerror", (error) => thrown.push(error.message));
    await page.route("**/course.html", (route) =>
      route.fulfill({
        contentType: "text/html",
        body: `<!doctype html><title>x</title>${scripts.classic}<body>${wrong}${wrong}`,
      }),
    );
    await page.goto(`${inject("appUrl")}course.html`);
    await drawn(page, "reed-triangle");
    expect(thrown).toEqual([]);
    expect(told).toHaveLength(new Set(told).size);
    for (const attribute of [
      "reed",
      "target",
      "layers",
      "features",
      "theme",
      "lang",
      "values",
      "model",
      "for",
      "locked",
    ])
      expect(
        told.filter((line) => line.startsWith(`Reedpoint: ${attribute}: `)),
        attribute,
      ).toHaveLength(1);
    expect(
      (await shown(page, "reed-triangle >> nth=0")).blend!.map((one) => one.toFixed(2)),
    ).toEqual(["0.33", "0.33", "0.33"]);
    await page.close();
  });

  test("a locked element is a picture: nothing moves, and nothing is told", async () => {
    const { page } = await open('<reed-bench id="mine" reed="Bittern" locked></reed-bench>');
    await drawn(page, "reed-bench");
    const before = await shown(page, "#mine");
    expect(
      await page
        .locator("#mine :is(reed-shares, bench-recipe) input:enabled:not([readonly])")
        .count(),
    ).toBe(0);
    await page.locator("#mine reed-feature-row input[type=text]").first().focus();
    await page.keyboard.press("ArrowUp");
    const box = (await page.locator("#mine triangle-plane svg").boundingBox())!;
    await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
    expect(await shown(page, "#mine")).toEqual(before);
    expect(await heard(page)).toEqual([]);
    await page.close();
  });

  test("moved to another place in the page it keeps the user's reed, and still speaks once", async () => {
    const { page } = await open(
      '<reed-triangle id="mine" reed="Bittern"></reed-triangle><div id="there"></div>',
    );
    await drawn(page, "reed-triangle");
    await dragPoint(page, "#mine", [20, -20]);
    const before = await shown(page, "#mine");
    await page.evaluate(() => {
      for (let times = 0; times < 3; times += 1)
        document.querySelector("#there")!.append(document.querySelector("#mine")!);
    });
    expect(await shown(page, "#mine")).toEqual(before);
    const said = (await heard(page)).length;
    await page.locator("#mine triangle-plane .plane").focus();
    await page.keyboard.press("ArrowUp");
    await page.keyboard.press("Tab");
    const news = (await heard(page)).slice(said).map(({ type }) => type);
    expect(news).toEqual(["input", "change"]);
    await page.close();
  });

  test("a form sends the blend, gets it back by its reset, and switches it off", async () => {
    const { page } = await open(`<form><fieldset>
      <reed-triangle id="mine" name="place" reed="Bittern"></reed-triangle></fieldset></form>`);
    await drawn(page, "reed-triangle");
    const sent = () =>
      page.evaluate(() => new FormData(document.querySelector("form")!).get("place") as string);
    const first = await sent();
    expect(first).toBe((await shown(page, "#mine")).value);
    expect(first.split(",").reduce((sum, one) => sum + Number(one), 0)).toBeCloseTo(1, 9);
    await dragPoint(page, "#mine", [20, -20]);
    expect(await sent()).not.toBe(first);
    await page.evaluate(() => document.querySelector("form")!.reset());
    await page.waitForTimeout(100);
    expect(await sent()).toBe(first);
    await page.evaluate(() =>
      document.querySelector("fieldset")!.toggleAttribute("disabled", true),
    );
    await page.waitForTimeout(100);
    expect(await page.locator("#mine triangle-plane .plane").getAttribute("tabindex")).toBeNull();
    expect(await sent()).toBeNull();
    await page.close();
  });

  test("both scripts on one page define every element once; another version is told", async () => {
    const { page, warnings } = await open(allElements["reed-triangle"]);
    await drawn(page, "reed-triangle");
    await page.addScriptTag({ url: `${inject("appUrl")}elements/reed-elements.classic.js` });
    expect(warnings).toEqual([]);
    await page.close();
    const older = `<script>customElements.define("reed-lamp", class extends HTMLElement { static version = "0.0.1" });</script>${scripts.classic}`;
    const told: string[] = [];
    const second = await browser.newPage();
    second.on("console", (message) => told.push(message.text()));
    await second.route("**/course.html", (route) =>
      route.fulfill({ contentType: "text/html", body: `<!doctype html><title>x</title>${older}` }),
    );
    await second.goto(`${inject("appUrl")}course.html`);
    expect(told).toEqual([
      "Reedpoint: <reed-lamp> is there already as version 0.0.1; version 0.1.0 is left out",
    ]);
    await second.close();
  });

  test("no element listens to the keys of the page, or puts an id or a style into it", async () => {
    const page = await browser.newPage();
    await page.addInitScript(() => {
      const global = window as unknown as { keys: string[] };
      global.keys = [];
      for (const owner of [Window.prototype, Document.prototype, HTMLBodyElement.prototype]) {
        const add = owner.addEventListener;
        owner.addEventListener = function (this: unknown, ...given: unknown[]) {
          if (String(given[0]).startsWith("key")) global.keys.push(String(given[0]));
          return (add as (...all: unknown[]) => void).apply(this, given);
        } as typeof add;
      }
    });
    await page.route("**/course.html", (route) =>
      route.fulfill({
        contentType: "text/html",
        body: `<!doctype html><html><title>x</title>${scripts.classic}<body>${all}</body></html>`,
      }),
    );
    await page.goto(`${inject("appUrl")}course.html`);
    await drawn(page, names.join(","));
    const found = await page.evaluate(() => ({
      keys: (window as unknown as { keys: string[] }).keys,
      ids: document.querySelectorAll("[id]").length,
      styles: document.querySelectorAll("style, link, [style]").length,
      root: [...document.documentElement.attributes].map(({ name }) => name),
      focus: document.activeElement!.localName,
    }));
    expect(found).toEqual({ keys: [], ids: 0, styles: 0, root: [], focus: "body" });
    await page.close();
  });

  test("without script, and on paper, the words between the tags stand in its place", async () => {
    const blind = await openCoursePage(browser, all, { javaScriptEnabled: false });
    expect(await blind.getByText("A reed against the light.").isVisible()).toBe(true);
    await blind.close();
    const { page } = await open(all);
    await drawn(page, names.join(","));
    expect(await page.getByText("A reed against the light.").isVisible()).toBe(false);
    await page.emulateMedia({ media: "print" });
    expect(await page.getByText("A reed against the light.").isVisible()).toBe(true);
    await page.close();
  });

  test("stand-ins are tried and plan steps done with events of their own", async () => {
    const { page } = await open(allElements["reed-stand-ins"] + allElements["reed-plan"]);
    await drawn(page, "reed-stand-ins, reed-plan");
    await page.locator("reed-stand-ins .try").first().click();
    await page
      .locator("reed-plan")
      .getByRole("combobox", { name: "Part to play" })
      .selectOption({ index: 2 });
    const types = (await heard(page)).map(({ type, from }) => `${from} ${type}`);
    expect(types).toContain("reed-stand-ins reed-stand-in-tried");
    expect(types).toContain("reed-plan reed-target-picked");
    await page.close();
  });
});
