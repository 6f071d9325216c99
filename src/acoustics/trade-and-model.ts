import { assumed, type Assumptions } from "./assumptions.js";
import { respond } from "./lip-response.js";
import { dialValue, type LipDialId } from "./lip-dials.js";
import { presetState, type LipState } from "./lip-presets.js";
import { reedMechanics, type LipRecipe, type ReedMechanics } from "./reed-mechanics.js";

/** The three purposes of a reed. */
export type LipPurpose = "high" | "low" | "loud";

/** What the trade says of a feature for a purpose: more of it, less of it, or nothing much. */
export type TradeSays = "more" | "less" | "nothing";

/** A feature (or a ratio) with what "more of it" changes in a recipe, and what the trade says of it. */
export interface TradeFeature {
  readonly id: string;
  /** A step of the feature, in the recipe's units; a ratio's step changes two readings. */
  readonly step: Readonly<Record<string, number>>;
  readonly trade: Readonly<Record<LipPurpose, TradeSays>>;
}

/** What a dial must do to serve a purpose. */
export interface Criterion {
  readonly dial: LipDialId;
  readonly wanted: "more" | "less";
}

/**
 * What "the model says" means: the dials that serve each purpose. High register: a higher resonance, and a smaller
 * vibrating area at the same lip. Soft and low: a lower closing pressure and a larger vibrating area. Full volume: more
 * air at the peak.
 */
export const purposeCriteria: Readonly<Record<LipPurpose, readonly Criterion[]>> = {
  high: [
    { dial: "resonance", wanted: "more" },
    { dial: "vibratingArea", wanted: "less" },
  ],
  low: [
    { dial: "closingPressure", wanted: "less" },
    { dial: "vibratingArea", wanted: "more" },
  ],
  loud: [{ dial: "peakFlow", wanted: "more" }],
};

/** The lips and the breath that each purpose is judged under. */
export const purposeStates: Readonly<Record<LipPurpose, LipState>> = {
  high: presetState("highRegister"),
  low: presetState("softLow"),
  loud: presetState("fullVolume"),
};

/** What more of a feature does to one dial. */
export interface CriterionChange extends Criterion {
  /** Of the dial for one step, relative: 0.02 is 2 % more. */
  readonly change: number;
  /** The change serves the purpose, works against it, or is too small to count. */
  readonly effect: "serves" | "hinders" | "none";
}

/** One line of the table. */
export interface TradeRow {
  readonly feature: string;
  readonly purpose: LipPurpose;
  readonly trade: TradeSays;
  /** "both": one dial asks for more of the feature, the other for less. */
  readonly model: TradeSays | "both";
  readonly agree: "yes" | "no" | "partly" | "silent";
  readonly changes: readonly CriterionChange[];
  /** Names the sentence that says why: feature, purpose and how the two agree. */
  readonly reason: `${string}/${LipPurpose}/${TradeRow["agree"]}`;
}

/** A dial that moves by less than this for one step is not spoken of. */
const leastChange = 0.01;
const purposes: readonly LipPurpose[] = ["high", "low", "loud"];

/**
 * What the trade says of each feature for each purpose beside what the model says at this reed.
 *
 * Shape   recipe, features with what the trade says, changed states and assumptions → a row a feature and purpose.
 * Unit    recipe in mm, ratio, 0 … 1.
 * Domain  the reed a step to either side must still be a reed; a reed that is closed in one of the states moves
 *         no dial there.
 * Throws  RangeError as `lipResponse`.
 * Source  the trade's directions: common practice, no source. The model's: computed, half a step to either side.
 */
export function tradeAndModel(
  recipe: LipRecipe,
  features: readonly TradeFeature[],
  states: Readonly<Record<LipPurpose, LipState>> = purposeStates,
  given: Assumptions = assumed,
): TradeRow[] {
  return features.flatMap(({ id, step, trade }) => {
    const less = reedMechanics(stepped(recipe, step, -0.5), given);
    const more = reedMechanics(stepped(recipe, step, 0.5), given);
    return purposes.map((purpose) => {
      const changes = purposeCriteria[purpose].map((criterion) =>
        changeOf(criterion, less, more, states[purpose]),
      );
      const model = verdict(changes);
      const agree = agreement(trade[purpose], model);
      const reason = `${id}/${purpose}/${agree}` as const;
      return { feature: id, purpose, trade: trade[purpose], model, agree, changes, reason };
    });
  });
}

function stepped(recipe: LipRecipe, step: TradeFeature["step"], share: number): LipRecipe {
  const changed: Record<string, number> = { ...recipe };
  for (const [id, amount] of Object.entries(step)) changed[id] = changed[id]! + share * amount;
  return changed as unknown as LipRecipe;
}

function changeOf(
  { dial, wanted }: Criterion,
  less: ReedMechanics,
  more: ReedMechanics,
  state: LipState,
): CriterionChange {
  const [from, to] = [less, more].map((reed) => dialValue(respond(reed, state), dial)) as [
    number,
    number,
  ];
  const change = from > 0 && to > 0 ? to / from - 1 : to - from === 0 ? 0 : to > from ? 1 : -1;
  const serves = change > 0 === (wanted === "more");
  const effect = Math.abs(change) < leastChange ? "none" : serves ? "serves" : "hinders";
  return { dial, wanted, change, effect };
}

function verdict(changes: readonly CriterionChange[]): TradeRow["model"] {
  const serves = changes.some(({ effect }) => effect === "serves");
  const hinders = changes.some(({ effect }) => effect === "hinders");
  if (serves && hinders) return "both";
  return serves ? "more" : hinders ? "less" : "nothing";
}

function agreement(trade: TradeSays, model: TradeRow["model"]): TradeRow["agree"] {
  if (trade === "nothing" || model === "nothing") return trade === model ? "yes" : "silent";
  if (model === "both") return "partly";
  return trade === model ? "yes" : "no";
}
