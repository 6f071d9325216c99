import { expect } from "vitest";
import { shownValues } from "../../src/reed/tried.js";
import { place } from "../../src/engine/place.js";
import { compileModel } from "../../src/engine/compile.js";
import { blendDistance } from "../../src/engine/blend.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { decodeBench, encodeBench, newBench, type Bench } from "../../src/reed/bench.js";
import { demoReeds } from "../../src/reed/demo-reeds.js";
import { targetRadius } from "../../src/reed/targets.js";
import type { BenchPage } from "./bench-page.js";
import { axeProblems, overlapsIn, stickingOut } from "./page-faults.js";
import { describeWalks, phone } from "./walks.js";

const map = compileModel(bassoonModel);

/** A demo reed on a page of the app, finished, with a part to play. */
function code(reed: string, change: Partial<Bench> = {}): string {
  const values = demoReeds.find((one) => one.reed === reed)!.readings;
  return encodeBench(
    { ...newBench(bassoonModel), reed, values, finished: true, page: "plan", ...change },
    bassoonModel,
  );
}

const deeds = (bench: BenchPage) => bench.page.locator("bench-plan .deed").allInnerTexts();
const tabTo = (bench: BenchPage, name: string) =>
  bench.page.getByRole("button", { name, exact: true });
const benchNow = async (bench: BenchPage): Promise<Bench> =>
  decodeBench(await bench.code(), bassoonModel).bench;

