import type { Browser, BrowserContext, BrowserContextOptions } from "playwright";
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

/**
 * Walks through the built app in one Chromium; nothing moves by itself unless a walk asks for it. Walks that ask for
 * nothing special share what the browser remembers of files; where they store something, each begins afresh.
 */
export function describeWalks(
  title: string,
  walks: (walk: Walk) => void,
  { afresh = false }: { readonly afresh?: boolean } = {},
): void {
  describe.skipIf(chromiumPath === undefined)(title, () => {
    let browser: Browser;
    let shared: BrowserContext | undefined;
    beforeAll(async () => {
      browser = await launch();
    });
    afterAll(async () => {
      await browser.close();
    });
    const contextFor = (options: BrowserContextOptions): Promise<BrowserContext> =>
      browser.newContext({
        viewport: { width: 1440, height: 900 },
        reducedMotion: "reduce",
        ...options,
      });
    walks((name, steps, options) => {
      test(name, async () => {
        const isOwn = afresh || options !== undefined;
        const context = isOwn ? await contextFor(options ?? {}) : (shared ??= await contextFor({}));
        const page = await context.newPage();
        const errors: string[] = [];
        page.on("pageerror", (error) => errors.push(error.message));
        page.on("console", (message) => message.type() === "error" && errors.push(message.text()));
        await steps(new BenchPage(page, inject("appUrl")));
        expect(errors).toEqual([]);
        await (isOwn ? context : page).close();
      });
    });
  });
}
