import { describe, expect, test } from "vitest";
import { assumed } from "../../src/acoustics/assumptions.js";
import { closingLaw, openFraction } from "../../src/acoustics/closing-law.js";
import { flowCurve, peakOf } from "../../src/acoustics/flow-curve.js";
import { areaInRow, flow, jetSpeed } from "../../src/acoustics/flow.js";
import { cornerClosing, openingArea } from "../../src/acoustics/opening.js";
import { openingCurve } from "../../src/acoustics/opening-curve.js";
import { archedInertia, type ReedMechanics } from "../../src/acoustics/reed-mechanics.js";
import { between, seeded } from "../engine/random-model.js";
import {
  archRows,
  closingExponentRows,
  cornerRows,
  elbowRows,
  flowRows,
  lensRows,
  lipLoadRows,
  twoBarArch,
} from "../tables/acoustics-air.js";
import { allRoundLip } from "./lip-recipes.js";

/** A reed whose closing pressure is given and whose throat holds nothing back. */
function plainReed(hinging: number, elbow: number, closingPressure = 10000): ReedMechanics {
  return {
    recipe: { ...allRoundLip, hinging },
    assumptions: { ...assumed, elbow },
    closingPressure,
    resonance: 2000,
    tipStiffness: 2000,
    throatArea: 1e3,
  };
}

/** Where a function of 0 … 1 is greatest, by looking everywhere. */
function peakByLooking(f: (x: number) => number): { place: number; value: number } {
  const places = Array.from({ length: 100_001 }, (_, i) => i / 100_000);
  const place = places.reduce((best, x) => (f(x) > f(best) ? x : best));
  return { place, value: f(place) };
}

describe("the opening", () => {
  // Printed to half of 1e-6.
  test.each(lensRows)("%d wide and %d high has %d", (width, height, area) => {
    expect(Math.abs(openingArea({ width, height }) - area)).toBeLessThan(6e-7);
  });

  test("a shallow lens is two thirds of its box, a round one a circle", () => {
    // The next term of the series is (2/15) (H/w)², relative 1/5.
    expect(openingArea({ width: 1, height: 1e-5 }) / (2e-5 / 3)).toBeCloseTo(1, 9);
    expect(openingArea({ width: 2, height: 2 })).toBeCloseTo(Math.PI, 12);
    expect(openingArea({ width: 0, height: 0 })).toBe(0);
  });

  test("the series and the closed form of the segment meet", () => {
    // θ = 0.2 at height / width = tan 0.05.
    const at = (ratio: number): number => openingArea({ width: 1, height: ratio }) / ratio;
    const edge = Math.tan(0.05);
    expect(at(edge * (1 + 1e-9)) / at(edge * (1 - 1e-9))).toBeCloseTo(1, 8);
  });

  test.each([
    [{ width: -1, height: 1 }, /width is -1/],
    [{ width: 1, height: NaN }, /height is NaN/],
  ])("%o is refused", (sides, message) => {
    expect(() => openingArea(sides)).toThrow(message);
  });

  test.each(cornerRows)("closed by %d it keeps %d of its width, %d of its area", (xi, w, a) => {
    expect(Math.abs(cornerClosing(xi).width - w)).toBeLessThan(6e-7);
    expect(Math.abs(cornerClosing(xi).area - a)).toBeLessThan(6e-7);
  });

  test("closes from 1 to 0, and nothing else is a share", () => {
    expect(cornerClosing(0)).toEqual({ width: 1, area: 1 });
    expect(cornerClosing(1)).toEqual({ width: 0, area: 0 });
    expect(() => cornerClosing(1.01)).toThrow(/closed is 1.01/);
    expect(() => cornerClosing(NaN)).toThrow(RangeError);
  });
});

