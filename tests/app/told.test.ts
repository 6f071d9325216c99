import { describe, expect, test } from "vitest";
import {
  reduce,
  startState,
  type BenchAction,
  type BenchState,
} from "../../src/app/bench-state.js";
import { standInList } from "../../src/app/stand-in-list.js";
import { told } from "../../src/app/told.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { english } from "../../src/reed/catalogue.js";
import { demoReeds } from "../../src/reed/demo-reeds.js";

const { reed, readings } = demoReeds.find((one) => one.reed === "Bittern")!;
const start = startState(bassoonModel);
const bittern = reduce(start, { type: "reed-loaded", reed, values: readings });
/** What is heard of each action in turn. */
function heard(state: BenchState, ...actions: readonly BenchAction[]): string[] {
  let now = state;
  return actions.map((action) => {
    now = reduce(now, action);
    const said = told(now, action, english);
    return typeof said === "string" ? said : [said.words, said.state].filter(Boolean).join(" ");
  });
}

describe("what a screen reader hears", () => {
  test.each<BenchAction>([
    { type: "value-set", feature: "spine", value: 0.6, gesture: "keys" },
    { type: "point-moved", target: [0.4, 0.3, 0.3], gesture: "keys" },
  ])(
    "of a move by $type: where the point is, in shares that sum to 100, then the sentence",
    (action) => {
      const said = told(reduce(bittern, action), action, english);
      expect(said).toMatchObject({ state: expect.stringContaining("reed") });
      const shares = [...(said as { words: string }).words.matchAll(/\d+(?=%)/g)].map(Number);
      expect(shares.reduce((sum, one) => sum + one, 0)).toBe(100);
    },
  );

  test("of undo and redo: that it was done, how many are left, and what is now; never the same twice in a row", () => {
    const lock = (feature: string): BenchAction => ({ type: "lock-set", feature, locked: true });
    const said = heard(
      bittern,
      { type: "target-set", target: "everyday" },
      lock("tip"),
      lock("heart"),
      { type: "undo" },
      { type: "undo" },
      { type: "redo" },
    ).slice(3);
    expect(said[0]).toMatch(/^Undone; 3 before it\. For everyday rehearsal it needs above all /);
    expect(said[1]).toMatch(/^Undone; 2 before it\. /);
    expect(said[2]).toMatch(/^Done again; 1 after it\. /);
    const [first] = heard(bittern, { type: "undo" });
    expect(first).toMatch(/^Undone; nothing before it\. This is an all-round reed/);
  });

  test("of a quality that is judged otherwise: its value here and in the middle", () => {
    const values = [1, 2, 3, 4, 5, 6, 7] as const;
    const judge = (own: typeof values | undefined): BenchAction => ({
      type: "quality-judged",
      quality: "loudest",
      values: own,
    });
    const [own, back] = heard(bittern, judge(values), judge(undefined));
    expect(own).toMatch(
      /^How loudly: your own judgement now\. At this reed \d\.\d of 10\. At the all-round reed 7\.0 of 10\.$/,
    );
    expect(back).toMatch(/^How loudly: judged as it came\. At this reed /);
  });

  test("of something by hand that is tried where it leads, shortly", () => {
    const request = { feature: "bladeLength", change: -0.6, mode: "instead" } as const;
    const asked = reduce(bittern, { type: "stand-ins-asked", request });
    const [offer] = standInList(asked, english)!.hands;
    const [tried, back] = heard(
      asked,
      { type: "stand-in-tried", what: `hand ${offer!.id}`, changes: offer!.changes },
      { type: "trial-ended" },
    );
    expect(tried).toMatch(
      /^Being tried\. [^%]+ \d+% high register, \d+% soft and low, \d+% full volume\.$/,
    );
    expect(back).toBe(english.planPage.standIns.nowBack);
  });

  test("of tries that are left: that the reed is as given, or as measured", () => {
    const slide: BenchAction = { type: "value-set", feature: "spine", value: 0.6, gesture: "a" };
    const [, given] = heard(bittern, slide, { type: "as-measured" });
    expect(given).toBe("Nothing is tried: the reed is as given.");
    const own = { type: "readings-taken", reed: "Sedge", fresh: true, readings: { spine: [0.5] } };
    const [, , measured] = heard(bittern, own as BenchAction, slide, { type: "as-measured" });
    expect(measured).toBe("Nothing is tried: the reed is as measured.");
  });
});
