// @vitest-environment jsdom
import { afterEach, expect, test, vi } from "vitest";
import type { LitElement } from "lit";
import { HandOut } from "../../src/app/hand-out.js";
import { startState } from "../../src/app/bench-state.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { english } from "../../src/reed/catalogue.js";

const cause = new TypeError("it was cut off");

vi.mock("../../src/app/one-page.js", () => ({
  savePage: () => {
    throw cause;
  },
}));

afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

function handOut() {
  const app = { text: english, state: startState(bassoonModel), notice: "" };
  const warned = vi.spyOn(console, "warn").mockImplementation(() => {});
  const link = (): string => "https://school.example/#v=1";
  return { app, warned, out: new HandOut(app as unknown as typeof app & LitElement, link) };
}

test("a page that could not be saved is told on the page, its cause on the console", async () => {
  const { app, warned, out } = handOut();
  await out.savePage();
  expect(app.notice).toBe(english.bar.pageFailed);
  expect(warned).toHaveBeenCalledWith(expect.stringContaining("could not be saved"), cause);
});

test("a link that could not be copied, too", async () => {
  vi.stubGlobal("navigator", { clipboard: { writeText: () => Promise.reject(cause) } });
  const { app, warned, out } = handOut();
  await out.copyLink();
  expect(app.notice).toBe(english.bar.linkFailed);
  expect(warned).toHaveBeenCalledWith(expect.stringContaining("could not be copied"), cause);
});
