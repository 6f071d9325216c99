import { afterEach, expect, test } from "vitest";
import { define } from "../../src/widgets/define.js";
import { ReedShares } from "../../src/widgets/reed-shares.js";

define("reed-shares", ReedShares);
afterEach(() => document.body.replaceChildren());

async function shares(): Promise<{ element: ReedShares; fields: HTMLInputElement[] }> {
  const element = document.createElement("reed-shares") as ReedShares;
  element.blend = [1 / 3, 1 / 3, 1 / 3];
  document.body.append(element);
  await element.updateComplete;
  const fields = [...element.shadowRoot!.querySelectorAll<HTMLInputElement>("input[type=number]")];
  return { element, fields };
}

test("fields and sliders show whole per cents that sum to 100", async () => {
  const { element, fields } = await shares();
  const sliders = [...element.shadowRoot!.querySelectorAll<HTMLInputElement>("input[type=range]")];
  for (const all of [fields, sliders])
    expect(all.reduce((sum, { value }) => sum + Number(value), 0)).toBe(100);
});

test("Escape takes back what was typed and not entered", async () => {
  const { element, fields } = await shares();
  fields[2]!.value = "43";
  fields[2]!.dispatchEvent(new KeyboardEvent("keydown", { key: "Escape", bubbles: true }));
  await element.updateComplete;
  expect(fields.map(({ value }) => value)).toEqual(["34", "33", "33"]);
});
