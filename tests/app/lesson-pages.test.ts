// @vitest-environment jsdom
import * as fake from "fake-indexeddb";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { LessonsPage } from "../../src/app/lessons-page.js";
import type { BenchActionEvent } from "../../src/app/bench-action-event.js";
import { ProgressPanel, type ProgressWishedEvent } from "../../src/app/progress-panel.js";
import { LessonSource } from "../../src/app/lesson-source.js";
import * as reader from "../../src/app/read-lesson-file.js";
import { shippedLessons } from "../../src/app/shipped-lessons.js";
import * as shipped from "../../src/app/shipped-lessons.js";
import { WindowPair } from "../../src/app/window-pair.js";
import { bringLesson } from "../../src/embed/bring-lesson.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { lessonEnglish } from "../../src/reed/lesson-catalogue.js";
import { define } from "../../src/widgets/define.js";

vi.mock(import("../../src/app/read-lesson-file.js"), { spy: true });
vi.mock(import("../../src/app/shipped-lessons.js"), { spy: true });

define("lessons-page", LessonsPage);
const words = lessonEnglish.lessons;

async function shown<T extends HTMLElement & { readonly updateComplete: Promise<boolean> }>(
  name: string,
  properties: object,
): Promise<T & { readonly renderRoot: ShadowRoot }> {
  const element = Object.assign(document.createElement(name), properties) as unknown as T;
  document.body.append(element);
  await element.updateComplete;
  return element as T & { readonly renderRoot: ShadowRoot };
}

