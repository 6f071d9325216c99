import { expect, test } from "vitest";
import { blendToPoint, pointToBlend } from "../../src/engine/frame.js";
import type { Blend } from "../../src/engine/blend.js";
import { ReedTriangle } from "../../src/widgets/reed-triangle.js";
import { define } from "../../src/widgets/define.js";
import { triangleLayout } from "../../src/drawing/triangle-layout.js";
import { targetLayer } from "../../src/widgets/triangle-layers.js";
import { render } from "lit";

define("triangle-plane", ReedTriangle);

const from: Blend = [1 / 3, 1 / 3, 1 / 3];

test.each([
  [[0.45, 0.3, 0.25]],
  [[0.25, 0.5, 0.25]],
  [[0.6, 0.25, 0.15]],
  [[0.3, 0.3, 0.4]],
] as const)("the name of a good guess covers no arrow: %j", async (outcome) => {
  const plane = Object.assign(new ReedTriangle(), {
    still: true,
    blend: outcome,
    chain: [{ id: "a", from, to: outcome }],
    pinned: { blend: [outcome[0] + 0.01, outcome[1] - 0.01, outcome[2]], label: "Your guess" },
  });
  document.body.append(plane);
  await plane.updateComplete;
  const name = plane.renderRoot.querySelector(".name.pinned")!;
  const [x, y] = [Number(name.getAttribute("x")), Number(name.getAttribute("y")) - 4.5];
  const { frame } = triangleLayout(480, {
    greatestHeight: 640,
    ticks: false,
    em: 16,
    names: [13, 12, 11],
  });
  const half = { x: (10 * 0.47 * 16 + 8) / 2, y: 8.4 };
  for (let t = 0; t <= 1; t += 0.05) {
    const at = from.map((share, k) => share + t * (outcome[k]! - share)) as [
      number,
      number,
      number,
    ];
    const [px, py] = blendToPoint(at, frame);
    expect(Math.abs(px - x) < half.x - 1 && Math.abs(py - y) < half.y - 1).toBe(false);
  }
  plane.remove();
});

test("the name of a target keeps off the mark of the reed as it is", async () => {
  const target = { blend: [0.36, 0.28, 0.36] as Blend, label: "Concerto with full orchestra" };
  const at = async (base?: Blend): Promise<readonly [number, number]> => {
    const plane = Object.assign(new ReedTriangle(), {
      blend: [0.33, 0.53, 0.14] as Blend,
      target,
      base,
    });
    document.body.append(plane);
    await plane.updateComplete;
    const name = plane.renderRoot.querySelector(".name.target")!;
    plane.remove();
    return [Number(name.getAttribute("x")), Number(name.getAttribute("y"))];
  };
  const [x, y] = await at();
  // A reed that lies where the name stood.
  const { frame } = triangleLayout(480, {
    greatestHeight: 640,
    ticks: false,
    em: 16,
    names: [13, 12, 11],
  });
  expect(await at(pointToBlend([x, y - 5], frame))).not.toEqual([x, y]);
});

test("a zone is drawn as large as what counts as there", () => {
  const layout = triangleLayout(480, {
    greatestHeight: 640,
    ticks: false,
    em: 16,
    names: [13, 12, 11],
  });
  const radiusOf = (radius?: number): number => {
    const svg = document.createElementNS("http://www.w3.org/2000/svg", "svg");
    render(
      targetLayer({ blend: from, label: "", ...(radius === undefined ? {} : { radius }) }, layout),
      svg,
    );
    return Number(svg.querySelector(".zone")!.getAttribute("r"));
  };
  expect(radiusOf(0.04)).toBeCloseTo(radiusOf() / 2, 0);
});
