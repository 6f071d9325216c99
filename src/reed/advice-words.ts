import type { Purpose } from "../engine/model.js";
import type { PlanKind } from "../engine/plan-adjustments.js";
import type { Obstacle } from "../engine/plan-obstacle.js";
import { inSentence } from "./in-sentence.js";
import { percentagePoints } from "./percentage-words.js";
import {
  byEffects,
  compared,
  likelyNames,
  purposes,
  qualitiesInSentence,
  targetsInSentence,
  type ByEffect,
} from "./advice-terms.js";

const numerals = "no one two three four five six seven eight nine ten eleven twelve".split(" ");
const numeral = (count: number): string => numerals[count] ?? String(count);
const strokes = (count: number): string =>
  `${numeral(count)} or ${numeral(count + 1)} light strokes`;
const times = (count: number, one: string, more: string): string =>
  `${numeral(count)} ${count === 1 ? one : more}`;
const list = new Intl.ListFormat("en-GB", { type: "conjunction" });
const orList = new Intl.ListFormat("en-GB", { type: "disjunction" });
const percent = new Intl.NumberFormat("en-GB", { style: "percent", maximumFractionDigits: 0 });
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** "round the first wire by 0.02, play; then flatten the second wire by 0.02" */
const inARow = (steps: readonly string[]): string =>
  steps.map((step) => step.charAt(0).toLowerCase() + step.slice(1)).join("; play; ");

/** An action with its amount, as one says it to a student; other actions by label and amount. */
const deeds: Readonly<
  Record<string, (amount: number, by: string, isBelowGauge: boolean) => string>
> = {
  roundFirstWire: (_, by, below) => wire("Round the first wire", by, below),
  flattenFirstWire: (_, by, below) => wire("Flatten the first wire", by, below),
  roundSecondWire: (_, by, below) => wire("Round the second wire", by, below),
  flattenSecondWire: (_, by, below) => wire("Flatten the second wire", by, below),
  thinTip: (amount, by, below) =>
    counted("Thin the tip", amount, by, below, "on each of the four quarters"),
  thinWings: (amount, by, below) =>
    counted("Thin the wings", amount, by, below, "on each of the four wings"),
  thinRails: (amount, by, below) =>
    counted("Thin the rails", amount, by, below, "along each of the four rails"),
  thinHeart: (amount, by, below) => counted("Thin the heart", amount, by, below, "on each blade"),
  thinSpine: (amount, by, below) => counted("Thin the spine", amount, by, below, "on each blade"),
  thinTipCorners: (amount) =>
    `Thin the tip corners, ${numeral(2 * amount)} short strokes off each of the four`,
  thinChannels: (amount) => `Thin the channels, ${strokes(amount)} in each of the four`,
  thinBack: (amount) => `Thin the back, ${strokes(amount)} across its full width on each blade`,
  dustBlade: (amount) =>
    `Dust the whole blade, ${times(amount, "light pass", "light passes")} over each quarter`,
  cutHinges: (amount) =>
    `Sharpen the hinges by ${times(amount, "stroke", "strokes")}, press and look after each`,
  softenHinges: (amount) =>
    `Soften the hinges by ${times(amount, "stroke", "strokes")}, press and look after each`,
  clipTip: (amount, by) =>
    amount === 1
      ? `Clip the tip once, by ${by}`
      : `Clip the tip by ${by}, in ${times(amount, "cut", "cuts")}`,
  narrowBlade: (_, by) => `Narrow the blade by ${by}, half of it on each side`,
};

/** A hand counts strokes, the gauge says when it is enough: about a hundredth of a millimetre a stroke. Common practice, no source. */
function counted(
  deed: string,
  amount: number,
  by: string,
  isBelowGauge: boolean,
  where: string,
): string {
  return isBelowGauge
    ? `${deed}, ${strokes(amount)} ${where}`
    : `${deed} by ${by}, about ${strokes(amount)} ${where}`;
}

function wire(deed: string, by: string, isBelowGauge: boolean): string {
  return isBelowGauge
    ? `${deed} by one gentle squeeze, less than you can measure`
    : `${deed} by ${by}`;
}

/** What stands in how well. */
function likeness(value: number): string {
  if (value >= 0.95) return "nearly the same pull";
  return value >= 0.8 ? "much the same pull" : "only part of that pull";
}

/** "thins the rails and the spine and opens the tip": one verb for all that it is said of. */
function joined(effects: readonly ByEffect[]): string {
  const objects = new Map<string, string[]>();
  for (const { verb, object } of effects) objects.set(verb, [...(objects.get(verb) ?? []), object]);
  return list.format([...objects].map(([verb, all]) => `${verb} ${list.format(all)}`));
}

