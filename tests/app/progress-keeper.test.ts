import * as fake from "fake-indexeddb";
import { beforeEach, expect, test, vi } from "vitest";
import { makeStore } from "../../src/app/device-store.js";
import { ProgressKeeper } from "../../src/app/progress-keeper.js";
import { mergedProgress } from "../../src/lesson/merged-progress.js";
import { noProgress, type Progress } from "../../src/lesson/progress.js";
import { progressText, readProgress } from "../../src/lesson/progress-file.js";

const answered = { step: 1, exercises: { "0.1": { locked: true, hints: 0, tries: 1 } }, day: 5 };
const before: Progress = { runs: { "01-parts": answered, "06-shape": answered } };

/** A page with its progress, as the lessons' page owns it. */
function page() {
  let progress = noProgress;
  const ended: string[] = [];
  const host = { addController() {}, removeController() {}, requestUpdate() {} };
  const keeper = new ProgressKeeper(
    { ...host, updateComplete: Promise.resolve(true) },
    {
      onFound: (kept) => (progress = mergedProgress(progress, kept)),
      onEnded: (why) => ended.push(why),
    },
  );
  return {
    keeper,
    ended,
    get progress() {
      return progress;
    },
    async work(next: Progress) {
      progress = next;
      await keeper.tell(next);
    },
    async wish(wish: Parameters<ProgressKeeper["fulfil"]>[0]) {
      ({ progress } = await keeper.fulfil(wish, progress));
      await keeper.tell(progress);
    },
  };
}

const opened = async () => {
  const one = page();
  one.keeper.hostConnected();
  await vi.waitFor(() => expect(one.keeper.keeping).toBe("device"));
  await vi.waitFor(() => expect(one.progress).not.toBe(noProgress));
  return one;
};

beforeEach(() => {
  Object.assign(globalThis, fake, { indexedDB: new fake.IDBFactory() });
});

test("a file that was saved before an erasure comes back whole, and is kept", async () => {
  const one = page();
  await one.work(before);
  await one.wish({ kind: "keep", on: true });
  const file = progressText(one.progress);
  await one.wish({ kind: "erase" });
  expect(one.progress.runs).toEqual({});
  await one.wish({ kind: "take", progress: readProgress(file, "mine.json").progress });
  expect(one.progress.runs).toEqual(before.runs);
  expect((await opened()).progress.runs).toEqual(before.runs);
});

test("an erasure reaches another page, and what that one still holds does not come back", async () => {
  const one = page();
  await one.work(before);
  await one.wish({ kind: "keep", on: true });
  const other = await opened();
  expect(other.progress.runs).toEqual(before.runs);
  await one.wish({ kind: "erase" });
  await vi.waitFor(() => expect(other.progress.runs).toEqual({}), { timeout: 3000 });
  await other.work(mergedProgress(other.progress, before));
  await one.wish({ kind: "take", progress: { runs: { "02-sound": answered } } });
  await other.work({
    ...other.progress,
    runs: { ...other.progress.runs, "03-purposes": answered },
  });
  expect(Object.keys((await opened()).progress.runs).toSorted()).toEqual([
    "02-sound",
    "03-purposes",
  ]);
});

test("a clock that was set back does not bring back what was erased", async () => {
  const one = page();
  await one.work({ ...before, born: Date.now() + 1e6 });
  await one.wish({ kind: "keep", on: true });
  const held = one.progress;
  await one.wish({ kind: "erase" });
  expect(mergedProgress(one.progress, held).runs).toEqual({});
});

test("what the owner of the store does wrong is no refusal of the browser's", async () => {
  const refused = vi.fn<() => void>();
  const store = await makeStore({ onErased: () => {}, onRefused: refused });
  await store.change("a", () => 1);
  const wrong = () => {
    throw new TypeError("the owner's");
  };
  await expect(store.change("a", wrong)).rejects.toThrow("the owner's");
  expect(refused).not.toHaveBeenCalled();
  expect(store.isLasting).toBe(true);
  await store.change("a", (kept) => Number(kept) + 1);
  expect(await store.read("a")).toBe(2);
});

test("where the browser refuses, the cause is told on the console", async () => {
  const warned = vi.spyOn(console, "warn").mockImplementation(() => {});
  vi.spyOn(indexedDB, "open").mockImplementation(() => {
    throw new DOMException("full", "QuotaExceededError");
  });
  const store = await makeStore({ onErased: () => {}, onRefused: () => {} });
  expect(store.isLasting).toBe(false);
  expect(String(warned.mock.calls[0]?.[1])).toContain("full");
  warned.mockRestore();
});
