import { inSentence } from "./in-sentence.js";
import { wireWords } from "./wire-words.js";
const list = new Intl.ListFormat("en-GB", { type: "conjunction" });

/** Terms for more and less of a feature, as the trade says them of a choice. */
const senses: Readonly<Record<string, { readonly less: string; readonly more: string }>> = {
  bladeLength: { less: "shorter", more: "longer" },
  tipWidth: { less: "narrower", more: "wider" },
  throatWidth: { less: "narrower", more: "wider" },
  firstWire: { less: "flatter", more: "rounder" },
  secondWire: { less: "flatter", more: "rounder" },
  backRise: { less: "flatter", more: "steeper" },
  hinging: { less: "weaker", more: "stronger" },
  openingHeight: { less: "lower", more: "taller" },
  openingWidth: { less: "narrower", more: "wider" },
};
const thicknesses = new Set(["heart", "wings", "spine", "rails", "tip"]);

/** Labels and remarks around stand-ins, plan, qualities and trouble on the screen: English. */
export const planPageWords = {
  standIns: {
    ask: (label: string): string => `Stand-ins for ${inSentence(label)}`,
    hint: "Press a name to read how to measure it, and for its stand-ins.",
    close: "Close stand-ins",
    mode: "What for",
    modes: { instead: "Instead of it", offset: "To make up for it" } as Readonly<
      Record<"instead" | "offset", string>
    >,
    modeHints: {
      instead: "The change is wanted, but will not be made.",
      offset: "The change has happened and is in the readings; it is to be cancelled.",
    } as Readonly<Record<"instead" | "offset", string>>,
    sense: "Which way",
    senses: (id: string, more: boolean): string => {
      const way = more ? "more" : "less";
      if (thicknesses.has(id)) return more ? "thicker" : "thinner";
      return senses[id]?.[way] ?? way;
    },
    amount: (unit: string): string => (unit ? `By, ${unit}` : "By"),
    tried: "Being tried; the dashed line on the triangle leads back to where the reed was.",
    leftover: "The small arrow is what is left over.",
    leftoverDrawn: "what the stand-in leaves over",
    notMeasured: (label: string): string =>
      `${label} is not measured: nothing can be said of its stand-ins.`,
    noPlace: "The readings so far cannot place the reed, so nothing can stand in for anything.",
    nowTried: (words: string): string => `Being tried. ${words}`,
    playAgain: "Play it before anything else is done.",
    nowBack: "The reed is as it was.",
    unmeasured: "What was not measured or is locked is never proposed.",
  },

  plan: {
    wireReadings: wireWords,
    pick: "Pick a part to play: then the way there is worked out, as steps and as arrows on the triangle.",
    noPlace: "The readings so far cannot place the reed, so there is no plan yet.",
    working: "Worked out anew when the point rests …",
    choice: "Plans",
    numbered: (number: number, name: string): string => `${number}. ${name}`,
    open: "To the plan",
    moves: (count: number): string => (count === 1 ? "1 move" : `${count} moves`),
    /** Steps of the plan and help for a trouble may stand on one page: each is named for its list. */
    steps: {
      plan: {
        step: (number: number): string => `Step ${number}`,
        done: (number: number, deed: string): string => `Done: step ${number} of the plan. ${deed}`,
      },
      help: {
        step: (number: number): string => `Help ${number}`,
        done: (_: number, deed: string): string => `Done, for the trouble. ${deed}`,
      },
    },
    caution: "Caution.",
    irreversible: "Cannot be undone",
    newReadings: "What does it read now?",
    expected: "Left empty, a reading is taken as expected (in grey) and stays to be read.",
    take: "Take readings, plan again",
    notYet: "Not yet",
    reading: (label: string, unit: string): string => (unit ? `${label}, ${unit}` : label),
    wire: (label: string): string => `${label}: height and width of the cane at the wire`,
    wireParts: {
      height: (unit: string): string => `Height, ${unit}`,
      width: (unit: string): string => `Width, ${unit}`,
      roundness: "or roundness",
    },
    wireNeedsBoth: "A wire needs both, height and width; or type its roundness.",
    wireFarOff: (roundness: string): string =>
      `That would be a roundness of ${roundness}: are height and width the right way round?`,
    doneSoFar: "Done to this reed",
    sitting: (number: number): string => `Sitting ${number}`,
    today: "In this sitting",
    newSitting: "Begin a new sitting",
    newSittingHint:
      "In one sitting nothing is done twice, and no more than four moves. Another day: play it first, and measure again.",

    undoHint: "Undo takes back the last of them with its readings.",
    nowDone: (deed: string): string => `Noted: ${deed}`,
    print: "Print the bench card",
    blanks: "New readings (expected in brackets):",
    expectedShort: (value: string): string => `(${value})`,
    troubleFirst: (symptom: string): string =>
      `A trouble is being looked into: “${symptom}”. See to it first, with the amounts given there; then this plan is worked out anew.`,
    drawn: (moves: number): string =>
      moves === 1 ? "the plan in one arrow" : `the plan in ${moves} arrows head to tail`,
    legend:
      "Arrows: the steps head to tail. Ring: where the plan ends; it is as unsure as the dashed ellipse.",
  },

  gains: {
    quality: "Quality",
    now: "Now",
    part: "At the part",
    onlyEnd: "After the plan",
    endShort: (number: number): string => `After plan ${number}`,
    scale: "Bars: to the right better than the all-round reed, to the left worse.",
    hint: "Press a quality to lay it over the triangle.",
    show: (label: string): string => `${label}: show over the triangle`,
    contours: (label: string): string =>
      `${label} over the triangle: lines at whole points, brighter is better; 0 poor, 10 excellent.`,
    hide: "Take it off the triangle",
    drawn: (label: string): string => `the quality “${label}” as contours`,
    nowYours: (label: string): string => `${label}: your own judgement now.`,
    nowReset: (label: string): string => `${label}: judged as it came.`,
    atReed: (value: string): string => `At this reed ${value} of 10.`,
    atCentre: (value: string): string => `At the all-round reed ${value} of 10.`,
    yours: "Whose judgement? Yours: values were changed on this page.",
    change: "Change this judgement",
    places: {
      high: "High register",
      low: "Soft and low",
      loud: "Full volume",
      "high-low": "Between high and low",
      "low-loud": "Between low and full",
      "loud-high": "Between full and high",
      centre: "All-round reed",
    } as Readonly<Record<string, string>>,
    reset: "Back to the values that came with it",
    range: "From 0 poor to 10 excellent.",
  },

  trouble: {
    soundFirst:
      "First: is it sound? A reed that leaks or is uneven is at no place of the triangle.",
    ifNot: (help: string): string => `If not: ${help}`,
    noPlace:
      "The readings so far cannot place the reed: enter a few more, then this looks where the trouble comes from.",
    another: "Another symptom",
    causes: "Where to look",
    marked: "Marked on the drawing, with the way each pulls on this reed.",
    first: "First, for it can be undone",
    after: "Only if that does not help, for it cannot be undone",
    tried: (deed: string): string => `Done already in this sitting: ${deed}`,
    playFirst: "Play it. Only if the trouble is still there, go on.",
    allTheSame: "If it is sound and read rightly: what usually helps",
    held: (labels: readonly string[]): string =>
      `Held by a lock, so not proposed: ${list.format(labels.map((label) => inSentence(label)))}.`,
    /** Where the plan has steps, too: how the two go together. */
    andPlan: (part: string): string =>
      `This is for the trouble alone; the steps of the plan are toward ${part}. Do not do both at once: see to the trouble first, with the amounts here. Then the plan is worked out anew from the new readings.`,
    toPlan: "Then on to the plan",
    toPlanHint:
      "When the trouble is gone, pick the part to play: the plan goes on from the new readings.",
  },
};
