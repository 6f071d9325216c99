import { readFileSync } from "node:fs";
import type { Browser } from "playwright";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { dist } from "./built-sizes.js";
import { chromiumPath, launch } from "./chromium.js";
import { allElements, drawn, heard, openCoursePage } from "./course-page.js";

interface Named {
  readonly name: string;
}

interface Declaration extends Named {
  readonly tagName: string;
  readonly members: readonly (Named & { readonly static?: boolean })[];
  readonly attributes: readonly Named[];
  readonly events: readonly Named[];
  readonly cssParts: readonly Named[];
  readonly cssProperties: readonly Named[];
}

const manifest = JSON.parse(readFileSync(`${dist}elements/custom-elements.json`, "utf8")) as {
  readonly modules: readonly { readonly declarations: readonly Declaration[] }[];
};
const declarations = manifest.modules.flatMap((module) => module.declarations);
const sorted = (all: readonly Named[]): string[] => all.map(({ name }) => name).toSorted();

describe.skipIf(chromiumPath === undefined)("the manifest of the elements", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(async () => {
    await browser.close();
  });

  test("names the elements that there are", () => {
    expect(declarations.map(({ tagName }) => tagName).toSorted()).toEqual(
      Object.keys(allElements).toSorted(),
    );
  });

  const used = new Set<string>();

  test.each(Object.keys(allElements))("says of <%s> what it really has", async (name) => {
    const told = declarations.find(({ tagName }) => tagName === name)!;
    const page = await openCoursePage(browser, allElements[name as keyof typeof allElements]);
    await drawn(page, name);
    if (name === "reed-plan") await page.locator("bench-plan").waitFor();
    if (name === "reed-lip") await page.locator("bench-lip").waitFor();
    if (name === "reed-stand-ins") await page.locator("bench-stand-ins").waitFor();
    const real = await page.locator(name).evaluate((element) => {
      const kind = element.constructor as unknown as { observedAttributes: string[] };
      const members = new Set<string>();
      for (
        let one = element;
        one.constructor.name !== "HTMLElement" && one !== HTMLElement.prototype;
        one = Object.getPrototypeOf(one) as HTMLElement
      )
        for (const key of Object.getOwnPropertyNames(one)) members.add(key);
      const css: string[] = [];
      const visit = (root: ShadowRoot): void => {
        for (const sheet of root.adoptedStyleSheets)
          for (const rule of sheet.cssRules) css.push(rule.cssText);
        for (const one of root.querySelectorAll("*")) if (one.shadowRoot) visit(one.shadowRoot);
      };
      visit(element.shadowRoot!);
      return {
        attributes: [...kind.observedAttributes].sort(),
        members: [...members],
        parts: [...element.shadowRoot!.querySelectorAll("[part]")]
          .flatMap((part) => [
            ...part.part,
            ...(part.getAttribute("exportparts") ?? "").split(/[\s,]+/),
          ])
          .filter((part) => part !== "")
          .sort(),
        properties: [
          ...new Set(
            [...css.join(" ").matchAll(/var\(\s*(--reed-[\w-]+)/g)].map((found) => found[1]!),
          ),
        ].sort(),
      };
    });
    expect(sorted(told.attributes)).toEqual(real.attributes);
    expect(sorted(told.cssParts)).toEqual(real.parts);
    expect(sorted(told.cssProperties)).toEqual(expect.arrayContaining(real.properties));
    for (const property of real.properties) used.add(property);
    for (const member of told.members.filter((one) => !one.static))
      expect(real.members).toContain(member.name);
    await page.close();
  });

  test("names no custom property that nothing reads", () => {
    expect(sorted(declarations[0]!.cssProperties)).toEqual([...used].toSorted());
  });

  test("tells every event: a change of target, a step that was done, a stand-in that was tried, a hint", async () => {
    const page = await openCoursePage(browser, Object.values(allElements).join(""));
    await drawn(page, Object.keys(allElements).join(","));
    await page
      .locator("reed-plan")
      .getByRole("combobox", { name: "Part to play" })
      .selectOption({ index: 2 });
    await page.locator("reed-plan").getByRole("button", { name: "Done" }).first().click();
    await page.locator("reed-plan dialog, reed-plan reed-step-readings").first().waitFor();
    await page.locator("reed-plan reed-step-readings button").first().click();
    await page.locator("reed-stand-ins .try").first().click();
    await page.locator("reed-bench reed-feature-row#wings .name").click();
    await page.locator("reed-bench reed-feature-row#wings .ask").click();
    await page.locator("reed-bench .try").first().click();
    await page.locator("reed-lip lip-panel input[type=range]").first().focus();
    await page.keyboard.press("ArrowRight");
    await page
      .locator("reed-lip lip-panel")
      .getByRole("button", { name: "Pin to compare" })
      .or(page.locator("reed-lip").getByRole("button", { name: "Pin to compare" }))
      .first()
      .click();
    await page.locator("reed-lesson").getByRole("button", { name: "Hint" }).click();
    await page.locator("reed-lesson").getByRole("button", { name: "Next step" }).click();
    const real = new Set((await heard(page)).map(({ from, type }) => `${from} ${type}`));
    for (const { tagName, events } of declarations.filter(({ tagName: tag }) =>
      ["reed-plan", "reed-stand-ins", "reed-bench", "reed-lip", "reed-lesson"].includes(tag),
    ))
      expect(sorted(events)).toEqual(
        [...real]
          .filter((one) => one.startsWith(`${tagName} `))
          .map((one) => one.split(" ")[1]!)
          .toSorted(),
      );
    await page.close();
  });
});