describe("the air through the textbook slit", () => {
  // Printed to half of 1e-4 cm³/s.
  test.each(flowRows)("%d × %d m, pM %d, Δp %d Pa: %d cm³/s", (width, height, pM, dp, cm3) => {
    const found = flow({ width, height, closingPressure: pM, pressure: dp }) * 1e6;
    expect(Math.abs(found - cm3)).toBeLessThan(6e-5);
  });

  // Looking in steps of 1e-5 finds the place to half a step; values are printed to 1e-6.
  test.each(lipLoadRows)("loaded by %d of pM it peaks at %d with %d", (lip, place, value) => {
    const slit = (x: number): number =>
      flow({
        width: 1,
        height: 1 - lip,
        closingPressure: 1 - lip,
        pressure: x,
        density: 2,
      });
    const peak = peakByLooking(slit);
    expect(Math.abs(peak.place - place)).toBeLessThan(6e-6);
    expect(Math.abs(peak.value - value)).toBeLessThan(1e-6);
  });

  test("nobody blows, or blows it shut: none", () => {
    const slit = { width: 0.01, height: 0.001, closingPressure: 6000 };
    expect(flow({ ...slit, pressure: 0 })).toBe(0);
    expect(flow({ ...slit, pressure: -500 })).toBe(0);
    expect(flow({ ...slit, pressure: 6001 })).toBe(0);
    expect(() => flow({ ...slit, pressure: NaN })).toThrow(/pressure is NaN/);
    expect(() => flow({ ...slit, pressure: 1, closingPressure: 0 })).toThrow(/closingPressure/);
    expect(() => flow({ ...slit, pressure: 1, density: 0 })).toThrow(/density/);
  });

  test("two areas in a row let through less than each", () => {
    expect(areaInRow(3, 4)).toBeCloseTo(2.4, 12);
    expect(areaInRow(1e-5, 1e3)).toBeCloseTo(1e-5, 15);
    expect(areaInRow(0, 0)).toBe(0);
  });
});

describe("where the air peaks", () => {
  // The table by looking at √x (1 − x)^n itself: place to half a step of 1e-5, value to its print.
  test.each(closingExponentRows)(
    "an area that closes like (1 − x)^%d: at %d",
    (n, place, value) => {
      const peak = peakByLooking((x) => Math.sqrt(x) * (1 - x) ** n);
      expect(Math.abs(peak.place - place)).toBeLessThan(6e-6);
      expect(Math.abs(peak.value - value)).toBeLessThan(1e-6);
    },
  );

  test("closing from the corners, a hinged reed peaks at a quarter of its closing pressure", () => {
    const [, place, value] = closingExponentRows.find(([n]) => n === 1.5)!;
    const reed = plainReed(1, 0);
    const { openingWidth: w, openingHeight: h } = reed.recipe;
    const rest = openingArea({ width: w / 1000, height: h / 1000 });
    const peak = peakOf(reed, 0);
    expect(peak.blow / 10000).toBeCloseTo(place, 6);
    const most = rest * jetSpeed(10000, assumed.airDensity);
    expect(Math.abs(peak.flow / most - value)).toBeLessThan(6e-6);
    // Loaded by a share l it moves to (1 − l)/4, scaled by (1 − l)².
    const loaded = peakOf(reed, 3000);
    expect(loaded.blow / 10000).toBeCloseTo(0.7 / 4, 6);
    expect(loaded.flow / peak.flow).toBeCloseTo(0.49, 9);
  });

  test("is found where looking everywhere finds it, with and without a fold", () => {
    const random = seeded(77);
    for (let i = 0; i < 60; i += 1) {
      const reed = {
        ...plainReed(random(), between(random, 0.02, 0.5)),
        throatArea: between(random, 5e-6, 4e-5),
      };
      const lip = between(random, 0, 9000);
      const peak = peakOf(reed, lip);
      const { held, regained } = flowCurve(reed, lip);
      const seen = Math.max(0, ...held.map((one) => one.flow));
      expect(peak.flow, `reed ${i}`).toBeGreaterThanOrEqual(seen * (1 - 1e-12));
      const all = Math.max(seen, ...regained.map((one) => one.flow));
      // 48 places leave at most (π/96)² / 2 of a curve that bends as these do; one part in 500 is ample.
      expect(peak.flow, `reed ${i}`).toBeLessThanOrEqual(all * 1.002);
    }
  });
});

