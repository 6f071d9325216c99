import { describe, expect, test } from "vitest";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { decodeBench, encodeBench, newBench, pageNames } from "../../src/reed/bench.js";
import { isShortAddress, routeKey } from "../../src/reed/route.js";

describe("a short address", () => {
  test.each(pageNames)("page=%s opens that page", (page) => {
    const { bench, problems } = decodeBench(`#page=${page}`, bassoonModel);
    expect({ bench, problems }).toEqual({
      bench: { ...newBench(bassoonModel), page },
      problems: [],
    });
  });

  test("of a lesson opens it at its step, on the page of lessons", () => {
    const { bench, problems } = decodeBench("lesson=06-shape.2", bassoonModel);
    expect(bench).toMatchObject({ page: "lessons", lesson: { id: "06-shape", step: 1 } });
    expect(problems).toEqual([]);
  });

  test("tells what it does not know, as a link does", () => {
    expect(decodeBench("page=kitchen", bassoonModel).problems).toHaveLength(1);
    expect(decodeBench("lesson=06-shape.0", bassoonModel).problems).toHaveLength(1);
  });

  test("is not a link, whatever a link names besides", () => {
    expect(isShortAddress(encodeBench(newBench(bassoonModel), bassoonModel))).toBe(false);
    expect(isShortAddress("page=bench&reed=Heron")).toBe(false);
    expect(isShortAddress("")).toBe(false);
    expect(decodeBench("page=bench&reed=Heron", bassoonModel).problems).toHaveLength(1);
  });
});

test("two places have one key only when page, lesson and step are the same", () => {
  const lesson = { id: "06-shape", step: 1 };
  const keys = [
    routeKey({ page: "bench" }),
    routeKey({ page: "plan" }),
    routeKey({ page: "lessons" }),
    routeKey({ page: "lessons", lesson }),
    routeKey({ page: "lessons", lesson: { ...lesson, step: 2 } }),
  ];
  expect(new Set(keys).size).toBe(keys.length);
  // A lesson that is open on another page is not in sight there.
  expect(routeKey({ page: "bench", lesson })).toBe(routeKey({ page: "bench" }));
});
