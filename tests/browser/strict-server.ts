import { readFileSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join, normalize } from "node:path";
import { dist } from "./built-sizes.js";

/** The strictest policy under which everything works. */
export const strictPolicy =
  "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; font-src 'self'; " +
  "connect-src 'self'; frame-src 'self'; worker-src 'self'; manifest-src 'self'; require-trusted-types-for 'script'";

/** What a page needs that holds elements and nothing else. */
export const elementsPolicy =
  "default-src 'none'; script-src 'self'; style-src 'self'; require-trusted-types-for 'script'";

const types: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json",
};

/** Serves the built files under a policy, in any folder of the site, and pages of the test's own beside them. */
export async function serveStrictly(
  policy: string,
  pages: Readonly<Record<string, string>> = {},
  under = "/",
) {
  const served = { files: dist };
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url!, "http://here");
    const path = normalize(pathname)
      .replace(under, "")
      .replace(/^$|\/$/, "index.html");
    response.setHeader("content-security-policy", policy);
    response.setHeader("content-type", types[extname(path)] ?? "application/octet-stream");
    try {
      response.end(pages[path] ?? readFileSync(join(served.files, path)));
    } catch {
      response.statusCode = 404;
      response.end();
    }
  });
  await new Promise<void>((done) => {
    server.listen(0, "127.0.0.1", done);
  });
  return {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}${under}`,
    /** From now on other files are served. */
    serve: (files: string) => (served.files = files),
    close: () => {
      server.close();
      server.closeAllConnections();
    },
  };
}
