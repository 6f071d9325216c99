import { solveQP } from "quadprog";
import { describe, expect, test } from "vitest";
import {
  bassoonModel,
  compileModel,
  place,
  pulls,
  solveFor,
  type Blend,
  type BlendMap,
  type Feature,
  type Freedom,
  type Values,
} from "../../src/lib/engine.js";
import { between, randomMap, randomValues, seeded, type Random } from "./random-model.js";

interface Problem {
  readonly map: BlendMap;
  readonly values: Values;
  readonly freedom: Freedom;
  readonly limits: Readonly<Record<string, readonly [low: number, high: number]>>;
  readonly reluctance: Readonly<Record<string, number>>;
  readonly target: Blend;
}

/** How near to a limit, as a share of the room: on the border itself, rounding leaves the general solver no feasible point. */
const grazing = 1e-6;

type Stated = { min?: number; max?: number; locked?: boolean };

function randomFreedom(random: Random, value: number, { min, max }: Feature): Stated {
  const kind = random();
  if (kind < 0.2) return { locked: true };
  if (kind < 0.4) return { max: value };
  if (kind < 0.5) return { min: value };
  if (kind < 0.6) {
    const low = between(random, min, max);
    return { min: low, max: between(random, low, max) };
  }
  return {};
}

/** A value outside its limits already may stay or move inward. */
function limitsOf(value: number, { min, max }: Feature, stated: Stated): [number, number] {
  if (stated.locked === true) return [value, value];
  const low = Math.max(min, stated.min ?? min);
  const high = Math.min(max, stated.max ?? max);
  return [Math.min(low, value), Math.max(high, value)];
}

/**
 * A reed, limits, and a target that some reed within the limits has: so it lies in reach. One problem
 * in three takes that reed with most features at a limit, so that the target is near the border.
 */
function randomProblem(random: Random, map: BlendMap): Problem {
  const { features } = map.model;
  const values = randomValues(random, map.model);
  const outside = features[Math.floor(random() * features.length)] as Feature;
  if (random() < 0.2) values[outside.id] = outside.max + 0.1 * (outside.max - outside.min);
  const valueOf = (id: string): number => values[id] ?? NaN;
  const freedom = Object.fromEntries(
    features.map((feature) => [feature.id, randomFreedom(random, valueOf(feature.id), feature)]),
  );
  const limits = Object.fromEntries(
    features.map((feature) => {
      const { id } = feature;
      return [id, limitsOf(valueOf(id), feature, freedom[id] ?? {})];
    }),
  );
  const nearBorder = random() < 1 / 3;
  const goal = Object.fromEntries(
    Object.entries(limits).map(([id, [low, high]]) => {
      const atLimit = nearBorder && random() < 0.7;
      const share = atLimit ? (random() < 0.5 ? grazing : 1 - grazing) : random();
      return [id, low + share * (high - low)];
    }),
  );
  const reluctance = Object.fromEntries(features.map(({ id }) => [id, between(random, 0.05, 3)]));
  return { map, values, freedom, limits, reluctance, target: place(map, goal).raw };
}

const halfSpread = ({ corners: { high, low, loud } }: Feature): number =>
  (Math.max(high, low, loud) - Math.min(high, low, loud)) / 2;

/** Features that have room to move. */
function freeFeatures({ map, limits }: Problem): Feature[] {
  return map.model.features.filter(({ id }) => {
    const [low, high] = limits[id] ?? [0, 0];
    return high > low;
  });
}

/**
 * The same problem for the general solver, in moves of z: minimise Σ k_j m_j² with two equations
 * (the shares of high and low; the third follows) and limits on both sides. Locked features are left out.
 */
