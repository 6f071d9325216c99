import { inSentence } from "./in-sentence.js";
import { wireWords } from "./wire-words.js";
import type { FeatureId } from "../engine/model.js";
import type { Place } from "./places.js";
import { bassoonSymptoms } from "./symptoms.js";
import type { LengthUnit } from "./units.js";

const list = new Intl.ListFormat("en-GB", { type: "conjunction" });

/** How a step is done: where, how to hold the tool, the usual slip. */
export interface StepWords {
  readonly where: string;
  readonly hold: string;
  readonly slip: string;
}

const steps: Readonly<Record<FeatureId, StepWords>> = {
  openingHeight: {
    where: "At the middle of the tip, seen end-on.",
    hold: "Hold the reed at eye level with a scale behind the tip. Do not push anything in.",
    slip: "A lip or a finger has just closed it: wait a moment.",
  },
  openingWidth: {
    where: "At the tip, from where light ends on the left to where it ends on the right.",
    hold: "Hold the reed before a lamp and look end-on.",
    slip: "Reading the width of the tip instead.",
  },
  bladeLength: {
    where: "From the collar to the tip, on the middle line of each blade.",
    hold: "Lay the calliper along the blade.",
    slip: "The jaw stands on the bark's edge of one side only.",
  },
  throatWidth: {
    where: "Between the two wires.",
    hold: "Jaws flat on the cane; do not squeeze.",
    slip: "The jaws are on a wire or on its twist.",
  },
  firstWire: {
    where: "Just behind the first wire.",
    hold: "Mandrel in. Read the height first, then the width.",
    slip: "On the twist, or height and width the other way round.",
  },
  secondWire: {
    where: "Just in front of the second wire.",
    hold: "Mandrel in. Read the height first, then the width.",
    slip: "On the twist, or height and width the other way round.",
  },
  tipWidth: {
    where: "From corner to corner of the tip.",
    hold: "Plaque in, blade pressed just flat, jaws at the corners.",
    slip: "Bending the corners in.",
  },
  tip: {
    where: "1 mm behind the edge of the tip, in the middle.",
    hold: "Dial gauge. Let the foot down, never drag it.",
    slip: "On the very edge it reads thinner. Is the zero right? It counts most here.",
  },
  heart: {
    where: "8 mm behind the tip, on the middle line.",
    hold: "Dial gauge; count the millimetres from the tip.",
    slip: "The ruler was set down at the collar.",
  },
  wings: {
    where: "8 mm behind the tip, 1.5 mm in from the edge.",
    hold: "Dial gauge. Turn the reed, do not tilt it.",
    slip: "Tilting, or measuring at the very edge.",
  },
  spine: {
    where: "14 mm behind the tip, on the middle line.",
    hold: "Dial gauge; count the millimetres from the tip.",
    slip: "The ruler was set down at the collar.",
  },
  rails: {
    where: "14 mm behind the tip, 1.5 mm in from the edge.",
    hold: "Dial gauge. Turn the reed, do not tilt it.",
    slip: "Too far in it reads the slope of the spine.",
  },
  backRise: {
    where:
      "24 mm behind the tip, on the middle line; on a shorter blade 1.5 mm in front of the collar.",
    hold: "Dial gauge. Type the thickness there: the sheet takes the spine away from it.",
    slip: "Typing the difference instead of the thickness, or standing on the bark.",
  },
  hinging: {
    where: "The whole opening, seen end-on.",
    hold: "Plaque out. Close the blade slowly between thumb and finger, watch, and pick a picture.",
    slip: "Judged on a dry reed, or closed too fast.",
  },
};

const places: Readonly<Record<Place, string>> = {
  one: "",
  frontBlade: "front blade",
  backBlade: "back blade",
  frontLeft: "front blade, left",
  frontRight: "front blade, right",
  backLeft: "back blade, left",
  backRight: "back blade, right",
};

