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
    return told(now, action, english);
  });
}

describe("what a screen reader hears", () => {
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

  test("of something by hand that is tried where it leads, shortly; what is kept is read where the focus goes", () => {
    const request = { feature: "bladeLength", change: -0.6, mode: "instead" } as const;
    const asked = reduce(bittern, { type: "stand-ins-asked", request });
    const [offer] = standInList(asked, english)!.hands;
    const [tried, kept] = heard(
      asked,
      { type: "stand-in-tried", what: `hand ${offer!.id}`, changes: offer!.changes },
      { type: "trial-kept", hand: offer!.hand },
    );
    expect(tried).toMatch(
      /^Being tried\. \d+% high register, \d+% soft and low, \d+% full volume\.$/,
    );
    expect(kept).toBe("");
  });

  test("of a feature that is kept only that", () => {
    const request = { feature: "bladeLength", change: -0.6, mode: "instead" } as const;
    const said = heard(
      bittern,
      { type: "stand-ins-asked", request },
      {
        type: "stand-in-tried",
        what: "feature tip",
        changes: [{ feature: "tip", change: 0.01 }],
      },
      { type: "trial-kept" },
    );
    expect(said[2]).toBe("Kept.");
  });
});
