import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import type { Lesson } from "../../src/lesson/lesson.js";
import { lessonState, type LessonState } from "../../src/lesson/lesson-state.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { define } from "../../src/widgets/define.js";
import { BlendPickedEvent, ValuePickedEvent } from "../../src/widgets/events.js";
import type { LessonWorkedEvent } from "../../src/widgets/lesson-events.js";
import { LessonPlayer } from "../../src/widgets/lesson-player.js";
import { fence } from "../lesson/lesson-texts.js";
import { lessonFrom } from "../scorm/made-lesson.js";

define("lesson-player", LessonPlayer);

const choice = fence(
  "choose",
  "ask: Which?",
  "options:",
  "  - { text: One, why: A }",
  "  - { text: Two, why: B, right: true }",
  "  - { text: Three, why: C }",
);
const head = "---\ntitle: Played\nminutes: 9\n---\n";
const predict = (mm: number): string =>
  fence("predict", "ask: Where?", `change: { bladeLength: ${mm} }`);
const lessonOf = (...steps: readonly string[]): Lesson =>
  lessonFrom(head + steps.map((blocks, k) => `## Step ${k + 1}\n${blocks}`).join("\n"));

/** A player on a page that owns its run, as every page does. */
class Page {
  readonly player = document.createElement("lesson-player") as LessonPlayer;
  said: string[] = [];

  constructor(lesson: Lesson) {
    Object.assign(this.player, { lesson, run: lessonState(lesson), model: bassoonModel });
    this.player.addEventListener("lesson-worked", (event) => {
      const { run, says } = event as LessonWorkedEvent;
      this.said.push(says);
      void this.show(run);
    });
    document.body.append(this.player);
  }

  async show(run: LessonState): Promise<void> {
    this.player.run = run;
    await this.settled();
  }

  /** Everything rendered, and the focus where it goes afterwards. */
  async settled(): Promise<void> {
    for (let round = 0; round < 4; round += 1) {
      await new Promise(requestAnimationFrame);
      await this.player.updateComplete;
    }
  }

  find(selector: string): HTMLElement {
    return this.all(selector)[0] ?? fail(selector);
  }

  /** Through all shadow roots. */
  all<T extends Element = HTMLElement>(
    selector: string,
    root: ParentNode = this.player.renderRoot,
  ): T[] {
    const inner = [...root.querySelectorAll("*")].flatMap((one) =>
      one.shadowRoot ? this.all<T>(selector, one.shadowRoot) : [],
    );
    return [...root.querySelectorAll<T>(selector), ...inner];
  }

  async press(selector: string): Promise<void> {
    this.find(selector).click();
    await this.settled();
  }

  /** Names of elements from the player in to the one with the focus. */
  get focused(): Element | null {
    let at = document.activeElement;
    while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
    return at;
  }
}

function fail(what: string): never {
  throw new Error(`no ${what}`);
}

const opened = async (lesson: Lesson): Promise<Page> => {
  const page = new Page(lesson);
  await page.settled();
  return page;
};

beforeEach(() => {
  vi.stubGlobal(
    "ResizeObserver",
    class {
      observe() {}
      unobserve() {}
      disconnect() {}
    },
  );
  Element.prototype.scrollIntoView = () => {};
});
afterEach(() => {
  document.body.replaceChildren();
  vi.unstubAllGlobals();
});

describe("another step", () => {
  test("carries no problem of the one before", async () => {
    const lesson = lessonOf(predict(26.2), choice);
    const page = await opened(lesson);
    await page.press(".main");
    expect(page.find("[role=alert]").textContent).toMatch(/^Put the point first/);
    await page.show(lessonState(lesson, 1));
    expect(page.find("lesson-choice")).toBeTruthy();
    expect(page.all("[role=alert]")).toEqual([]);
  });

  test("carries no sureness that was told before there was a guess", async () => {
    const lesson = lessonOf(predict(26.2), predict(26.6));
    const page = await opened(lesson);
    await page.press(".option:last-of-type input");
    await page.show(lessonState(lesson, 1));
    page.find("triangle-plane").dispatchEvent(new BlendPickedEvent([0.5, 0.3, 0.2], "a"));
    await page.settled();
    expect(page.player.run.exercises["1.0"]!.answer).toEqual({
      kind: "predict",
      guess: [0.5, 0.3, 0.2],
    });
    expect(page.all<HTMLInputElement>("input[name=sure]").filter(({ checked }) => checked)).toEqual(
      [],
    );
  });

  test("nor does another lesson with a question of the same name", async () => {
    const page = await opened(lessonOf(choice));
    await page.press(".main");
    expect(page.all("[role=alert]")).toHaveLength(1);
    page.player.lesson = { ...lessonOf(choice), title: "Another" };
    await page.settled();
    expect(page.all("[role=alert]")).toEqual([]);
  });

  test("while what belongs to the step that is shown stays the same element", async () => {
    const page = await opened(lessonOf(choice));
    const before = page.find("lesson-exercise");
    await page.press("input[value='1']");
    expect(page.find("lesson-exercise")).toBe(before);
  });
});