function bySolver(problem: Problem): Record<string, number> {
  const { map, values, limits, reluctance, target } = problem;
  const free = freeFeatures(problem);
  const arrows = new Map(pulls(map).map(({ feature, perUnit }) => [feature, perUnit]));
  const from = place(map, values).raw;
  const quadratic: number[][] = [[]];
  const constraints: number[][] = [[]];
  const bounds = [0, target[0] - from[0], target[1] - from[1]];
  free.forEach((feature, j) => {
    const { id } = feature;
    const s = halfSpread(feature);
    const [low, high] = limits[id] ?? [NaN, NaN];
    const value = values[id] ?? NaN;
    quadratic.push([0, ...free.map((_, i) => (i === j ? 2 * (reluctance[id] ?? NaN) : 0))]);
    const arrow = arrows.get(id) ?? [NaN, NaN];
    const sides = free.flatMap((_, i) => (i === j ? [1, -1] : [0, 0]));
    constraints.push([0, arrow[0] * s, arrow[1] * s, ...sides]);
    bounds.push((low - value) / s, (value - high) / s);
  });
  const linear = [0, ...free.map(() => 0)];
  const { solution, message } = solveQP(quadratic, linear, constraints, bounds, 2);
  if (message !== "") throw new Error(`quadratic programme: ${message}`);
  return Object.fromEntries(free.map(({ id }, j) => [id, solution[j + 1] ?? NaN]));
}

/** The moves in z that an answer makes. */
function movesOf(problem: Problem, values: Values): Record<string, number> {
  return Object.fromEntries(
    problem.map.model.features.map((feature) => {
      const { id } = feature;
      return [id, ((values[id] ?? NaN) - (problem.values[id] ?? NaN)) / halfSpread(feature)];
    }),
  );
}

const costOf = ({ reluctance }: Problem, moves: Readonly<Record<string, number>>): number =>
  Object.entries(moves).reduce((sum, [id, move]) => sum + (reluctance[id] ?? NaN) * move * move, 0);

// Both solvers meet the two equations within 1e-12 of a share. A target that grazes the border has multipliers of
// up to 1e3 or so and arrows of a tenth of a share, which makes 1e-9 of cost and 1e-8 of a half-spread of recipe;
// away from it the two agree within 1e-11.
const sameCost = 1e-9;
const sameRecipe = 1e-8;

function compare(problem: Problem, seed: number): void {
  const { map, values, limits, target, freedom, reluctance } = problem;
  const answer = solveFor(map, values, target, freedom, { reluctance });
  const moves = movesOf(problem, answer.values);
  const expected = bySolver(problem);
  const cost = costOf(problem, expected);
  expect(answer.reached, `seed ${seed}`).toBe(true);
  expect(answer.limits, `seed ${seed}`).toEqual([]);
  const there = place(map, answer.values).raw;
  for (const k of [0, 1, 2] as const) {
    expect(Math.abs(there[k] - target[k]), `seed ${seed}`).toBeLessThanOrEqual(1e-9);
    expect(Math.abs(there[k] - answer.blend[k]), `seed ${seed}`).toBeLessThanOrEqual(1e-9);
  }
  const costGap = Math.abs(costOf(problem, moves) - cost);
  expect(costGap, `seed ${seed}: cost ${cost}`).toBeLessThanOrEqual(sameCost * Math.max(1, cost));
  for (const [id, move] of Object.entries(moves)) {
    const recipeGap = Math.abs(move - (expected[id] ?? 0));
    expect(recipeGap, `seed ${seed}: ${id}`).toBeLessThanOrEqual(sameRecipe);
    const [low, high] = limits[id] ?? [NaN, NaN];
    expect(answer.values[id], `seed ${seed}: ${id}`).toBeGreaterThanOrEqual(low);
    expect(answer.values[id], `seed ${seed}: ${id}`).toBeLessThanOrEqual(high);
    if (freedom[id]?.locked === true) expect(answer.values[id], id).toBe(values[id]);
  }
}

/** Runs problems from seeds on until `wanted` of them have at least three free features, as the general solver needs. */
function compareMany(wanted: number, firstSeed: number, draw: (random: Random) => Problem): void {
  let compared = 0;
  for (let seed = firstSeed; compared < wanted; seed += 1) {
    expect(seed - firstSeed).toBeLessThan(3 * wanted);
    const problem = draw(seeded(seed));
    if (freeFeatures(problem).length < 3) continue;
    compare(problem, seed);
    compared += 1;
  }
}

describe("the recipe for a point agrees with a general quadratic-programming library", () => {
  test("on 700 random models of 4 to 20 features", () => {
    compareMany(700, 1, (random) =>
      randomProblem(random, randomMap(random, 4 + Math.floor(17 * random()))),
    );
  });

  test("on 800 random bassoon reeds", () => {
    const map = compileModel(bassoonModel);
    compareMany(800, 10_001, (random) => randomProblem(random, map));
  });
});
