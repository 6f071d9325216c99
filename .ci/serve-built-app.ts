import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { preview } from "vite";
import type { TestProject } from "vitest/node";
import { findChromium } from "./find-chromium.mjs";

declare module "vitest" {
  interface ProvidedContext {
    /** Where the built app is served during the browser tests, with a slash at the end. */
    appUrl: string;
  }
}

const root = fileURLToPath(new URL("..", import.meta.url));

/** Serves the built app for the browser tests and tells them where. */
export default async function serveBuiltApp(project: TestProject): Promise<() => Promise<void>> {
  if (findChromium() === undefined) {
    console.log("No Chromium found: the browser tests count as skipped.");
  }
  if (!existsSync(`${root}dist/index.html`)) {
    throw new Error("browser tests: dist/index.html is missing; run `npm run build` first");
  }
  const server = await preview({
    root,
    configFile: false,
    logLevel: "warn",
    preview: { host: "127.0.0.1", port: 0 },
  });
  const address = server.httpServer.address();
  if (address === null || typeof address === "string") {
    throw new Error(`browser tests: the server has no port (${String(address)})`);
  }
  project.provide("appUrl", `http://127.0.0.1:${address.port}/`);
  return () => server.close();
}
