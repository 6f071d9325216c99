// Renews the picture in the README from the built app: `npm run picture`.
import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { spawnSync } from "node:child_process";
import { chromium } from "playwright";
import { preview } from "vite";
import { findChromium } from "./find-chromium.mjs";

const root = fileURLToPath(new URL("..", import.meta.url));
// Heron, an invented demo reed, with its reading lines.
const bench =
  "v=1&model=bassoon&reed=Heron&values=26700.14400.8400.770.960.470.210.580.380.120.110.600.1200.11600" +
  "&finished=1&layers=certainty.readingLines";

const executablePath = findChromium();
if (executablePath === undefined) {
  console.error(
    "picture: no Chromium found; install Debian's package chromium or set REEDPOINT_CHROMIUM.",
  );
  process.exit(1);
}
if (!existsSync(`${root}dist/index.html`)) {
  const { status } = spawnSync("npm", ["run", "build"], { cwd: root, stdio: "inherit" });
  if (status !== 0) process.exit(1);
}
const server = await preview({
  root,
  configFile: false,
  logLevel: "warn",
  preview: { host: "127.0.0.1", port: 0 },
});
const browser = await chromium.launch({ executablePath, args: ["--no-sandbox", "--disable-gpu"] });
const page = await browser.newPage({ viewport: { width: 1440, height: 1000 } });
await page.goto(`http://127.0.0.1:${server.httpServer.address().port}/#${bench}`);
await page.locator("triangle-plane svg").waitFor();
await page.screenshot({ path: `${root}.readme/bench.png` });
await browser.close();
await server.close();
console.log("Renewed .readme/bench.png.");
