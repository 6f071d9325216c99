import type { Assumption } from "./assumptions.js";

/** What the lips and the breath do. */
export interface LipState {
  /** Lip pressure, Pa. */
  readonly lip: number;
  /** Blowing pressure, Pa. */
  readonly blow: number;
  /** Where the lips lie, mm behind the tip; without it the assumed place. */
  readonly place?: number;
}

/** How something is played. */
export type LipPresetId = "softLow" | "middle" | "highRegister" | "fullVolume";

/** The three numbers of a preset, each with its plausible range. */
export type LipPreset = Readonly<Record<keyof LipState, Assumption>>;

/** No readable source gives lip pressures or places on bassoon reeds: assumptions, all of them. */
function preset(lip: number, blow: number, place: number): LipPreset {
  return {
    lip: { value: lip, unit: "Pa", min: 0, max: 6000, basis: "assumption" },
    blow: {
      value: blow,
      unit: "Pa",
      min: 980,
      max: 11800,
      basis: "range",
      // Reed woodwinds are blown at 0.98–11.8 kPa.
      source: "Fuks & Sundberg (1996), TMH-QPSR 3",
    },
    place: { value: place, unit: "mm", min: 4, max: 20, basis: "assumption" },
  };
}

/** Four ways of playing; the smallest vibrating part serves the high register, the largest the loud and the low. */
export const lipPresets: Readonly<Record<LipPresetId, LipPreset>> = {
  softLow: preset(1000, 1500, 13),
  middle: preset(1500, 3000, 12),
  highRegister: preset(2500, 4500, 10),
  fullVolume: preset(500, 5000, 14),
};

/** How far the two controls go, Pa: from relaxed lips and no breath to what closes a usual reed. */
export const lipControls = {
  lip: { min: 0, max: 8000, step: 100 },
  blow: { min: 0, max: 12000, step: 100 },
} as const;

/**
 * A preset as a state of lips and breath.
 *
 * @example presetState("middle").blow → 3000
 */
export function presetState(id: LipPresetId): Required<LipState> {
  const { lip, blow, place } = lipPresets[id];
  return { lip: lip.value, blow: blow.value, place: place.value };
}
