import { describe, expect, test } from "vitest";
import type { Blend, Values } from "../../src/lib/engine.js";
import { compileModel, finishingFreedom, solveFor } from "../../src/lib/engine.js";
import { mixedReed } from "../engine/mixed-reeds.js";
import { between, seeded, type Random } from "../engine/random-model.js";
import type { AimBlock, OrderBlock, PredictBlock, StandInBlock } from "../../src/lesson/lesson.js";
import { markAnswer, type Marker } from "../../src/lesson/mark-answer.js";
import { markPredict } from "../../src/lesson/mark-predict.js";
import { markRead } from "../../src/lesson/mark-read.js";
import { markRecipe } from "../../src/lesson/mark-recipe.js";
import { bassoonActions, bassoonModel } from "../../src/reed/bassoon.js";
import { demoReeds } from "../../src/reed/demo-reeds.js";

const map = compileModel(bassoonModel);
const marker: Marker = { lesson: {}, map, actions: bassoonActions };
const rounds = 200;

/** The normal equations of mixing three corner reeds, solved by elimination: another way to the place than the engine's. */
function placeByMixing(values: Values): Blend {
  const rows = bassoonModel.features.map(({ id, corners, weight }) => {
    const ends = [corners.high, corners.low, corners.loud];
    const spread = (Math.max(...ends) - Math.min(...ends)) / 2;
    // loud = 1 − high − low, so two unknowns are left.
    const scale = Math.sqrt(weight) / spread;
    return [
      (corners.high - corners.loud) * scale,
      (corners.low - corners.loud) * scale,
      (values[id]! - corners.loud) * scale,
    ] as const;
  });
  const sum = (i: 0 | 1 | 2, j: 0 | 1 | 2): number =>
    rows.reduce((total, row) => total + row[i] * row[j], 0);
  const determinant = sum(0, 0) * sum(1, 1) - sum(0, 1) ** 2;
  const high = (sum(0, 2) * sum(1, 1) - sum(1, 2) * sum(0, 1)) / determinant;
  const low = (sum(1, 2) * sum(0, 0) - sum(0, 2) * sum(0, 1)) / determinant;
  return [high, low, 1 - high - low];
}

const apart = (a: Blend, b: Blend): number => Math.hypot(...a.map((share, k) => share - b[k]!));
/** As lessons count a distance. */
const greatest = (a: Blend, b: Blend): number =>
  Math.max(...a.map((share, k) => Math.abs(share - b[k]!)));

function randomReed(random: Random): Record<string, number> {
  return Object.fromEntries(
    bassoonModel.features.map(({ id, min, max }) => [id, between(random, min, max)]),
  );
}

const places = { "": { line: 1, column: 1 } };

describe("predict", () => {
  const random = seeded(71);
  const all = Array.from({ length: rounds }, (_, round) => {
    const values = randomReed(random);
    const picked = bassoonModel.features.filter(() => random() < 0.3);
    const changed = picked.length > 0 ? picked : [bassoonModel.features[0]!];
    const change = Object.fromEntries(
      changed.map(({ id, min, max }) => [id, between(random, min, max)]),
    );
    const [a, b] = [between(random, -0.3, 1.3), between(random, -0.3, 1.3)];
    return { round, values, change, guess: [a, b, 1 - a - b] as Blend };
  });

  test.each(all)("round $round: outcome, distance, direction and pulls", (one) => {
    const { values, change, guess } = one;
    const mark = markPredict({ change }, values, map, guess);
    const from = placeByMixing(values);
    const outcome = placeByMixing({ ...values, ...change });
    expect(apart(mark.outcome, outcome)).toBeLessThan(1e-9);
    expect(mark.distance).toBeCloseTo(greatest(guess, outcome), 9);
    // The angle by the law of cosines in the triangle start, guess, outcome.
    const [a, b, c] = [apart(guess, from), apart(outcome, from), apart(guess, outcome)];
    const angle = (Math.acos((a * a + b * b - c * c) / (2 * a * b)) * 180) / Math.PI;
    expect(mark.angle).toBeCloseTo(angle, 4);
    expect(mark.direction).toBe(angle <= 35 ? "right" : angle <= 80 ? "partly" : "wrong");
    expect(mark.length).toBe(a < b / 2 ? "short" : a > 2 * b ? "long" : "right");
    expect(mark.right).toBe(
      greatest(guess, outcome) <= 0.05 || (angle <= 35 && a >= b / 2 && a <= 2 * b),
    );
    // The pulls sum to the move, and none is of a feature that did not change.
    for (const k of [0, 1, 2] as const) {
      const sum = mark.pulls.reduce((total, { move }) => total + move[k], 0);
      expect(Math.abs(sum - mark.move[k])).toBeLessThanOrEqual(1e-12);
      expect(Math.abs(sum - (mark.outcome[k] - mark.from[k]))).toBeLessThanOrEqual(1e-12);
    }
    expect(mark.pulls.map(({ feature }) => feature).toSorted()).toEqual(
      Object.keys(change).toSorted(),
    );
  });

  test("no move at all is told as none", () => {
    const [{ values, change }] = all as [(typeof all)[0]];
    const mark = markPredict({ change }, values, map, placeByMixing(values));
    expect(mark).toMatchObject({ right: false, direction: "none", length: "short" });
    expect(mark).not.toHaveProperty("angle");
  });
});

