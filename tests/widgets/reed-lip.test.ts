import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { assumptions } from "../../src/acoustics/assumptions.js";
import { closingLaw } from "../../src/acoustics/closing-law.js";
import { lipDialIds } from "../../src/acoustics/lip-dials.js";
import { presetState } from "../../src/acoustics/lip-presets.js";
import { lipResponse } from "../../src/acoustics/lip-response.js";
import { tradeAndModel } from "../../src/acoustics/trade-and-model.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { allRoundValues } from "../../src/reed/bench.js";
import { demoReeds } from "../../src/reed/demo-reeds.js";
import { lipRecipe } from "../../src/reed/lip-reed.js";
import { lipWords } from "../../src/reed/lip-words.js";
import { tradeFeatures } from "../../src/reed/trade-features.js";
import { define } from "../../src/widgets/define.js";
import type { AssumptionPickedEvent, PressurePickedEvent } from "../../src/widgets/lip-events.js";
import { ReedLip } from "../../src/widgets/reed-lip.js";

define("lip-panel", ReedLip);

const heron = demoReeds.find(({ reed }) => reed === "Heron")!.readings;

beforeEach(() => {
  vi.useFakeTimers({ toFake: ["setTimeout", "clearTimeout", "performance"] });
});
afterEach(() => {
  vi.useRealTimers();
  document.body.replaceChildren();
});

async function panel(change: Partial<ReedLip> = {}): Promise<ReedLip> {
  const element = new ReedLip();
  const { lip, blow } = presetState("middle");
  Object.assign(element, {
    model: bassoonModel,
    mine: { name: "Heron", values: heron },
    lip,
    blow,
  });
  Object.assign(element, change);
  document.body.append(element);
  await settled(element);
  return element;
}

/** Every element inside has drawn itself. */
async function settled(root: Element | ShadowRoot): Promise<void> {
  if ("updateComplete" in root) await root.updateComplete;
  const inside = root instanceof Element ? root.shadowRoot : root;
  for (const child of inside?.querySelectorAll("*") ?? []) {
    if (child.shadowRoot) await settled(child);
  }
}

function part(root: Element, ...path: readonly string[]): Element {
  return path.reduce((found, selector) => found.shadowRoot!.querySelector(selector)!, root);
}

function words(root: Element, ...path: readonly string[]): string {
  const found = part(root, ...path);
  const text = (found.shadowRoot ?? found).textContent ?? "";
  return text.replace(/\s+/g, " ").trim();
}

test("every dial shows the model's number, its change and its word", async () => {
  const element = await panel();
  const at = { ...presetState("middle") };
  const [mine, plain] = [heron, allRoundValues(bassoonModel)].map((values) =>
    lipResponse(lipRecipe(bassoonModel, values), at),
  );
  const dials = part(element, "reed-lip-dials").shadowRoot!.querySelectorAll("li");
  expect([...dials].map((one) => one.dataset["dial"])).toEqual([...lipDialIds]);
  expect(words(element, "reed-lip-dials", "[data-dial=resonance]")).toContain(
    `${mine!.resonance.toFixed(0)} Hz`,
  );
  expect(words(element, "reed-lip-dials", "[data-dial=resonance]")).toContain(
    lipWords.change(mine!.resonance / plain!.resonance),
  );
});

test("the fold is marked: beyond it the panel says that the blades have snapped", async () => {
  const recipe = lipRecipe(bassoonModel, heron);
  const { closingPressure } = lipResponse(recipe, { lip: 0, blow: 0 });
  const { fold } = closingLaw(recipe.hinging, assumptions.elbow.value);
  const jump = fold!.pressure * closingPressure;
  const element = await panel({ lip: 0, blow: jump - 1 });
  expect(words(element, "reed-lip-opening")).not.toContain(lipWords.panel.snapped);
  element.blow = jump + 1;
  await settled(element);
  expect(words(element, "reed-lip-opening")).toContain(lipWords.panel.snapped);
});

test("what is not measured is computed as on the all-round reed, and said", async () => {
  const { heart, ...others } = heron;
  const element = await panel({ mine: { name: "Heron", values: others } });
  expect(words(element, "header")).toContain("computed as on the all-round reed: heart thickness.");
  expect(heart).toBeDefined();
});

test("a recipe that the model cannot take is refused in words, and its constants stay in reach", async () => {
  const element = await panel({ mine: { name: "Odd", values: { ...heron, throatWidth: 1 } } });
  expect(words(element, ".refused")).toBe(lipWords.panel.cannot);
  expect(part(element, "reed-lip-assumptions")).not.toBeNull();
  element.mine = { name: "Heron", values: heron };
  await settled(element);
  expect(element.shadowRoot!.querySelector(".refused")).toBeNull();
  element.second = { name: "Odd", values: { ...heron, throatWidth: 1 } };
  await settled(element);
  expect(words(element, "header")).toContain("Odd is left out");
});

