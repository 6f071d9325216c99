import type { LipDialId } from "../acoustics/lip-dials.js";
import type {
  CriterionChange,
  LipPurpose,
  TradeRow,
  TradeSays,
} from "../acoustics/trade-and-model.js";

/** How the number of a dial is spoken of: "a 4 % higher resonance". */
export const dialInSentence: Readonly<
  Record<LipDialId, { readonly name: string; readonly more: string; readonly less: string }>
> = {
  opening: { name: "opening", more: "larger", less: "smaller" },
  vibratingArea: { name: "vibrating area", more: "larger", less: "smaller" },
  peakFlow: { name: "air at the peak", more: "more", less: "less" },
  closingPressure: { name: "closing pressure", more: "higher", less: "lower" },
  resonance: { name: "resonance", more: "higher", less: "lower" },
  tipStiffness: { name: "tip stiffness", more: "greater", less: "smaller" },
};

const purposeWords: Readonly<Record<LipPurpose, string>> = {
  high: "the high register",
  low: "soft and low playing",
  loud: "full volume",
};

/** What more of a feature does to the model's blade, as the first half of a sentence. */
const mechanisms: Readonly<Record<string, string>> = {
  bladeLength: "A longer blade gives way more easily and swings more slowly",
  tipWidth: "A wider tip puts more cane in front of the lips and more surface under the pressure",
  throatWidth: "A wider throat stands the blade on a taller arch and gives the air a wider tube",
  firstWire: "A rounder first wire arches the blade higher, and an arch is hard to bend",
  secondWire: "The model's blade ends at the collar and does not feel the second wire",
  heart:
    "A thicker heart adds weight near the tip but little firmness, which comes from the arch and the back",
  wings: "Thicker wings add weight near the tip but little firmness",
  spine: "A thicker spine firms the middle of the blade",
  rails: "Thicker rails firm the back of the blade over more of its width than the spine does",
  tip: "A thicker tip adds weight where the blade swings furthest and firmness where it bends least",
  backRise: "A steeper profile puts cane toward the collar, where a clamped blade bends most",
  hinging:
    "Stronger hinges let the blade give way evenly instead of holding out and then snapping shut",
  openingHeight: "A taller opening has further to close and arches the blade at the tip",
  openingWidth: "A wider opening changes the hole for the air, not the model's blade",
  heartToWings:
    "More heart and less wing shift cane from the sides to the middle, and the model's beam feels their mean",
  spineToRails:
    "More spine and less rail shift cane from the sides to the middle, and the model's beam feels their mean",
};

/** What the model leaves out, where the trade asks for something that it does not: craft reasoning, no source. */
const leftOut: Readonly<Record<string, string>> = {
  bladeLength: "the model knows no pitch, and the blade's length is first of all tuned by it",
  tipWidth:
    "a large swinging surface moves more air, and the peak of a steady stream does not count it",
  throatWidth: "the bore begins at the throat, and what the air column does is not in the model",
  firstWire:
    "a wire also sets the opening and the pitch, which the model takes as they are measured",
  secondWire:
    "the second wire works through the tip opening, which the model takes as it is measured",
  heart:
    "what teachers call support shows in pitch and in how a note holds, and neither is in the model",
  wings: "how the corners of the tip swing beside its middle is what a beam cannot tell",
  spine:
    "what teachers call support shows in pitch and in how a note holds, and neither is in the model",
  rails: "rails also keep the edges tight and guide the corners, and a beam has no edges",
  tip: "how easily a note starts is decided at the very tip, which the blade as a whole hardly feels",
  backRise:
    "in the trade a steep profile goes with a thinner front, while the model leaves the front as it is",
  hinging:
    "what hinges buy is the choice of openings that can be held, which is a dial of its own and not in this row",
  openingHeight: "a player shapes the opening with the lips, and the model lets them only press",
  openingWidth: "a player shapes the opening with the lips, and the model closes it in proportion",
  heartToWings: "how the middle and the sides share the bending is what a beam cannot tell",
  spineToRails: "how the middle and the sides share the bending is what a beam cannot tell",
};

const percent = new Intl.NumberFormat("en-GB", { style: "percent", maximumFractionDigits: 0 });
const list = new Intl.ListFormat("en-GB", { type: "conjunction" });

/** "a 9 % lower closing pressure". */
function changeWords({ dial, change }: CriterionChange): string {
  const { name, more, less } = dialInSentence[dial];
  const size = percent.format(Math.abs(change)).replace("%", " %");
  const degree = change > 0 ? more : less;
  if (dial === "peakFlow") return `${size} ${degree} ${name}`;
  return `${/^(8|11 |18 )/.test(size) ? "an" : "a"} ${size} ${degree} ${name}`;
}

/** "more of it", "less of it". */
function asked(says: TradeSays): string {
  return says === "nothing" ? "nothing" : `${says} of it`;
}

/**
 * Why the trade and the model agree or do not, as one sentence.
 *
 * Shape   a row of the table → a sentence that ends with a full stop.
 */
export function whyWords(row: TradeRow): string {
  const mechanism = mechanisms[row.feature] ?? "The model does not read this feature";
  const moved = row.changes.filter(({ effect }) => effect !== "none");
  const gives = moved.length > 0 ? ` (${list.format(moved.map(changeWords))})` : "";
  return `${mechanism}${gives}: ${ending(row, moved)}.`;
}

function ending(row: TradeRow, moved: readonly CriterionChange[]): string {
  const purpose = purposeWords[row.purpose];
  const beyond = leftOut[row.feature] ?? "the model knows less than the trade";
  if (row.model === "both") return bothWays(row, moved, purpose);
  if (row.model === "nothing") {
    return row.trade === "nothing"
      ? `nothing that counts for ${purpose} changes, and the trade asks for nothing`
      : `nothing that counts for ${purpose} changes, yet the trade asks for ${asked(row.trade)}; ${beyond}`;
  }
  const side = row.model === "more" ? "serves" : "hinders";
  if (row.agree === "yes")
    return `that ${side} ${purpose}, and the trade asks for ${asked(row.trade)}`;
  if (row.trade === "nothing") return `that ${side} ${purpose}, where the trade asks for nothing`;
  return `that ${side} ${purpose}, yet the trade asks for ${asked(row.trade)}; ${beyond}`;
}

/** One dial asks for more of the feature, the other for less; the trade may side with one of them. */
function bothWays(row: TradeRow, moved: readonly CriterionChange[], purpose: string): string {
  const nameOf = (effect: CriterionChange["effect"]): string =>
    list.format(
      moved.filter((one) => one.effect === effect).map(({ dial }) => dialInSentence[dial].name),
    );
  const [serving, hindering] = [nameOf("serves"), nameOf("hinders")];
  const start = `the ${serving} serves ${purpose}, the ${hindering} does not`;
  if (row.trade === "nothing") return `${start}, and the trade asks for nothing`;
  const sided = row.trade === "more" ? serving : hindering;
  return `${start}, and the trade, which asks for ${asked(row.trade)}, sides with the ${sided}`;
}
