import { bladeCrossSection } from "./blade.js";
import { presetState } from "./lip-presets.js";
import { respond } from "./lip-response.js";
import { archSagitta, archedInertia, reedMechanics, type ReedMechanics } from "./reed-mechanics.js";

/** Numbers of one reed that answer why the trade does what it does. */
export interface LipProofs {
  /** What swings under the lips for the high register, and for a soft low entry, m². */
  readonly areaHigh: number;
  readonly areaLow: number;
  /** Air at the peak with relaxed lips, as ratios to the reed as it is. */
  readonly tallerAir: number;
  readonly widerAir: number;
  readonly bothAir: number;
  /** With a first wire rounder by 0.04, as ratios to the reed as it is. */
  readonly rounderClosing: number;
  readonly rounderResonance: number;
  /** How many times as stiff as a flat blade of the same cane the arch makes it at the collar. */
  readonly archAtCollar: number;
}

const atRest = { lip: 0, blow: 0 };
const tenth = 1.1;
const rounder = 0.04;

/**
 * What the questions of the panel are answered with: a small vibrating area for high lips, more air through a taller
 * opening and a wider throat, a firmer blade under a rounder first wire.
 *
 * Shape   reed → areas and ratios.
 * Throws  RangeError as `reedMechanics`, of the changed recipes.
 * Source  computed by the model; that a reed maker uses them so: common practice, no source.
 */
export function lipProofs(reed: ReedMechanics): LipProofs {
  const { recipe, assumptions } = reed;
  const changed = (change: Partial<typeof recipe>): ReedMechanics =>
    reedMechanics({ ...recipe, ...change }, assumptions);
  const air = (one: ReedMechanics): number => respond(one, atRest).peakFlow;
  const taller = { openingHeight: recipe.openingHeight * tenth };
  const wider = { throatWidth: recipe.throatWidth * tenth };
  const firmed = changed({ firstWire: recipe.firstWire + rounder });
  const plain = air(reed);
  return {
    areaHigh: respond(reed, presetState("highRegister")).vibratingArea,
    areaLow: respond(reed, presetState("softLow")).vibratingArea,
    tallerAir: air(changed(taller)) / plain,
    widerAir: air(changed(wider)) / plain,
    bothAir: air(changed({ ...taller, ...wider })) / plain,
    rounderClosing: firmed.closingPressure / reed.closingPressure,
    rounderResonance: firmed.resonance / reed.resonance,
    archAtCollar: archAt(reed, recipe.bladeLength / 1000),
  };
}

function archAt({ recipe, assumptions }: ReedMechanics, x: number): number {
  const { mean, meanCube } = bladeCrossSection(recipe, assumptions)(x);
  return archedInertia(meanCube, mean, archSagitta(recipe)(x)) / archedInertia(meanCube, mean, 0);
}
