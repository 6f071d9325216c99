// @vitest-environment jsdom
import { strFromU8, unzipSync } from "fflate";
import { describe, expect, test } from "vitest";
import type { Lesson } from "../../src/lesson/lesson.js";
import { lessonName, packageFiles, packageName, zipped } from "../../src/scorm/lesson-package.js";
import { lessonToPlay, type PackagedLesson } from "../../src/scorm/packaged-lesson.js";
import { xmlText } from "../../src/scorm/xml-text.js";
import { madeLesson } from "./made-lesson.js";
import { schemaProblems } from "./manifest-schemas.js";

const player = { script: "void 0;", style: "body {}" };
const editions = ["1.2", "2004"] as const;
const odd = "A <b> & \"c\" 'd' ]]> <!-- \u0007\ud800 \u{1F426} é \uFFFF</title><script>";
const shown = "A <b> & \"c\" 'd' ]]> <!--  \u{1F426} é </title><script>";
const titled = (title: string, file = "x.md"): Lesson => ({ ...madeLesson, title, file });

function manifestOf(lessons: readonly Lesson[], edition: "1.2" | "2004", mastery?: number) {
  const order = { edition, ...(mastery === undefined ? {} : { mastery }) };
  const files = packageFiles(lessons, order, player);
  const text = files["imsmanifest.xml"]!;
  return { files, text, tree: new DOMParser().parseFromString(text, "text/xml") };
}

function pageOf(files: Readonly<Record<string, string>>): Document {
  return new DOMParser().parseFromString(files["index.html"]!, "text/html");
}

describe.each(editions)("the manifest of SCORM %s", (edition) => {
  test.each([
    ["one lesson", [titled("One")], undefined],
    ["a pass mark", [titled("One")], 70],
    ["no pass at all", [titled("One")], 0],
    ["several lessons", [titled("One"), titled("Two"), titled("Three", "ü ß.md")], 100],
    ["any title", [titled(odd), titled(""), titled("&".repeat(500))], undefined],
  ])("keeps to the published schemas: %s", async (_name, lessons, mastery) => {
    expect(await schemaProblems(manifestOf(lessons, edition, mastery).text, edition)).toEqual([]);
  });

  test("the schemas refuse what is wrong", async () => {
    const { text } = manifestOf([titled("One")], edition, 70);
    const wrong = [
      text.replace(/<metadata>.*<\/metadata>/s, "").replace("<resources>", "<things>"),
      text.replace('identifier="shared"', 'identifier="1 2"'),
      text.replace('type="sco"', 'type="SCO"').replace('Type="sco"', 'Type="SCO"'),
    ];
    for (const one of wrong) expect(await schemaProblems(one, edition)).not.toEqual([]);
  });

  test("lists every file of the package but itself, once, by relative addresses", () => {
    const { files, tree } = manifestOf([titled("One"), titled("Two")], edition);
    const listed = [...tree.querySelectorAll("file")].map((one) => one.getAttribute("href")!);
    expect(listed.toSorted()).toEqual(
      Object.keys(files)
        .filter((name) => name !== "imsmanifest.xml")
        .toSorted(),
    );
    expect(listed.filter((href) => /^[a-z]+:|^[/\\]|\.\.|\\/.test(href))).toEqual([]);
    for (const page of tree.querySelectorAll("resource[href]"))
      expect(files).toHaveProperty([page.getAttribute("href")!]);
  });

  test("every item leads to a page of its own, in the order asked for", () => {
    const { files, tree } = manifestOf([titled("One"), titled("Two"), titled("Three")], edition);
    const items = [...tree.querySelectorAll("item")].map((item) => {
      const page = tree.querySelector(`[identifier="${item.getAttribute("identifierref")}"]`)!;
      return [item.querySelector("title")!.textContent, files[page.getAttribute("href")!]];
    });
    expect(items.map(([title]) => title)).toEqual(["One", "Two", "Three"]);
    for (const [title, page] of items) expect(page).toContain(`<title>${title}</title>`);
  });

  test("any title is told as it is, less what no XML can hold", () => {
    const { tree, files } = manifestOf([titled(odd)], edition);
    expect(tree.querySelector("item > title")!.textContent).toBe(shown);
    const page = pageOf(files);
    expect(page.querySelector("title")!.textContent).toBe(shown);
    expect(page.querySelectorAll("script")).toHaveLength(2);
    const data = page.querySelector("#lesson-data")!.textContent;
    expect((JSON.parse(data) as PackagedLesson).lesson.title).toBe(odd);
  });
});

