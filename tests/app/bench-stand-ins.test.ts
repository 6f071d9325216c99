// @vitest-environment jsdom
import { afterEach, beforeEach, expect, test } from "vitest";
import { BenchStandIns } from "../../src/app/bench-stand-ins.js";
import type { BenchActionEvent } from "../../src/app/bench-action-event.js";
import { reduce, startState } from "../../src/app/bench-state.js";
import { told } from "../../src/app/told.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { english } from "../../src/reed/catalogue.js";
import { demoReeds } from "../../src/reed/demo-reeds.js";
import { define } from "../../src/widgets/define.js";

define("bench-stand-ins", BenchStandIns);

const { reed, readings } = demoReeds.find((one) => one.reed === "Bittern")!;
const loaded = reduce(startState(bassoonModel), { type: "reed-loaded", reed, values: readings });
const request = { feature: "bladeLength", change: -0.6, mode: "instead" } as const;

beforeEach(() => {
  Element.prototype.scrollIntoView = () => {};
});
afterEach(() => document.body.replaceChildren());

/** The list on a page that owns the state, and what a screen reader is told. */
async function list() {
  const panel = new BenchStandIns();
  panel.state = reduce(loaded, { type: "stand-ins-asked", request });
  const said: string[] = [];
  panel.addEventListener("bench-action", (event) => {
    const { action } = event as BenchActionEvent;
    panel.state = reduce(panel.state, action);
    const heard = told(panel.state, action, english);
    said.push(typeof heard === "string" ? heard : heard.words);
  });
  document.body.append(panel);
  await panel.updateComplete;
  const root = panel.renderRoot as ShadowRoot;
  const press = async (selector: string): Promise<void> => {
    root.querySelector<HTMLElement>(selector)!.click();
    await panel.updateComplete;
    await new Promise(requestAnimationFrame);
    await panel.updateComplete;
  };
  const described = (element: Element): string =>
    root
      .getElementById(element.getAttribute("aria-describedby")!)!
      .textContent.replace(/\s+/g, " ");
  return { root, said, press, described };
}

test("a button to try has a short name, and its sentence with the caution describes it", async () => {
  const { root, described } = await list();
  const buttons = [...root.querySelectorAll(".try")];
  expect(buttons.length).toBeGreaterThan(2);
  for (const button of buttons) {
    expect(button.getAttribute("aria-label")).toBe(null);
    expect(button.textContent.trim()).toBe("Try");
    const sentence = button.closest("li")!.querySelector("p")!.textContent;
    expect(described(button)).toContain(sentence.replace(/\s+/g, " "));
  }
  expect(described(buttons[0]!)).toContain("Caution");
});

test("lines tried one after another are each told, without the caution that describes their buttons", async () => {
  const { said, press } = await list();
  await press("[data-what^=hand] .try");
  await press("[data-what^=feature] .try");
  expect(new Set(said).size).toBe(2);
  for (const words of said) {
    expect(words).toMatch(
      /^Being tried\. .*\d+% high register, \d+% soft and low, \d+% full volume\.$/,
    );
    expect(words).not.toContain("undone");
    expect(words.split(" ").length).toBeLessThan(45);
  }
});
