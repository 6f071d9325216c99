import { afterEach, expect, test, vi } from "vitest";
import { frameElement } from "../../src/embed/frame-element.js";

afterEach(() => void vi.restoreAllMocks());

test.each([
  ["triangle", "plan", "reed-triangle"],
  [null, "plan", "reed-plan"],
  [null, "lessons", "reed-bench"],
])("show=%s on the page %s is <%s>", (show, page, tag) => {
  expect(frameElement(show, page)).toBe(tag);
});

test.each(["__proto__", "toString", "constructor", "moon", ""])(
  "show=%s is told, and the page of the state is shown",
  (show) => {
    const warn = vi.spyOn(console, "warn").mockImplementation(() => {});
    expect(frameElement(show, "lip")).toBe("reed-lip");
    expect(warn).toHaveBeenCalledOnce();
  },
);
