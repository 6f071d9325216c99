// `npm run bench`, second part: what a drag on the bench costs the main thread, with every layer on, at 1440 × 900.
// CPU time a move from the browser's own counters in thread ticks (frame intervals mislead: awaited input adapts to a
// slow page), beside that of a page that only moves a circle. Prints; judges nothing.
import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright";
import { preview } from "vite";
import { findChromium } from "./find-chromium.mjs";

const root = fileURLToPath(new URL("..", import.meta.url));
// Heron, an invented demo reed.
const bench =
  "v=1&model=bassoon&reed=Heron&values=26700.14400.8400.770.960.470.210.580.380.120.110.600.1200.11600" +
  "&finished=1&target=softLow&layers=reach.pulls.eachPull.certainty.readingLines";
const budget = 4;
const moves = 150;
const rounds = 5;

const executablePath = findChromium();
if (executablePath === undefined || !existsSync(`${root}dist/index.html`)) {
  console.log(
    "drag: not measured; needs Chromium (or REEDPOINT_CHROMIUM) and a built app (npm run build).",
  );
  process.exit(0);
}
const server = await preview({
  root,
  configFile: false,
  logLevel: "warn",
  preview: { host: "127.0.0.1", port: 0 },
});
const browser = await chromium.launch({ executablePath, args: ["--no-sandbox", "--disable-gpu"] });
const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
const client = await page.context().newCDPSession(page);
await client.send("Performance.enable", { timeDomain: "threadTicks" });

async function counters() {
  const { metrics } = await client.send("Performance.getMetrics");
  return Object.fromEntries(metrics.map(({ name, value }) => [name, value]));
}

/** The browser's own input: a driver's mouse would add work of its own to every move. */
const mouse = (type, [x, y], buttons = 1) =>
  client.send("Input.dispatchMouseEvent", { type, x, y, buttons, button: "left", clickCount: 1 });

/** Milliseconds and layouts a move of one drag around a place. */
async function drag([x, y], [dx, dy]) {
  await mouse("mouseMoved", [x, y], 0);
  await mouse("mousePressed", [x, y]);
  const to = (i) => mouse("mouseMoved", [x + dx * Math.sin(i / 9), y + dy * Math.sin(i / 7)]);
  for (let i = 1; i <= 20; i += 1) await to(i);
  const before = await counters();
  for (let i = 21; i <= 20 + moves; i += 1) await to(i);
  const after = await counters();
  await mouse("mouseReleased", [x, y]);
  return {
    spent: ((after.TaskDuration - before.TaskDuration) / moves) * 1000,
    layouts: (after.LayoutCount - before.LayoutCount) / moves,
  };
}

async function report(name, middle, size, allowed) {
  const found = [];
  for (let i = 0; i < rounds; i += 1) found.push(await drag(await middle(), size));
  const { spent, layouts } = found.toSorted((a, b) => a.spent - b.spent)[rounds >> 1];
  const over = allowed !== undefined && spent > allowed ? "  over" : "";
  const told = allowed === undefined ? "" : `   budget ${allowed} ms${over}`;
  console.log(
    `${name.padEnd(40)} ${spent.toFixed(2).padStart(8)} ms   ${layouts.toFixed(2)} layouts${told}`,
  );
}

async function middleOf(selector) {
  const { x, y, width, height } = await page.locator(selector).boundingBox();
  return [x + width / 2, y + height / 2];
}

await page.setContent('<svg width="800" height="600"><circle r="8"></circle></svg>');
await page.evaluate(() => {
  document.addEventListener("pointermove", ({ clientX, clientY }) =>
    document.querySelector("circle").setAttribute("transform", `translate(${clientX} ${clientY})`),
  );
});
await report("drag of a circle alone, a move", async () => [400, 300], [40, 40]);
await page.goto(`http://127.0.0.1:${server.httpServer.address().port}/#${bench}`);
await page.locator("triangle-plane svg").waitFor();
await page.waitForTimeout(500);
await report("drag of the point, all layers, a move", () => middleOf(".dot"), [40, 40], budget);
const slider = "reed-feature-row#wings input[type=range]";
await report("drag of a slider, all layers, a move", () => middleOf(slider), [30, 0], budget);
await browser.close();
await server.close();
