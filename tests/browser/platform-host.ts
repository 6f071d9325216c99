import { readFileSync } from "node:fs";
import { createServer } from "node:http";
import { createRequire } from "node:module";
import type { AddressInfo } from "node:net";
import { extname } from "node:path";
import type { Page } from "playwright";
import type { SpiedCall } from "../scorm/strict-platform.js";
import type { Edition } from "../tables/scorm-data-types.js";
import { strictPolicy } from "./strict-server.js";

const require = createRequire(import.meta.url);
const peers: Readonly<Record<Edition, string>> = {
  "1.2": readFileSync(require.resolve("scorm-again/scorm12/min"), "utf8"),
  "2004": readFileSync(require.resolve("scorm-again/scorm2004/min"), "utf8"),
};

/** What the page of the platform offers the tests. */
export interface HostWindow extends Window {
  /** Every call of this sitting, in its order. */
  calls: SpiedCall[];
  /** A new sitting; the platform remembers the one before. */
  begin: () => void;
  /** What the platform keeps of a lesson. */
  kept: () => { suspend_data: string };
}

/** Runs in the platform's page: the runtime that others wrote, with a spy before it that forbids nothing. */
function hostScript(edition: string): void {
  const [api, peer, lastError, calls] =
    edition === "1.2"
      ? ([
          "API",
          "Scorm12API",
          "LMSGetLastError",
          "LMSInitialize LMSFinish LMSGetValue LMSSetValue LMSCommit",
        ] as const)
      : ([
          "API_1484_11",
          "Scorm2004API",
          "GetLastError",
          "Initialize Terminate GetValue SetValue Commit",
        ] as const);
  type Peer = Record<string, (...words: unknown[]) => unknown> & { cmi: object };
  const view = window as unknown as Record<string, unknown>;
  const PeerClass = view[peer] as new (settings: object) => Peer;
  let now: Peer | undefined;
  const kept = (): unknown => now && JSON.parse(JSON.stringify(now.cmi));
  const begin = (): void => {
    const before = kept();
    now = new PeerClass({ autocommit: false, logLevel: 5 });
    if (before) now["loadFromJSON"]!(before, "cmi");
    const noted: unknown[] = [];
    const own = now;
    view["calls"] = noted;
    view[api] = Object.fromEntries(
      calls.split(" ").map((call) => [
        call,
        (...words: unknown[]) => {
          const answer = String(own[call]!(...words));
          noted.push({ call, words, answer, error: String(own[lastError]!()) });
          return answer;
        },
      ]),
    );
  };
  Object.assign(window, { begin, kept });
  begin();
}

const types: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
};

/**
 * A platform at `/host.html` with the files of a package under `/package/`, these under the strict policy. Nothing on
 * either page may listen to `unload`.
 */
export async function servePlatform(edition: Edition, files: Readonly<Record<string, string>>) {
  const pages: Record<string, string> = {
    "/host.html":
      '<!doctype html><html lang="en"><head><title>Platform</title><link rel="icon" href="data:," /></head><body><script src="peer.js"></script><script src="host.js"></script></body></html>',
    "/peer.js": peers[edition],
    "/host.js": `(${hostScript.toString()})(${JSON.stringify(edition)})`,
  };
  const asked: string[] = [];
  const server = createServer((request, response) => {
    const path = new URL(request.url!, "http://here").pathname;
    const name = path.replace(/^\/package\//, "");
    asked.push(path);
    response.setHeader("content-type", types[extname(path)] ?? "text/plain");
    response.setHeader("permissions-policy", "unload=()");
    if (name !== path) response.setHeader("content-security-policy", strictPolicy);
    const text = name === path ? pages[path] : files[name];
    response.statusCode = text === undefined ? 404 : 200;
    response.end(text);
  });
  await new Promise<void>((done) => {
    server.listen(0, "127.0.0.1", done);
  });
  const url = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
  return { url, asked, close: () => server.close() };
}

/** The calls of this sitting. */
export function callsOf(page: Page): Promise<SpiedCall[]> {
  return page.evaluate(() => (window as unknown as HostWindow).calls);
}

/** Puts a page of the package into a frame of the platform's page; `from` is another server's address. */
export async function openInFrame(page: Page, file: string, from = ""): Promise<void> {
  await page.evaluate((address) => {
    const frame = document.createElement("iframe");
    Object.assign(frame, { src: address, title: "Lesson", width: 800, height: 900 });
    document.body.append(frame);
  }, `${from}package/${file}`);
  await page.frameLocator("iframe").locator("platform-lesson lesson-step h2").waitFor();
}
