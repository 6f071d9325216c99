// @vitest-environment jsdom
import { expect, test, vi } from "vitest";
import { NoticeBar } from "../../src/app/notice-bar.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { decodeBench } from "../../src/reed/bench.js";
import { define } from "../../src/widgets/define.js";

define("notice-bar", NoticeBar);

test("more problems than anybody reads are counted", async () => {
  const names = Array.from({ length: 900 }, (_, i) => `x${i}`).join(".");
  const { problems } = decodeBench(`v=1&model=bassoon&locked=${names}`, bassoonModel);
  const bar = Object.assign(document.createElement("notice-bar") as NoticeBar, {
    words: "Part of the link could not be read:",
    details: problems,
  });
  document.body.append(bar);
  await bar.updateComplete;
  const lines = [...bar.shadowRoot!.querySelectorAll("ul li")];
  expect(lines).toHaveLength(51);
  expect(lines[50]!.textContent).toBe(`… and ${problems.length - 50} more.`);
});

test("many problems are a list of their own, and each is short", async () => {
  const long = "x".repeat(5000);
  const fields = ["unit", "target", "layers", "locked", "page", "wet", "aim", "lesson", "values"];
  const code = `v=1&model=bassoon&${fields.map((field) => `${field}=${long}`).join("&")}`;
  const { problems } = decodeBench(code, bassoonModel);
  expect(problems.length).toBeGreaterThanOrEqual(fields.length);
  for (const problem of problems) expect(problem).not.toContain("x".repeat(60));
  const bar = document.createElement("notice-bar") as NoticeBar;
  Object.assign(bar, { words: "Part of the link could not be read:", details: problems });
  document.body.append(bar);
  await bar.updateComplete;
  expect(bar.shadowRoot!.querySelectorAll("ul li")).toHaveLength(problems.length);
  const closed = vi.fn<() => void>();
  bar.addEventListener("notice-closed", closed);
  bar.shadowRoot!.querySelector<HTMLButtonElement>("button.close")!.click();
  expect(closed).toHaveBeenCalledOnce();
});