test("lips and breath leave the blade's mechanics and the table as they are", async () => {
  const element = await panel();
  const before = (part(element, "reed-lip-flow") as unknown as { mine: { reed: object } }).mine
    .reed;
  const row = part(element, "reed-lip-trade", "tbody tr");
  element.lip = 4000;
  await settled(element);
  expect((part(element, "reed-lip-flow") as unknown as { mine: { reed: object } }).mine.reed).toBe(
    before,
  );
  expect(part(element, "reed-lip-trade", "tbody tr")).toBe(row);
});

test("while a recipe changes many times a second the table waits, and follows at rest", async () => {
  const element = await panel({ purpose: "loud" });
  const shown = (): string => words(element, "reed-lip-trade", "tbody");
  vi.advanceTimersByTime(1000);
  const reasons = (values: typeof heron): string[] =>
    tradeAndModel(lipRecipe(bassoonModel, values), tradeFeatures(bassoonModel))
      .filter(({ purpose }) => purpose === "loud")
      .map((row) => lipWords.trade.whyOf(row));
  const start = shown();
  // The first change stands alone and is taken; the next ones come within a gesture.
  let values = heron;
  for (let i = 1; i <= 5; i += 1) {
    values = { ...heron, openingHeight: 1.2 + 0.16 * i, hinging: 0.6 - 0.1 * i };
    element.mine = { name: "Heron", values };
    await settled(element);
    vi.advanceTimersByTime(16);
  }
  expect(shown()).not.toContain(reasons(values).find((why) => !start.includes(why))!);
  expect(words(element, "reed-lip-trade", ".count")).toContain("when the recipe rests");
  vi.advanceTimersByTime(200);
  await settled(element);
  for (const why of reasons(values)) expect(shown()).toContain(why);
});

test("the table shows every row of a purpose, disagreements among them, or all", async () => {
  const element = await panel({ purpose: "high" });
  const rows = (): number =>
    part(element, "reed-lip-trade").shadowRoot!.querySelectorAll("tbody tr").length;
  const features = tradeFeatures(bassoonModel).length;
  expect(rows()).toBe(features);
  expect(words(element, "reed-lip-trade", "tbody")).toContain("disagree");
  element.purpose = undefined;
  await settled(element);
  expect(rows()).toBe(3 * features);
});

test("every constant is shown with its range and basis; one is moved within its range only", async () => {
  const element = await panel({ changes: { wall: 0.8 } });
  const list = part(element, "reed-lip-assumptions");
  const shown = [...list.shadowRoot!.querySelectorAll<HTMLElement>("reed-lip-assumption")];
  expect(shown.map((one) => one.dataset["constant"])).toEqual(Object.keys(assumptions));
  expect(words(list, "summary")).toContain("1 changed");
  const picked: (number | undefined)[] = [];
  element.addEventListener("assumption-picked", (event) =>
    picked.push((event as AssumptionPickedEvent).value),
  );
  const wall = shown.find((one) => one.dataset["constant"] === "wall")!;
  const field = wall.shadowRoot!.querySelector<HTMLInputElement>("input[type=number]")!;
  for (const typed of ["0.9", "99", ""]) {
    field.value = typed;
    field.dispatchEvent(new Event("change"));
  }
  wall.shadowRoot!.querySelector("button")!.click();
  expect(picked).toEqual([0.9, assumptions.wall.max, undefined]);
  const stiffness = shown.find((one) => one.dataset["constant"] === "youngsModulus")!;
  const slider = stiffness.shadowRoot!.querySelector<HTMLInputElement>("input[type=range]")!;
  slider.dispatchEvent(new KeyboardEvent("keydown", { key: "ArrowRight" }));
  expect(picked.at(-1)).toBeCloseTo(5.6e9, -3);
});

test("a typed pressure is kept within what the control can do", async () => {
  const element = await panel();
  const picked: number[] = [];
  element.addEventListener("pressure-picked", (event) =>
    picked.push((event as PressurePickedEvent).pressure),
  );
  const control = part(element, "reed-lip-pressures", "reed-lip-pressure");
  const field = control.shadowRoot!.querySelector<HTMLInputElement>("input[type=number]")!;
  for (const typed of ["2.25", "50", "-3", "x"]) {
    field.value = typed;
    field.dispatchEvent(new Event("change"));
  }
  expect(picked).toEqual([2250, 8000, 0]);
});

test("nothing shown is not a number, whatever lips, breath and recipe do", async () => {
  const element = await panel({ second: { name: "Bittern", values: demoReeds[0]!.readings } });
  for (const { readings } of demoReeds) {
    for (const [lip, blow] of [
      [0, 0],
      [8000, 0],
      [0, 12000],
      [8000, 12000],
      [3300, 4100],
    ] as const) {
      Object.assign(element, { mine: { name: "x", values: readings }, lip, blow });
      await settled(element);
      const parts = [...element.shadowRoot!.querySelectorAll("*")].filter((one) => one.shadowRoot);
      for (const one of parts) {
        expect(one.shadowRoot!.innerHTML, one.localName).not.toMatch(/NaN|undefined|Infinity/);
      }
    }
  }
});
