// @vitest-environment jsdom
import type { LitElement } from "lit";
import { afterEach, beforeAll, describe, expect, test, vi } from "vitest";
import type { BenchActionEvent } from "../../src/app/bench-action-event.js";
import {
  reduce,
  startState,
  type BenchAction,
  type BenchState,
} from "../../src/app/bench-state.js";
import { viewBench } from "../../src/app/bench-view.js";
import { firstFeatureStep } from "../../src/app/blank-sheet.js";
import { MeasurePage } from "../../src/app/measure-page.js";
import { momentBeside } from "../../src/app/moment-beside.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { decodeBench, encodeBench } from "../../src/reed/bench.js";
import { english } from "../../src/reed/catalogue.js";
import { measuringSteps } from "../../src/reed/measuring-steps.js";
import { inOrder } from "../../src/reed/readings.js";
import { define } from "../../src/widgets/define.js";

define("measure-page", MeasurePage);

beforeAll(() => {
  Element.prototype.scrollIntoView = () => {};
  // The drawing of the reed needs a canvas for its lamp, which jsdom has not.
  vi.spyOn(HTMLCanvasElement.prototype, "getContext").mockReturnValue(null);
});
afterEach(() => document.body.replaceChildren());

const run = (state: BenchState, ...actions: readonly BenchAction[]): BenchState =>
  actions.reduce(reduce, state);
const begun = run(startState(bassoonModel), {
  type: "set-started",
  reed: "My reed",
  wet: "soaked",
});
const stepOf = (feature: string): BenchAction => ({
  type: "sheet-moved",
  step: firstFeatureStep + measuringSteps.findIndex((one) => one.feature === feature),
});
const read = (feature: string, ...values: number[]): BenchAction => ({
  type: "places-read",
  feature,
  readings: inOrder(feature, values),
  own: "My reed",
});

/** The page with a state that follows its actions, as the app's does. */
async function page(start: BenchState, more: Partial<MeasurePage> = {}) {
  const element = document.createElement("measure-page") as MeasurePage;
  let state = start;
  const show = (): void => {
    element.shown = { state, view: viewBench(state, english) };
  };
  element.addEventListener("bench-action", (event) => {
    state = reduce(state, (event as BenchActionEvent).action);
    show();
  });
  Object.assign(element, more);
  show();
  document.body.append(element);
  const settled = async (): Promise<ShadowRoot> => {
    for (let i = 0; i < 4; i += 1) {
      await element.updateComplete;
      const parts = element.shadowRoot!.querySelectorAll<LitElement>("*");
      await Promise.all([...parts].map((part) => part.updateComplete));
    }
    return element.shadowRoot!.querySelector(".step > :first-child")!.shadowRoot!;
  };
  const step = await settled();
  return { element, step, settled, state: () => state };
}

const text = (element: Element | null | undefined): string =>
  (element?.textContent ?? "").replace(/\s+/g, " ").trim();

async function type(opened: Awaited<ReturnType<typeof page>>, typed: string): Promise<ShadowRoot> {
  const input = (await opened.settled()).querySelector("input")!;
  input.value = typed;
  input.dispatchEvent(new Event("input"));
  input.dispatchEvent(new KeyboardEvent("keydown", { key: "Enter" }));
  return await opened.settled();
}

describe("readings of four places", () => {
  const four = run(begun, read("wings", 0.24, 0.23, 0.28, 0.24), stepOf("wings"));

  test("stand with their places, and each can be told from the others when it is taken out", async () => {
    const { step } = await page(four);
    const rows = [...step.querySelectorAll(".taken li")].map(text);
    expect(rows[2]).toMatch(/^back blade, left: 0\.28 mm/);
    const names = [...step.querySelectorAll(".taken button")].map((one) =>
      one.getAttribute("aria-label"),
    );
    expect(new Set(names).size).toBe(4);
    expect(text(step.querySelector(".problem:not([hidden])"))).toContain(
      "thickest at the back blade, left",
    );
  });

  test("ask for the place that was taken out, and take it in again", async () => {
    const opened = await page(four);
    opened.step.querySelectorAll<HTMLButtonElement>(".taken button")[1]!.click();
    const step = await opened.settled();
    expect(text(step.querySelector(".field"))).toContain("front blade, right");
    await type(opened, "0.25");
    expect(opened.state().present.readings["wings"]).toContainEqual({
      place: "frontRight",
      value: 0.25,
    });
    expect(opened.state().present.bench.values["wings"]).toBe(0.253);
  });
});

