import { describe, expect, test } from "vitest";
import { stepNumbers, type Ends, type StepNumber } from "../../src/drawing/step-numbers.js";
import { triangleLayout } from "../../src/drawing/triangle-layout.js";
import { compileModel } from "../../src/engine/compile.js";
import { place } from "../../src/engine/place.js";
import { planAdjustments } from "../../src/engine/plan-adjustments.js";
import { planNotes } from "../../src/engine/plan-notes.js";
import { bassoonActions, bassoonModel } from "../../src/reed/bassoon.js";
import { demoReeds } from "../../src/reed/demo-reeds.js";
import { targets } from "../../src/reed/targets.js";
import { adviceDrawing } from "../../src/widgets/triangle-advice.js";

const room = { distance: 10, width: 200, height: 200, taken: [] };
const apart = (a: StepNumber, b: StepNumber): number =>
  Math.max(Math.abs(a.at[0] - b.at[0]), Math.abs(a.at[1] - b.at[1]));

describe("numbers of arrows head to tail", () => {
  const corner: Ends[] = [
    [
      [50, 50],
      [110, 50],
    ],
    [
      [110, 50],
      [110, 130],
    ],
  ];

  test("stand beside the middle, at the distance that is asked for, away from the others", () => {
    const [first, second] = stepNumbers(corner, room);
    expect(first).toEqual({ at: [80, 40] });
    expect(second).toEqual({ at: [120, 90] });
  });

  test("keep off what is taken", () => {
    const box = { left: 70, top: 30, right: 90, bottom: 48 };
    const [{ at }] = stepNumbers(corner.slice(0, 1), { ...room, taken: [box] }) as [StepNumber];
    expect(at[1]).toBeGreaterThan(50);
  });

  test("of arrows on each other stand side by side, each led to its arrow where it is far", () => {
    const there: Ends = [
      [100, 100],
      [104, 100],
    ];
    const numbers = stepNumbers(
      [there, there, there, there, there, there, there, there, there],
      room,
    );
    numbers.forEach((one, i) => {
      for (const other of numbers.slice(i + 1))
        expect(apart(one, other)).toBeGreaterThanOrEqual(10);
    });
    const far = numbers.filter(({ at }) => Math.hypot(at[0] - 102, at[1] - 100) > 12.1);
    expect(far.length).toBeGreaterThan(0);
    for (const { leader } of far) expect(leader?.[1]).toEqual([102, 100]);
  });

  test("of an arrow without length, and of one out of the drawing, stand in it all the same", () => {
    const points: Ends[] = [
      [
        [60, 60],
        [60, 60],
      ],
      [
        [-90, 300],
        [-40, 260],
      ],
    ];
    const numbers = stepNumbers(points, room);
    for (const { at } of numbers) {
      expect(Math.min(...at)).toBeGreaterThanOrEqual(5);
      expect(Math.max(...at)).toBeLessThanOrEqual(195);
    }
    expect(numbers[1]!.leader).toBeDefined();
  });
});

describe("every arrow of every plan", () => {
  const map = compileModel(bassoonModel);
  const plans = demoReeds.flatMap(({ reed, readings }) =>
    targets.flatMap(({ id, blend }) =>
      planAdjustments(map, readings, blend, bassoonActions).plans.map((plan) => ({
        name: `${reed} ${id} ${plan.kind}`,
        steps: planNotes(map, readings, bassoonActions, plan).steps,
        end: { blend: plan.blend },
        point: place(map, readings).raw,
      })),
    ),
  );
  const corners = ["High register", "Soft and low", "Full volume"];

  // 280: the narrowest drawing of a phone of 360 px at twice the text size; 700: the widest of the bench.
  test.each([
    { width: 240, em: 16 },
    { width: 320, em: 16 },
    { width: 320, em: 32 },
    { width: 480, em: 16 },
    { width: 700, em: 16 },
  ])(
    "has a number of its own, in the drawing, on no other: $width px, text $em px",
    ({ width, em }) => {
      let most = 0;
      for (const ticks of [false, true]) {
        const layout = triangleLayout(width, { em, ticks, names: [13, 12, 11] });
        for (const { name, steps, end, point } of plans) {
          const numbers = adviceDrawing.numbers(
            { steps, end, by: adviceDrawing },
            { point, corners, ticks },
            layout,
            em,
          );
          expect(numbers.length, name).toBe(steps.length);
          most = Math.max(most, numbers.length);
          numbers.forEach((one, i) => {
            const [x, y] = one.at;
            expect(x, name).toBeGreaterThan(0.3 * em);
            expect(y, name).toBeGreaterThan(0.3 * em);
            expect(x, name).toBeLessThan(layout.width - 0.3 * em);
            expect(y, name).toBeLessThan(layout.height - 0.3 * em);
            for (const other of numbers.slice(i + 1))
              expect(apart(one, other), name).toBeGreaterThan(0.75 * em);
          });
        }
      }
      expect(most).toBe(4);
    },
  );
});