describeWalks("the plan page", (walk) => {
  walk(
    "Bittern toward everyday rehearsal, to the end: every step done, read, and planned again from there",
    async (bench) => {
      await bench.open(code("Bittern"));
      const plan = bench.page.locator("bench-plan");
      await plan.getByLabel("Part to play").selectOption({ label: "Everyday rehearsal" });
      expect(await plan.locator(".sentence").innerText()).toMatch(/^As near as it gets today/);
      expect(await bench.page.locator("triangle-plane .plan .shaft").count()).toBe(4);
      const readOn = async (): Promise<number> => {
        let steps = 0;
        for (; steps < 6 && (await plan.locator(".done").count()) > 0; steps += 1) {
          await plan.locator(".done").click();
          const first = plan.locator("reed-step-readings input").first();
          const expected = Number(await first.getAttribute("placeholder"));
          expect(expected).toBeGreaterThan(0);
          // One reading a little off what was expected; the others as expected.
          await first.fill((expected + 0.01).toFixed(2));
          await plan.getByRole("button", { name: "Take readings, plan again" }).click();
        }
        return steps;
      };
      const away = async (): Promise<number> =>
        blendDistance(place(map, (await benchNow(bench)).values).raw, [1 / 3, 1 / 3, 1 / 3]);
      const start = await away();
      // One sitting does not bring it there; a second one does.
      const steps = await readOn();
      expect(steps).toBeGreaterThan(2);
      expect(steps).toBeLessThanOrEqual(4);
      const between = await away();
      expect(between).toBeLessThan(start / 2);
      expect(between).toBeGreaterThan(targetRadius);
      expect(await plan.locator(".sentence").innerText()).toMatch(/^As near as it gets today/);
      await plan.getByRole("button", { name: "Begin a new sitting" }).click();
      const more = await readOn();
      expect(more).toBeGreaterThan(0);
      expect(await away()).toBeLessThan(targetRadius);
      expect(await plan.locator(".sentence").innerText()).toBe(
        "It lies in the zone for everyday rehearsal already: leave it alone, and play.",
      );
      const { done } = await benchNow(bench);
      expect(done?.map((sitting) => sitting.length)).toEqual([steps, more]);
      // The steps stay with the reed in its address.
      await bench.page.reload();
      await plan.locator(".doneSoFar").waitFor();
      expect(await plan.locator(".doneSoFar li").count()).toBe(steps + more);
    },
  );

  walk("undo takes back a step with its readings, and the plan is what it was", async (bench) => {
    await bench.open(code("Bittern", { target: "softLow" }));
    const before = await deeds(bench);
    await bench.page.locator("bench-plan .done").click();
    await bench.page.locator("bench-plan reed-step-readings #openingHeight").fill("1.21");
    await bench.page.keyboard.press("Enter");
    expect((await benchNow(bench)).values["openingHeight"]).toBe(1.21);
    expect(await deeds(bench)).not.toEqual(before);
    await bench.button("Undo").click();
    expect(await deeds(bench)).toEqual(before);
    expect((await benchNow(bench)).done).toBeUndefined();
  });

  walk(
    "a reading that is none is refused at its field, and nothing else is lost",
    async (bench) => {
      await bench.open(code("Bittern", { target: "softLow" }));
      await bench.page.locator("bench-plan .done").click();
      const form = bench.page.locator("bench-plan reed-step-readings");
      await form.locator("#openingWidth").fill("11.7");
      await form.locator("#openingHeight").fill("wide");
      await bench.page.keyboard.press("Enter");
      expect(await form.getByRole("alert").innerText()).toContain("“wide” is not a number");
      expect(await form.locator("#openingWidth").inputValue()).toBe("11.7");
      await bench.page.keyboard.press("Escape");
      expect(await form.count()).toBe(0);
      expect(
        await bench.page.locator("bench-plan .done").evaluate((one) => one.matches(":focus")),
      ).toBe(true);
    },
  );

  walk("the bench card prints on one page: triangle, steps, blanks, cautions", async (bench) => {
    await bench.open(code("Bittern", { target: "everyday" }));
    await bench.page.waitForTimeout(200);
    const pdf = (await bench.page.pdf({ format: "A4" })).toString("latin1");
    expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
    await bench.page.emulateMedia({ media: "print" });
    const plan = bench.page.locator("bench-plan");
    expect(await plan.locator(".blanks .line").first().isVisible()).toBe(true);
    expect(await plan.locator(".caution").count()).toBe(4);
    expect(await plan.locator(".sentence").innerText()).toContain(
      "The rules of your workshop or school come first.",
    );
    expect(await bench.page.locator("triangle-plane svg").isVisible()).toBe(true);
    for (const gone of ["bench-recipe", "bench-gains", "bench-trouble", "page-tabs"])
      expect(await bench.page.locator(gone).isVisible(), gone).toBe(false);
  });

  walk("the longest card, too, is one page, and leaves other days to the screen", async (bench) => {
    const done = [[{ action: "thinBack", amount: 1 }], [{ action: "roundSecondWire", amount: 1 }]];
    await bench.open(code("Snipe", { target: "highSolo", done }));
    await bench.page.waitForTimeout(200);
    const pdf = (await bench.page.pdf({ format: "A4" })).toString("latin1");
    expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
    await bench.page.emulateMedia({ media: "print" });
    const items = bench.page.locator("bench-plan .doneSoFar li");
    expect(await items.count()).toBe(2);
    expect(await items.first().isVisible()).toBe(false);
    expect(await items.last().isVisible()).toBe(true);
  });

  walk("a caution comes in full once a plan, then in short", async (bench) => {
    await bench.open(code("Bittern", { target: "softLow" }));
    const cautions = await bench.page.locator("bench-plan .caution").allInnerTexts();
    expect(cautions[0]).toContain("a dry tube cracks");
    expect(cautions[1]).toBe(
      "Caution. Pliers: soaked, mandrel in, slowly; stop at the first creak.",
    );
  });

  walk(
    "while the point is dragged the last plan keeps its room, dimmed; at rest there is another",
    async (bench) => {
      await bench.open(code("Bittern", { target: "everyday" }));
      const plan = bench.page.locator("bench-plan");
      // Every frame is looked at in the page: how long a move takes depends on the machine.
      await plan.evaluate((element) => {
        const frames: { stale: boolean; height: number; arrows: number }[] = [];
        const grid = (element.getRootNode() as ShadowRoot).querySelector("bench-place")!;
        const look = (): void => {
          frames.push({
            stale: element.shadowRoot!.querySelector(".stale") !== null,
            height: element.getBoundingClientRect().height,
            arrows: grid
              .shadowRoot!.querySelector("triangle-plane")!
              .shadowRoot!.querySelectorAll(".plan .shaft").length,
          });
          requestAnimationFrame(look);
        };
        look();
        Object.assign(window, { frames });
      });
      const [x, y] = await bench.point();
      const [toX, toY] = await bench.place([0.3, 0.3, 0.4]);
      await bench.page.mouse.move(x, y);
      await bench.page.mouse.down();
      await bench.page.mouse.move(toX, toY, { steps: 12 });
      await bench.page.mouse.up();
      await plan.locator(".stale").waitFor({ state: "detached" });
      const frames = await bench.page.evaluate(
        () =>
          (window as unknown as { frames: { stale: boolean; height: number; arrows: number }[] })
            .frames,
      );
      const dimmed = frames.flatMap((frame, n) => (frame.stale ? [{ frame, n }] : []));
      expect(dimmed.length).toBeGreaterThan(0);
      for (const { frame, n } of dimmed)
        expect(frame).toEqual({ stale: true, height: frames[n - 1]!.height, arrows: 0 });
      await plan.locator(".stale").waitFor({ state: "detached" });
      expect(await plan.locator(".working").isVisible()).toBe(false);
    },
  );

  for (const width of [360, 1440]) {
    walk(
      `every arrow of a plan of four has its number in the drawing: ${width} px`,
      async (bench) => {
        await bench.open(code("Bittern", { target: "everyday" }));
        const numbers = bench.page.locator("triangle-plane .plan .number");
        expect(await numbers.allTextContents()).toEqual(["1", "2", "3", "4"]);
        const drawing = (await bench.page.locator("triangle-plane svg").boundingBox())!;
        const boxes = await Promise.all((await numbers.all()).map((one) => one.boundingBox()));
        boxes.forEach((box, i) => {
          expect(box!.x).toBeGreaterThanOrEqual(drawing.x);
          expect(box!.x + box!.width).toBeLessThanOrEqual(drawing.x + drawing.width);
          for (const other of boxes.slice(i + 1)) {
            const apart = Math.hypot(box!.x - other!.x, box!.y - other!.y);
            expect(apart).toBeGreaterThan(box!.width);
          }
        });
      },
      { viewport: { width, height: 900 } },
    );
  }

  walk(
    "trouble and plan on one page: their buttons and what they say of each other",
    async (bench) => {
      await bench.open(code("Bittern", { target: "everyday" }));
      const plan = bench.page.locator("bench-plan");
      const trouble = bench.page.locator("bench-trouble");
      await trouble.getByRole("button", { name: "High notes sag or are flat (E4 up)" }).click();
      const name = (part: typeof plan) => part.locator(".done").first().getAttribute("aria-label");
      expect(await name(plan)).toBe("Done: step 1 of the plan. Round the first wire by 0.04.");
      expect(await name(trouble)).toBe("Done, for the trouble. Round the first wire by 0.02.");
      expect(await plan.locator("section").first().innerText()).toContain(
        "A trouble is being looked into: “High notes sag or are flat (E4 up)”. See to it first",
      );
      expect(await trouble.locator("section").innerText()).toContain(
        "This is for the trouble alone; the steps of the plan are toward everyday rehearsal.",
      );
      const plays = await trouble.locator("reed-steps p:last-of-type").allInnerTexts();
      expect(plays.filter((one) => one.startsWith("Play it"))).toEqual(
        plays
          .filter((one) => one.startsWith("Play it"))
          .map(() => "Play it. If the trouble is gone, stop here."),
      );
      // A little of it for the trouble: it is done, the plan goes on from there.
      await trouble.locator(".done").first().click();
      await trouble.getByRole("button", { name: "Take readings, plan again" }).click();
      expect((await benchNow(bench)).done).toEqual([[{ action: "roundFirstWire", amount: 2 }]]);
      expect((await deeds(bench))[0]).not.toContain("first wire");
      await plan.getByLabel("Part to play").selectOption({ label: "none" });
      expect(await trouble.locator("section").innerText()).not.toContain("the steps of the plan");
    },
  );

  walk(
    "a wire is read as height and width; what is left empty is expected, not measured, also after a reload",
    async (bench) => {
      await bench.open(code("Bittern", { target: "everyday" }));
      await bench.page.locator("bench-plan .done").click();
      const form = bench.page.locator("bench-plan reed-step-readings");
      await form.locator("#firstWire-height").fill("6.3");
      await form.getByRole("button", { name: "Take readings, plan again" }).click();
      expect(await form.getByRole("alert").innerText()).toContain("needs both, height and width");
      expect(await form.locator("#firstWire-height").evaluate((one) => one.matches(":focus"))).toBe(
        true,
      );
      await form.locator("#firstWire-width").fill("8.75");
      await form.getByRole("button", { name: "Take readings, plan again" }).click();
      const bench1 = await benchNow(bench);
      expect(bench1.values["firstWire"]).toBe(0.72);
      expect(bench1.expected).toEqual(["openingHeight", "openingWidth", "secondWire"]);
      await bench.page.reload();
      await tabTo(bench, "Measure").click();
      const page = bench.page.locator("measure-page");
      const again = page.getByRole("button", { name: "Go through the sheet of Bittern" });
      if (await again.isVisible()) await again.click();
      await page.getByLabel("All steps").selectOption({ label: "3. Opening height" });
      const field = page.locator("measure-step input");
      expect(await field.getAttribute("placeholder")).toBe("expected: 1.22 mm");
      await page.getByLabel("All steps").selectOption({ label: "17. The sheet so far" });
      const rows = page.locator("measure-summary tbody tr");
      expect(await rows.filter({ hasText: "expected after the last step, not read" }).count()).toBe(
        3,
      );
      expect(await page.locator("measure-summary p").first().innerText()).toContain(
        "The next most useful reading",
      );
    },
  );

  walk("undo is heard, and so is a judgement", async (bench) => {
    await bench.open(code("Bittern", { target: "softLow" }));
    const heard = bench.page.getByRole("status").first();
    await bench.page.locator("bench-plan .done").click();
    await bench.page.keyboard.press("Enter");
    expect(await heard.innerText()).toMatch(/^Noted: Round the first wire by 0\.02\./);
    await bench.button("Undo").click();
    expect(await heard.innerText()).toMatch(
      /^Undone; nothing before it\. For a soft low second part/,
    );
    const gains = bench.page.locator("bench-gains");
    await gains.getByRole("button", { name: "Steady pitch" }).click();
    await gains.locator(".legend summary").click();
    await gains.getByLabel("All-round reed").fill("4");
    await gains.getByLabel("All-round reed").press("Enter");
    expect(await heard.innerText()).toMatch(/^Steady pitch: your own judgement now\. At this reed/);
  });

  walk("plan, quality and a teacher's own judgement travel in the link", async (bench) => {
    await bench.open(code("Plover", { target: "softLow" }));
    const plan = bench.page.locator("bench-plan");
    await plan.locator("input[type=radio]").nth(1).check();
    const shown = await deeds(bench);
    const gains = bench.page.locator("bench-gains");
    await gains.getByRole("button", { name: "Steady pitch" }).click();
    await gains.locator(".legend summary").click();
    await gains.getByLabel("All-round reed").fill("4.5");
    await gains.getByLabel("All-round reed").press("Enter");
    const levels = await bench.page.locator("triangle-plane .contours .level").count();
    await bench.page.waitForTimeout(300);
    const link = await bench.code();
    await bench.open(code("Heron"));
    await bench.open(link);
    expect(await deeds(bench)).toEqual(shown);
    expect(await plan.locator("input[type=radio]").nth(1).isChecked()).toBe(true);
    expect(await bench.page.locator("triangle-plane .contours .level").count()).toBe(levels);
    expect(await gains.locator(".legend").innerText()).toContain("Yours");
    await gains.locator(".legend summary").click();
    expect(await gains.getByLabel("All-round reed").inputValue()).toBe("4.5");
  });

  walk("a quality lies over the triangle, and a teacher judges it otherwise", async (bench) => {
    await bench.open(code("Heron", { target: "audition" }));
    const gains = bench.page.locator("bench-gains");
    expect(await gains.locator("tbody tr").count()).toBe(8);
    await gains.getByRole("button", { name: "Steady pitch" }).click();
    const levels = bench.page.locator("triangle-plane .contours .level");
    const before = await levels.count();
    expect(before).toBeGreaterThan(2);
    expect(await gains.locator(".legend").innerText()).toContain("Common practice, no source.");
    await gains.locator(".legend summary").click();
    await gains.getByLabel("All-round reed").fill("4");
    await gains.getByLabel("All-round reed").press("Enter");
    expect(await levels.count()).toBeLessThan(before);
    expect(await gains.locator(".legend").innerText()).toContain("Yours");
    await gains.getByRole("button", { name: "Back to the values that came with it" }).click();
    expect(await levels.count()).toBe(before);
    expect(await gains.locator(".legend").innerText()).toContain("Common practice, no source.");
    await gains.getByRole("button", { name: "Take it off the triangle" }).click();
    expect(await levels.count()).toBe(0);
  });

  walk(
    "trouble, step by step with a finger on a phone: symptom, likely places, first help, on to the plan",
    async (bench) => {
      await bench.open(code("Plover"));
      const trouble = bench.page.locator("bench-trouble");
      await trouble.getByRole("button", { name: "Too stiff, tiring" }).tap();
      expect(await trouble.locator(".sentence").innerText()).toMatch(
        /On this reed it may come from/,
      );
      expect(await trouble.locator("reed-drawing .pointed").count()).toBeGreaterThan(0);
      expect(await trouble.locator(".pulls reed-compass").count()).toBeGreaterThan(0);
      expect(
        await trouble
          .locator("> section .picked > reed-steps .deed, .picked > reed-steps .deed")
          .first()
          .innerText(),
      ).toMatch(/Flatten the first wire by 0\.03/);
      await trouble.locator(".done").first().tap();
      await trouble.getByRole("button", { name: "Take readings, plan again" }).tap();
      expect((await benchNow(bench)).done).toEqual([[{ action: "flattenFirstWire", amount: 3 }]]);
      await trouble.getByRole("button", { name: "Then on to the plan" }).tap();
      expect(
        await bench.page
          .locator("bench-plan section.card")
          .evaluate((card) => card.matches(":focus")),
      ).toBe(true);
      await trouble.getByRole("button", { name: "Another symptom" }).tap();
      expect(await trouble.locator("[data-symptom]").count()).toBe(18);
      expect(await stickingOut(bench.page)).toEqual([]);
    },
    phone,
  );
});

