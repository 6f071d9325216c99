import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Locator, Page } from "playwright";
import { build, preview } from "vite";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** Builds the page that shows the section on lips and opening alone, and serves it. */
export async function serveLipPage(): Promise<{
  readonly url: string;
  readonly close: () => Promise<void>;
}> {
  const outDir = mkdtempSync(join(tmpdir(), "reedpoint-lip-"));
  await build({
    root,
    configFile: false,
    base: "./",
    logLevel: "warn",
    build: {
      outDir,
      emptyOutDir: true,
      target: "es2022",
      rolldownOptions: { input: `${root}tests/scenes/lip.html` },
    },
  });
  const server = await preview({
    root,
    configFile: false,
    logLevel: "warn",
    build: { outDir },
    preview: { host: "127.0.0.1", port: 0 },
  });
  const address = server.httpServer.address();
  if (address === null || typeof address === "string") {
    throw new Error(`lip page: the server has no port (${String(address)})`);
  }
  const close = async (): Promise<void> => {
    await server.close();
    rmSync(outDir, { recursive: true });
  };
  return { url: `http://127.0.0.1:${address.port}/tests/scenes/lip.html`, close };
}

/** The panel as a user handles it. */
export class LipPage {
  readonly page: Page;

  constructor(page: Page) {
    this.page = page;
  }

  async open(url: string, code = ""): Promise<void> {
    await this.page.goto(url + (code ? `#${code}` : ""));
    await this.page.locator("reed-lip-trade table").waitFor();
  }

  slider(name: string): Locator {
    return this.page.getByRole("slider", { name, exact: true });
  }

  async preset(name: string): Promise<void> {
    await this.page.getByRole("button", { name, exact: true }).click();
  }

  /** The number of a dial, as it is shown. */
  async dial(id: string): Promise<number> {
    return Number(await this.page.locator(`reed-lip-dials [data-dial=${id}] b`).innerText());
  }

  /** px: how wide the open part of the tip opening is drawn. */
  async openWidth(): Promise<number> {
    const box = await this.page.locator("reed-lip-opening svg.plot .hole").boundingBox();
    return box?.width ?? 0;
  }

  /** Width and height of the swinging part as it is drawn, px. */
  async swinging(): Promise<{ readonly width: number; readonly height: number }> {
    return (await this.page.locator("reed-lip-region .swings").boundingBox())!;
  }

  async tradeRows(): Promise<number> {
    return this.page.locator("reed-lip-trade tbody tr").count();
  }
}
