import { describe, expect, test } from "vitest";
import { flowCurve } from "../../src/acoustics/flow-curve.js";
import { respond, withHinging } from "../../src/acoustics/lip-response.js";
import { openingCurve } from "../../src/acoustics/opening-curve.js";
import { reedMechanics } from "../../src/acoustics/reed-mechanics.js";
import { vibratingRegion } from "../../src/acoustics/vibrating-region.js";
import { closingView } from "../../src/drawing/closing-view.js";
import { dialBar } from "../../src/drawing/dial-bar.js";
import { flowPlot } from "../../src/drawing/flow-plot.js";
import { lampView } from "../../src/drawing/lamp-view.js";
import { openingPlot } from "../../src/drawing/opening-plot.js";
import { plotAxes } from "../../src/drawing/plot-axes.js";
import { pressureBar } from "../../src/drawing/pressure-bar.js";
import { vibratingView } from "../../src/drawing/vibrating-view.js";
import { allRoundLip, cornerLips } from "../acoustics/lip-recipes.js";
import { pathPoints } from "./path-points.js";

const reed = reedMechanics(allRoundLip);
const box = { width: 320, height: 220 };

describe("the axes of a plot", () => {
  test("end on round numbers, start at 0, and keep their numbers apart", () => {
    const axes = plotAxes(box, 11.3, 580);
    for (const [ticks, least] of [
      [axes.xTicks, 24],
      [axes.yTicks, 12],
    ] as const) {
      expect(ticks[0]!.value).toBe(0);
      expect(ticks.length).toBeGreaterThanOrEqual(3);
      ticks.slice(1).forEach(({ at }, i) => {
        expect(Math.abs(at - ticks[i]!.at)).toBeGreaterThan(least);
      });
    }
    expect(axes.xTicks.at(-1)!.value).toBeGreaterThanOrEqual(11.3);
    expect(axes.yTicks.at(-1)!.value).toBeGreaterThanOrEqual(580);
    expect(axes.place(0, 0)).toEqual(axes.origin.map((one) => Math.round(one * 10) / 10));
  });

  test("bring to the border what lies outside", () => {
    const axes = plotAxes(box, 10, 500);
    expect(axes.place(1e6, 1e6)).toEqual(
      axes.place(axes.xTicks.at(-1)!.value, axes.yTicks.at(-1)!.value),
    );
    expect(axes.place(-5, 0)).toEqual(axes.place(0, 0));
  });
});

test("a line that leaves the field is cut at its border, and goes on where it comes back", () => {
  const axes = plotAxes(box, 10, 100);
  const points = pathPoints(
    axes.line([
      [0, 0],
      [8, 40],
      [12, 80],
      [12, 20],
      [8, 0],
    ]),
  );
  expect(points).toEqual([
    axes.place(0, 0),
    axes.place(8, 40),
    axes.place(10, 60),
    axes.place(10, 10),
    axes.place(8, 0),
  ]);
  expect(axes.line([[11, 0]])).toBe("");
  expect(axes.mark(11, 50)).toBeUndefined();
  expect(axes.mark(5, 50)).toEqual(axes.place(5, 50));
});

describe("the flow curve", () => {
  const plotBox = { ...box, mostBlow: 14000, mostFlow: 8e-4 };

  test("rises from the origin to its peak and ends on the base line", () => {
    const hinged = withHinging(reed, 1);
    const curve = flowCurve(hinged, 1500);
    const plot = flowPlot(
      curve,
      { blow: 3000, flow: respond(hinged, { lip: 1500, blow: 3000 }).flow },
      plotBox,
    );
    const points = pathPoints(plot.held);
    const [, base] = plot.axes.place(0, 0);
    expect(points[0]).toEqual(plot.axes.place(0, 0));
    expect(points.at(-1)![1]).toBe(base);
    expect(points.at(-1)).toEqual(plot.closure);
    // The peak is the highest place of the line, to the distance of its points.
    const top = Math.min(...points.map(([, y]) => y));
    expect(plot.peak![1]).toBeLessThanOrEqual(top);
    expect(plot.peak![1]).toBeGreaterThan(top - 1);
    expect(plot).toMatchObject({ unheld: "", regained: "", jump: "", other: "" });
    // What is played now lies on the line.
    const near = points.filter(([x]) => Math.abs(x - plot.operating[0]) < 12).map(([, y]) => y);
    expect(plot.operating[1]).toBeGreaterThanOrEqual(Math.min(...near) - 1);
    expect(plot.operating[1]).toBeLessThanOrEqual(Math.max(...near) + 1);
  });

  test("of a reed that folds snaps straight down where its line ends, and the other reed lies behind", () => {
    const curve = flowCurve(withHinging(reed, 0.3), 1000);
    const other = flowCurve(reedMechanics(cornerLips.low), 1000);
    const plot = flowPlot(curve, { blow: 0, flow: 0 }, plotBox, other);
    const [from, to] = pathPoints(plot.jump);
    expect(from).toEqual(pathPoints(plot.held).at(-1));
    expect(to![0]).toBe(from![0]);
    expect(to![1]).toBeGreaterThan(from![1]);
    expect(pathPoints(plot.unheld)[0]).toEqual(from);
    expect(pathPoints(plot.other).length).toBeGreaterThan(20);
  });

  test("of lips that close the reed is empty, not broken", () => {
    const plot = flowPlot(flowCurve(withHinging(reed, 0), 12000), { blow: 0, flow: 0 }, plotBox);
    expect(plot.held + plot.unheld + plot.regained + plot.jump).not.toContain("NaN");
    expect(plot.held).toBe("");
  });
});

