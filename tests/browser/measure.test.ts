import { expect } from "vitest";
import type { BenchPage } from "./bench-page.js";
import { axeProblems, stickingOut } from "./page-faults.js";
import { describeWalks, phone } from "./walks.js";

/** Bittern as a hand reads it: every number of the sheet in its order, wires as height and width. */
const numbers = [
  1.1, 11.9, 27.7, 27.7, 8.7, 6.26, 8.7, 8.09, 8.7, 15.3, 0.1, 0.1, 0.45, 0.45, 0.25, 0.25, 0.24,
  0.25, 0.54, 0.54, 0.4, 0.4, 0.39, 0.41, 0.7,
];

const measure = "v=1&model=bassoon&page=measure";

async function table(bench: BenchPage): Promise<Map<string, string>> {
  const rows = await bench.page.locator("measure-summary tbody tr").allInnerTexts();
  return new Map(rows.map((row) => row.split("\t").map((cell) => cell.trim()) as [string, string]));
}

async function tapNumber(bench: BenchPage, number: number): Promise<void> {
  const pad = bench.page.locator("number-pad");
  for (const key of String(number))
    await pad.getByRole("button", { name: key === "." ? "Point" : key, exact: true }).tap();
  await pad.getByRole("button", { name: "Take it" }).tap();
}

