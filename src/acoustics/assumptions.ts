/** What a constant is counted in. */
export type AssumptionUnit = "Pa" | "kg/m³" | "mm" | "share" | "ratio";

/** One constant of the model, with the range in which it is plausible. */
export interface Assumption {
  readonly value: number;
  readonly unit: AssumptionUnit;
  readonly min: number;
  readonly max: number;
  /**
   * Where it comes from: an assumption from memory altogether; an assumption within the range that a source gives;
   * an assumption in a law of which a source gives the form.
   */
  readonly basis: "assumption" | "range" | "law";
  /** The publication, unless all is an assumption. */
  readonly source?: string;
}

function assumption(value: number, unit: AssumptionUnit, min: number, max: number): Assumption {
  return { value, unit, min, max, basis: "assumption" };
}

/**
 * Every constant of the lip model by name: what it is taken to be, in which unit, in which range that is plausible.
 *
 * Unit    as each says; lengths in mm like the recipe's.
 */
export const assumptions = {
  /** Young's modulus along the grain, played-in wet cane: 5.25–6.25 GPa in the first source; wet much less in the second. */
  youngsModulus: {
    ...assumption(5.5e9, "Pa", 2e9, 15e9),
    basis: "range",
    source:
      "Weidenfeller et al. (2018), Materials Research 21(s2); Ukshini & Dirckx (2020), Materials 13",
  },
  /** Played-in wet cane. */
  density: assumption(900, "kg/m³", 450, 1150),

  /** The very edge of the tip against the reading 1 mm behind it. */
  tipEdge: assumption(0.8, "ratio", 0.6, 1),
  /** The tip 1 mm in from its corners against its middle; from usual corner readings of .05 to .08 mm. */
  tipCorner: assumption(0.6, "ratio", 0.4, 1),
  /** Cane is never thinner than this. */
  thinnest: assumption(0.03, "mm", 0.01, 0.06),
  /** How much narrower the blade is half way than a straight taper, as a share of the taper. */
  waist: assumption(0.12, "share", 0, 0.25),
  /** The collar is this much wider than the throat. */
  collarOverThroat: assumption(1, "mm", 0, 2),

  /** Half-width of the parabola with which a hinged reed comes to its closure, as a share of the closing pressure. */
  elbow: {
    ...assumption(1 / 6, "share", 0.02, 0.5),
    basis: "law",
    source: "Gazengel et al. (2025), Acta Acustica 9",
  },
  /** Thickness of the tube's wall at the throat. */
  wall: assumption(1, "mm", 0.7, 1.3),
  /** Where the lips lie, behind the tip. */
  lipPlace: assumption(12, "mm", 4, 20),
  /** Breath is warm and moist: a little lighter than dry air of the room. */
  airDensity: assumption(1.2, "kg/m³", 1.1, 1.25),
} as const satisfies Readonly<Record<string, Assumption>>;

/** Name of a constant. */
export type AssumptionId = keyof typeof assumptions;

/** A value for every constant. */
export type Assumptions = Readonly<Record<AssumptionId, number>>;

const ids = Object.keys(assumptions) as AssumptionId[];

/** Every constant at its first value. */
export const assumed: Assumptions = Object.freeze(
  Object.fromEntries(ids.map((id) => [id, assumptions[id].value])) as Record<AssumptionId, number>,
);

/**
 * Every constant, some of them changed.
 *
 * Throws  RangeError naming a constant that does not exist, or a value outside its plausible range.
 *
 * @example withAssumptions({ wall: 0.9 }).wall → 0.9
 */
export function withAssumptions(changes: Partial<Assumptions> = {}): Assumptions {
  for (const [id, value] of Object.entries(changes)) {
    if (!Object.hasOwn(assumptions, id)) {
      throw new RangeError(`assumptions: "${id}" is not one; allowed: ${ids.join(", ")}`);
    }
    const { min, max, unit } = assumptions[id as AssumptionId];
    if (value >= min && value <= max) continue;
    throw new RangeError(`assumptions: ${id} is ${value} ${unit}; allowed: ${min} to ${max}`);
  }
  return { ...assumed, ...changes };
}
