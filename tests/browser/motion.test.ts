import { expect } from "vitest";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { encodeBench, newBench } from "../../src/reed/bench.js";
import { demoReeds } from "../../src/reed/demo-reeds.js";
import type { BenchPage } from "./bench-page.js";
import { describeWalks } from "./walks.js";

/** Types a number and notes where the point is drawn in every frame for half a second. */
async function watchPoint(bench: BenchPage): Promise<string[]> {
  await bench.page.evaluate(() => {
    const seen: string[] = [];
    Object.assign(window, { seen });
    const triangle = document
      .querySelector("reedpoint-app")!
      .shadowRoot!.querySelector("bench-grid")!
      .shadowRoot!.querySelector("bench-place")!
      .shadowRoot!.querySelector("triangle-plane")!.shadowRoot!;
    const note = (): void => {
      seen.push(triangle.querySelector(".handle")!.getAttribute("transform")!);
      requestAnimationFrame(note);
    };
    note();
  });
  await bench.type("throatWidth", "9.2");
  await bench.page.waitForTimeout(500);
  const seen = await bench.page.evaluate(() => (window as unknown as { seen: string[] }).seen);
  return seen.filter((place, i) => place !== seen[i - 1]);
}

describeWalks("motion", (walk) => {
  walk(
    "a point travels to its new place in many small steps, and is there within a third of a second",
    async (bench) => {
      await bench.open();
      const places = await watchPoint(bench);
      expect(places.length).toBeGreaterThan(3);
      const end = places.at(-1)!;
      await bench.page.waitForTimeout(100);
      expect(await bench.page.locator("triangle-plane .handle").getAttribute("transform")).toBe(
        end,
      );
    },
    { reducedMotion: "no-preference" },
  );

  walk("under reduced motion it jumps", async (bench) => {
    await bench.open();
    expect(await watchPoint(bench)).toHaveLength(2);
  });

  walk(
    "dragging is never eased: the point is under the pointer after every move",
    async (bench) => {
      await bench.open();
      const [x, y] = await bench.point();
      await bench.page.mouse.move(x, y);
      await bench.page.mouse.down();
      for (const step of [10, 20, 30, 40]) {
        await bench.page.mouse.move(x + step, y + step / 2);
        const [px, py] = await bench.point();
        expect(px).toBeCloseTo(x + step, 0);
        expect(py).toBeCloseTo(y + step / 2, 0);
      }
      await bench.page.mouse.up();
    },
    { reducedMotion: "no-preference" },
  );

  walk("a drag with every layer on lays the page out at most once a move", async (bench) => {
    const code = encodeBench(
      {
        ...newBench(bassoonModel),
        reed: "Heron",
        values: demoReeds.find(({ reed }) => reed === "Heron")!.readings,
        target: "softLow",
        layers: ["readingLines", "certainty", "pulls", "eachPull", "reach"],
      },
      bassoonModel,
    );
    await bench.open(code);
    const client = await bench.page.context().newCDPSession(bench.page);
    await client.send("Performance.enable");
    const layouts = async (): Promise<number> => {
      const { metrics } = await client.send("Performance.getMetrics");
      return metrics.find(({ name }) => name === "LayoutCount")!.value;
    };
    const [x, y] = await bench.point();
    await bench.page.mouse.move(x, y);
    await bench.page.mouse.down();
    const before = await layouts();
    const moves = 60;
    for (let i = 1; i <= moves; i += 1)
      await bench.page.mouse.move(x + 30 * Math.sin(i / 9), y + 30 * Math.sin(i / 7));
    const each = ((await layouts()) - before) / moves;
    await bench.page.mouse.up();
    // Now and then a word that waits for its time is laid out in a frame of its own.
    expect(each).toBeLessThan(1.25);
  });
});
