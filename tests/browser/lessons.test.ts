import { readdirSync } from "node:fs";
import { expect } from "vitest";
import type { Blend } from "../../src/engine/blend.js";
import type { BenchPage } from "./bench-page.js";
import { axeProblems, stickingOut } from "./page-faults.js";
import { describeWalks, phone } from "./walks.js";

const start = "v=1&model=bassoon&page=lessons";
const shape = `${start}&lesson=06-shape.1`;
const course = readdirSync(new URL("../../lessons/en/", import.meta.url)).length;

async function open(bench: BenchPage, code: string): Promise<void> {
  await bench.page.goto(`${bench.url}#${code}`);
  await bench.page.locator("lessons-page h2").first().waitFor();
}

/** Everything that is written or said on the page: what a curious student could find. */
async function everything(bench: BenchPage): Promise<string> {
  const html = await bench.page.locator("lessons-page").evaluate((page) => {
    const read = (root: ParentNode): string =>
      [...root.querySelectorAll("*")]
        .map((one) => {
          const attributes = one.getAttributeNames().map((name) => one.getAttribute(name));
          const inside = one.shadowRoot ? read(one.shadowRoot) : "";
          const texts = [...one.childNodes].filter(({ nodeType }) => nodeType === 3);
          return [...attributes, ...texts.map(({ textContent }) => textContent), inside].join(" ");
        })
        .join(" ");
    return read(page.shadowRoot!);
  });
  return html.replace(/\s+/g, " ");
}

const feedback = (bench: BenchPage) => bench.page.locator("lesson-feedback .told");

/** Drags the guess; the triangle may lie below the window's edge. */
async function guess(bench: BenchPage, to: Blend): Promise<void> {
  await bench.page.locator("lesson-predict triangle-plane svg").scrollIntoViewIfNeeded();
  await bench.dragPoint(to);
}

async function lockIn(bench: BenchPage): Promise<void> {
  await bench.button("Lock in").click();
}