describeWalks("stand-ins", (walk) => {
  walk("one is tried, taken back, done and read again, by keyboard alone", async (bench) => {
    await bench.open(code("Bittern", { page: "bench" }));
    const { keyboard } = bench.page;
    const start = (await benchNow(bench)).values;
    await bench.row("bladeLength").locator(".name").focus();
    await keyboard.press("Enter");
    await bench.row("bladeLength").locator(".ask").focus();
    await keyboard.press("Enter");
    const panel = bench.page.locator("bench-stand-ins");
    expect(await panel.locator(".sentence").innerText()).toContain(
      "Instead of a blade shorter by 0.6 mm:",
    );
    await panel.locator(".try").nth(1).focus();
    await keyboard.press("Enter");
    const tried = await benchNow(bench);
    expect(tried.values).toEqual(start);
    expect(shownValues(tried)).not.toEqual(start);
    expect(await bench.sentence()).toMatch(/^Tried: /);
    expect(await bench.page.locator("triangle-plane .base circle").count()).toBe(1);
    expect(await bench.page.locator("triangle-plane .leftover .shaft").count()).toBe(1);
    expect(await panel.locator(".on .caution").innerText()).toMatch(/^Caution\. /);
    expect(await panel.locator(".on").innerText()).toMatch(/It can(not)? be undone\./);
    expect(await panel.locator("section").innerText()).toContain(
      "The rules of your workshop or school come first.",
    );
    const focused = () => panel.evaluate((element) => element.shadowRoot!.activeElement?.className);
    expect(await focused()).toBe("done");
    expect(await bench.page.getByRole("status").first().innerText()).toMatch(/^Being tried\. .+/);
    await keyboard.press("Tab");
    await keyboard.press("Enter");
    expect((await benchNow(bench)).tried).toBeUndefined();
    expect(await focused()).toBe("try");
    await keyboard.press("Enter");
    await bench.page.waitForTimeout(100);
    await keyboard.press("Enter"); // done on the reed: what it has made is asked for
    await panel.locator("reed-step-readings input").first().waitFor();
    await keyboard.press("Enter"); // nothing was read again yet
    const done = await benchNow(bench);
    expect(done.done?.at(-1)?.length).toBeGreaterThan(0);
    expect(done.expected?.length).toBeGreaterThan(0);
    expect(done.tried).toBeUndefined();
    expect(done.values).not.toEqual(start);
    expect(await bench.page.locator("triangle-plane .leftover").count()).toBe(0);
    await keyboard.press("Escape");
    expect(await panel.count()).toBe(0);
    expect(
      await bench.row("bladeLength").evaluate((row) => row.shadowRoot!.activeElement?.className),
    ).toBe("ask");
    for (let i = done.done!.at(-1)!.length; i > 0; i -= 1) await bench.button("Undo").click();
    expect((await benchNow(bench)).values).toEqual(start);
  });

  walk("the question is turned round, and made larger, in the unit of the gauge", async (bench) => {
    await bench.open(code("Heron", { page: "bench", unit: "thou" }));
    await bench.row("spine").locator(".name").click();
    await bench.page.getByRole("button", { name: "Stand-ins for spine thickness" }).click();
    const panel = bench.page.locator("bench-stand-ins");
    await panel.getByLabel("Which way").selectOption("thicker");
    await panel.getByLabel("By, thou").fill("2");
    await panel.getByLabel("By, thou").press("Enter");
    expect(await panel.locator(".sentence").innerText()).toBe(
      "Instead of a spine thicker by 2.0 thou:",
    );
    await panel.getByLabel("To make up for it").check();
    expect(await panel.locator(".sentence").innerText()).toBe(
      "To make up for a spine thicker by 2.0 thou:",
    );
    expect(await panel.locator("[data-what^='hand']").count()).toBeGreaterThan(0);
  });

  walk("they open from the recipe on every page, and say why where they cannot", async (bench) => {
    await bench.open(code("Heron", { page: "lip" }).replace("&page=lip", "&page=bench"));
    for (const page of ["Plan", "Lip and opening"]) {
      await tabTo(bench, page).click();
      await bench.row("tip").locator(".name").click();
      await bench.page.getByRole("button", { name: "Stand-ins for tip thickness" }).click();
      await bench.page.locator("bench-stand-ins section").waitFor(); // fetched the first time
      expect(await bench.page.locator("bench-stand-ins .sentence").count()).toBe(1);
      await bench.page.getByRole("button", { name: "Close stand-ins" }).click();
    }
    await tabTo(bench, "Bench").click();
    await bench.pickReed("My reed (nothing measured yet)");
    await bench.row("tip").locator(".name").click();
    await bench.row("tip").locator(".ask").click();
    expect(await bench.page.locator("bench-stand-ins section").innerText()).toContain(
      "Tip thickness is not measured: nothing can be said of its stand-ins.",
    );
  });
});