/** Every sentence of the guided sheet: English. Common practice, no source. */
export const measureWords = {
  title: "Measure a reed",
  steps,
  places,
  start: {
    explain:
      "The sheet asks for one reading after another, in the order in which they do not disturb each other. Any of them may be left out.",
    name: "What is this reed called?",
    empty: "Start with an empty sheet",
    again: (name: string): string => `Go through the sheet of ${name}`,
    continueWith: (name: string): string => `Measuring ${name}.`,
  },
  progress: (step: number, of: number): string => `Step ${step} of ${of}`,
  jump: "All steps",
  next: "Next",
  back: "Back",
  skip: "Skip: not measured",
  stop: "Stop here: to the bench",

  sound: {
    title: "Is it sound?",
    explain:
      "A reed that leaks or is uneven is at no place of the triangle. Six looks before measuring.",
    ok: "fine",
    not: "not so",
    looks: Object.fromEntries(
      bassoonSymptoms.soundness.map(({ id, look, firstHelp }) => [id, { look, firstHelp }]),
    ) as Readonly<Record<string, { readonly look: string; readonly firstHelp: string }>>,
    firstHelp: (help: string): string => `First help: ${help}`,
    stopped: "This reed is not sound, so it gets no place in the triangle until that is mended.",
    overrule: "Place it all the same",
    overruled: "It is placed all the same. What is not sound can outweigh every reading.",
  },

  state: {
    title: "State of reed and gauge",
    question: "How is the reed?",
    soaked: "soaked 2 to 4 minutes, shaken dry, plaque out",
    dry: "dry",
    zero: (feeler: string): string =>
      `The gauge's zero is checked: on the anvil it reads 0, a feeler of ${feeler} reads ${feeler}`,
    /** What is printed on the feelers of a workshop that measures in this unit. */
    feeler: { mm: "0.10 mm", in: "0.004 in", thou: "4 thou" } as Readonly<
      Record<LengthUnit, string>
    >,
    zeroMissing: "The zero is not checked yet: at the tip the last digit counts.",
    dryNote: "A dry reed opens and closes otherwise: hinging and opening say little.",
    mixed: (was: string): string =>
      `The readings so far were taken ${was}. Soaked and dry readings are not comparable.`,
    wasSoaked: "on a soaked reed",
    wasDry: "on a dry reed",
    correctSoaked: "They were taken soaked: I picked the wrong one",
    correctDry: "They were taken dry: I picked the wrong one",
    newSet: (count: number): string =>
      `Start a new set (${count === 1 ? "1 feature is" : `${count} features are`} read again; undo brings the readings back)`,
    keep: "Leave it as it was",
  },

  step: {
    where: "Where",
    hold: "How",
    slip: "Usual slip",
    usualRoundness: (low: string, high: string): string =>
      `Usual roundness, height by width: ${low} to ${high}`,
    heightTaken: (height: string): string => `height ${height}`,
    heightAgain: "Read the height again",
    widthMissing: "The width is missing: a wire needs both. Type it, or Back to leave the wire.",
    usual: (low: string, high: string, unit: string): string =>
      `Usual: ${low} to ${high}${unit ? ` ${unit}` : ""}`,
    reading: (place: string): string => (place ? `Reading: ${place}` : "Reading"),
    again: "Read it once more",
    height: "Height of the cane there",
    width: "Width of the cane there",
    thickness: "Thickness there",
    rise: "Back rise (the spine is not measured yet)",
    taken: "Taken",
    takenAt: (value: string, place: string): string => (place ? `${place}: ${value}` : value),
    remove: (told: string): string => `Take out ${told}`,
    before: (value: string): string => `before: ${value}`,
    expected: (value: string): string => `expected: ${value}`,
    mean: (value: string, count: number): string => `Mean of ${count}: ${value}`,
    repeats:
      "Three or more readings of one place replace the gauge's usual error by their own scatter.",
    cannotRead: wireWords.cannotRead,
    choose: "Which picture is most like it?",
    pictures: [
      "0: closes as one curve",
      "0.25: a hint of a step",
      "0.5: one clear place where it gives",
      "0.75: two places",
      "1: two or more, and it holds each opening",
    ],
  },

  pad: { label: "Number keys", erase: "Erase", point: "Point", enter: "Take it" },

  ask: {
    title: "Is that right?",
    unit: (typed: string, value: string, unit: string): string =>
      `${typed} is far off. Read in ${unit}, it is ${value}.`,
    otherFeature: (typed: string, label: string): string =>
      `${typed} looks like the ${inSentence(label)}.`,
    upsideDown: (typed: string, value: string): string =>
      `${typed} would be a wire upside down. With height and width the other way round it is ${value}.`,
    riseItself: (value: string): string => `Is ${value} the rise itself, not the thickness?`,
    thicknessItself: (typed: string): string =>
      `${typed} looks like the thickness itself. Measure the spine first, or type what it exceeds the spine by.`,
    far: (typed: string, low: string, high: string): string =>
      `${typed} is outside what most reeds have, ${low} to ${high}. Is it read rightly?`,
    take: (value: string): string => `Take ${value}`,
    keep: (typed: string): string => `Keep ${typed} on purpose`,
    correct: "Type it again",
  },

  checks: {
    title: "To look at again",
    none: "Nothing contradicts itself.",
    stateMissing: "Nobody has said whether the reed was soaked or dry.",
    soakedAndDry: "The look says it is soaked, the state says it is dry: one of the two is a slip.",
    soundMissing: (count: number): string =>
      count === 1
        ? "1 look before measuring is not answered."
        : `${count} looks before measuring are not answered.`,
    placesMissing: (label: string, read: number, all: number): string =>
      `${label}: ${read} of ${all} places are read.`,
    toStep: (name: string): string => `To: ${name}`,
    gapWiderThanTip:
      "The opening is wider than the gap of this tip can be: one of the two is misread.",
    centreThinnerThanSide: (centre: string, side: string): string =>
      `${centre} is not thicker than ${inSentence(side)}: were the places changed over?`,
    thinsBackwards: "The blade thins backwards, from heart to spine: were the places changed over?",
    unevenQuarters: (label: string, spread: string, most: string): string =>
      `${label}: the four differ by ${spread}${most ? `; thickest at the ${most}` : ""}. Even them first; the mean hides it.`,
    bladesDiffer: (label: string, spread: string, most: string): string =>
      `${label}: the two blades differ by ${spread}${most ? `; the ${most} is the thicker` : ""}. One blade leads: even it first.`,
    collarsDiffer: (spread: string): string =>
      `The two collars differ by ${spread}: the mean is used; mend them with the file.`,
    firstRounderThanSecond: "The first wire is rounder than the second: read both once more.",
    goTo: (label: string): string => `To ${inSentence(label)}`,
  },

  summary: {
    title: "The sheet so far",
    feature: "Feature",
    value: "Value",
    readings: "Single readings",
    notMeasured: "not measured",
    onlyExpected: "expected after the last step, not read",
    suggestion: (label: string): string =>
      `The next most useful reading is ${inSentence(label)}: it tightens the place most.`,
    complete: "Everything is measured.",
    more: "More readings are needed before the reed has a place.",
    toBench: "To the bench",
    worked: "Something was done to this reed since",
    workedNone: "nothing",
    workedGo: "Read again what it touched",
    workedExplain: (labels: readonly string[]): string =>
      `To be read again: ${list.format(labels.map((label) => inSentence(label)))}. The old values stand as a guide.`,
    printBlank: "Print a blank sheet",
    printFilled: "Print this sheet",
  },

  paper: {
    title: "Measuring sheet",
    reed: "Reed",
    date: "Date",
    where: "Where and how",
    usual: "Usual",
    reading: "Readings",
    height: wireWords.height,
    width: wireWords.width,
    soaked: "soaked",
    dry: "dry",
    zero: "zero checked",
    unit: (unit: string): string => `Lengths in ${unit}.`,
    cautions:
      "Knife: cut away from the hand, on the plaque, guard on when it is not in use. Cane dust is not breathed in. Reeds are not shared. The rules of the workshop or school come first.",
  },
};
