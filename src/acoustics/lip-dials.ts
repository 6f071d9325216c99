import type { LipResponse } from "./lip-response.js";

/** What the six dials show. */
export type LipDialId =
  | "opening"
  | "vibratingArea"
  | "peakFlow"
  | "closingPressure"
  | "resonance"
  | "tipStiffness";

/** One dial: the value in SI units, and its ratio to the same of another reed. */
export interface LipDial {
  readonly id: LipDialId;
  readonly value: number;
  /** Absent where the other reed has nothing to compare with: it is closed. */
  readonly ratio?: number;
}

const read: Readonly<Record<LipDialId, (response: LipResponse) => number>> = {
  opening: ({ opening }) => opening.area,
  vibratingArea: (response) => response.vibratingArea,
  peakFlow: (response) => response.peakFlow,
  closingPressure: (response) => response.closingPressure,
  resonance: (response) => response.resonance,
  tipStiffness: (response) => response.tipStiffness,
};

/** In the order they are shown. */
export const lipDialIds = Object.keys(read) as readonly LipDialId[];

/** The number that a dial shows, in SI units. */
export function dialValue(response: LipResponse, id: LipDialId): number {
  return read[id](response);
}

/**
 * The six dials of a reed beside another, usually the all-round reed under the same lips and breath.
 *
 * @example lipDials(response, response).map(({ ratio }) => ratio) → [1, 1, 1, 1, 1, 1]
 */
export function lipDials(response: LipResponse, other: LipResponse): LipDial[] {
  return lipDialIds.map((id) => {
    const [value, beside] = [dialValue(response, id), dialValue(other, id)];
    return { id, value, ...(beside > 0 ? { ratio: value / beside } : {}) };
  });
}