beforeEach(() => {
  Object.assign(globalThis, fake, { indexedDB: new fake.IDBFactory() });
  vi.stubGlobal("scrollTo", () => {});
  vi.spyOn(console, "warn").mockImplementation(() => {});
  vi.spyOn(console, "error").mockImplementation(() => {});
});
afterEach(() => {
  document.body.replaceChildren();
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

describe("the page of lessons", () => {
  const locked = { locked: true, hints: 0, tries: 1 };
  const progress = {
    runs: Object.fromEntries(
      shippedLessons
        .slice(0, 3)
        .map(({ id }) => [id, { step: 0, day: 1, exercises: { "0.2": locked } }]),
    ),
  };

  test("says that a review could not be had, logs why, and lets it be tried again", async () => {
    const page = await shown<LessonsPage>("lessons-page", { model: bassoonModel, progress });
    const actions: string[] = [];
    page.addEventListener("bench-action", (event) =>
      actions.push((event as BenchActionEvent).action.type),
    );
    const list = page.renderRoot.querySelector("lesson-list")!;
    const gone = new TypeError("gone");
    vi.mocked(shipped.loadLesson).mockRejectedValueOnce(gone);
    list.dispatchEvent(new Event("review-asked"));
    await vi.waitFor(() =>
      expect(page.renderRoot.querySelector("[role=alert]")?.textContent).toBe(words.review.failed),
    );
    expect(vi.mocked(console.warn).mock.calls.flat()).toContain(gone);
    list.dispatchEvent(new Event("review-asked"));
    await vi.waitFor(() => expect(actions).toContain("lesson-opened"));
    expect(page.renderRoot.querySelector("[role=alert]")).toBe(null);
  });

  test("has the focus on its title after a lesson was left", async () => {
    const page = await shown<LessonsPage>("lessons-page", {
      model: bassoonModel,
      open: { id: "none", step: 0 },
    });
    page.open = undefined;
    await page.updateComplete;
    await vi.waitFor(() => {
      const list = page.renderRoot.querySelector("lesson-list")!;
      expect(list.shadowRoot!.activeElement?.textContent).toBe(words.list);
    });
  });

  test("names its lessons with their numbers", async () => {
    const page = await shown<LessonsPage>("lessons-page", { model: bassoonModel });
    const list = page.renderRoot.querySelector("lesson-list") as HTMLElement & {
      updateComplete: Promise<boolean>;
    };
    await list.updateComplete;
    const names = [...list.shadowRoot!.querySelectorAll(".lesson strong")].map(
      (one) => one.textContent,
    );
    expect(names[0]).toBe(`1. ${shippedLessons[0]!.title}`);
    expect(names[13]).toBe(`14. ${shippedLessons[13]!.title}`);
  });
});

describe("to erase progress", () => {
  const asked = async () => {
    define("progress-panel", ProgressPanel);
    const panel = await shown<ProgressPanel>("progress-panel", { progress: { runs: {} } });
    const wishes: string[] = [];
    panel.addEventListener("progress-wished", (event) =>
      wishes.push((event as ProgressWishedEvent).wish.kind),
    );
    panel.renderRoot.querySelector<HTMLElement>(".erase")!.click();
    await vi.waitFor(() =>
      expect(panel.renderRoot.activeElement?.textContent?.trim()).not.toBe(undefined),
    );
    return { panel, wishes };
  };

  test("the focus is on the harmless answer, and the warning describes the dialog", async () => {
    const { panel } = await asked();
    expect(panel.renderRoot.activeElement?.textContent).toBe(words.keeping.eraseNo);
    const dialog = panel.renderRoot.querySelector("[role=alertdialog]")!;
    const warning = panel.renderRoot.getElementById(dialog.getAttribute("aria-describedby")!);
    expect(warning?.textContent).toBe(words.keeping.eraseAsk);
    expect(dialog.contains(panel.renderRoot.activeElement)).toBe(true);
  });

  test("Escape leaves it as it is", async () => {
    const { panel, wishes } = await asked();
    panel.renderRoot.activeElement!.dispatchEvent(
      new KeyboardEvent("keydown", { key: "Escape", bubbles: true }),
    );
    await panel.updateComplete;
    expect(panel.renderRoot.querySelector("[role=alertdialog]")).toBe(null);
    expect(wishes).toEqual([]);
    await vi.waitFor(() => expect(panel.renderRoot.activeElement?.className).toBe("erase"));
  });
});

describe("an exception of the reader of lesson files", () => {
  const fault = new TypeError("the reader's own");
  beforeEach(() => {
    vi.mocked(reader.readLessonFile).mockImplementationOnce(() => {
      throw fault;
    });
  });

  test("is not told as a missing connection by the app", async () => {
    const host = {
      addController() {},
      removeController() {},
      requestUpdate() {},
      updateComplete: Promise.resolve(true),
    };
    const source = new LessonSource(host);
    source.ask("file", { file: { name: "a.md", text: "" }, model: bassoonModel });
    await vi.waitFor(() => expect(source.state).toBe("fault"));
    expect(vi.mocked(console.error).mock.calls.flat()).toContain(fault);
  });

  test("nor by the element", async () => {
    const { trouble } = await bringLesson({ lesson: "", source: "text", model: bassoonModel });
    expect(trouble).toBe(words.file.fault);
    expect(vi.mocked(console.error).mock.calls.flat()).toContain(fault);
  });
});

test("a pair of windows that is closed sends nothing and throws nothing", () => {
  const posted = vi.fn<() => void>();
  vi.stubGlobal(
    "BroadcastChannel",
    class {
      #isClosed = false;
      addEventListener() {}
      removeEventListener() {}
      close() {
        this.#isClosed = true;
      }
      postMessage() {
        if (this.#isClosed) throw new DOMException("Channel is closed", "InvalidStateError");
        posted();
      }
    },
  );
  const pair = new WindowPair("a", "presenter", { onMessage: () => {}, onConnected: () => {} });
  const other = { postMessage: vi.fn<() => void>() };
  pair.other = other as unknown as Window;
  pair.open();
  expect(posted).toHaveBeenCalled();
  pair.close();
  const [before, there] = [posted.mock.calls.length, other.postMessage.mock.calls.length];
  pair.send({ kind: "ping" });
  expect(posted).toHaveBeenCalledTimes(before);
  expect(other.postMessage).toHaveBeenCalledTimes(there);
});
