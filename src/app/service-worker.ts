// Runs beside the pages of the app, in the browser: keeps the product's own files, as they were built, so that
// everything works without a connection. It keeps nothing that a person has entered.

/** Put in by the build: every file with its hash, and a name for all of them together. */
declare const BUILT: {
  readonly version: string;
  readonly files: readonly (readonly [path: string, integrity: string])[];
};

interface LongEvent extends Event {
  waitUntil(work: Promise<unknown>): void;
}

interface AskedEvent extends Event {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}

interface WorkerEvents {
  readonly install: LongEvent;
  readonly activate: LongEvent;
  readonly fetch: AskedEvent;
  readonly message: MessageEvent<unknown>;
}

/** What of a service worker's own world is used here. */
export interface WorkerScope {
  readonly registration: { readonly scope: string };
  readonly clients: { claim(): Promise<void> };
  skipWaiting(): Promise<void>;
  addEventListener<T extends keyof WorkerEvents>(
    type: T,
    on: (event: WorkerEvents[T]) => void,
  ): void;
}

const worker = self as unknown as WorkerScope;
const { scope } = worker.registration;
const { version, files } = BUILT;
const mine = `reedpoint ${scope} `;
const ours = mine + version;

/** A frame page is asked for with a question behind its address, and no host's `Vary` makes another file of one. */
const byPath = { ignoreSearch: true, ignoreVary: true };

async function keep(cache: Cache, [path, integrity]: readonly [string, string]): Promise<void> {
  const answer = await fetch(path, { cache: "no-cache", integrity });
  if (!answer.ok) throw new Error(`${path}: ${answer.status}`);
  // Made anew: a page may not be answered with something that its host has led elsewhere.
  await cache.put(path, new Response(answer.body, answer));
}

async function keepAll(): Promise<void> {
  const cache = await caches.open(ours);
  try {
    await Promise.all(files.map((file) => keep(cache, file)));
  } catch (cause) {
    // Half a version must not stand in for the one before it.
    await caches.delete(ours);
    throw cause;
  }
}

/** The version before stays as well: a page of it may still be open, and ask for a part that comes late. */
async function tidy(): Promise<void> {
  const others = (await caches.keys()).filter((one) => one.startsWith(mine) && one !== ours);
  await Promise.all(others.slice(0, -1).map((one) => caches.delete(one)));
  await worker.clients.claim();
}

async function answerTo(request: Request): Promise<Response> {
  const { pathname } = new URL(request.url);
  const wanted = pathname.endsWith("/") ? new URL("index.html", request.url) : request;
  const cache = await caches.open(ours);
  const kept = (await cache.match(wanted, byPath)) ?? (await caches.match(wanted, byPath));
  return kept ?? fetch(request);
}

worker.addEventListener("install", (event) => event.waitUntil(keepAll()));
worker.addEventListener("activate", (event) => event.waitUntil(tidy()));
worker.addEventListener("message", ({ data }) => {
  if (data === "take") void worker.skipWaiting();
});
worker.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method === "GET" && request.url.startsWith(scope))
    event.respondWith(answerTo(request));
});