describe("aim", () => {
  const random = seeded(72);
  const all = Array.from({ length: rounds }, (_, round) => {
    const start = demoReeds[round % demoReeds.length]!;
    const lockedShare = round % 2 === 0 ? 0.2 : 0;
    const locked = bassoonModel.features.filter(() => random() < lockedShare).map(({ id }) => id);
    const shares = [random() + 0.2, random() + 0.2, random() + 0.2];
    const whole = shares[0]! + shares[1]! + shares[2]!;
    const target = shares.map((share) => share / whole) as unknown as Blend;
    const block: AimBlock = {
      kind: "aim",
      ask: "",
      places,
      reed: start.reed,
      target,
      within: 0.08,
      locked,
      finished: random() < 0.5,
      ...(random() < 0.3 ? { mostFeatures: 4 } : {}),
    };
    const free = Object.fromEntries(locked.map((id) => [id, { locked: true }]));
    const finishing = block.finished ? finishingFreedom(bassoonModel, start.readings) : {};
    const solved = (goal: Blend, freedom = {}): Values =>
      solveFor(map, start.readings, goal, freedom).values;
    // At the rim of what counts as there, just inside and just outside.
    const off = (random() < 0.5 ? 0.95 : 1.05) * block.within * Math.SQRT1_2;
    const strays = bassoonModel.features.filter(() => random() < 0.2);
    const answer = [
      solved(target, { ...finishing, ...free }),
      solved([target[0] + off, target[1] - off, target[2]], { ...finishing, ...free }),
      // Straying, and forgetting the rules.
      {
        ...start.readings,
        ...Object.fromEntries(strays.map(({ id, min, max }) => [id, between(random, min, max)])),
      },
      solved(target, { throatWidth: { locked: true } }),
    ][Math.floor(round / 2) % 4]!;
    return { round, block, start: start.readings, answer };
  });

  test.each(all)("round $round", ({ block, start, answer }) => {
    const mark = markRecipe(block, start, map, answer);
    const blend = placeByMixing(answer);
    const there = greatest(blend, block.target) <= block.within;
    const touched = bassoonModel.features.filter(
      ({ id }) => Math.abs(answer[id]! - start[id]!) > 5.001e-4,
    );
    const rulesKept = touched.every(({ id, min, max, finishing }) => {
      const [from, to] = [start[id]!, answer[id]!];
      if (block.locked!.includes(id)) return false;
      if (to < Math.min(min, from) - 5e-4 || to > Math.max(max, from) + 5e-4) return false;
      if (!block.finished) return true;
      return (
        finishing === "both" || (finishing === "down" ? to < from : finishing === "up" && to > from)
      );
    });
    const few = touched.length <= (block.mostFeatures ?? Infinity);
    expect(mark.there).toBe(there);
    expect(mark.right).toBe(there && rulesKept && few);
    expect(mark.moved).toEqual(touched.map(({ id }) => id));
    for (const k of [0, 1, 2] as const) {
      const sum = mark.pulls.reduce((total, { move }) => total + move[k], 0);
      expect(Math.abs(sum - (mark.blend[k] - placeByMixing(start)[k]))).toBeLessThanOrEqual(1e-9);
    }
  });

  test("right and wrong answers are both among them", () => {
    const rights = all.filter(
      ({ block, start, answer }) => markRecipe(block, start, map, answer).right,
    );
    expect(rights.length).toBeGreaterThan(rounds / 10);
    expect(rights.length).toBeLessThan(rounds * 0.9);
  });
});

describe("stand-in", () => {
  const random = seeded(73);
  const all = Array.from({ length: rounds }, (_, round) => {
    const whole = mixedReed(bassoonModel, [0.3 + random() / 5, 0.3, 0.4 - random() / 5]);
    const lost = bassoonModel.features[round % bassoonModel.features.length]!;
    const missing = { [lost.id]: between(random, lost.min, lost.max) };
    const block: StandInBlock = { kind: "stand-in", ask: "", places, missing, within: 0.03 };
    const start = { ...whole, ...missing };
    const freedom = { [lost.id]: { locked: true } };
    const solved = solveFor(map, start, placeByMixing(whole), freedom).values;
    const noise = random() < 0.5 ? 0 : between(random, -1, 1);
    const answer = [
      solved,
      { ...solved, throatWidth: Math.min(9.8, Math.max(7.4, solved["throatWidth"]! + noise)) },
      whole,
    ][round % 3]!;
    return { round, block, whole, answer, lost };
  });

  test.each(all)("round $round", ({ block, whole, answer, lost }) => {
    const mark = markRecipe(block, whole, map, answer);
    const there = apart(placeByMixing(answer), placeByMixing(whole)) <= 0.03;
    const cheated = Math.abs(answer[lost.id]! - block.missing[lost.id]!) > 5.001e-4;
    expect(mark.there).toBe(there);
    expect(mark.right).toBe(there && !cheated);
    expect(mark.heldButMoved).toEqual(cheated ? [lost.id] : []);
  });
});

