import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parseLesson } from "../../src/lib/lesson.js";
import { proseHtml } from "../../src/lesson/prose.js";
import { bassoonModel } from "../../src/reed/bassoon.js";

// What the Markdown library makes on its own; anything else came from the author.
const elements = /^(?:p|em|strong|a|ul|ol|li|blockquote|code|pre|h[1-6]|br|hr)$/;
const attributes =
  /^(?: (?:href="(?:https?:\/\/|mailto:)[^"<>]*"|title="[^"<>]*"|class="language-[^"<>]*"|start="\d+"))*(?: ?\/)?$/i;

/** Everything in a piece of HTML that is not the library's own. */
function strangers(html: string): string[] {
  const tags = html.match(/<[^>]*>?/g) ?? [];
  return tags.filter((tag) => {
    const [, name = "", rest = ""] = /^<\/?([a-z0-9]+)([^>]*)>$/.exec(tag) ?? [];
    return !elements.test(name) || !attributes.test(rest);
  });
}

const hostile: readonly string[] = [
  "<script>alert(1)</script>",
  "a <script>alert(1)</script> b",
  "<img src=x onerror=alert(1)>",
  "<svg/onload=alert(1)>",
  '<iframe src="javascript:alert(1)"></iframe>',
  "<!-- --><script>alert(1)</script>",
  "<?php echo 1 ?><![CDATA[<script>]]>",
  "<a href='javascript:alert(1)'>x</a>",
  "[x](javascript:alert(1))",
  "[x](JaVaScRiPt:alert(1))",
  "[x](java&#115;cript:alert(1))",
  "[x](&#x6A;avascript:alert(1))",
  "[x](java\\script:alert(1))",
  "[x](<javascript:alert(1)>)",
  "[x](\tjavascript:alert(1))",
  "[x](javascript&colon;alert(1))",
  "[x](vbscript:alert(1))",
  "[x](data:text/html;base64,PHNjcmlwdD4=)",
  "[x](file:///etc/passwd)",
  "[x](//example.org/a)",
  "[x](a.html)",
  "<javascript:alert(1)>",
  "<data:text/html,x>",
  "[x][y]\n\n[y]: javascript:alert(1)",
  "[y]\n\n[y]: data:text/html,x 'title\" onclick=\"alert(1)'",
  '[x](https://example.org "a\\" onclick=\\"alert(1)")',
  "![x](javascript:alert(1))",
  "![x](https://example.org/a.png)",
  '![" onerror="alert(1)](x)',
  "![x][y]\n\n[y]: https://example.org/a.png",
  '```" onclick="alert(1)\n<script>\n```',
  "`<script>`",
  "&lt;script&gt;alert(1)&lt;/script&gt;",
  "<scr<script>ipt>alert(1)</script>",
];

describe("what could do harm never comes out of prose", () => {
  test.each(hostile)("%s", (text) => {
    const html = proseHtml(text);
    expect(strangers(html)).toEqual([]);
    expect(html).not.toMatch(/href="(?!https?:|mailto:)/i);
  });

  test("nor out of a lesson, in prose or notes", () => {
    const text = `---\ntitle: A\nminutes: 2\n---\n## A\n${hostile.join("\n\n")}\n\n:::notes\n${hostile.join("\n\n")}\n:::\n`;
    const { lesson } = parseLesson(text, { file: "a.md", model: bassoonModel });
    const pieces = lesson!.steps.flatMap(({ blocks, notes }) => [
      ...blocks.flatMap((block) => (block.kind === "prose" ? [block.html] : [])),
      ...notes,
    ]);
    expect(pieces.length).toBeGreaterThan(0);
    expect(pieces.flatMap(strangers)).toEqual([]);
  });

  test("whatever it is made of", () => {
    const bits = fc.constantFrom(
      ...hostile.flatMap((text) => text.match(/.{1,6}/gs) ?? []),
      "<",
      ">",
      '"',
      "'",
      "(",
      ")",
      "[",
      "]",
      "!",
      ":",
      "&",
      "\\",
      "`",
      "\n",
      " ",
      "on",
    );
    fc.assert(
      fc.property(fc.array(bits, { maxLength: 25 }), (some) => {
        expect(strangers(proseHtml(some.join("")))).toEqual([]);
      }),
      { seed: 3, numRuns: 2000 },
    );
  });

  test("the guard itself sees what it is to see", () => {
    for (const tag of [
      "<script>",
      "<img src=x>",
      '<a href="javascript:x">',
      '<p onclick="x">',
      '<a href="x">',
      "<p",
    ])
      expect(strangers(tag)).toEqual([tag]);
  });
});

test.each([
  ["*tip* and **heart**", "<p><em>tip</em> and <strong>heart</strong></p>"],
  ["- a\n- b", "<ul>\n<li>a</li>\n<li>b</li>\n</ul>"],
  ["[x](https://example.org)", '<p><a href="https://example.org">x</a></p>'],
  ["[x](mailto:a@example.org)", '<p><a href="mailto:a@example.org">x</a></p>'],
  ["[x](javascript:alert(1))", "<p><a>x</a></p>"],
])("%s is %s", (text, html) => {
  expect(proseHtml(text)).toBe(html);
});