describe("the focus has a place", () => {
  test("after the last hint on the button that hands in", async () => {
    const page = await opened(lessonOf(choice));
    for (const _ of [1, 2]) await page.press(".hint");
    page.find(".hint").focus();
    await page.press(".hint");
    expect(page.all(".hint")).toEqual([]);
    expect(page.focused?.className).toBe("main");
  });

  test("on what is told of an answer, whose name is short and whose sentences describe it; said once", async () => {
    const page = await opened(lessonOf(choice));
    await page.press("input[value='0']");
    await page.press(".main");
    const told = page.focused!;
    const root = told.getRootNode() as ShadowRoot;
    const textOf = (name: string): string =>
      root.getElementById(told.getAttribute(name)!)!.textContent.trim();
    expect(told.getAttribute("role")).toBe("group");
    expect(textOf("aria-labelledby")).toBe("Not this time.");
    expect(textOf("aria-describedby")).toBe("A");
    expect(page.said.filter(Boolean)).toEqual([]);
  });

  test("with another try on the option that was picked", async () => {
    const page = await opened(lessonOf(choice));
    await page.press("input[value='2']");
    await page.press(".main");
    await page.press(".buttons button");
    expect((page.focused as HTMLInputElement).value).toBe("2");
  });

  test("with another try on the first share that was wrong", async () => {
    const page = await opened(lessonOf(fence("read", "ask: Read.", "at: [20, 30, 50]")));
    const fields = page.all<HTMLInputElement>(".fields input");
    fields.forEach((field, k) => (field.value = String([20, 10, 70][k])));
    fields[0]!.dispatchEvent(new Event("change", { bubbles: true }));
    await page.settled();
    await page.press(".main");
    await page.press(".buttons button");
    expect(page.focused).toBe(page.all(".fields input")[1]);
  });

  test("with another try on the first value of a recipe", async () => {
    const page = await opened(
      lessonOf(fence("stand-in", "ask: Make up for it.", "missing: { throatWidth: 8.1 }")),
    );
    page.find("reed-feature-row").dispatchEvent(new ValuePickedEvent("tipWidth", 15.2));
    await page.settled();
    await page.press(".main");
    await page.press(".buttons button");
    expect(page.focused?.matches("input[type=text]")).toBe(true);
  });
});

describe("by ear", () => {
  test("a guess that keys move says its shares once it rests", async () => {
    const page = await opened(lessonOf(predict(26.2)));
    const plane = page.find("triangle-plane");
    const status = (): string => page.find("[role=status]").textContent ?? "";
    const key = () =>
      plane
        .shadowRoot!.querySelector(".plane")!
        .dispatchEvent(new KeyboardEvent("keydown", { key: "ArrowUp", bubbles: true }));
    key();
    key();
    await page.settled();
    expect(status()).toBe("");
    await vi.waitFor(() => expect(status()).not.toBe(""), { timeout: 2000 });
    expect(status()).toMatch(/^3[5-9]% high register, 3\d% soft and low, 3\d% full volume\.$/);
  });

  test("a reading is a task in words, too: lines to count for two shares, and no share is told", async () => {
    const page = await opened(lessonOf(fence("read", "ask: Read.", "at: [20, 35, 45]")));
    const said = page.find("details").textContent.replace(/\s+/g, " ");
    expect(said).toContain("Going toward “High register”, the point lies on line 2.");
    expect(said).toContain(
      "Going toward “Soft and low”, the point lies halfway between line 3 and line 4.",
    );
    expect(said).not.toMatch(/Full volume|%|20|35|45/);
  });

  test("nothing is told about moving what does not move", async () => {
    const page = await opened(
      lessonOf(
        fence("show", "reed: Heron", "layers: [pulls]") +
          fence("stand-in", "ask: Go.", "missing: { throatWidth: 8.1 }"),
      ),
    );
    const planes = page.all("triangle-plane");
    expect(planes.length).toBe(2);
    for (const plane of planes) {
      const { textContent } = plane.shadowRoot!;
      expect(textContent).not.toMatch(/Click or drag|Keys:/);
      expect(plane.shadowRoot!.querySelector("[aria-describedby]")).toBe(null);
      expect(plane.shadowRoot!.querySelector("svg")!.getAttribute("aria-label")).not.toContain(
        "tables below",
      );
    }
    expect(planes[0]!.shadowRoot!.querySelector("svg")!.getAttribute("aria-label")).toContain(
      "Also drawn: pulls.",
    );
  });
});

describe("a show", () => {
  test("with a caption alone draws the reed of its lesson", async () => {
    const page = await opened(lessonOf(fence("show", "caption: Bright is thin.") + choice));
    expect(page.all("reed-drawing")).toHaveLength(1);
  });

  test("of cautions draws none", async () => {
    const page = await opened(
      lessonOf(fence("show", "caption: Read this.", "cautions: [knife]") + choice),
    );
    expect(page.all("reed-drawing")).toEqual([]);
  });
});

describe("options", () => {
  const texts = (page: Page): string[] => page.all(".option").map((one) => one.textContent.trim());

  test("are picked by their place in the file, wherever they stand", async () => {
    const lesson = lessonOf(choice);
    const page = await opened(lesson);
    const two = page.all(".option").find((one) => one.textContent.includes("Two"))!;
    two.querySelector("input")!.click();
    await page.settled();
    expect(page.player.run.exercises["0.0"]!.answer).toEqual({ kind: "choose", option: 1 });
  });

  test("stand in the order of the file for a class", async () => {
    const page = await opened(lessonOf(choice));
    page.player.listed = true;
    await page.settled();
    expect(texts(page)).toEqual(["One", "Two", "Three"]);
  });
});

test("prose of a lesson that a page has put together runs nothing", async () => {
  const lesson = lessonOf(choice);
  const blocks = [
    { kind: "prose", html: "<p>Fine <em>words</em>.</p><img src=x onerror=alert(1)>" } as const,
    ...lesson.steps[0]!.blocks,
  ];
  const page = await opened({ ...lesson, steps: [{ ...lesson.steps[0]!, blocks }] });
  const step = page.find("lesson-step");
  expect(step.shadowRoot!.querySelector(".prose img")).toBe(null);
  expect(step.shadowRoot!.querySelector(".prose em")!.textContent).toBe("words");
  expect(step.shadowRoot!.querySelector(".prose")!.textContent).toContain("<img src=x onerror");
});