describe("the height of a wire", () => {
  test("is still there after a reload that comes between height and width", async () => {
    const opened = await page(run(begun, stepOf("firstWire")));
    await type(opened, "6.26");
    const { bench, readings, sheet } = opened.state().present;
    const kept: unknown = JSON.parse(JSON.stringify({ readings, sheet }));
    const code = encodeBench(bench, bassoonModel);
    const back = decodeBench(code, bassoonModel).bench;
    const again = await page(startState(bassoonModel, back, momentBeside(kept, back)));
    expect(text(again.step.querySelector(".field"))).toContain("height 6.26 mm");
    await type(again, "8.7");
    expect(again.state().present.bench.values["firstWire"]).toBe(0.72);
    expect(again.state().present.sheet?.height).toBeUndefined();
  });

  test("can be read again", async () => {
    const opened = await page(run(begun, stepOf("firstWire")));
    const step = await type(opened, "62.6");
    step.querySelector<HTMLButtonElement>("button.again")!.click();
    expect(text((await opened.settled()).querySelector(".field"))).toContain("Height");
    expect(opened.state().present.sheet?.height).toBeUndefined();
  });
});

describe("a number that looks like a slip", () => {
  test("is asked about with the likely answer first, told to the digits of the gauge, the reason with each button", async () => {
    const opened = await page(run(begun, stepOf("bladeLength")));
    const step = await type(opened, "1.07");
    const buttons = [...step.querySelectorAll(".asked button")];
    expect(text(buttons[0])).toBe("Take 27.2 mm");
    expect(buttons[0]?.className).toBe("main");
    for (const button of buttons) {
      const reason = step.getElementById(button.getAttribute("aria-describedby")!);
      expect(text(reason)).toContain("Read in inches");
    }
    (buttons[0] as HTMLButtonElement).click();
    // Nothing of what was typed is lost by it: 1.07 in is 27.178 mm.
    expect(opened.state().present.bench.values["bladeLength"]).toBe(27.178);
  });
});

describe("soaked or dry", () => {
  const dry = run(begun, { type: "wet-set", wet: "dry" }, read("spine", 0.5, 0.52), {
    type: "sheet-moved",
    step: 1,
  });
  const pick = async (start: BenchState) => {
    const opened = await page(start);
    opened.step
      .querySelector<HTMLInputElement>("input[name=wet]")!
      .dispatchEvent(new Event("change"));
    const step = await opened.settled();
    return { ...opened, buttons: [...step.querySelectorAll<HTMLButtonElement>(".mixed button")] };
  };

  test("picked wrongly is corrected without losing a reading", async () => {
    const { buttons, state } = await pick(dry);
    expect(text(buttons[0])).toBe("They were taken soaked: I picked the wrong one");
    buttons[0]!.click();
    expect(state().present.bench).toMatchObject({ wet: "soaked", values: { spine: 0.51 } });
    expect(state().present.readings["spine"]).toHaveLength(2);
  });

  test("a new set says what it costs, and undo brings it back", async () => {
    const { buttons, state } = await pick(dry);
    expect(text(buttons[1])).toContain("1 feature is read again");
    buttons[1]!.click();
    expect(state().present.bench.values).toEqual({});
    expect(reduce(state(), { type: "undo" }).present.bench.values).toEqual({ spine: 0.51 });
  });

  test("that contradicts the look before measuring is to be looked at again", async () => {
    const both = run(dry, { type: "sound-set", check: "soaked", answer: "ok" });
    const last = firstFeatureStep + measuringSteps.length;
    const { step } = await page(run(both, { type: "sheet-moved", step: last }));
    expect(text(step.querySelector("ul"))).toContain("one of the two is a slip");
  });
});

describe("the sheet on a phone", () => {
  test("shows no drawing before the first reading, so nothing moves while the looks are answered", async () => {
    const { element, step, settled } = await page(begun, { narrow: true });
    expect(element.shadowRoot!.querySelector("figure")).toBeNull();
    step.querySelector("fieldset")!.dispatchEvent(new Event("pointerenter"));
    await settled();
    expect(element.shadowRoot!.querySelector("figure")).toBeNull();
  });

  test("tells no usual range of what is picked among pictures", async () => {
    const { step } = await page(run(begun, stepOf("hinging")));
    expect(text(step.querySelector(".usual:not([hidden])"))).toBe("");
    const pictures = [...step.querySelector("hinging-choice")!.shadowRoot!.querySelectorAll("svg")];
    expect(new Set(pictures.map((one) => one.innerHTML)).size).toBe(5);
  });
});