/** The words of stand-ins, plans, qualities and troubles in English. */
export const adviceWords = {
  standIns: {
    title: "Stand-ins",
    /** What the list is for. */
    instead: (change: string): string => `Instead of ${change}:`,
    offset: (change: string): string => `To make up for ${change}:`,
    features: "Features that pull the same way",
    byHand: "What hands can do",
    pairs: "Two that together do it exactly",
    none: "Nothing on this reed stands in for it.",
    noneByHand: "Nothing that hands can do in one easy sitting stands in for it.",
    /** "a first wire rounder by 0.04". */
    change: (id: string, label: string, more: boolean, by: string): string => {
      const words = compared[id];
      if (!words) return `${more ? "more" : "less"} ${inSentence(label)}, by ${by}`;
      return `${words.noun} ${more ? words.more : words.less} by ${by}`;
    },
    feature: (change: string, like: number, leftover: string, possible: string): string =>
      `${capital(change)}: ${likeness(like)}; ${leftover}.${possible}`,
    hand: (deed: string, like: number, leftover: string, also: string, possible: string): string =>
      `${deed}: ${likeness(like)}; ${leftover}.${also}${possible}`,
    pair: (first: string, second: string): string => {
      const noun = /^an? \w+ /.exec(first)?.[0] ?? "";
      const isOne = noun !== "" && second.startsWith(noun); // two changes of the opening
      return isOne
        ? `${capital(first)} and ${second.slice(noun.length)}.`
        : `${capital(first)} together with ${second}.`;
    },
    bothWires: (round: boolean, by: string): string =>
      `${round ? "Round" : "Flatten"} both wires by ${by} each`,
    bothWiresHow: (round: boolean): string =>
      `Reed soaked, mandrel in: first the first wire, then the second, each squeezed slowly ${round ? "from the sides" : "from top and bottom"}.`,
    nothingLeft: "nothing to speak of is left over",
    lacks: (purpose: Purpose, share: number): string =>
      `the reed stays ${percentagePoints(share)} short of ${purposes[purpose]}`,
    tooMuch: (purpose: Purpose, share: number): string =>
      `the reed ends with ${percentagePoints(share)} too much of ${purposes[purpose]}`,
    impossible: " This reed does not allow it.",
    cannotPutBack: " This reed does not allow it: cane can be taken away, not put back.",
    partly: (share: number): string => ` This reed allows only ${percent.format(share)} of it.`,
    partlyByHand: (share: number): string =>
      ` One easy sitting allows ${percent.format(share)} of it.`,
    also: (effects: readonly ByEffect[]): string => ` It also ${joined(effects)}.`,
    byEffect: (id: string, label: string, more: boolean): ByEffect => {
      const words = byEffects[id];
      if (words) return { verb: more ? words.more : words.less, object: words.object };
      return { verb: more ? "raises" : "lowers", object: inSentence(label) };
    },
    /** Why the same thing comes twice, once near the top and once farther down. */
    difference: (change: string, label: string, effects: readonly ByEffect[]): string =>
      `${capital(change)} would do much the same by itself. But a hand moves more than one feature: ` +
      `“${label}” also ${joined(effects)}, and that pulls elsewhere.`,
    try: "Try",
    back: "Back",
  },

  plan: {
    title: "Plan",
    kinds: {
      undoable: "Nothing that cannot be undone",
      fewest: "Fewest moves",
      gentlest: "Gentlest on the cane",
    } as Readonly<Record<PlanKind, string>>,
    target: (id: string, label: string): string => targetsInSentence[id] ?? inSentence(label),
    there: (target: string): string =>
      `It lies in the zone for ${target} already: leave it alone, and play.`,
    reached: (moves: number, target: string): string =>
      `${capital(times(moves, "move brings", "moves bring"))} it into the zone for ${target}.`,
    /** Told when no plan reaches the zone: what the reed lies nearest to now, and whether that is near. */
    asNear: (target: string, nearest: string, isNear: boolean): string => {
      if (target === nearest)
        return `As near as it gets today: it lies nearer to ${target} than to any other part, but not in its zone.`;
      return isNear
        ? `As near as it gets today: keep this reed for ${nearest}, and take another for ${target}.`
        : `As near as it gets today: take another reed for ${target}. This one suits no part yet; it lies nearest to ${nearest}.`;
    },
    obstacles: {
      reach: "Nothing that hands can still do to this reed brings it there.",
      freedom: "What is locked or limited holds it back.",
      easy: "It would take more than is sensible in one sitting.",
      rules:
        "The few moves of one sitting do not bring it there; a second one, after playing and new readings, may.",
    } as Readonly<Record<Obstacle, string>>,
    /** The way ends at the edge of the zone; less than a hundredth of it is told as that. */
    wayLeft: (moves: number, left: number): string =>
      `If you try all the same, ${percent.format(Math.max(0.01, left))} of the way to its zone is still left after ${times(moves, "move", "moves")}.`,
    measureFirst:
      "The readings are less sure than this plan is long: measure again first, and play before you believe it.",
    /** Scraping a reed that is still settling spoils it: the rule of the actions file. */
    youngReed:
      "Has it been played fewer than three times? Then only wires and dusting today; scraping and clipping wait a day.",
    /** Where to stop; of a wire the reading is its height divided by its width. */
    until: (name: string, value: string, isWire: boolean): string =>
      isWire
        ? `Stop when its height divided by its width reads ${value}.`
        : `Stop when ${name} reads ${value}.`,
    ownRules: "The rules of your workshop or school come first.",

    step: (
      amount: number,
      id: string,
      label: string,
      by: string,
      isBelowGauge: boolean,
    ): string => {
      const deed = deeds[id];
      if (deed) return deed(amount, by, isBelowGauge);
      return isBelowGauge ? `${label}, ${strokes(amount)}` : `${label} by ${by}`;
    },
    byEar: {
      strokes: "This is less than the gauge can read: count, and listen.",
      ear: "This is less than the calliper can tell: trust the ear.",
      look: "No gauge reads this: press, look, and listen.",
    },
    reversible: "It can be undone.",
    irreversible: "It cannot be undone.",
    shortCautions: {
      knife: "Knife: light strokes, away from fingers and body.",
      pliers: "Pliers: soaked, mandrel in, slowly; stop at the first creak.",
      clipper: "Clipper: fingers clear, 0.1 mm at a time.",
      dust: "Dust: work wet or wear a mask.",
    } as Readonly<Record<string, string>>,
    pitch: (effect: string): string =>
      (
        {
          up: "The pitch rises.",
          down: "The pitch falls.",
          "slightly up": "The pitch rises a little.",
          "slightly down": "The pitch falls a little.",
          "up, clearly": "The pitch rises clearly.",
          little: "The pitch hardly moves.",
          none: "The pitch stays.",
        } as Readonly<Record<string, string>>
      )[effect] ?? `Effect on the pitch: ${effect}.`,
    readFirst: (names: readonly string[]): string =>
      `Before it read again: ${list.format(names)}; the clip has brought thicker cane there.`,
    readAgain: (names: readonly string[], movesGaugePlaces: boolean): string =>
      movesGaugePlaces
        ? `Then measure again, for every gauge place has moved: ${list.format(names)}.`
        : `Then read again: ${list.format(names)}.`,
    playNext: "Play it again before the next step.",
    playLast: "Play it. If it does what the part asks, stop here.",
    playHelp: "Play it. If the trouble is gone, stop here.",
    done: "Done",
  },

  qualities: {
    title: "Gains and costs",
    name: (id: string, label: string): string => qualitiesInSentence[id] ?? inSentence(label),
    degree: (difference: number): string => {
      const size = Math.abs(difference);
      if (size < 0.25) return "the same";
      const way = difference > 0 ? "better" : "worse";
      if (size < 1) return `a little ${way}`;
      return size < 2.5 ? way : `much ${way}`;
    },
    against: (gains: readonly string[], costs: readonly string[]): string => {
      if (gains.length === 0 && costs.length === 0)
        return "It is much like the all-round reed in everything.";
      const gained =
        gains.length > 0
          ? `Against the all-round reed it gains in ${list.format(gains)}`
          : "Against the all-round reed it gains in nothing";
      return costs.length > 0 ? `${gained}, and pays with ${list.format(costs)}.` : `${gained}.`;
    },
    judgement:
      "Whose judgement? Common practice, no source. A teacher may change every one of the seven values.",
    scale: "0 poor, 10 excellent",
  },

  trouble: {
    title: "Trouble?",
    choose: "What is wrong?",
    cause: (id: string, label: string, more: boolean): string =>
      likelyNames[id]?.[more ? "more" : "less"] ?? `${more ? "more" : "less"} ${inSentence(label)}`,
    here: (causes: readonly string[]): string =>
      `On this reed it may come from ${orList.format(causes)}.`,
    also: (causes: readonly string[]): string => `Look, too, whether ${orList.format(causes)}.`,
    notHere:
      "Nothing of what usually causes it shows in the readings. Check that the reed is sound, and read again.",
    unmeasured: (names: readonly string[]): string => `Not measured: ${list.format(names)}.`,
    first: (steps: readonly string[]): string => `First, for it can be undone: ${inARow(steps)}.`,
    after: (steps: readonly string[]): string =>
      `Only if that does not help, for it cannot be undone: ${inARow(steps)}.`,
    upTo: (step: string, by: string): string => `${step}, ${by} at most`,
    soundness: "Is it sound?",
  },
};

/** The shape that the same words of another language must have. */
export type AdviceWords = typeof adviceWords;