describe("the elbow", () => {
  // Printed to half of 1e-6.
  test.each(elbowRows)("at %d Pa %d stays open", (pressure, open) => {
    const found = openFraction({ pressure, closingPressure: 6000, elbow: 1000 });
    expect(Math.abs(found - open)).toBeLessThan(6e-7);
  });

  test("joins without a step or a kink, and closes for good", () => {
    const at = (pressure: number): number =>
      openFraction({ pressure, closingPressure: 6000, elbow: 1000 });
    for (const joint of [5000, 7000]) {
      expect(at(joint + 1e-3)).toBeCloseTo(at(joint - 1e-3), 6);
      const before = at(joint) - at(joint - 0.1);
      const after = at(joint + 0.1) - at(joint);
      expect(Math.abs(before - after)).toBeLessThan(1e-6);
    }
    expect(at(1e9)).toBe(0);
    expect(at(-5)).toBe(1);
    expect(() => openFraction({ pressure: 1, closingPressure: 6000, elbow: 6001 })).toThrow(
      /elbow/,
    );
    expect(() => openFraction({ pressure: NaN, closingPressure: 6000, elbow: 0 })).toThrow(
      /pressure/,
    );
    expect(() => openFraction({ pressure: 1, closingPressure: 0, elbow: 0 })).toThrow(/closing/);
  });
});

describe("the closing law", () => {
  test("with full hinging is the elbow's, both ways", () => {
    const law = closingLaw(1, 1 / 6);
    for (const [pressure, open] of elbowRows) {
      expect(Math.abs(law.openAt(pressure / 6000) - open)).toBeLessThan(6e-7);
      if (open > 0) expect(law.openAt(law.pressureAt(open))).toBeCloseTo(open, 12);
    }
    expect(law).toMatchObject({ usable: 1 });
    expect(law.fold).toBeUndefined();
  });

  test("without hinging is the two-bar arch, which gives way at 1/√3", () => {
    const law = closingLaw(0, 1 / 6);
    expect(law.fold!.from).toBeCloseTo(twoBarArch.limit, 12);
    // Scaled to the closing pressure: z (1 − z²) over its greatest value.
    for (const z of [0.1, 0.6, 0.9]) {
      expect(law.pressureAt(z)).toBeCloseTo((z * (1 - z * z)) / twoBarArch.greatest, 12);
    }
    expect(law.closure).toBeCloseTo(1, 12);
    expect(law.usable).toBeCloseTo(1 - twoBarArch.limit, 12);
    expect(law.openAt(0.999999)).toBeGreaterThan(0.577);
    expect(law.openAt(1.000001)).toBe(0);
  });

  test("the fold is where pressure falls, found by looking at every opening", () => {
    const random = seeded(12);
    for (let i = 0; i < 200; i += 1) {
      const [h, elbow] = [random(), between(random, 0.02, 0.5)];
      const law = closingLaw(h, elbow);
      const steps = 2000;
      let rising = 0;
      for (let k = 0; k < steps; k += 1) {
        if (law.pressureAt(k / steps) > law.pressureAt((k + 1) / steps)) rising += 1 / steps;
      }
      // Each end of the falling part is found to a step.
      expect(Math.abs(rising - law.usable), `case ${i}`).toBeLessThan(2.5 / steps);
    }
  });

  test("loading from rest the opening never grows, holds its pressure, and never lies in the fold", () => {
    const random = seeded(13);
    for (let i = 0; i < 300; i += 1) {
      const law = closingLaw(random(), between(random, 0.02, 0.5));
      let before = 1;
      for (let p = 0; p <= 1.6; p += 0.02) {
        const open = law.openAt(p);
        expect(open).toBeLessThanOrEqual(before + 1e-12);
        if (open > 0 && open < 1) expect(law.pressureAt(open)).toBeCloseTo(p, 9);
        if (law.fold)
          expect(open < law.fold.landing + 1e-9 || open > law.fold.from - 1e-9).toBe(true);
        before = open;
      }
      expect(law.openAt(law.closure + 1e-9)).toBe(0);
      expect(law.openAt(law.closure - 1e-6)).toBeGreaterThan(0);
    }
  });

  test("more hinging never means a smaller usable range; from 0.42 to 1", () => {
    for (const elbow of [0, 0.02, 1 / 6, 0.5, 1]) {
      const range = Array.from({ length: 401 }, (_, i) => closingLaw(i / 400, elbow).usable);
      range.forEach((usable, i) => {
        expect(usable).toBeGreaterThanOrEqual((range[i - 1] ?? 0) - 1e-12);
      });
      expect(range[0]).toBeCloseTo(0.42265, 5);
      expect(range[400]).toBe(1);
    }
  });

  test("takes hinging beyond its ends as the ends, and refuses what is no number", () => {
    expect(closingLaw(1.3, 0.1).usable).toBe(1);
    expect(closingLaw(-0.2, 0.1).usable).toBe(closingLaw(0, 0.1).usable);
    expect(() => closingLaw(NaN, 0.1)).toThrow(RangeError);
    expect(() => closingLaw(0.5, 2)).toThrow(RangeError);
  });
});

