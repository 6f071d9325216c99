import type { Assumption, AssumptionId } from "../acoustics/assumptions.js";
import type { LipDialId } from "../acoustics/lip-dials.js";
import type { LipPresetId } from "../acoustics/lip-presets.js";
import type { LipPurpose, TradeRow } from "../acoustics/trade-and-model.js";
import { lipPanelWords } from "./lip-panel-words.js";
import { dialInSentence, whyWords } from "./lip-why.js";

/** How a number in SI units is shown: times the factor, with so many digits behind the point. */
export interface ShownUnit {
  readonly label: string;
  readonly unit: string;
  readonly factor: number;
  readonly decimals: number;
}

const dials: Readonly<Record<LipDialId, ShownUnit>> = {
  opening: { label: "Opening", unit: "mm²", factor: 1e6, decimals: 1 },
  vibratingArea: { label: "Vibrating area", unit: "mm²", factor: 1e6, decimals: 0 },
  peakFlow: { label: "Air at the peak", unit: "cm³/s", factor: 1e6, decimals: 0 },
  closingPressure: { label: "Closing pressure", unit: "kPa", factor: 1e-3, decimals: 1 },
  resonance: { label: "Resonance of the blade", unit: "Hz", factor: 1, decimals: 0 },
  tipStiffness: { label: "Tip stiffness", unit: "N/m", factor: 1, decimals: 0 },
};

const dialHints: Readonly<Record<LipDialId, string>> = {
  opening: "Area between the blades at the tip, under these lips and this breath.",
  vibratingArea: "The blade in front of the lips, less its closed corners.",
  peakFlow: "The most air that these lips let through, at whatever breath that takes.",
  closingPressure: "The pressure that would bring the blades together if they gave way evenly.",
  resonance: "How often a second the blade alone would swing, out of the mouth.",
  tipStiffness: "How hard the tip of one blade pushes back, for the way that it is bent.",
};

const presets: Readonly<Record<LipPresetId, string>> = {
  softLow: "Soft low entry",
  middle: "Mezzo-forte middle",
  highRegister: "High register",
  fullVolume: "Full volume",
};

const assumptionWords: Readonly<Record<AssumptionId, ShownUnit & { readonly hint: string }>> = {
  youngsModulus: {
    label: "Stiffness of cane along the grain",
    unit: "GPa",
    factor: 1e-9,
    decimals: 1,
    hint: "Young's modulus of wet cane that has been played in.",
  },
  density: {
    label: "Density of cane",
    unit: "kg/m³",
    factor: 1,
    decimals: 0,
    hint: "Wet cane that has been played in.",
  },
  tipEdge: {
    label: "Edge of the tip",
    unit: "",
    factor: 1,
    decimals: 2,
    hint: "Thickness at the very edge against the reading 1 mm behind it.",
  },
  tipCorner: {
    label: "Corners of the tip",
    unit: "",
    factor: 1,
    decimals: 2,
    hint: "Thickness near the corners against the middle of the tip.",
  },
  thinnest: {
    label: "Thinnest cane",
    unit: "mm",
    factor: 1,
    decimals: 2,
    hint: "Nothing on the blade is taken to be thinner.",
  },
  waist: {
    label: "Waist of the blade",
    unit: "",
    factor: 1,
    decimals: 2,
    hint: "How much narrower than a straight taper the blade is half way, as a share of the taper.",
  },
  collarOverThroat: {
    label: "Collar over throat",
    unit: "mm",
    factor: 1,
    decimals: 1,
    hint: "The collar is this much wider than the throat.",
  },
  elbow: {
    label: "Softness of the closure",
    unit: "",
    factor: 1,
    decimals: 2,
    hint: "Over which share of the closing pressure a hinged reed eases into its closure.",
  },
  wall: {
    label: "Wall of the tube",
    unit: "mm",
    factor: 1,
    decimals: 1,
    hint: "At the throat; what it takes from the throat's width and height is lost to the air.",
  },
  lipPlace: {
    label: "Place of the lips",
    unit: "mm",
    factor: 1,
    decimals: 0,
    hint: "Behind the tip; the presets bring their own.",
  },
  airDensity: {
    label: "Density of the air",
    unit: "kg/m³",
    factor: 1,
    decimals: 2,
    hint: "Air at room temperature; warm, moist breath is a little lighter.",
  },
};

const agreeWords: Readonly<Record<TradeRow["agree"], string>> = {
  yes: "agree",
  no: "disagree",
  partly: "half",
  silent: "one is silent",
};

const saysWords: Readonly<Record<TradeRow["model"], string>> = {
  more: "more",
  less: "less",
  both: "both",
  nothing: "nothing",
};

const percent = new Intl.NumberFormat("en-GB", {
  style: "percent",
  maximumFractionDigits: 0,
  signDisplay: "exceptZero",
});

/** A share as the screens write it: "42 %". */
function share(value: number): string {
  return `${Math.round(value * 100)} %`;
}

/** "clearly higher": how much a dial differs from the all-round reed's. */
function degree(id: LipDialId, ratio: number): string {
  const away = Math.abs(ratio - 1);
  if (away < 0.02) return "about the same";
  const { more, less } = dialInSentence[id];
  const way = ratio > 1 ? more : less;
  return `${away < 0.08 ? "a little" : away < 0.25 ? "clearly" : "much"} ${way}`;
}