describeWalks("lessons", (walk) => {
  walk("are listed with minutes and exercises, and open", async (bench) => {
    await open(bench, start);
    const cards = bench.page.locator("lessons-page .lesson");
    expect(await cards.count()).toBe(course);
    expect(await cards.first().innerText()).toMatch(/10 minutes · 5 exercises/);
    expect(await axeProblems(bench.page)).toEqual([]);
    await cards.nth(5).click();
    await bench.page.locator("lesson-step h2").waitFor();
    expect(await bench.code()).toContain("lesson=06-shape.1");
  });

  walk(
    "a lesson in which only some features count says so, in the list and at its head",
    async (bench) => {
      await open(bench, start);
      const card = bench.page.locator("lessons-page .lesson", { hasText: "Wires, round and flat" });
      expect(await card.innerText()).toContain("Only these count: first-wire roundness");
      await card.click();
      await bench.page.locator("lesson-step h2").waitFor();
      const head = await bench.page
        .locator("lesson-player > *, lesson-player p.soft")
        .allInnerTexts();
      expect(head.join(" ")).toContain("So its point is not that of the bench.");
    },
  );

  walk("a step opens by its link", async (bench) => {
    await open(bench, `${start}&lesson=06-shape.3`);
    expect(await bench.page.locator("lesson-step h2").innerText()).toBe(
      "The one that is different",
    );
    expect(await bench.page.locator(".step[aria-current]").innerText()).toBe("3");
  });

  walk("a link to no lesson says so and shows the list", async (bench) => {
    await open(bench, `${start}&lesson=66-nothing.1`);
    expect(await bench.page.locator("lessons-page [role=alert]").innerText()).toMatch(/66-nothing/);
    expect(await bench.page.locator("lessons-page .lesson").count()).toBe(course);
  });

  walk(
    "a guess needs a place and how sure it is; nothing gives the outcome away before",
    async (bench) => {
      await open(bench, shape);
      await lockIn(bench);
      const problem = bench.page.locator("lesson-exercise .problem");
      expect(await problem.innerText()).toMatch(/^Put the point first/);
      await guess(bench, [0.6, 0.2, 0.2]);
      await lockIn(bench);
      expect(await problem.innerText()).toBe("Say how sure you are, too.");
      for (const _ of [1, 2, 3]) await bench.page.locator("lesson-exercise .hint").click();
      expect(await bench.page.locator("lesson-exercise .hints li").count()).toBe(3);
      const said = await everything(bench);
      // How the keys move the point is said of every guess.
      const telling = said
        .replace(/Click or drag inside the triangle.*? for the centre\./g, "")
        .match(/toward (the )?high|away from|pulls|A short blade is firm|goes toward/gi);
      expect(telling).toBe(null);
      expect(said).toContain("Your guess: 60% high register, 20% soft and low");
      expect(await bench.page.locator("lessons-page reed-compass").count()).toBe(0);
      expect(await axeProblems(bench.page)).toEqual([]);
    },
  );

  walk(
    "once locked in, the point goes there, the guess stays, and the pulls sum to the move",
    async (bench) => {
      await open(bench, shape);
      await guess(bench, [0.6, 0.2, 0.2]);
      await bench.page.getByRole("radio", { name: "Fairly sure" }).check();
      await lockIn(bench);
      await feedback(bench).waitFor();
      const text = await feedback(bench).innerText();
      expect(text).toMatch(/The point goes (toward|away from) .+, by \d+ points\./);
      expect(text).toContain("A short blade is firm.");
      expect(await bench.page.locator("triangle-plane .pinnedMark").count()).toBe(1);
      const number = (cell: string) => Math.round(Number(cell.replace("−", "-")) * 10);
      const rows = await bench.page
        .locator("lesson-feedback tbody tr")
        .evaluateAll((all) =>
          all.map((row) => [...row.querySelectorAll("td")].map((cell) => cell.textContent ?? "")),
        );
      const sum = await bench.page.locator("lesson-feedback tfoot td").allInnerTexts();
      sum.forEach((cell, k) =>
        expect(rows.reduce((total, row) => total + number(row[k]!), 0)).toBe(number(cell)),
      );
      expect(
        await bench.page.locator("lesson-feedback .told:focus").getByText("The point goes").count(),
      ).toBe(1);
    },
  );

  walk("the lock holds against pointer, keys, reload and link", async (bench) => {
    await open(bench, shape);
    await guess(bench, [0.2, 0.2, 0.6]);
    await bench.page.getByRole("radio", { name: "Sure", exact: true }).check();
    await lockIn(bench);
    await feedback(bench).waitFor();
    const told = await feedback(bench).innerText();
    expect(told).toContain("You were sure.");
    const place = () =>
      bench.page.locator("lesson-predict .handle").first().getAttribute("transform");
    const at = await place();
    await guess(bench, [1 / 3, 1 / 3, 1 / 3]);
    expect(await place()).toBe(at);
    expect(await bench.page.locator("lesson-predict reed-shares").count()).toBe(0);
    expect(await bench.page.locator("lesson-predict [tabindex='0']").count()).toBe(0);
    await bench.code();
    await bench.page.reload();
    await feedback(bench).waitFor();
    expect(await feedback(bench).innerText()).toBe(told);
    await bench.page.evaluate((code) => void (location.hash = code), `${shape}&unit=in`);
    await bench.page.waitForTimeout(300);
    expect(await feedback(bench).count()).toBe(1);
    expect(await bench.button("Lock in").count()).toBe(0);
  });

  walk("by keyboard alone: guess, sureness, lock, choose, try again, next step", async (bench) => {
    await open(bench, shape);
    const { keyboard } = bench.page;
    await bench.page.locator("lesson-predict .plane").focus();
    for (let k = 0; k < 6; k += 1) await keyboard.press("ArrowUp");
    await bench.page.locator("lesson-predict input[type=radio]").first().focus();
    await keyboard.press("Space");
    await bench.button("Lock in").focus();
    await keyboard.press("Enter");
    await feedback(bench).waitFor();
    expect(await bench.page.locator("lesson-feedback:focus").count()).toBe(1);
    const choice = bench.page.locator("lesson-exercise").nth(1);
    await choice.locator("input[value='0']").focus();
    await keyboard.press("Space");
    await choice.getByRole("button", { name: "Check" }).focus();
    await keyboard.press("Enter");
    expect(await choice.locator(".verdict").innerText()).toBe("Not this time.");
    // The focus comes a frame later: nobody's hand is faster, but this one.
    await choice.locator("lesson-feedback:focus").waitFor();
    await choice.getByRole("button", { name: "Try again" }).focus();
    await keyboard.press("Enter");
    await choice.locator("input[value='0']:focus").waitFor();
    await choice.locator("input[value='1']").focus();
    await keyboard.press("Space");
    await choice.getByRole("button", { name: "Check" }).focus();
    await keyboard.press("Enter");
    expect(await choice.locator(".verdict").innerText()).toBe("Right.");
    await bench.button("Next step").focus();
    await keyboard.press("Enter");
    await bench.page.getByRole("heading", { name: "Its neighbour" }).waitFor();
  });

  walk("shares are read off a triangle that does not say them", async (bench) => {
    await open(bench, `${start}&lesson=14-casebook.4`);
    const choice = bench.page.locator("lesson-exercise").first();
    await choice.locator("input[value='1']").check();
    await choice.getByRole("button", { name: "Check" }).click();
    const reading = bench.page.locator("lesson-reading");
    await reading.waitFor();
    expect(
      (await bench.page.locator("lessons-page triangle-plane .share").allInnerTexts()).join(""),
    ).toBe("");
    const names = await bench.page
      .locator("lessons-page triangle-plane svg")
      .evaluateAll((all) => all.map((svg) => svg.getAttribute("aria-label")));
    expect(names.join(" ")).not.toMatch(/\d/);
    for (const [k, share] of ["10", "10", "80"].entries())
      await reading.locator("input").nth(k).fill(share);
    await reading.locator("input").last().blur();
    await bench.page
      .locator("lesson-exercise")
      .nth(1)
      .getByRole("button", { name: "Check" })
      .click();
    expect(await feedback(bench).last().innerText()).toMatch(/Not this time|Partly/);
  });

  walk(
    "a recipe is brought to its target by sliders, and any that gets there is right",
    async (bench) => {
      await open(bench, `${start}&lesson=06-shape.5`);
      const recipe = bench.page.locator("lesson-recipe");
      await recipe.waitFor();
      expect(await recipe.locator("p").allInnerTexts()).toContain(
        "You may move at most 2 features.",
      );
      await bench.button("Check").click();
      expect(await bench.page.locator("lesson-exercise .problem").innerText()).toBe(
        "Move something first.",
      );
      for (const _ of [1, 2, 3]) await bench.page.locator("lesson-exercise .hint").click();
      const hint = await bench.page.locator("lesson-exercise .hints li").last().innerText();
      const parts = [...hint.matchAll(/([a-z ]+?) (\d+\.\d+)(?: mm)?(?=[,.])/g)].map(
        ([, name, value]) => ({
          name: name!.replace(/^.*: /, "").trim(),
          value: value!,
        }),
      );
      expect(parts.length).toBeGreaterThan(0);
      for (const { name, value } of parts) {
        const field = recipe.getByRole("textbox", { name: new RegExp(`^${name}, value`, "i") });
        await field.fill(value);
        await field.press("Enter");
        await field.blur();
      }
      await bench.button("Check").click();
      expect(await feedback(bench).innerText()).toMatch(/^Right\.\n+The point is there\./);
    },
  );

  walk("in a recipe, Control and Z take back, and Redo brings back", async (bench) => {
    await open(bench, `${start}&lesson=06-shape.5`);
    const fields = bench.page.locator("lesson-recipe input[type=text]");
    const [first, second] = [await fields.nth(0).inputValue(), await fields.nth(1).inputValue()];
    for (const k of [0, 1]) {
      await fields.nth(k).fill(String(Number(k === 0 ? first : second) - 0.5));
      await fields.nth(k).press("Enter");
    }
    const moved = await fields.nth(1).inputValue();
    await bench.page.locator("lesson-recipe input[type=range]").first().focus();
    await bench.page.keyboard.press("ControlOrMeta+z");
    await expect.poll(() => fields.nth(1).inputValue()).toBe(second);
    expect(await fields.nth(0).inputValue()).not.toBe(first);
    await bench.button("Redo").click();
    await expect.poll(() => fields.nth(1).inputValue()).toBe(moved);
    await bench.button("Back to the start").click();
    await expect.poll(() => fields.nth(1).inputValue()).toBe(second);
    await bench.button("Undo").click();
    await expect.poll(() => fields.nth(1).inputValue()).toBe(moved);
  });

  walk("two reeds are shown under the same lips, and other lips can be tried", async (bench) => {
    await open(bench, `${start}&lesson=09-air.1`);
    const lips = bench.page.locator("lesson-lips");
    const opening = () => lips.locator("reed-lip-opening").first().locator("p").first().innerText();
    const before = await opening();
    expect(before).toMatch(/mm wide/);
    expect(await lips.locator("[data-dial]").count()).toBe(6);
    await lips.getByRole("button", { name: "High register" }).click();
    await expect.poll(opening).not.toBe(before);
    expect(await axeProblems(bench.page)).toEqual([]);
  });

  walk(
    "on a phone, by touch: a guess by a finger, and nothing sticks out",
    async (bench) => {
      await open(bench, shape);
      await bench.page.locator("lesson-predict triangle-plane").scrollIntoViewIfNeeded();
      await bench.tapTriangle([0.6, 0.2, 0.2]);
      await bench.page.getByRole("radio", { name: "Fairly sure" }).tap();
      await bench.button("Lock in").tap();
      await feedback(bench).waitFor();
      expect(await stickingOut(bench.page)).toEqual([]);
      expect(await axeProblems(bench.page)).toEqual([]);
    },
    phone,
  );

  walk(
    "on a phone the triangle of a recipe stays in sight of its last slider",
    async (bench) => {
      await open(bench, `${start}&lesson=06-shape.5`);
      const { page } = bench;
      await page.locator("lesson-recipe reed-feature-row input[type=range]").last().focus();
      const box = async (what: string) => (await page.locator(what).last().boundingBox())!;
      const triangle = await box("lesson-recipe triangle-plane");
      const slider = await box("lesson-recipe reed-feature-row input[type=range]");
      expect(triangle.y).toBeGreaterThanOrEqual(0);
      expect(slider.y).toBeGreaterThanOrEqual(triangle.y + triangle.height);
      expect(slider.y + slider.height).toBeLessThanOrEqual(740);
    },
    phone,
  );
});