// Printed to half of 1e-6.
test.each(archRows)("an arch %d times as high as it is thick is %d times as stiff", (c, ratio) => {
  expect(Math.abs(archedInertia(1, 1, c) / archedInertia(1, 1, 0) - ratio)).toBeLessThan(6e-7);
});

describe("curves for the screen", () => {
  const folding = plainReed(0.4, 1 / 6);

  test("the flow curve starts without air, ends closed, and marks its jump", () => {
    const curve = flowCurve(folding, 1000);
    expect(curve.held[0]!.blow).toBeCloseTo(0, 9);
    expect(curve.held[0]!.flow).toBeCloseTo(0, 9);
    expect(curve.jump!.from.blow).toBeCloseTo(curve.held.at(-1)!.blow, 6);
    expect(curve.jump!.to).toMatchObject({ blow: curve.jump!.from.blow, closed: 1, flow: 0 });
    expect(curve.unheld[0]!.closed).toBeCloseTo(curve.jump!.from.closed, 9);
    expect(curve.closure).toBeCloseTo(curve.jump!.from.blow, 6);
    // Along the part that cannot be held, pressure falls while the reed closes.
    curve.unheld.forEach((one, i) => {
      expect(one.blow).toBeLessThanOrEqual((curve.unheld[i - 1]?.blow ?? Infinity) + 1e-9);
    });
  });

  test("a hinged reed has one piece and no jump", () => {
    const curve = flowCurve(plainReed(1, 1 / 6), 1000);
    expect(curve).toMatchObject({ unheld: [], regained: [] });
    expect(curve.jump).toBeUndefined();
    expect(curve.held.at(-1)).toMatchObject({ flow: 0, closed: 1 });
    expect(curve.closure).toBeCloseTo(10000 * (7 / 6) - 1000, 6);
  });

  test("lips that close the reed alone leave no air at any pressure", () => {
    const curve = flowCurve(folding, 9500);
    expect(curve.held).toEqual([]);
    expect(curve.peak.flow).toBe(0);
    expect(curve.closure).toBe(0);
    expect(() => flowCurve(folding, -1)).toThrow(/lip is -1/);
  });

  test("the opening over the lip pressure falls from rest to closed, in two pieces at a fold", () => {
    const curve = openingCurve(folding, 2000);
    expect(curve.held[0]![0]!.lip).toBeCloseTo(0, 9);
    expect(curve.fold!.from).toBeCloseTo(curve.held[0]!.at(-1)!.open, 12);
    expect(curve.closure).toBeCloseTo(curve.fold!.lip, 6);
    const whole = openingCurve(plainReed(1, 1 / 6), 2000);
    expect(whole.held).toHaveLength(1);
    expect(whole.held[0]!.at(-1)!.open).toBe(0);
    whole.held[0]!.forEach(({ open }, i) => {
      expect(open).toBeLessThanOrEqual(whole.held[0]![i - 1]?.open ?? 1);
    });
    expect(() => openingCurve(folding, NaN)).toThrow(/blow is NaN/);
  });
});
