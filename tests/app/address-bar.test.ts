import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { AddressBar } from "../../src/app/address-bar.js";

beforeEach(() => {
  vi.useFakeTimers();
  vi.spyOn(console, "warn").mockImplementation(() => {});
});
afterEach(() => {
  vi.useRealTimers();
  vi.restoreAllMocks();
});

/** A window whose history refuses what `refuses` throws at. */
function page(refuses: (state: unknown) => void, origin = "https://example.org") {
  const location = { hash: "", href: "https://example.org/" };
  const written: unknown[] = [];
  const history = {
    state: null as unknown,
    replaceState(state: unknown, _: string, address: string) {
      refuses(state);
      written.push(state);
      history.state = state;
      location.hash = address;
    },
  };
  const fake = {
    location,
    history,
    origin,
    addEventListener: () => {},
    removeEventListener: () => {},
  };
  const bar = new AddressBar(fake as unknown as Window, {
    onOpened: () => {},
    onRevisited: () => {},
  });
  const tell = (code: string, beside: unknown = {}) => {
    bar.tell(() => ({ code, beside }));
    vi.advanceTimersByTime(200);
  };
  return { bar, written, location, tell };
}

const error = (name: string) => new DOMException("refused", name);

describe("the address", () => {
  test("is written when a drag rests, with what lies beside it", () => {
    const { tell, written, location } = page(() => {});
    tell("v=1&a", { readings: {} });
    expect([written, location.hash]).toEqual([
      [{ code: "v=1&a", beside: { readings: {} } }],
      "#v=1&a",
    ]);
  });

  test("that a browser refuses to change so often is written later, with what was told last", () => {
    let full = true;
    const { tell, written } = page(() => {
      if (full) throw error("SecurityError");
    });
    tell("v=1&a");
    tell("v=1&b");
    expect(written).toEqual([]);
    full = false;
    vi.advanceTimersByTime(30_000);
    expect(written).toMatchObject([{ code: "v=1&b" }]);
    vi.advanceTimersByTime(60_000);
    expect(written).toHaveLength(1);
  });

  test("is written without what lies beside it where a browser cannot copy that, and says so", () => {
    const { tell, written } = page((state) => {
      if ((state as { beside?: unknown }).beside !== undefined) throw error("DataCloneError");
    });
    tell("v=1&a", () => {});
    expect(written).toEqual([{ code: "v=1&a" }]);
    expect(console.warn).toHaveBeenCalledOnce();
  });

  test("of a page without an origin of its own is left alone, without a word", () => {
    const { tell, written } = page(() => {
      throw error("SecurityError");
    }, "null");
    tell("v=1&a");
    vi.advanceTimersByTime(60_000);
    expect(written).toEqual([]);
    expect(console.warn).not.toHaveBeenCalled();
  });
});