test("the opening over the lip pressure falls, and its snap stands upright", () => {
  const folding = withHinging(reed, 0.3);
  const curve = openingCurve(folding, 2000);
  const plot = openingPlot(
    curve,
    { lip: 0, open: 0.9 },
    { ...box, mostLip: 8000 },
    openingCurve(reed, 2000),
  );
  const points = pathPoints(plot.held);
  points.slice(1).forEach(([, y], i) => expect(y).toBeGreaterThanOrEqual(points[i]![1]));
  const [from, to] = pathPoints(plot.jump);
  expect(from![0]).toBe(to![0]);
  expect(plot.other).not.toBe("");
  expect(plot.now).toEqual(plot.axes.place(0, 0.9));
});

describe("the opening end-on", () => {
  const numbers = (path: string): number[] => (path.match(/-?[\d.]+/g) ?? []).map(Number);

  test("closes from its corners", () => {
    const view = closingView({ openingWidth: 12, openingHeight: 1.2 }, 0.75, 10);
    // Closed by three quarters it keeps half its width: 30 px each way; the blades meet from there out to 60.
    expect(numbers(view.open)[0]).toBe(-30);
    expect(view.met).toBe("M-60,0H-30M30,0H60");
    expect(numbers(view.rest)[0]).toBe(-60);
  });

  test("at rest meets nowhere, closed all along", () => {
    expect(closingView({ openingWidth: 12, openingHeight: 1.2 }, 0, 10).met).toBe("");
    const shut = closingView({ openingWidth: 12, openingHeight: 1.2 }, 1, 10);
    expect(shut.open).toBe("");
    expect(shut.met).toBe("M-60,0H60");
    for (let xi = 0.9; xi <= 1; xi += 0.001) {
      const view = closingView({ openingWidth: 12, openingHeight: 1.2 }, Math.min(1, xi), 10);
      expect(view.open + view.met).not.toMatch(/NaN|Infinity/);
    }
  });
});

describe("the vibrating part over the lamp view", () => {
  const lamp = lampView(allRoundLip, { middle: 150, tip: 10, scale: 10 });
  const at = (closed: number) =>
    vibratingView(allRoundLip, vibratingRegion(reed, closed, 12), lamp.at);

  test("reaches to the lips, and shrinks at the tip as they press", () => {
    const widthAtTip = (closed: number): number => {
      const points = pathPoints(at(closed).region);
      return points.at(-1)![0] - points[0]![0];
    };
    expect(widthAtTip(0)).toBeCloseTo(allRoundLip.tipWidth * 10, 0);
    expect(widthAtTip(0.75)).toBeCloseTo(allRoundLip.tipWidth * 5, 0);
    expect(widthAtTip(1)).toBeCloseTo(0, 0);
    const deepest = Math.max(...pathPoints(at(0.5).region).map(([, y]) => y));
    expect(deepest).toBeCloseTo(10 + 12 * 10, 0);
    expect(pathPoints(at(0.5).lips).map(([, y]) => y)).toEqual([130, 130]);
  });

  test("encloses the area that the dial shows", () => {
    const points = pathPoints(at(0.4).region);
    const doubled = points.reduce((sum, [x, y], i) => {
      const [nextX, nextY] = points[(i + 1) % points.length]!;
      return sum + x * nextY - nextX * y;
    }, 0);
    const { area } = vibratingRegion(reed, 0.4, 12);
    // A polygon of 32 steps drawn to a tenth of a px: 1 in 200.
    expect(Math.abs(doubled) / 2 / 100 / (area * 1e6)).toBeCloseTo(1, 2);
  });
});

describe("the bar of a dial", () => {
  test("stands at the middle for the same, halves and doubles equally far, and shows what lies beyond", () => {
    expect(dialBar(1, 100)).toEqual({ width: 100, middle: 50, left: 50, right: 50, beyond: false });
    expect(dialBar(Math.SQRT2, 100).right - 50).toBeCloseTo(
      50 - dialBar(Math.SQRT1_2, 100).left,
      6,
    );
    expect(dialBar(2, 100)).toMatchObject({ left: 50, right: 100, beyond: false });
    expect(dialBar(3, 100)).toMatchObject({ left: 50, right: 100, beyond: true });
    expect(dialBar(0, 100)).toMatchObject({ left: 0, right: 50, beyond: true });
    expect(dialBar(undefined, 100)).toMatchObject({ left: 50, right: 50 });
  });
});

describe("lips and breath end to end", () => {
  test("each takes its share of the bar, and marks beyond its end are left out", () => {
    expect(pressureBar({ lip: 2000, blow: 8000, closes: 12000, snaps: 11000 }, 200)).toEqual({
      width: 200,
      lips: 20,
      both: 100,
      snaps: 110,
      closes: 120,
    });
    const far = pressureBar({ lip: 0, blow: 0, closes: 30000 }, 200);
    expect(far).toEqual({ width: 200, lips: 0, both: 0, snaps: undefined, closes: undefined });
  });
});
