import type { BrowserContextOptions, Page } from "playwright";
import { afterAll, beforeAll, expect } from "vitest";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { encodeBench, newBench } from "../../src/reed/bench.js";
import { demoReeds } from "../../src/reed/demo-reeds.js";
import { LipPage, serveLipPage } from "./lip-page.js";
import { axeProblems } from "./page-faults.js";
import { describeWalks, phone } from "./walks.js";

const readings = (name: string) => demoReeds.find(({ reed }) => reed === name)!.readings;
const twoReeds = encodeBench(
  {
    ...newBench(bassoonModel),
    reed: "Heron",
    values: readings("Heron"),
    pinned: { reed: "Bittern", values: readings("Bittern") },
  },
  bassoonModel,
);

/** Names and boxes of everything in the page that answers to a question; shadow roots are looked into. */
async function found(page: Page, what: "small" | "wide"): Promise<string[]> {
  return page.evaluate((kind) => {
    const names: string[] = [];
    const visit = (root: Document | ShadowRoot): void => {
      for (const element of root.querySelectorAll("*")) {
        if (element.shadowRoot) visit(element.shadowRoot);
        const { width, height, right } = element.getBoundingClientRect();
        const pressed = element.matches("button, select, input, summary, textarea");
        const target = element.matches("[type=radio]") ? element.closest("label")! : element;
        const box = target.getBoundingClientRect();
        const small = pressed && box.width > 0 && (box.width < 24 || box.height < 24);
        const wide = width > 0 && height > 0 && right > window.innerWidth + 0.5;
        if (kind === "small" ? small : wide && !element.closest(".unseen"))
          names.push(`${element.localName}.${element.getAttribute("class")} ${width}×${height}`);
      }
    };
    visit(document);
    return names;
  }, what);
}

