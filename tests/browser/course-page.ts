import type { Browser, BrowserContextOptions, Page } from "playwright";
import { inject } from "vitest";

/** The ways in which a page can load the elements. */
export const scripts = {
  module: '<script type="module" src="elements/reed-elements.js"></script>',
  classic:
    '<script src="elements/reed-elements.classic.js"></script><script src="elements/reed-lesson.classic.js"></script>',
  lazy: '<script type="module" src="elements/reed-elements.lazy.js"></script>',
} as const;

/** Every element, with an attribute that makes it show something. */
export const allElements = {
  "reed-bench": '<reed-bench reed="Bittern"><p>A bench.</p></reed-bench>',
  "reed-triangle":
    '<reed-triangle reed="Bittern" target="softLow"><p>A triangle.</p></reed-triangle>',
  "reed-lamp": '<reed-lamp reed="Heron"><p>A reed against the light.</p></reed-lamp>',
  "reed-lip": '<reed-lip reed="Heron"><p>Lips and opening.</p></reed-lip>',
  "reed-stand-ins":
    '<reed-stand-ins reed="Heron" feature="wings">Stand-ins for wings.</reed-stand-ins>',
  "reed-plan": '<reed-plan reed="Snipe" target="softLow"><p>A plan.</p></reed-plan>',
  "reed-lesson": '<reed-lesson lesson="06-shape"><p>A lesson.</p></reed-lesson>',
} as const;

/** What a page has heard of an element. */
export interface Heard {
  readonly type: string;
  readonly from: string;
  readonly detail: {
    readonly reed: string;
    readonly values: Readonly<Record<string, number>>;
    readonly blend: readonly number[] | null;
    readonly target: string;
  };
}

const listening = `
  window.heard = [];
  for (const type of ["input", "change", "reed-target-picked", "reed-step-done", "reed-stand-in-tried", "reed-lips-moved", "reed-lesson-worked", "reed-step-turned"])
    document.addEventListener(type, (event) =>
      window.heard.push({ type, from: event.target.id || event.target.localName, detail: event.detail }));
`;

/** A page that somebody else wrote, with the built elements beside it. */
export async function openCoursePage(
  browser: Browser,
  body: string,
  {
    script = scripts.module,
    ...options
  }: BrowserContextOptions & { readonly script?: string } = {},
  onFault: (message: string) => void = () => {},
): Promise<Page> {
  const page = await browser.newPage({ reducedMotion: "reduce", ...options });
  page.on("pageerror", (error) => onFault(error.message));
  await page.addInitScript(listening);
  await page.route("**/course.html", (route) =>
    route.fulfill({
      contentType: "text/html",
      body: `<!doctype html><html lang="en"><head><meta name="viewport" content="width=device-width" />
        <title>Course</title><link rel="icon" href="data:," /><style>body { margin: 0 }</style>${script}</head>
        <body><main><h1>Course</h1>${body}</main></body></html>`,
    }),
  );
  await page.goto(`${inject("appUrl")}course.html`);
  return page;
}

export function heard(page: Page): Promise<Heard[]> {
  return page.evaluate(() => (window as unknown as { heard: Heard[] }).heard);
}

/** Waits until elements have drawn themselves, with what comes late in them. */
export async function drawn(page: Page, selector: string): Promise<void> {
  await page.waitForFunction((wanted) => {
    const all = [...document.querySelectorAll(wanted)];
    return (
      all.length > 0 && all.every((one) => one.shadowRoot?.querySelector(".frame > :not(.late)"))
    );
  }, selector);
  await page.waitForTimeout(250);
}

/** Drags the point of a triangle inside an element by so many px. */
export async function dragPoint(page: Page, element: string, by: readonly [number, number]) {
  const dot = page.locator(`${element} triangle-plane svg .handle .dot`);
  await dot.scrollIntoViewIfNeeded();
  const box = (await dot.boundingBox())!;
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + by[0], y + by[1], { steps: 5 });
  await page.mouse.up();
}
