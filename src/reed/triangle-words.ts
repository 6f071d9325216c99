import type { Purpose } from "../engine/model.js";

const percent = new Intl.NumberFormat("en-GB", { style: "percent", maximumFractionDigits: 0 });

export const list = new Intl.ListFormat("en-GB", { type: "conjunction" });

export const purposeWords: Readonly<Record<Purpose, string>> = {
  high: "high register",
  low: "soft and low",
  loud: "full volume",
};

/** The words of the triangle alone: an element that draws nothing else carries no others. */
export const triangleWords = {
  /** Language tag and direction of the script. */
  language: "en-GB",
  direction: "ltr" as "ltr" | "rtl",
  purposes: purposeWords,
  corners: { high: "High register", low: "Soft and low", loud: "Full volume" } as Readonly<
    Record<Purpose, string>
  >,
  percent: (share: number): string => percent.format(Math.abs(share) < 0.005 ? 0 : share),
  list: (words: readonly string[]): string => list.format(words),

  triangle: {
    title: "Triangle of purposes",
    point: "The reed's point",
    instructions:
      "Click or drag inside the triangle to place the point. Keys: Up toward high register, Left toward soft and low, " +
      "Right toward full volume, Down away from high register; Shift for fine steps, Page Up and Page Down for coarse " +
      "ones, Home for the centre.",
    certainty: "Certainty",
    pulls: "Pulls",
    alsoDrawn: (things: readonly string[], _still?: boolean): string =>
      `Also drawn: ${list.format(things)}.`,
    aimAt: (label: string, shares: string): string => `${label}: ${shares}.`,
    pointOutside: "The reed lies outside the triangle; its point stands on the border.",
    aimInstructions:
      "Click or drag inside the triangle to place your target. Keys: Up toward high register, Left toward soft and low, " +
      "Right toward full volume, Down away from high register; Shift for fine steps, Page Up and Page Down for coarse " +
      "ones, Home for the centre.",
    reach: "Reach",
    centre: "all-round reed",
    outside: "outside",
    pinned: (name: string): string => `Pinned: ${name}`,
    noPoint: "No point yet: the readings so far cannot place the reed.",
    nothingToMove: "No point to move yet: enter readings first.",
  },
  target: {
    own: "My own target",
    ownShares: "My target",
  },

  shares: {
    title: "Shares",
    field: (name: string): string => `${name}, per cent`,
    all: (rows: readonly { readonly id: Purpose; readonly share: string }[]): string =>
      `${rows.map(({ id, share }) => `${share} ${purposeWords[id]}`).join(", ")}.`,
    valueText: (share: number, name: string): string => `${percent.format(share)} ${name}`,
  },
};

/** What the triangle needs of a catalogue. */
export type TriangleWords = typeof triangleWords;