describeWalks("lip and opening", (walk) => {
  let served: Awaited<ReturnType<typeof serveLipPage>>;
  beforeAll(async () => {
    served = await serveLipPage();
  });
  afterAll(() => served.close());

  const walkPanel = (
    title: string,
    steps: (panel: LipPage) => Promise<void>,
    options: BrowserContextOptions & { readonly code?: string } = {},
  ): void => {
    const { code, ...context } = options;
    walk(
      title,
      async ({ page }) => {
        const panel = new LipPage(page);
        await panel.open(served.url, code);
        await steps(panel);
      },
      context,
    );
  };

  walkPanel("the mouse presses: opening, vibrating part and air shrink together", async (panel) => {
    const before = {
      opening: await panel.dial("opening"),
      area: await panel.dial("vibratingArea"),
      open: await panel.openWidth(),
      swings: await panel.swinging(),
    };
    const track = (await panel.slider("Lip pressure").boundingBox())!;
    await panel.page.mouse.move(track.x + track.width * 0.22, track.y + track.height / 2);
    await panel.page.mouse.down();
    await panel.page.mouse.move(track.x + track.width * 0.6, track.y + track.height / 2, {
      steps: 8,
    });
    await panel.page.mouse.up();
    expect(await panel.dial("opening")).toBeLessThan(before.opening);
    expect(await panel.dial("vibratingArea")).toBeLessThan(before.area);
    expect(await panel.openWidth()).toBeLessThan(before.open);
    expect(await panel.dial("resonance")).toBe(2081);
  });

  walkPanel("keys press finely and coarsely, and say what it does", async (panel) => {
    const { page } = panel;
    const lips = panel.slider("Lip pressure");
    await lips.focus();
    for (const key of ["ArrowRight", "Shift+ArrowRight", "PageUp", "ArrowDown"]) {
      await page.keyboard.press(key);
    }
    const field = page.getByRole("spinbutton", { name: "Lip pressure, kPa" });
    expect(await field.inputValue()).toBe("2.01");
    expect(await lips.getAttribute("aria-valuetext")).toMatch(
      /^2\.0 kilopascals; closed by \d+ % of its height, \d+ cubic centimetres of air a second$/,
    );
  });

  walkPanel("a number is typed; what is too great becomes the greatest", async ({ page }) => {
    const field = page.getByRole("spinbutton", { name: "Blowing pressure, kPa" });
    await field.fill("99");
    await field.press("Enter");
    expect(await field.inputValue()).toBe("12.0");
    expect(await page.locator("reed-lip-opening p").innerText()).toContain("The reed is closed.");
  });

  walkPanel("four presets move lips, breath and the place of the lips", async (panel) => {
    const areas: Record<string, number> = {};
    const lengths: Record<string, number> = {};
    for (const name of ["Soft low entry", "Mezzo-forte middle", "High register", "Full volume"]) {
      await panel.preset(name);
      areas[name] = await panel.dial("vibratingArea");
      lengths[name] = (await panel.swinging()).height;
      const pressed = panel.page.locator("reed-lip-presets [aria-pressed=true]");
      expect((await pressed.allInnerTexts()).map((one) => one.trim())).toEqual([name]);
    }
    expect(Math.min(...Object.values(areas))).toBe(areas["High register"]);
    expect(Math.max(...Object.values(areas))).toBe(areas["Full volume"]);
    expect(Math.min(...Object.values(lengths))).toBe(lengths["High register"]);
  });

  walkPanel(
    "a second reed lies over the drawings as an outline, and leaves when it is unpinned",
    async ({ page }) => {
      expect(await page.locator("reed-lip-opening svg.plot .outline").count()).toBe(1);
      expect(await page.locator("reed-lip-region svg.plot .outline").count()).toBe(1);
      expect(await page.locator("reed-lip-flow svg.plot .other").getAttribute("d")).not.toBe("");
      expect(await page.locator("reed-lip-dials .diamond").count()).toBe(6);
      await page.getByRole("button", { name: "Unpin" }).click();
      expect(await page.locator("reed-lip-dials .diamond").count()).toBe(0);
      expect(await page.locator("reed-lip-opening svg.plot .outline").count()).toBe(0);
    },
    { code: twoReeds },
  );

  walkPanel("hinges: the same reed without and with, and the fold is marked", async ({ page }) => {
    const plots = page.locator("reed-lip-held");
    expect(await plots.nth(0).locator("p").last().innerText()).toContain(
      "42 % of all openings can be held.",
    );
    expect(await plots.nth(1).locator("p").last().innerText()).toContain(
      "Every opening can be held.",
    );
    expect(await plots.nth(0).locator(".jump").getAttribute("d")).toMatch(/^M/);
    expect(await plots.nth(1).locator(".jump").getAttribute("d")).toBe("");
  });

  walkPanel("the table is filtered by purpose with keys, and shows all", async (panel) => {
    expect(await panel.tradeRows()).toBe(16);
    await panel.page.getByRole("radio", { name: "High register" }).focus();
    await panel.page.keyboard.press("ArrowRight");
    await panel.page.locator("reed-lip-trade").getByText("soft and low: a lower").waitFor();
    expect(await panel.tradeRows()).toBe(16);
    await panel.page.getByRole("radio", { name: "All purposes" }).check();
    expect(await panel.tradeRows()).toBe(48);
    expect(await panel.page.locator("reed-lip-trade td.no").count()).toBeGreaterThan(0);
  });

  walkPanel("the table follows a changed recipe once it rests", async ({ page }) => {
    const row = page.locator("reed-lip-trade tbody tr").first();
    const before = await row.innerText();
    await page.evaluate(() => {
      const { setReading } = window as unknown as {
        setReading: (feature: string, value: number) => void;
      };
      setReading("bladeLength", 30);
      setReading("throatWidth", 9.4);
    });
    await page.waitForFunction(
      (old) => {
        const panel = document.querySelector("bench-lip")!.shadowRoot!.querySelector("lip-panel")!;
        const table = panel.shadowRoot!.querySelector("reed-lip-trade")!.shadowRoot!;
        return table.querySelector<HTMLElement>("tbody tr")!.innerText !== old;
      },
      before,
      { timeout: 3000 },
    );
  });

  walkPanel("a constant is changed, says so, and goes back", async (panel) => {
    const { page } = panel;
    const before = await panel.dial("resonance");
    await page.getByText("What the model assumes").click();
    const field = page.getByRole("spinbutton", { name: "Stiffness of cane along the grain, GPa" });
    await field.fill("8");
    await field.press("Enter");
    expect(await panel.dial("resonance")).toBeGreaterThan(before);
    expect(await page.locator("reed-lip-assumptions summary").innerText()).toContain("1 changed");
    await page.getByRole("button", { name: "Back to the first values" }).click();
    expect(await panel.dial("resonance")).toBe(before);
    expect(await page.locator("reed-lip-assumption p").first().innerText()).toContain(
      "Weidenfeller",
    );
  });

  walkPanel(
    "a finger presses on a phone, and the controls stay in sight above the drawings",
    async (panel) => {
      const { page } = panel;
      await page.locator("reed-lip-flow").scrollIntoViewIfNeeded();
      const track = (await panel.slider("Lip pressure").boundingBox())!;
      expect(track.y).toBeGreaterThanOrEqual(0);
      expect(track.y).toBeLessThan(200);
      const before = await panel.dial("opening");
      await page.touchscreen.tap(track.x + track.width * 0.7, track.y + track.height / 2);
      expect(await panel.dial("opening")).toBeLessThan(before);
    },
    phone,
  );

  for (const width of [280, 320, 360, 768, 1440, 1920]) {
    walkPanel(
      `nothing sticks out at ${width} px, nor with text twice as large`,
      async ({ page }) => {
        await page.getByText("What the model assumes").click();
        expect(await found(page, "wide")).toEqual([]);
        if (width < 360) return;
        await page.evaluate(() => {
          document.documentElement.style.fontSize = "200%";
        });
        await page.waitForTimeout(200);
        expect(await found(page, "wide")).toEqual([]);
      },
      { viewport: { width, height: 900 }, code: twoReeds },
    );
  }

  for (const [width, colorScheme] of [
    [360, "light"],
    [1440, "light"],
    [1440, "dark"],
  ] as const) {
    walkPanel(
      `axe finds nothing at ${width} px, ${colorScheme}`,
      async ({ page }) => {
        await page.getByText("What the model assumes").click();
        await page.getByRole("radio", { name: "All purposes" }).check();
        expect(await axeProblems(page)).toEqual([]);
      },
      { viewport: { width, height: 900 }, colorScheme, code: twoReeds },
    );
  }

  walkPanel(
    "everything that is pressed is at least 24 px each way at 320 px",
    async ({ page }) => {
      await page.getByText("What the model assumes").click();
      expect(await found(page, "small")).toEqual([]);
    },
    { viewport: { width: 320, height: 900 } },
  );

  walkPanel(
    "in forced colours lines and marks stand out from the ground",
    async ({ page }) => {
      const strokeOf = (selector: string): Promise<string> =>
        page
          .locator(selector)
          .first()
          .evaluate((part) => getComputedStyle(part).stroke);
      const ground = await page.evaluate(() => {
        const probe = document.body.appendChild(document.createElement("i"));
        probe.style.color = "Canvas";
        return getComputedStyle(probe).color;
      });
      for (const line of [".own", ".unheld", ".jump", ".axis"]) {
        expect(await strokeOf(`reed-lip-flow svg.plot ${line}`), line).not.toBe(ground);
      }
      expect(await strokeOf("reed-lip-opening .met")).not.toBe(ground);
      // The opening is the ground between the two blades, not one shape with them.
      const hole = page.locator("reed-lip-opening .hole").first();
      expect(await hole.evaluate((part) => getComputedStyle(part).fill)).toBe(ground);
      expect(await strokeOf("reed-lip-opening .hole")).not.toBe(ground);
    },
    { forcedColors: "active" },
  );

  walkPanel(
    "prints black on white even in the night look, with its numbers and without its buttons",
    async ({ page }) => {
      await page.emulateMedia({ media: "print" });
      const colours = await page
        .locator("lip-panel h2")
        .evaluate((title) => [
          getComputedStyle(title).color,
          getComputedStyle(document.documentElement).backgroundColor,
        ]);
      expect(colours).toEqual(["rgb(0, 0, 0)", "rgb(255, 255, 255)"]);
      expect(await page.getByRole("button", { name: "Full volume" }).isVisible()).toBe(false);
      expect(await page.getByRole("spinbutton", { name: "Lip pressure, kPa" }).isVisible()).toBe(
        true,
      );
      const pdf = (await page.pdf({ format: "A4" })).toString("latin1");
      expect(pdf.match(/\/Type\s*\/Page\b/g)!.length).toBeLessThanOrEqual(4);
    },
    { colorScheme: "dark" },
  );

  walkPanel("from right to left the panel turns round, its plots do not", async ({ page }) => {
    await page.evaluate(() => {
      document.documentElement.dir = "rtl";
    });
    expect(await found(page, "wide")).toEqual([]);
    const label = (await page.locator("reed-lip-pressure label").first().boundingBox())!;
    const field = (await page
      .getByRole("spinbutton", { name: "Lip pressure, kPa" })
      .boundingBox())!;
    expect(label.x).toBeGreaterThan(field.x);
    expect(
      await page
        .locator("reed-lip-flow svg.plot")
        .evaluate((plot) => getComputedStyle(plot).direction),
    ).toBe("ltr");
  });
});
