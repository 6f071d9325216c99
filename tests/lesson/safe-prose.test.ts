import fc from "fast-check";
import { expect, test } from "vitest";
import { proseHtml } from "../../src/lesson/prose.js";
import { safeProse } from "../../src/lesson/safe-prose.js";

test.each([
  "A *tip* and **heart**, `code`.\n\n1. a\n2. b\n\n> quote\n\n---\n\n# Head",
  '[web](https://example.org/?a=1&b=2 "A title") and <mailto:a@example.org>',
  "3. begins at three\n\n- one\n  - two\n\n\tcode <b> here\n\n[dead](javascript:alert(1))",
  "hard  \nbreak\n\n~~~js\nlet a = 1 < 2;\n~~~",
])("what Markdown was made into comes back as it was: %j", (markdown) => {
  const html = proseHtml(markdown);
  expect(safeProse(html)).toBe(html);
});

test.each([
  "<img src=x onerror=alert(1)>",
  "<p onclick=alert(1)>a</p>",
  "<script>alert(1)</script>",
  "<svg/onload=alert(1)>",
  '<a href="javascript:alert(1)">a</a>',
  '<a href="https://example.org" onclick="alert(1)">a</a>',
  "<a href='https://example.org'>a</a>",
  '<p style="position:fixed">a</p>',
  "<!-- <p> --><iframe>",
  "<p\n>a",
])("what was not is text: %s", (html) => {
  expect(safeProse(html)).toContain("&lt;");
  expect(safeProse(html)).not.toMatch(
    /<(?:img|script|svg|iframe|!|p[^>]|a [^>]*(?:javascript|onclick|'))/,
  );
});

test("nothing but whole tags of prose is left, whatever the text", () => {
  const piece = fc.constantFrom(
    "<",
    ">",
    "<p",
    "<p>",
    "<a href=",
    '"',
    "https://",
    "<script",
    " onerror=",
    "/",
    "<code",
    "=",
    "a",
  );
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 20 }), (pieces) => {
      const left = safeProse(pieces.join("")).replace(
        /<\/?(?:p|a|code)>|<a href="https:\/\/[^"<>]*">/g,
        "",
      );
      expect(left).not.toContain("<");
    }),
    { seed: 12, numRuns: 1000 },
  );
});
