import { expect } from "vitest";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { encodeBench, newBench } from "../../src/reed/bench.js";
import { demoReeds } from "../../src/reed/demo-reeds.js";
import type { BenchPage } from "./bench-page.js";
import { describeWalks } from "./walks.js";

const readings = (name: string) => demoReeds.find(({ reed }) => reed === name)!.readings;
/** A bench with everything on it that can have the focus. */
const full = encodeBench(
  {
    ...newBench(bassoonModel),
    reed: "Heron",
    values: readings("Heron"),
    target: "own",
    aim: [0.3, 0.45, 0.25],
    pinned: { reed: "Bittern", values: readings("Bittern") },
    layers: ["readingLines", "certainty", "pulls", "reach"],
  },
  bassoonModel,
);

/** What has the focus, if something else lies over its middle. */
async function coverOfFocus(bench: BenchPage): Promise<string> {
  return bench.page.evaluate(() => {
    let active: Element | null = document.activeElement;
    while (active?.shadowRoot?.activeElement) active = active.shadowRoot.activeElement;
    if (!active || active === document.body) return "";
    const { left, top, width, height } = active.getBoundingClientRect();
    const [x, y] = [left + width / 2, top + height / 2];
    let over: Element | null = document.elementFromPoint(x, y);
    while (over?.shadowRoot) {
      const inner = over.shadowRoot.elementFromPoint(x, y);
      if (!inner || inner === over) break;
      over = inner;
    }
    const related = over && (over === active || active.contains(over) || over.contains(active));
    if (related || over?.closest("label")?.contains(active)) return "";
    return `${active.outerHTML.slice(0, 70)} at ${Math.round(y)} under ${over?.outerHTML.slice(0, 70)}`;
  });
}

/** Name of what has the focus; empty when nothing has. */
async function focused(bench: BenchPage): Promise<string> {
  return bench.page.evaluate(() => {
    let active: Element | null = document.activeElement;
    while (active?.shadowRoot?.activeElement) active = active.shadowRoot.activeElement;
    return active === document.body ? "" : (active?.textContent ?? "").trim();
  });
}

describeWalks("the keyboard's place", (walk) => {
  for (const [width, height] of [
    [360, 740],
    [768, 1024],
    [1440, 900],
  ] as const) {
    walk(
      `what has the focus is never hidden under triangle or sheet, forward and back, at ${width} px`,
      async (bench) => {
        await bench.open(full);
        const hidden = new Set<string>();
        for (const key of ["Tab", "Shift+Tab"]) {
          for (let i = 0; i < 75; i += 1) {
            await bench.page.keyboard.press(key);
            const cover = await coverOfFocus(bench);
            if (cover) hidden.add(`${key}: ${cover}`);
          }
        }
        expect([...hidden]).toEqual([]);
      },
      { viewport: { width, height } },
    );
  }

  walk("pinning a reed and taking it off again keep the focus beside their work", async (bench) => {
    await bench.open();
    await bench.pickReed("Heron");
    await bench.button("Pin to compare").focus();
    await bench.page.keyboard.press("Enter");
    await expect.poll(() => focused(bench)).toBe("Unpin");
    await bench.page.keyboard.press("Enter");
    await expect.poll(() => focused(bench)).toBe("Pin to compare");
  });

  walk(
    "on a phone the menu keeps the focus after a reset and after a closed dialog",
    async (bench) => {
      await bench.open();
      await bench.pickReed("Heron");
      const more = bench.page.locator("bench-header summary");
      await more.focus();
      await bench.page.keyboard.press("Enter");
      await bench.button("Reset").focus();
      await bench.page.keyboard.press("Enter");
      expect(await focused(bench)).toBe("More");
      await bench.page.keyboard.press("Enter");
      await bench.button("Paste readings").focus();
      await bench.page.keyboard.press("Enter");
      await bench.page.locator("dialog textarea").waitFor();
      await bench.page.keyboard.press("Escape");
      await expect.poll(() => focused(bench)).toBe("More");
    },
    { viewport: { width: 360, height: 740 } },
  );

  walk("keys, undo and a drag are steps of their own", async (bench) => {
    await bench.open();
    await bench.page.locator("triangle-plane .plane").focus();
    for (let i = 0; i < 3; i += 1) await bench.page.keyboard.press("ArrowUp");
    await bench.page.keyboard.press("Control+z");
    expect((await bench.shares())[0]).toBe(33);
    await bench.page.keyboard.press("ArrowUp");
    expect((await bench.shares())[0]).toBe(35);
    await bench.dragPoint([0.6, 0.2, 0.2]);
    await bench.page.keyboard.press("Control+z");
    expect((await bench.shares())[0]).toBe(35);
  });

  walk("lips and breath are kept while another page is open", async (bench) => {
    await bench.open();
    await bench.button("Lip and opening").click();
    const lip = bench.page.locator("bench-lip").getByRole("slider", { name: /lip/i }).first();
    await lip.focus();
    const before = await lip.inputValue();
    await bench.page.keyboard.press("ArrowRight");
    const after = await lip.inputValue();
    expect(after).not.toBe(before);
    await bench.button("Bench").click();
    await bench.button("Lip and opening").click();
    expect(await lip.inputValue()).toBe(after);
  });
});