describeWalks("the guided sheet", (walk) => {
  walk(
    "with a thumb alone on a phone: soundness, state, every reading, a picture, and the reed has its place",
    async (bench) => {
      const { page } = bench;
      await page.goto(`${bench.url}#${measure}`);
      await page.getByRole("button", { name: "Start with an empty sheet" }).tap();
      for (const fine of await page.getByRole("radio", { name: "fine" }).all()) await fine.tap();
      const next = page.getByRole("button", { name: "Next", exact: true });
      await next.tap();
      await page.getByRole("radio", { name: /soaked/ }).tap();
      await page.getByRole("checkbox", { name: /zero/ }).tap();
      await next.tap();
      for (const number of numbers) await tapNumber(bench, number);
      await page.getByRole("radio", { name: /one clear place/ }).tap();
      await next.tap();
      const told = await table(bench);
      expect(told.get("First-wire roundness")).toBe("0.72");
      expect(told.get("Back rise")).toBe("0.16 mm");
      expect([...told.values()].filter((cell) => cell === "not measured")).toEqual([]);
      expect(await page.locator("measure-page reed-sentence p").innerText()).toContain(
        "soft and low",
      );
      expect(await stickingOut(page)).toEqual([]);
      expect(await axeProblems(page)).toEqual([]);
    },
    phone,
  );

  walk("with the keyboard alone, in thousandths of an inch, and back again", async (bench) => {
    const { page } = bench;
    await page.goto(`${bench.url}#${measure}&unit=thou`);
    await page.getByRole("button", { name: "Start with an empty sheet" }).focus();
    await page.keyboard.press("Enter");
    const next = page.getByRole("button", { name: "Next", exact: true });
    for (let i = 0; i < 2; i += 1) {
      await next.focus();
      await page.keyboard.press("Enter");
    }
    await page.keyboard.type("43.3");
    await page.keyboard.press("Enter");
    expect(await page.locator("measure-step h2").innerText()).toBe("Opening width");
    await page.keyboard.press("Backspace");
    expect(await page.locator("measure-step h2").innerText()).toBe("Opening height");
    expect(await page.locator("measure-step .taken li").innerText()).toContain("43.3 thou");
    expect(await page.locator("measure-step .usual").innerText()).toContain("thou");
    // With arrows one passes by the steps in between; Enter opens one.
    const steps = page.getByLabel("All steps");
    await steps.focus();
    for (let i = 0; i < 3; i += 1) await page.keyboard.press("ArrowDown");
    expect(await page.locator("measure-step h2").innerText()).toBe("Opening height");
    await page.keyboard.press("Enter");
    expect(await page.locator("measure-step h2").innerText()).toBe("Throat width");
    await steps.selectOption({ label: "2. State of reed and gauge" });
    expect(await page.locator("measure-state").getByText("a feeler of 4 thou").count()).toBe(1);
  });

  walk(
    "a slip is asked about: another unit is offered, and the odd value is kept only on purpose",
    async (bench) => {
      const { page } = bench;
      await page.goto(`${bench.url}#${measure}`);
      await page.getByRole("button", { name: "Start with an empty sheet" }).click();
      await page.getByLabel("All steps").selectOption({ label: "10. Tip thickness" });
      await page.locator("measure-step input").fill("0.0043");
      await page.keyboard.press("Enter");
      await page.getByRole("button", { name: "Take 0.11 mm" }).click();
      await page.locator("measure-step input").fill("0.9");
      await page.keyboard.press("Enter");
      const asked = page.locator("measure-step .asked");
      expect(await asked.innerText()).toContain("Is it read rightly?");
      await page.getByRole("button", { name: "Type it again" }).click();
      expect(await asked.count()).toBe(0);
      await page.locator("measure-step input").fill("0.9");
      await page.keyboard.press("Enter");
      await page.getByRole("button", { name: "Keep 0.9 mm on purpose" }).click();
      await page.getByLabel("All steps").selectOption({ label: "17. The sheet so far" });
      expect((await table(bench)).get("Tip thickness")).toBe("0.51 mm");
    },
  );

  walk(
    "a reload in the middle loses nothing: single readings, answers, the place on the sheet",
    async (bench) => {
      const { page } = bench;
      await page.goto(`${bench.url}#${measure}`);
      await page.getByRole("button", { name: "Start with an empty sheet" }).click();
      await page.getByRole("radio", { name: "not so" }).nth(1).check();
      await page.getByLabel("All steps").selectOption({ label: "12. Wing thickness" });
      for (const value of ["0.24", "0.29"]) {
        await page.locator("measure-step input").fill(value);
        await page.keyboard.press("Enter");
      }
      await bench.code();
      await page.reload();
      expect(await page.locator("measure-step h2").innerText()).toBe("Wing thickness");
      expect(await page.locator("measure-step .taken li").count()).toBe(2);
      expect(await page.locator("measure-step .field").innerText()).toContain("back blade, left");
      await page.getByLabel("All steps").selectOption({ label: "1. Is it sound?" });
      expect(await page.getByRole("radio", { name: "not so" }).nth(1).isChecked()).toBe(true);
      expect(await page.locator("measure-look .stopped").innerText()).toContain("gets no place");
    },
  );

  walk("soaked and dry are not mixed, and what a clip touches is read again", async (bench) => {
    const { page } = bench;
    await page.goto(`${bench.url}#${measure}`);
    await page.getByRole("button", { name: "Start with an empty sheet" }).click();
    const steps = page.getByLabel("All steps");
    await steps.selectOption({ label: "2. State of reed and gauge" });
    await page.getByRole("radio", { name: /soaked/ }).check();
    await steps.selectOption({ label: "5. Blade length" });
    await page.locator("measure-step input").fill("27.7");
    await page.keyboard.press("Enter");
    await steps.selectOption({ label: "2. State of reed and gauge" });
    await page.getByRole("radio", { name: "dry", exact: true }).click();
    expect(await page.locator("measure-state .mixed").innerText()).toContain("not comparable");
    await page.getByRole("button", { name: "Leave it as it was" }).click();
    expect(await page.getByRole("radio", { name: /soaked/ }).isChecked()).toBe(true);
    await steps.selectOption({ label: "17. The sheet so far" });
    await page.getByLabel("Something was done to this reed since").selectOption("clipTip");
    await page.getByRole("button", { name: "Read again what it touched" }).click();
    await steps.selectOption({ label: "5. Blade length" });
    const field = page.locator("measure-step input");
    expect(await field.getAttribute("placeholder")).toContain("27.7 mm");
  });

  walk("blank and filled sheets print on one page each", async (bench) => {
    const { page } = bench;
    await page.goto(`${bench.url}#${measure}`);
    for (const step of ["blank", "filled"]) {
      if (step === "filled") await bench.pickReed("Bittern");
      if (step === "filled")
        await page.getByRole("button", { name: "Go through the sheet of Bittern" }).click();
      const pdf = (await page.pdf({ format: "A4" })).toString("latin1");
      expect(pdf.match(/\/Type\s*\/Page\b/g), step).toHaveLength(1);
      await page.emulateMedia({ media: "print" });
      const parts = await page.locator("measure-paper").locator("header, table, p").allInnerTexts();
      const paper = parts.join(" ");
      expect(paper).toContain("cut away from the hand");
      expect(paper.includes("27.7")).toBe(step === "filled");
      await page.emulateMedia({ media: null });
    }
  });
});
