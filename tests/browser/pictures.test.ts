import { readFile } from "node:fs/promises";
import { expect } from "vitest";
import type { BenchPage } from "./bench-page.js";
import { describeWalks } from "./walks.js";

async function saved(bench: BenchPage, button: string): Promise<{ name: string; bytes: Buffer }> {
  const download = bench.page.waitForEvent("download");
  await bench.button(button).click();
  const file = await download;
  return { name: file.suggestedFilename(), bytes: await readFile(await file.path()) };
}

/** The words of an iTXt chunk, read from the file's bytes. */
function pngText(bytes: Buffer, keyword: string): string {
  const at = bytes.indexOf(`iTXt${keyword}\0`);
  const length = bytes.readUInt32BE(at - 4);
  return bytes.toString("utf8", at + 4 + keyword.length + 5, at + 4 + length);
}

describeWalks("pictures to save", (walk) => {
  walk(
    "the triangle as SVG stands alone: title, description, and every colour of its own",
    async (bench) => {
      await bench.open();
      await bench.pickReed("Bittern");
      const { name, bytes } = await saved(bench, "Save the triangle as SVG");
      expect(name).toBe("reed-triangle.svg");
      const found = await bench.page.evaluate((text) => {
        const svg = new DOMParser().parseFromString(text, "image/svg+xml").documentElement;
        const shapes = [...svg.querySelectorAll("path, circle, ellipse, line")];
        return {
          title: svg.querySelector("title")?.textContent,
          description: svg.querySelector("desc")?.textContent,
          labelledBy: svg.getAttribute("aria-labelledby"),
          leftovers: svg.querySelectorAll("[class], [style], [part], .grasp").length,
          // Nothing falls back to a renderer's black: every shape says how it is filled or stroked.
          bare: shapes
            .filter((one) => !one.matches("[fill], [stroke], clipPath *"))
            .map((one) => one.outerHTML),
        };
      }, bytes.toString());
      expect(found).toMatchObject({
        title: "Bittern",
        labelledBy: "title description",
        leftovers: 0,
        bare: [],
      });
      expect(found.description).toContain("soft and low");
      expect(bytes.toString()).not.toMatch(/var\(|https?:\/\/(?!www\.w3\.org)/);
      // Opened alone in a browser it shows the same corners, with their words.
      await bench.page.goto(`data:image/svg+xml;base64,${bytes.toString("base64")}`);
      expect(await bench.page.locator("text").allTextContents()).toContain("High register");
    },
  );

  walk("the drawing as PNG has its words inside, and is large enough to project", async (bench) => {
    await bench.open();
    await bench.pickReed("Heron");
    const { name, bytes } = await saved(bench, "Save the drawing as PNG");
    expect(name).toBe("reed-drawing.png");
    expect(pngText(bytes, "Title")).toBe("Heron");
    expect(pngText(bytes, "Description")).toContain("wing thickness 0.21 mm");
    // A decoder of its own, the browser's, still reads the file.
    const size = await bench.page.evaluate(async (data) => {
      const image = new Image();
      image.src = `data:image/png;base64,${data}`;
      await image.decode();
      return [image.naturalWidth, image.naturalHeight];
    }, bytes.toString("base64"));
    expect(size[0]).toBeGreaterThanOrEqual(1600);
    expect(size[1]! / size[0]!).toBeGreaterThan(1);
  });
});
