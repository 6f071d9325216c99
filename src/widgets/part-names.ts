import { nothing, svg, type SVGTemplateResult } from "lit";
import type { Point } from "../engine/frame.js";
import type { LampView } from "../drawing/lamp-view.js";
import { placeNames } from "../drawing/name-places.js";
import type { ReedLayout } from "../drawing/reed-layout.js";
import { round } from "../drawing/triangle-layout.js";

/** Width of a letter and height of a line of these names, px. */
const letter = 6.6;
const line = 14;

/** Parts on the tube, mm behind the blade. */
const onTube = { firstWire: 2.4, throatWidth: 5, secondWire: 7.8 } as const;

/** The parts of the reed by name, each where it covers least of the others. */
export function partNames(
  layout: ReedLayout,
  { zones, at }: LampView,
  bladeLength: number,
  words: Readonly<Record<string, string>>,
): (SVGTemplateResult | typeof nothing)[] {
  const [endX, endY] = at(bladeLength, 0);
  const parts: (readonly [string, Point])[] = [
    ...zones.map(({ feature, spots }): readonly [string, Point] => {
      const { x, y } = spots.at(-1)!;
      return [feature, [x, y]];
    }),
    ...Object.entries(onTube).map(([feature, mm]): readonly [string, Point] => {
      const along = mm * layout.scale;
      return [feature, layout.lying ? [endX + along, endY] : [endX, endY + along]];
    }),
  ];
  const marks = parts.map(([id, place]) => ({
    at: place,
    clearance: 4,
    width: words[id]!.length * letter + 6,
    height: line,
  }));
  return placeNames(marks, [], layout).map((place, i) =>
    place
      ? svg`<text class="part" x=${round(place[0])} y=${round(place[1] + 4)} text-anchor="middle">${words[parts[i]![0]]!}</text>`
      : nothing,
  );
}