describe("read", () => {
  const random = seeded(74);
  const all = Array.from({ length: rounds }, (_, round) => {
    const parts = [random(), random(), random()];
    const whole = parts[0]! + parts[1]! + parts[2]!;
    const truth = parts.map((part) => part / whole) as unknown as Blend;
    const answer = truth.map((share) => share + between(random, -0.08, 0.08)) as unknown as Blend;
    return { round, truth, answer };
  });

  test.each(all)("round $round", ({ truth, answer }) => {
    const mark = markRead(answer, truth, 0.05);
    expect(mark.each).toEqual(answer.map((share, k) => Math.abs(share - truth[k]!) <= 0.05));
    expect(mark.right).toBe(
      Math.max(...answer.map((share, k) => Math.abs(share - truth[k]!))) <= 0.05,
    );
  });

  test.each([
    [[0.4, 0.8, 0.8], "upsideDown"],
    [[0.2, 0.6, 0.2], "otherCorners"],
    [[0.2, 0.2, 0.6], "otherCorners"],
    [[0.6, 0.2, 0.6], "notWhole"],
    [[0.5, 0.3, 0.2], undefined],
    [[0.62, 0.18, 0.2], undefined],
  ] as const)("%s for 0.6, 0.2, 0.2 looks like %s", (shares, slip) => {
    expect(markRead(shares, [0.6, 0.2, 0.2], 0.05).slip).toBe(slip);
  });
});

describe("order", () => {
  const { actions } = bassoonActions;
  /** The rules as they are told: undoable before not, then by rank, but a clip right before the first thinning of the tip. */
  function keepsRules(ids: readonly string[]): boolean {
    const found = ids.map((id) => actions.find((one) => one.id === id)!);
    const clip = ids.indexOf("clipTip");
    const tip = found.findIndex(({ effects }) => Object.keys(effects)[0] === "tip");
    const exception = clip >= 0 && tip >= 0;
    if (exception && clip !== tip - 1) return false;
    const rest = exception ? found.filter((_, index) => index !== clip) : found;
    return rest.every((action, index) =>
      rest
        .slice(index + 1)
        .every((later) =>
          action.reversible === later.reversible ? action.order <= later.order : action.reversible,
        ),
    );
  }

  const random = seeded(75);
  const all = Array.from({ length: rounds }, (_, round) => {
    const picked = actions.map(({ id }) => ({ id, at: random() })).toSorted((a, b) => a.at - b.at);
    const ids = picked.slice(0, 2 + (round % 3)).map(({ id }) => id);
    return { round, ids };
  });

  test.each(all)("round $round: $ids", ({ ids }) => {
    const block: OrderBlock = { kind: "order", ask: "", places, actions: ids };
    const permutations = ids.reduce<string[][]>(
      (some, id) =>
        some.flatMap((one) =>
          Array.from({ length: one.length + 1 }, (_, at) => [
            ...one.slice(0, at),
            id,
            ...one.slice(at),
          ]),
        ),
      [[]],
    );
    for (const answer of permutations) {
      const mark = markAnswer(block, { kind: "order", actions: answer }, marker);
      expect(mark.right, answer.join()).toBe(keepsRules(answer));
      if (mark.kind === "order") expect(keepsRules(mark.sensible)).toBe(true);
    }
  });
});

test("a choice is told its reason, right or wrong, and every right option", () => {
  const block = {
    kind: "choose" as const,
    ask: "",
    places,
    options: [
      { text: "a", why: "A", right: false },
      { text: "b", why: "B", right: true },
      { text: "c", why: "C", right: true },
    ],
  };
  const marks = [0, 1, 2].map((option) => markAnswer(block, { kind: "choose", option }, marker));
  expect(marks).toEqual([
    { kind: "choose", right: false, option: 0, why: "A", rightOptions: [1, 2] },
    { kind: "choose", right: true, option: 1, why: "B", rightOptions: [1, 2] },
    { kind: "choose", right: true, option: 2, why: "C", rightOptions: [1, 2] },
  ]);
});

test.each([
  { kind: "choose", option: 0 },
  { kind: "predict", guess: [NaN, 0, 1], sure: 1 },
  { kind: "predict", guess: [0, 1], sure: 1 },
] as const)("what is no answer to a prediction is refused: %o", (answer) => {
  const block: PredictBlock = { kind: "predict", ask: "", places, change: { tip: 0.14 } };
  expect(() => markAnswer(block, answer as never, marker)).toThrow(TypeError);
});
