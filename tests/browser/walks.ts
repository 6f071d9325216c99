import type { Browser, BrowserContextOptions } from "playwright";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { BenchPage } from "./bench-page.js";
import { chromiumPath, launch } from "./chromium.js";

/** One walk on a page of its own; an error in the page's console fails it. */
export type Walk = (
  title: string,
  steps: (bench: BenchPage) => Promise<void>,
  options?: BrowserContextOptions,
) => void;

/** A phone held upright, worked with a finger. */
export const phone: BrowserContextOptions = {
  viewport: { width: 360, height: 740 },
  hasTouch: true,
  isMobile: true,
};

/** Walks through the built app in one Chromium; nothing moves by itself unless a walk asks for it. */
export function describeWalks(title: string, walks: (walk: Walk) => void): void {
  describe.skipIf(chromiumPath === undefined)(title, () => {
    let browser: Browser;
    beforeAll(async () => {
      browser = await launch();
    });
    afterAll(async () => {
      await browser.close();
    });
    walks((name, steps, options = {}) => {
      test(name, async () => {
        const context = await browser.newContext({
          viewport: { width: 1440, height: 900 },
          reducedMotion: "reduce",
          ...options,
        });
        const page = await context.newPage();
        const errors: string[] = [];
        page.on("pageerror", (error) => errors.push(error.message));
        page.on("console", (message) => message.type() === "error" && errors.push(message.text()));
        await steps(new BenchPage(page, inject("appUrl")));
        expect(errors).toEqual([]);
        await context.close();
      });
    });
  });
}