describeWalks("the plan page in every size", (walk) => {
  for (const width of [280, 320, 768, 1440, 1920]) {
    walk(
      `nothing sticks out, no words of the triangle overlap, axe finds nothing: ${width} px`,
      async (bench) => {
        await bench.open(
          code("Bittern", { target: "everyday", layers: ["certainty", "readingLines"] }),
        );
        await bench.page.locator("reed-gains .name").first().click();
        await bench.page.locator("bench-gains .legend summary").click();
        await bench.page.locator("[data-symptom=lowBumps]").click();
        await bench.page.locator("bench-plan .done").click();
        const handle = bench.page.locator("bench-recipe .handle");
        if (await handle.isVisible()) await handle.click();
        await bench.row("heart").locator(".name").click();
        await bench.row("heart").locator(".ask").click();
        expect(await stickingOut(bench.page)).toEqual([]);
        expect(await overlapsIn(bench.page)).toEqual([]);
        expect(await axeProblems(bench.page)).toEqual([]);
      },
      { viewport: { width, height: 900 }, colorScheme: width === 768 ? "dark" : "light" },
    );
  }

  for (const width of [360, 1440]) {
    walk(
      `with text twice as large all of it still has room: ${width} px`,
      async (bench) => {
        await bench.open(code("Bittern", { target: "everyday" }));
        await bench.page.locator("reed-gains .name").nth(4).click();
        await bench.page.locator("[data-symptom=lowBumps]").click();
        await bench.page.evaluate(() => {
          document.documentElement.style.fontSize = "200%";
          window.dispatchEvent(new Event("resize"));
        });
        await bench.page.waitForTimeout(250);
        expect(await stickingOut(bench.page)).toEqual([]);
        expect(await overlapsIn(bench.page)).toEqual([]);
      },
      { viewport: { width, height: 900 } },
    );
  }

  walk(
    "everything that is pressed is at least 24 px each way on a phone",
    async (bench) => {
      await bench.open(code("Bittern", { target: "everyday" }));
      await bench.page.locator("reed-gains .name").first().tap();
      await bench.openRecipe();
      await bench.row("heart").locator(".name").tap();
      await bench.row("heart").locator(".ask").tap();
      const small = await bench.page.evaluate(() => {
        const found: string[] = [];
        const visit = (root: Document | ShadowRoot): void => {
          for (const element of root.querySelectorAll<HTMLElement>("*")) {
            if (element.shadowRoot) visit(element.shadowRoot);
            if (!element.matches("button, select, input, summary")) continue;
            const target = element.matches("[type=checkbox], [type=radio]")
              ? element.closest("label")!
              : element;
            const { width, height } = target.getBoundingClientRect();
            if (width > 0 && (width < 24 || height < 24))
              found.push(element.outerHTML.slice(0, 80));
          }
        };
        visit(document);
        return found;
      });
      expect(small).toEqual([]);
    },
    phone,
  );

  walk(
    "in forced colours arrows, ring and contours stand out",
    async (bench) => {
      await bench.open(code("Bittern", { target: "everyday" }));
      await bench.page.locator("reed-gains .name").first().click();
      const paint = (selector: string, property: "stroke" | "fill") =>
        bench.page
          .locator(`triangle-plane ${selector}`)
          .first()
          .evaluate((part, which) => getComputedStyle(part)[which], property);
      const ground = await paint(".paper", "fill");
      for (const line of [".plan .shaft", ".planEnd .ring", ".contours .level"])
        expect(await paint(line, "stroke"), line).not.toBe(ground);
    },
    { forcedColors: "active" },
  );
});
