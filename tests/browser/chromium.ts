import { chromium, type Browser } from "playwright";
import { findChromium } from "../../.ci/find-chromium.mjs";

/** Path of the system's Chromium; undefined where there is none, and then the browser tests are skipped. */
export const chromiumPath = findChromium();

// No sandbox: tests may run as root in a container. The others keep the browser from calling out.
export const flags: readonly string[] = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--disable-gpu-rasterization",
  "--disable-software-rasterizer",
  "--disable-extensions",
];

/** Starts the system's Chromium without a window; a page keeps no files for later unless its test allows it. */
export async function launch(): Promise<Browser> {
  if (chromiumPath === undefined) {
    throw new Error("launch: no Chromium found; guard browser tests with describe.skipIf");
  }
  const browser = await chromium.launch({ executablePath: chromiumPath, args: [...flags] });
  const open = browser.newContext.bind(browser);
  browser.newContext = (options) => open({ serviceWorkers: "block", ...options });
  return browser;
}
