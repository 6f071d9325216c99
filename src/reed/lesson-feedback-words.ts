import type { Purpose } from "../engine/model.js";
import { compared, purposes } from "./advice-terms.js";
import { inSentence } from "./in-sentence.js";

const list = new Intl.ListFormat("en-GB", { type: "conjunction" });
const tenths = new Intl.NumberFormat("en-GB", {
  minimumFractionDigits: 1,
  maximumFractionDigits: 1,
  signDisplay: "exceptZero",
});
const tenth = new Intl.NumberFormat("en-GB", { maximumFractionDigits: 1 });
const whole = new Intl.NumberFormat("en-GB", { maximumFractionDigits: 0 });
const percent = new Intl.NumberFormat("en-GB", { style: "percent", maximumFractionDigits: 0 });

/** "1 point", "9 points", "less than 1 point". */
function points(share: number): string {
  const count = Math.round(share * 100);
  if (count === 0) return "less than 1 point";
  return count === 1 ? "1 point" : `${whole.format(count)} points`;
}

const shortNames: Readonly<Record<Purpose, string>> = {
  high: "high register",
  low: "soft and low",
  loud: "full volume",
};

/** What a student hears after an answer: English. */
export const lessonFeedbackWords = {
  grades: { right: "Right.", partly: "Partly right.", wrong: "Not this time." } as Readonly<
    Record<"right" | "partly" | "wrong", string>
  >,
  points,
  /** Where whole points are too coarse: "6.3 points". */
  tenths: (share: number): string => `${tenth.format(Math.ceil(share * 1000 - 0.5) / 10)} points`,
  /** A move in tenths of a point: "+12.3". */
  signed: (inTenths: number): string => tenths.format(inTenths / 10).replace("-", "−"),
  pointsNote:
    "One point is one hundredth of the whole; what one purpose wins, the others lose. A distance is the greatest difference in a share.",

  predict: {
    outcome: (way: "toward" | "away", purpose: Purpose, by: string): string =>
      `The point goes ${way === "toward" ? "toward" : "away from"} ${purposes[purpose]}, by ${by}.`,
    hardly: "The point hardly moves.",
    outside: "It ends outside the triangle, so it is drawn on the border.",
    direction: {
      right: "Your guess points the same way",
      partly: "Your guess points partly that way",
      wrong: "Your guess points another way",
      none: "You guessed that it stays where it is",
    } as Readonly<Record<"right" | "partly" | "wrong" | "none", string>>,
    length: {
      short: ", but less than half as far",
      right: ", and about as far",
      long: ", but more than twice as far",
    } as Readonly<Record<"short" | "right" | "long", string>>,
    distance: (by: string): string => `It lies ${by} from where the point went.`,
    onTheSpot: "It lies on the spot.",
    sureAndWrong: "You were sure. Here there is most to learn: look at the arrows once more.",
    guessedRight: "You called it a guess. You know more than you thought.",
  },

  cornersAre: (label: string, high: string, low: string, loud: string): string =>
    `${label} of the corner reeds: high register ${high}, soft and low ${low}, full volume ${loud}.`,

  recipe: {
    there: "The point is there.",
    asIfWhole: "The point is back where it was.",
    away: (by: string): string => `The point is still ${by} away.`,
    farther: (by: string, before: string): string =>
      `The point is ${by} away, further than at the start: that was ${before}.`,
    within: (most: string): string => `Up to ${most} counts as there.`,
    tooMany: (moved: readonly string[], most: number): string =>
      `You moved ${moved.length} features (${list.format(moved)}); ${most} may be moved.`,
    heldButMoved: (names: readonly string[]): string => `${list.format(names)} were to stay.`,
    outside: (names: readonly string[]): string =>
      `${list.format(names)}: this reed does not allow that much.`,
    other: "Other recipes lead there, too.",
    stayed: "You have changed nothing yet.",
  },

  read: {
    all: "All three are right.",
    truth: (rows: readonly { readonly id: Purpose; readonly share: number }[]): string =>
      `The point has ${rows.map(({ id, share }) => `${percent.format(share)} ${shortNames[id]}`).join(", ")}.`,
    wrongOnes: (ids: readonly Purpose[]): string =>
      `Look again at ${list.format(ids.map((id) => shortNames[id]))}.`,
    slips: {
      upsideDown:
        "It looks as if each share was counted from its corner. A share is 0 % on the side opposite the corner and 100 % in the corner.",
      otherCorners:
        "The numbers fit, but they belong to other corners. Say the corner's name first, then read its share.",
      notWhole: "Three shares make a whole: together they are 100 %.",
    } as Readonly<Record<"upsideDown" | "otherCorners" | "notWhole", string>>,
  },

  choose: {
    rightIs: (option: string): string => `Right is: ${option}`,
  },

  order: {
    right: "What can be undone comes first, and what takes cane comes last.",
    irreversibleFirst:
      "Something that cannot be undone stands before something that can. Try first what you can take back.",
    otherOrder:
      "What can be undone is at its place. Among the others, the gentler cut comes first.",
    sensible: (actions: readonly string[]): string =>
      `A sensible order: ${actions.join(", then ")}.`,
  },

  hints: {
    lookAt: (names: readonly string[]): string =>
      `Look at ${list.format(names)} on the drawing. What has to move there, and what is in its way?`,
    compareCorners: (lines: readonly string[]): string => lines.join(" "),
    oneAtATime:
      "Think of one change at a time: which corner reed does the reed become more like, and which less?",
    toward: (purpose: Purpose): string => `It lacks ${shortNames[purpose]} above all.`,
    awayFrom: (purpose: Purpose): string => `It has too much ${shortNames[purpose]} above all.`,
    move: (id: string, label: string, more: boolean): string => {
      const words = compared[id];
      if (!words) return `${more ? "More" : "Less"} ${inSentence(label)} helps most.`;
      const noun = words.noun.replace(/^an? /, "");
      return `The ${noun} ${more ? words.more : words.less}: that helps most.`;
    },
    recipe: (values: readonly string[]): string => `One recipe that does it: ${values.join(", ")}.`,
    zeroOnOppositeSide:
      "Each share is 0 % on the side opposite its corner, and 100 % in the corner. Count the white lines from that side.",
    greatest: (purpose: Purpose): string => `The greatest share is ${shortNames[purpose]}.`,
    share: (purpose: Purpose, share: number): string =>
      `${percent.format(share)} of it is ${shortNames[purpose]}. The other two share the rest.`,
    undoableFirst: "What can be taken back comes before what cannot.",
    first: (action: string): string => `Begin with this one: ${action}.`,
    order: (actions: readonly string[]): string => `So: ${actions.join(", then ")}.`,
    askWhy: "Ask of each answer: what would the reed do, and what would you hear?",
    notThis: (option: string): string => `It is not this one: ${option}`,
  },
};
