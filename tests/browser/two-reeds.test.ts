import { expect } from "vitest";
import { pointToBlend } from "../../src/engine/frame.js";
import { place } from "../../src/engine/place.js";
import { compileModel } from "../../src/engine/compile.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { demoReeds } from "../../src/reed/demo-reeds.js";
import type { BenchPage } from "./bench-page.js";
import { describeWalks, phone } from "./walks.js";

const map = compileModel(bassoonModel);
const placeOf = (name: string) =>
  place(map, demoReeds.find(({ reed }) => reed === name)!.readings).blend;

/** Where the middle of something on the triangle is, as shares. */
async function sharesAt(bench: BenchPage, selector: string): Promise<number[]> {
  const box = (await bench.page.locator(`triangle-plane svg ${selector}`).boundingBox())!;
  return [...pointToBlend([box.x + box.width / 2, box.y + box.height / 2], await bench.frame())];
}

async function pickOwnTarget(bench: BenchPage): Promise<void> {
  await bench.page.getByLabel("Part to play").selectOption({ label: "My own target" });
}

describeWalks("two reeds and a target of one's own", (walk) => {
  walk(
    "a pinned reed stays on the triangle, and what differs most is told first",
    async (bench) => {
      await bench.open();
      await bench.pickReed("Bittern");
      await bench.button("Pin to compare").click();
      await bench.pickReed("Heron");
      const pinned = await sharesAt(bench, ".pinnedMark");
      placeOf("Bittern").forEach((share, k) => expect(pinned[k]!).toBeCloseTo(share, 2));
      expect(await bench.page.locator("reed-drawing").count()).toBe(2);
      const rows = bench.page.locator("reed-comparison tbody tr:visible");
      expect(await rows.count()).toBe(4);
      const sizes = await rows.evaluateAll((all) =>
        all.map((row) => Number.parseInt(row.lastElementChild!.textContent.trim(), 10)),
      );
      expect(sizes).toEqual(sizes.toSorted((a, b) => b - a));
      await bench.button("Swap the two").click();
      expect(await bench.page.locator("reed-comparison h2").innerText()).toBe(
        "Compared with Heron",
      );
      await bench.code();
      await bench.page.reload();
      expect(await bench.page.locator("reed-comparison h2").innerText()).toBe(
        "Compared with Heron",
      );
      await bench.button("Unpin").click();
      expect(await bench.page.locator("reed-comparison").count()).toBe(0);
      await bench.button("Undo").click();
      expect(await bench.page.locator("reed-comparison").count()).toBe(1);
    },
  );

  walk(
    "one's own target is dragged, the reed stays, and undo brings the target back",
    async (bench) => {
      await bench.open();
      await bench.pickReed("Heron");
      const before = await bench.shares();
      await pickOwnTarget(bench);
      const box = (await bench.page.locator("triangle-plane .aim .diamond").boundingBox())!;
      const away = await bench.place([0.2, 0.5, 0.3]);
      // It begins where the reed is, and lies on top: who has just wished for it wants to move it.
      await bench.page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
      await bench.page.mouse.down();
      await bench.page.mouse.move(away[0], away[1], { steps: 6 });
      await bench.page.mouse.up();
      const aim = await sharesAt(bench, ".aim .diamond");
      [0.2, 0.5, 0.3].forEach((share, k) => expect(aim[k]!).toBeCloseTo(share, 2));
      expect((await bench.shares()).slice(0, 3)).toEqual(before.slice(0, 3));
      expect(await bench.page.locator("bench-controls .answer").innerText()).toContain(
        "For your own target it needs above all",
      );
      expect(await bench.code()).toMatch(/target=own&aim=20\d\.(499|50\d)/);
      await bench.button("Undo").click();
      const back = await sharesAt(bench, ".aim .diamond");
      placeOf("Heron").forEach((share, k) => expect(back[k]!).toBeCloseTo(share, 2));
    },
  );

  walk("the target needs no dragging: clicks, keys and its own sliders move it", async (bench) => {
    await bench.open();
    const reed = await sharesAt(bench, ".dot");
    await pickOwnTarget(bench);
    await bench.page.getByLabel("a click or a key moves").selectOption({ label: "my target" });
    await bench.clickTriangle([0.25, 0.25, 0.5]);
    expect((await sharesAt(bench, ".aim .diamond"))[2]).toBeCloseTo(0.5, 2);
    await bench.page.locator("triangle-plane .plane").focus();
    for (let i = 0; i < 5; i += 1) await bench.page.keyboard.press("ArrowUp");
    expect((await sharesAt(bench, ".aim .diamond"))[0]).toBeCloseTo(0.35, 2);
    const own = bench.page.getByRole("group", { name: "My target" });
    await own.getByLabel("High register, per cent").fill("60");
    await own.getByLabel("High register, per cent").press("Enter");
    expect((await sharesAt(bench, ".aim .diamond"))[0]).toBeCloseTo(0.6, 2);
    expect(await sharesAt(bench, ".dot")).toEqual(reed);
  });

  walk(
    "a finger drags the target on a phone",
    async (bench) => {
      await bench.open();
      await pickOwnTarget(bench);
      await bench.page.getByLabel("a click or a key moves").selectOption({ label: "my target" });
      await bench.page.evaluate(() => window.scrollTo(0, 0));
      const from = await bench.point();
      const to = await bench.place([0.6, 0.2, 0.2]);
      await bench.touch([from, [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2], to]);
      expect((await sharesAt(bench, ".aim .diamond"))[0]).toBeCloseTo(0.6, 1);
    },
    phone,
  );

  walk("a part to play can be wished for without a reed that has a place", async (bench) => {
    await bench.open();
    await bench.page.getByRole("combobox", { name: "Reed" }).selectOption("empty");
    await pickOwnTarget(bench);
    await bench.page.getByLabel("a click or a key moves").selectOption({ label: "my target" });
    await bench.clickTriangle([0.5, 0.25, 0.25]);
    expect((await sharesAt(bench, ".aim .diamond"))[0]).toBeCloseTo(0.5, 2);
  });
});
