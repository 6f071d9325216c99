import type { Page } from "playwright";
import { expect } from "vitest";
import { describeWalks, phone } from "./walks.js";

/** Where the controls of a page are that a finger can press; sliders follow the finger by design. */
const controls = (page: Page) =>
  page.locator(
    "button:visible, summary:visible, select:visible, input:visible:not([type=range]):not([type=file])",
  );

/** What a finger would miss: controls that have moved between its coming down and its going up. */
async function movedUnderFinger(page: Page): Promise<string[]> {
  const cdp = await page.context().newCDPSession(page);
  const moved: string[] = [];
  for (const control of await controls(page).all()) {
    await control.scrollIntoViewIfNeeded();
    const before = await control.boundingBox();
    if (!before) continue;
    const point = { x: before.x + before.width / 2, y: before.y + before.height / 2 };
    await cdp.send("Input.dispatchTouchEvent", { type: "touchStart", touchPoints: [point] });
    await page.evaluate(
      () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
    );
    const after = await control.boundingBox();
    await cdp.send("Input.dispatchTouchEvent", { type: "touchCancel", touchPoints: [] });
    const by = after ? Math.hypot(after.x - before.x, after.y - before.y) : Infinity;
    if (by > 1)
      moved.push(`${await control.evaluate((one) => one.outerHTML.slice(0, 90))} by ${by}`);
  }
  return moved;
}

describeWalks("a finger on a phone", (walk) => {
  for (const code of ["page=measure&reed=Avocet", "reed=Bittern&target=solo"])
    walk(
      `moves nothing away from under itself: ${code}`,
      async (bench) => {
        await bench.page.goto(`${bench.url}#v=1&model=bassoon&${code}`);
        await controls(bench.page).nth(4).waitFor();
        expect(await movedUnderFinger(bench.page)).toEqual([]);
      },
      phone,
    );
});
