/** Where the parts of the reed drawing stand, in px; the same scale for all of them, so that they compare. */
export interface ReedLayout {
  readonly width: number;
  readonly height: number;
  /** px per mm. */
  readonly scale: number;
  /** The blade lies on its side (a strip) instead of standing tip up. */
  readonly lying: boolean;
  /** Line of the spine across, and the tip along. */
  readonly middle: number;
  readonly tip: number;
  /** Middles of the end-on drawings: tip opening, first wire, second wire. */
  readonly ends: readonly [Place, Place, Place];
  /** Lines of writing under the opening and under the wires. */
  readonly captions: readonly [opening: number, wires: number];
  /** Left end and base line of the long section. */
  readonly section: { readonly left: number; readonly base: number; readonly scale: number };
}

type Place = readonly [x: number, y: number];

/** mm: room for the widest tip, the longest blade and a piece of the tube. */
const widest = 17;
const longest = 31;
const tube = 11;

/**
 * Lays the drawing out for a width: standing in a column, or lying as a strip on a phone.
 *
 * @example reedLayout(300, false).lying → false
 */
export function reedLayout(width: number, lying: boolean): ReedLayout {
  return lying ? strip(width) : column(width);
}

function column(width: number): ReedLayout {
  const scale = Math.min(15, (width - 28) / widest);
  const tip = 10;
  const bladeEnd = tip + (longest + tube - 2) * scale;
  const openingAt = bladeEnd + 1.3 * scale + 6;
  const wiresAt = openingAt + 6 * scale + 34;
  const sectionScale = Math.min(scale, (width - 16) / longest);
  const base = wiresAt + 5 * scale + 30 + 0.95 * 10 * sectionScale;
  return {
    width,
    height: base + 8,
    scale,
    lying: false,
    middle: width / 2,
    tip,
    ends: [
      [width / 2, openingAt],
      [width * 0.26, wiresAt],
      [width * 0.74, wiresAt],
    ],
    captions: [openingAt + 1.3 * scale + 14, wiresAt + 4.8 * scale + 12],
    section: { left: (width - longest * sectionScale) / 2, base, scale: sectionScale },
  };
}

function strip(width: number): ReedLayout {
  const scale = Math.min(11, (width - 12) / (longest + tube));
  const middle = (widest * scale) / 2 + 4;
  const endsAt = 2 * middle + 5 * scale;
  const sectionScale = Math.min(scale, (width - 16) / longest);
  const base = endsAt + 5 * scale + 52 + 0.95 * 10 * sectionScale;
  return {
    width,
    height: base + 8,
    scale,
    lying: true,
    middle,
    tip: 6,
    ends: [
      [width * 0.19, endsAt],
      [width * 0.52, endsAt],
      [width * 0.84, endsAt],
    ],
    captions: [endsAt + 4.8 * scale + 12, endsAt + 4.8 * scale + 12],
    section: { left: (width - longest * sectionScale) / 2, base, scale: sectionScale },
  };
}