test("a pass mark stands in the manifest in the words of each edition", () => {
  const first = manifestOf([titled("One")], "1.2", 70).tree;
  expect(first.getElementsByTagName("adlcp:masteryscore")[0]!.textContent).toBe("70");
  const second = manifestOf([titled("One")], "2004", 70).tree;
  expect(second.getElementsByTagName("imsss:minNormalizedMeasure")[0]!.textContent).toBe("0.7");
});

test("the zip holds these files and their text, with the manifest at its root", () => {
  const { files } = manifestOf([madeLesson], "1.2");
  const zip = unzipSync(zipped(files));
  const texts = Object.entries(zip).map(([name, bytes]) => [name, strFromU8(bytes)]);
  expect(Object.fromEntries(texts)).toEqual(files);
  expect(Object.keys(zip)[0]).toBe("imsmanifest.xml");
  expect(zipped(files)).toEqual(zipped(files));
});

test("notes, the author's places and the file's path stay at home", () => {
  const secret = { ...madeLesson, file: "/home/somebody/lessons/made.md" };
  const { files } = manifestOf([secret], "1.2");
  const whole = Object.values(files).join("\n");
  expect(madeLesson.steps[0]!.notes.join()).toContain("For the teacher alone");
  expect(whole).not.toMatch(/teacher alone|somebody|"column"/);
  const { steps } = lessonToPlay(secret);
  expect(steps.map(({ blocks }) => blocks.length)).toEqual(
    madeLesson.steps.map(({ blocks }) => blocks.length),
  );
});

test("a lesson is played as it was read", () => {
  const { files } = manifestOf([madeLesson], "2004", 60);
  const page = pageOf(files);
  const data = JSON.parse(page.querySelector("#lesson-data")!.textContent) as PackagedLesson;
  expect(data).toEqual({ lesson: lessonToPlay(madeLesson), edition: "2004", mastery: 60 });
});

test.each([
  ["lessons/en/06-shape.md", "06-shape"],
  ["C:\\lessons\\Mein Stück.MD", "mein-stuck"],
  ["", "every-kind-sort"],
  ["日本.md", "every-kind-sort"],
])("a lesson in %s is called %s", (file, name) => {
  expect(lessonName({ file, title: 'Every <kind> & "sort"' })).toBe(name);
});

test("packages are named after what is in them", () => {
  const [one, two] = [titled("A", "a.md"), titled("B", "b.md")];
  expect(packageName([one], "1.2")).toBe("a-scorm-1.2.zip");
  expect(packageName([one, two, two], "2004")).toBe("a-and-2-more-scorm-2004.zip");
  expect(Object.keys(packageFiles([two, two], { edition: "1.2" }, player))).toContain("b-2.html");
});

test.each([101, -1, 0.5, NaN])("a pass mark of %d is refused", (mastery) => {
  expect(() => packageFiles([madeLesson], { edition: "1.2", mastery }, player)).toThrow(
    /mastery is .*; allowed: whole per cents, 0 to 100/,
  );
});

test("no lesson is no package", () => {
  expect(() => packageFiles([], { edition: "1.2" }, player)).toThrow(/no lesson; allowed/);
});

test("text of any kind is text of XML", () => {
  expect(xmlText("a\tb\n<&>\"'\u0000\u000b\ud800\ufffe\u{10ffff}")).toBe(
    "a&#9;b&#10;&lt;&amp;&gt;&quot;&apos;\u{10ffff}",
  );
});
