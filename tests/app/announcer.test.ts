import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { Announcer } from "../../src/app/announcer.js";

let said: string[] = [];
let announcer: Announcer;

beforeEach(() => {
  vi.useFakeTimers();
  said = [];
  announcer = new Announcer((words) => said.push(words), 500);
});
afterEach(() => {
  vi.useRealTimers();
});

test("of a movement only its last words are said, once it has rested", () => {
  for (const words of ["33 %", "34 %", "35 %"]) {
    announcer.later(() => words);
    vi.advanceTimersByTime(300);
  }
  expect(said).toEqual([]);
  vi.advanceTimersByTime(199);
  expect(said).toEqual([]);
  vi.advanceTimersByTime(1);
  expect(said).toEqual(["35 %"]);
});

test("an event is said at once, and a movement before it is forgotten", () => {
  announcer.later(() => "34 %");
  announcer.now("The link is copied.");
  expect(said).toEqual(["The link is copied."]);
  vi.advanceTimersByTime(5000);
  expect(said).toEqual(["The link is copied."]);
});

test("the same words are not said twice in a row, but again after others", () => {
  announcer.now("a");
  announcer.now("a");
  announcer.later(() => "a");
  vi.advanceTimersByTime(1000);
  expect(said).toEqual(["a"]);
  announcer.now("b");
  announcer.now("a");
  expect(said).toEqual(["a", "b", "a"]);
});

test("a state that stays is said once, and again when it is another, or asked for", () => {
  const move = (words: string, state: string) => announcer.now({ words, state });
  move("34, 33, 33.", "In the middle.");
  move("35, 33, 32.", "In the middle.");
  move("60, 20, 20.", "It leans.");
  announcer.now({ words: "", state: "It leans.", anyway: true });
  move("61, 20, 19.", "It leans.");
  expect(said).toEqual([
    "34, 33, 33. In the middle.",
    "35, 33, 32.",
    "60, 20, 20. It leans.",
    "It leans.",
    "61, 20, 19.",
  ]);
});

test("after a stop nothing is said any more", () => {
  announcer.later(() => "34 %");
  announcer.stop();
  vi.advanceTimersByTime(5000);
  expect(said).toEqual([]);
});

test("half a second is the usual rest", () => {
  const usual = new Announcer((words) => said.push(words));
  usual.later(() => "a");
  vi.advanceTimersByTime(499);
  expect(said).toEqual([]);
  vi.advanceTimersByTime(1);
  expect(said).toEqual(["a"]);
});
