// @vitest-environment jsdom
import { afterEach, describe, expect, test } from "vitest";
import type { BenchActionEvent } from "../../src/app/bench-action-event.js";
import { BenchHeader } from "../../src/app/bench-header.js";
import type { BenchAction } from "../../src/app/bench-state.js";
import { demoReeds } from "../../src/reed/demo-reeds.js";
import { define } from "../../src/widgets/define.js";

define("bench-header", BenchHeader);

afterEach(() => document.body.replaceChildren());

async function header(reed = "", name = reed) {
  const element = document.createElement("bench-header") as BenchHeader;
  Object.assign(element, { reed, name });
  document.body.append(element);
  await element.updateComplete;
  const actions: BenchAction[] = [];
  element.addEventListener("bench-action", (event) =>
    actions.push((event as BenchActionEvent).action),
  );
  const root = element.shadowRoot!;
  const list = root.querySelector<HTMLSelectElement>(".choice select")!;
  /** As a browser does on a closed list: the key, then the next entry, then a change. */
  const arrowDown = async () => {
    list.dispatchEvent(new KeyboardEvent("keydown", { key: "ArrowDown" }));
    list.selectedIndex = Math.min(list.selectedIndex + 1, list.options.length - 1);
    list.dispatchEvent(new Event("change"));
    await element.updateComplete;
  };
  const press = (key: string) => list.dispatchEvent(new KeyboardEvent("keydown", { key }));
  const open = () => root.querySelector<HTMLButtonElement>(".choice .open");
  return { element, actions, list, arrowDown, press, open };
}

const names = (list: HTMLSelectElement): string[] =>
  [...list.options].map(({ textContent }) => textContent.trim());

describe("the list of reeds", () => {
  test("is walked by arrow keys to its end, and nothing is chosen on the way", async () => {
    const { actions, list, arrowDown } = await header("My reed");
    for (let i = 0; i < 8; i += 1) await arrowDown();
    expect(list.selectedOptions[0]?.textContent.trim()).toBe(demoReeds.at(-1)!.reed);
    expect(actions).toEqual([]);
  });

  test("opens the reed that was walked to with Enter, or with the button beside it", async () => {
    const byKey = await header();
    for (let i = 0; i < 2; i += 1) await byKey.arrowDown();
    byKey.press("Enter");
    expect(byKey.actions).toMatchObject([{ type: "reed-loaded", reed: demoReeds[0]!.reed }]);
    const byButton = await header();
    for (let i = 0; i < 3; i += 1) await byButton.arrowDown();
    byButton.open()!.click();
    expect(byButton.actions).toMatchObject([{ type: "reed-loaded", reed: demoReeds[1]!.reed }]);
  });

  test("stands on the present reed again when it is left without a choice", async () => {
    const { element, actions, list, arrowDown, open } = await header("My reed");
    await arrowDown();
    expect(open()).not.toBeNull();
    list.dispatchEvent(new FocusEvent("focusout", { bubbles: true, composed: true }));
    await element.updateComplete;
    expect(list.selectedOptions[0]?.textContent.trim()).toBe("My reed");
    expect([actions, open()]).toEqual([[], null]);
  });

  test("chooses at once by pointer", async () => {
    const { actions, list } = await header();
    list.dispatchEvent(new Event("pointerdown"));
    list.selectedIndex = names(list).indexOf("Teal");
    list.dispatchEvent(new Event("change"));
    const teal = demoReeds.find(({ reed }) => reed === "Teal")!;
    expect(actions).toEqual([
      {
        type: "reed-loaded",
        reed: "Teal",
        values: teal.readings,
        readings: { wings: teal.wingsSingly },
      },
    ]);
  });

  test.each(["empty", "changed", "present", "all-round"])(
    "holds a reed of one's own that is called “%s”",
    async (name) => {
      const { list, actions } = await header(name);
      expect(list.selectedOptions[0]?.textContent.trim()).toBe(name);
      list.selectedIndex = names(list).indexOf("All-round reed");
      list.dispatchEvent(new Event("change"));
      expect(actions).toEqual([{ type: "reset" }]);
    },
  );

  test("says that something is tried on a reed", async () => {
    const { list } = await header("Heron", "Heron, tried");
    expect(list.selectedOptions[0]?.textContent.trim()).toBe("Heron, tried");
    expect(names(list)).toContain("Heron");
  });
});
