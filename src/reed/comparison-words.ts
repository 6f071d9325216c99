import type { Purpose } from "../engine/model.js";
import { inSentence } from "./in-sentence.js";

const list = new Intl.ListFormat("en-GB", { type: "conjunction" });

/** Words for two reeds side by side, for everything drawn as a table, and for saved pictures: English. */
export const comparisonWords = {
  compare: {
    pin: "Pin to compare",
    pinned: (name: string): string => `Compared with ${name}`,
    nowPinned: (name: string): string => `${name} is pinned. Load or change a reed to compare.`,
    nowUnpinned: "No reed is pinned now.",
    swap: "Swap the two",
    unpin: "Unpin",
    same: "The two lie at the same place and have the same recipe.",
    samePlace: "The two lie at the same place.",
    samePlaceOtherRecipe: "The two lie at the same place, by different recipes.",
    place: (
      name: string,
      parts: readonly {
        readonly id: Purpose;
        readonly words: string;
        readonly gap: number;
      }[],
    ): string =>
      `Against ${name} it has, in percentage points, ${list.format(parts.map(({ gap, words }) => `${Math.round(Math.abs(gap) * 100)} ${gap > 0 ? "more" : "less"} ${words}`))}.`,
    notPlaced: (name: string): string =>
      `${name} has too few readings for a place in the triangle.`,
    feature: "Feature",
    difference: "Difference",
    moves: "What it does to the point",
    movedBy: (toward: string, share: string): string => `${share} of a side ${toward}`,
    toward: (purpose: string): string => `toward ${purpose}`,
    awayFrom: (purpose: string): string => `away from ${purpose}`,
    hardly: "hardly moves it",
    none: "The recipes do not differ.",
    more: (count: number): string =>
      count === 1 ? "1 smaller difference" : `${count} smaller differences`,
    onlyOne: (names: readonly string[]): string =>
      `Measured on one of the two only, so not compared: ${list.format(names)}.`,
  },

  table: {
    title: "Everything drawn, as tables",
    triangle: "On the triangle",
    thing: "What",
    centre: "All-round reed (centre)",
    point: "The reed's point",
    pointOutside: "The reed itself, outside (the point is drawn on the border)",
    pinned: (name: string): string => `Pinned: ${name}`,
    target: (part: string): string =>
      `Zone for ${part}, centre of a circle of radius 0.08 in shares`,
    pull: (label: string): string => `Pull of ${inSentence(label)}, in percentage points`,
    pullMove: "moves by",
    reach: (kind: "easy" | "full"): string =>
      `Reach with ${kind === "easy" ? "easy amounts" : "all that is possible"}, from … to`,
    span: (least: string, most: string): string => `${least} – ${most}`,
    certainty: (coverage: string, gaugeAlone: boolean): string =>
      `Certainty, 1 standard deviation (ellipse drawn for ${coverage}, ${gaugeAlone ? "gauge alone" : "gauge and recipe"})`,
    blade: "Thickness of the blade",
    behindTip: "Behind the tip",
    spine: "on the spine",
    halfway: "halfway",
    edge: "at the rail or wing",
    ends: "Openings, end-on",
    width: "Width",
    height: "Height",
    tipOpening: "Tip opening",
    tube: (which: "first" | "second"): string => `Tube at the ${which} wire`,
  },

  picture: {
    save: "Save picture",
    as: (kind: "SVG" | "PNG", what: string): string => `Save ${what} as ${kind}`,
    triangle: "the triangle",
    drawing: "the drawing",
    failed: (kind: string): string =>
      `The ${kind} could not be made: this browser does not let a page draw it. SVG always works.`,
  },

  moving: {
    label: "On the triangle, a click or a key moves",
    point: "the reed's point",
    aim: "my target",
  },

  sheet: {
    open: "Open recipe",
    close: "Close recipe",
  },
};
