import { describe, expect, test } from "vitest";
import { findPlatform } from "../../src/scorm/find-platform.js";

const api = { LMSInitialize: () => "true" };

/** A window under so many parents; the topmost is its own parent, as in a browser. */
function under(steps: number, top: Record<string, unknown>): Record<string, unknown> {
  top["parent"] ??= top;
  let view = top;
  for (let step = 0; step < steps; step += 1) view = { parent: view, top };
  return view;
}

/** A window of another origin: its parent may be asked for, everything else refuses. */
function foreign(parent: unknown): object {
  return new Proxy(
    {},
    {
      get: (_target, name) => {
        if (name === "parent") return parent;
        throw new DOMException(
          "Blocked a frame from accessing a cross-origin frame.",
          "SecurityError",
        );
      },
    },
  );
}

describe("a platform is found", () => {
  test("in the page's own window", () => {
    expect(findPlatform({ API: api } as object, "API")).toBe(api);
  });
  test.each([1, 2, 7])("%d windows up", (steps) => {
    expect(findPlatform(under(steps, { API: api }), "API")).toBe(api);
  });
  test("behind a window of another origin", () => {
    const top = under(0, { API: api });
    expect(findPlatform({ parent: foreign(top) }, "API")).toBe(api);
  });
  test("in the window that opened the page, or above it", () => {
    const page: Record<string, unknown> = { opener: under(2, { API: api }) };
    page["parent"] = page;
    expect(findPlatform(page, "API")).toBe(api);
  });
  test("in the window that opened the topmost one", () => {
    expect(findPlatform(under(2, { opener: { API: api } }), "API")).toBe(api);
  });
});

describe("none is found, without an error", () => {
  test("where there is none", () => {
    expect(findPlatform(under(3, {}), "API")).toBeUndefined();
  });
  test("where its name is that of another edition", () => {
    expect(findPlatform(under(1, { API: api }), "API_1484_11")).toBeUndefined();
  });
  test("where every window refuses, even its parent", () => {
    const closed = new Proxy(
      {},
      {
        get: () => {
          throw new Error("no");
        },
      },
    );
    expect(findPlatform({ parent: closed, opener: closed, top: closed }, "API")).toBeUndefined();
    expect(findPlatform(closed, "API")).toBeUndefined();
  });
  test("further up than the way is long", () => {
    expect(findPlatform(under(40, { API: api }), "API")).toBeUndefined();
  });
  test.each([null, "text", 1, true])("where something else stands there: %s", (thing) => {
    expect(findPlatform({ API: thing } as object, "API")).toBeUndefined();
  });
  test("where parents go in a circle", () => {
    const a: Record<string, unknown> = {};
    a["parent"] = { parent: a };
    expect(findPlatform(a, "API")).toBeUndefined();
  });
});
