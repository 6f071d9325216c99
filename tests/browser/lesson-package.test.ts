import { readFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { strFromU8, unzipSync } from "fflate";
import { expect, inject } from "vitest";
import { packageFiles, type PackageOrder } from "../../src/scorm/lesson-package.js";
import { lessonFrom } from "../scorm/made-lesson.js";
import { soundLesson } from "../lesson/lesson-texts.js";
import type { BenchPage } from "./bench-page.js";
import { dist } from "./built-sizes.js";
import { axeProblems, stickingOut } from "./page-faults.js";
import { serveStrictly, strictPolicy } from "./strict-server.js";
import { describeWalks, phone } from "./walks.js";

const open = "v=1&model=bassoon&page=lessons&lesson=06-shape.1";

async function openDialog(bench: BenchPage, url = inject("appUrl")): Promise<void> {
  await bench.page.goto(`${url}#${open}`);
  await bench.button("For a learning platform …").click();
  await bench.page.locator("lesson-package-dialog dialog").waitFor();
}

/** The files of the zip that the button saves, and its name. */
async function save(bench: BenchPage) {
  const [download] = await Promise.all([
    bench.page.waitForEvent("download"),
    bench.button("Save the package").click(),
  ]);
  const zip = unzipSync(new Uint8Array(readFileSync(await download.path())));
  const texts = Object.entries(zip).map(([name, bytes]) => [name, strFromU8(bytes)] as const);
  return { name: download.suggestedFilename(), files: Object.fromEntries(texts) };
}

function shipped(order: PackageOrder) {
  const file = "lessons/en/06-shape.md";
  const text = readFileSync(new URL(`../../${file}`, import.meta.url), "utf8");
  const [script, style] = ["js", "css"].map((end) =>
    readFileSync(`${dist}scorm/lesson.${end}`, "utf8"),
  );
  return packageFiles([lessonFrom(text, file)], order, { script: script!, style: style! });
}

type Files = Readonly<Record<string, string>>;

/** Names of files that are in one package alone, or say another thing there. */
function differing(one: Files, other: Files): string[] {
  return [...new Set([...Object.keys(one), ...Object.keys(other)])].filter(
    (name) => one[name] !== other[name],
  );
}

describeWalks("a package by the button under a lesson", (walk) => {
  walk(
    "is the one that the command makes; what makes it comes only when asked for",
    async (bench) => {
      const strict = await serveStrictly(strictPolicy);
      const asked: string[] = [];
      bench.page.on("request", (request) => asked.push(new URL(request.url()).pathname));
      await bench.page.goto(`${strict.url}#${open}`);
      await bench.page.locator("lesson-step h2").waitFor();
      expect(asked.filter((path) => /package-dialog|scorm/.test(path))).toEqual([]);
      await openDialog(bench, strict.url);
      const { name, files } = await save(bench);
      expect(name).toBe("06-shape-scorm-1.2.zip");
      expect(differing(files, shipped({ edition: "1.2" }))).toEqual([]);
      const status = bench.page.locator("lesson-package-dialog [role=status]");
      expect(await status.innerText()).toBe("Saved as 06-shape-scorm-1.2.zip.");

      await bench.page.getByRole("radio", { name: "SCORM 2004" }).check();
      const mark = bench.page.getByRole("textbox", { name: "Pass mark" });
      await mark.fill("7o");
      await bench.button("Save the package").click();
      expect(await bench.page.locator("lesson-package-dialog [role=alert]").innerText()).toContain(
        "“7o”",
      );
      expect(await axeProblems(bench.page)).toEqual([]);
      await mark.fill("70");
      const again = await save(bench);
      expect(again.name).toBe("06-shape-scorm-2004.zip");
      expect(differing(again.files, shipped({ edition: "2004", mastery: 70 }))).toEqual([]);
      await bench.page.keyboard.press("Escape");
      await bench.page.locator("lesson-package-dialog").waitFor({ state: "detached" });
      expect(await bench.page.locator("lesson-package button:focus").count()).toBe(1);
      strict.close();
    },
  );

  walk(
    "on a phone nothing sticks out; where the player cannot be had it says so",
    async (bench) => {
      await bench.page.route("**/scorm/lesson.js", (route) =>
        route.fulfill({ contentType: "text/html", body: "x" }),
      );
      await openDialog(bench);
      expect(await stickingOut(bench.page)).toEqual([]);
      expect(await axeProblems(bench.page)).toEqual([]);
      await bench.button("Save the package").click();
      await bench.page.getByText("The package could not be made").waitFor();
    },
    phone,
  );

  walk("is not offered by a page of one file, which says why", async (bench) => {
    await openDialog(bench, pathToFileURL(`${dist}reedpoint.html`).href);
    expect(await bench.page.locator("lesson-package-dialog dialog").innerText()).toContain(
      "A page of one file cannot make packages",
    );
    expect(await bench.button("Save the package").count()).toBe(0);
  });

  walk("is not made of a lesson file with problems", async (bench) => {
    await bench.page.goto(`${inject("appUrl")}#v=1&model=bassoon&page=lessons`);
    const text = soundLesson.replace("shorter bladeLength → high", "shorter bladeLength → low");
    await bench.page.locator("lesson-file-drop input[type=file]").setInputFiles({
      name: "own.md",
      mimeType: "text/markdown",
      buffer: Buffer.from(text),
    });
    await bench.page.locator("lesson-problems li").first().waitFor();
    await bench.button("For a learning platform …").click();
    await bench.page.getByText("a package is made once they are mended").waitFor();
  });
});