/** What the panel on lips and opening says, in English. */
export const lipWords = {
  title: "Lip and opening",
  simpleModel: "A simple model, not a measurement of this reed.",
  noSound: "It predicts no sound and plays none.",
  hingingNote:
    "Hinging: a craft observation with an elastic analogy; no measurement on bassoon blades was found.",
  beside: "It stands beside the triangle and never moves the point.",
  cautions: {
    lips: "Try it on the screen, not by biting: stop when jaw or lips hurt, ask your teacher, and see a doctor if the pain stays.",
    loud: "Full volume in a small room is hard on the ears: keep it short, and protect your hearing.",
  },

  controls: {
    lip: "Lip pressure",
    blow: "Blowing pressure",
    unit: "kPa",
    presets: "Play as for",
    /** Pa → what a screen reader says of a slider. */
    valueText: (pressure: number): string => `${(pressure / 1000).toFixed(1)} kilopascals`,
    adds: "Both press the blades together, so both count.",
  },
  presets,

  dials,
  dialHints,
  /** "+9 %" against the all-round reed; nothing to compare with where that is closed. */
  change: (ratio: number | undefined): string =>
    ratio === undefined
      ? "–"
      : percent
          .format(ratio - 1)
          .replace("%", " %")
          .replace("-", "−"),
  degree: (id: LipDialId, ratio: number | undefined): string =>
    ratio === undefined ? "the all-round reed is closed" : degree(id, ratio),
  /** Heard by a screen reader for a dial. */
  dial: (id: LipDialId, value: string, ratio: number | undefined): string =>
    `${dials[id].label} ${value} ${dials[id].unit}, ${
      ratio === undefined
        ? "while the all-round reed is closed"
        : `${degree(id, ratio)}${Math.abs(ratio - 1) < 0.02 ? " as" : " than"} the all-round reed`
    }.`,

  opening: {
    title: "The opening from the front",
    closed: (closed: number): string =>
      closed >= 1 ? "The reed is closed." : `Closed by ${share(closed)} of its height.`,
    corners: "The corners meet first.",
  },
  region: {
    title: "What vibrates",
    lips: "lips",
    hint: "In front of the lips, less the closed corners; it shrinks as the lips press.",
  },
  curve: {
    title: "Air over blowing pressure",
    blow: "blowing pressure, kPa",
    flow: "air, cm³/s",
    now: "now",
    peak: "most air",
    closure: "closes and beats",
    unheld: "cannot be held",
    jump: "snaps",
    describe: (flow: string, peak: string, peakBlow: string, closure: string): string =>
      `Now ${flow} cm³/s. Most air ${peak} cm³/s at ${peakBlow} kPa; closed from ${closure} kPa on.`,
    shut: "These lips close the reed alone.",
  },
  second: { outline: (name: string): string => `outline: ${name}` },

  hinges: {
    title: "What do hinges buy?",
    without: "the same reed without hinges",
    with: "with full hinges",
    /** Shares of all openings. */
    answer: (without: number, now: number, full: number): string =>
      `Without hinges the lips can hold ${share(without)} of all openings, with full hinges ${share(full)}; this reed ${share(now)}.`,
    jumps:
      "Where the curve turns down (the fold) the blades snap on by themselves, so no lip can set an opening there.",
  },

  answers: {
    high: "A small vibrating area serves the high register because a short, light part swings faster than a long, heavy one: of two even strips the one half as long swings four times as fast.",
    loud: "A loud reed is open and wide in the throat because the air has to pass both, and the narrower one sets the limit.",
    hinges:
      "Hinges let the lips set and keep many openings; without them a blade holds out and then snaps.",
    wire: "A round wire firms a reed because it arches the blades, and an arched sheet is far harder to bend than a flat one, as a bent sheet of paper is.",
  },

  trade: {
    title: "Trade says, model says",
    feature: "Feature",
    purpose: "Purpose",
    tradeSays: "Trade says",
    modelSays: "Model says",
    agree: "Agree?",
    why: "Why",
    tradeNote: "Trade: common practice, no source, read off the corner reeds.",
    meaning: {
      high: "Model says for the high register: a higher resonance, and a smaller vibrating area at the same lip.",
      low: "Model says for soft and low: a lower closing pressure, and a larger vibrating area.",
      loud: "Model says for full volume: more air at the peak.",
    } as Readonly<Record<LipPurpose, string>>,
    says: saysWords,
    agreement: agreeWords,
    count: (rows: readonly Pick<TradeRow, "agree">[]): string => {
      const many = (one: TradeRow["agree"]): number =>
        rows.filter(({ agree }) => agree === one).length;
      return `${many("yes")} agree, ${many("partly")} half, ${many("no")} disagree, in ${many("silent")} one is silent.`;
    },
    whyOf: whyWords,
  },

  assumptions: {
    title: "What the model assumes",
    intro: "Every constant of the model; each may be moved within its plausible range.",
    words: assumptionWords,
    basis: ({ basis, source }: Pick<Assumption, "basis" | "source">): string => {
      if (basis === "assumption" || source === undefined) return "Assumption.";
      return basis === "range"
        ? `Assumption within a published range: ${source}.`
        : `Assumption; the law after ${source}.`;
    },
    range: (low: string, high: string, unit: string): string =>
      `Plausible: ${low} to ${high}${unit ? ` ${unit}` : ""}.`,
    reset: "Back to the first values",
    presetsNote:
      "Pressures and places of the presets are assumptions too: no readable source gives them.",
  },
  panel: lipPanelWords,
};
