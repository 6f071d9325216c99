import { describe, expect, test } from "vitest";
import {
  bassoonModel,
  compileModel,
  place,
  pulls,
  ratioPull,
  type Purpose,
} from "../../src/lib/engine.js";
import { tradeDirections } from "../tables/trade-directions.js";

// Facts of the trade: common practice, no source.

const order: readonly Purpose[] = ["high", "low", "loud"];
const map = compileModel(bassoonModel);
const ratioOf = (id: string) => bassoonModel.ratios.find((ratio) => ratio.id === id);

function featureCorners(id: string): Readonly<Record<Purpose, number>> {
  const feature = bassoonModel.features.find((one) => one.id === id);
  if (feature === undefined) throw new Error(`the bassoon model has no feature "${id}"`);
  return feature.corners;
}

function meanOf({ high, low, loud }: Readonly<Record<Purpose, number>>): number {
  return (high + low + loud) / 3;
}

/** How much more a corner reed has than the all-round reed, of a feature or a ratio. */
function excess(id: string, purpose: Purpose): number {
  const ratio = ratioOf(id);
  if (ratio === undefined) return featureCorners(id)[purpose] - meanOf(featureCorners(id));
  const [of, to] = [featureCorners(ratio.of), featureCorners(ratio.to)];
  return of[purpose] / to[purpose] - meanOf(of) / meanOf(to);
}

/** The share of a purpose in the pull of a feature or a ratio. */
function pullToward(id: string, purpose: Purpose): number {
  const arrow = ratioOf(id)
    ? ratioPull(map, id)
    : pulls(map).find((pull) => pull.feature === id)?.perUnit;
  return arrow?.[order.indexOf(purpose)] ?? NaN;
}

test("the table holds 26 directions, each said once", () => {
  const said = new Set(tradeDirections.map(({ feature, purpose }) => `${feature} ${purpose}`));
  expect(tradeDirections).toHaveLength(26);
  expect(said.size).toBe(26);
});

describe.each(tradeDirections)(
  "$purpose: $direction $feature",
  ({ feature, purpose, direction }) => {
    const sign = direction === "more" ? 1 : -1;

    test("in the corner reed against the all-round reed", () => {
      expect(Math.sign(excess(feature, purpose))).toBe(sign);
    });

    test("in the pull: moving that way moves the point toward the purpose", () => {
      expect(Math.sign(pullToward(feature, purpose))).toBe(sign);
    });
  },
);

// The map is linear, so a change of a thousandth gives the pull up to rounding, a thousand times enlarged.
test.each(bassoonModel.ratios)(
  "the pull of $id is what its two thicknesses do when both change by one share, opposite ways",
  ({ id, of, to }) => {
    const allRound = Object.fromEntries(
      bassoonModel.features.map((feature) => [feature.id, meanOf(feature.corners)]),
    );
    const share = 0.001;
    const changed = {
      ...allRound,
      [of]: (allRound[of] ?? NaN) * (1 + share),
      [to]: (allRound[to] ?? NaN) * (1 - share),
    };
    const [before, after] = [place(map, allRound).raw, place(map, changed).raw];
    ratioPull(map, id).forEach((part, k) => {
      expect(((after[k] ?? NaN) - (before[k] ?? NaN)) / share).toBeCloseTo(part, 11);
    });
  },
);
