import { nearestWord } from "./nearest-word.js";

/** A distance as authors write it in `within`: the greatest difference in a share, in hundredths. */
function pointsOf(share: number): string {
  const count = Number((100 * share).toFixed(1));
  return count === 1 ? "1 point" : `${count} points`;
}

/** What is wrong in a lesson file: what stands there, why in a clause, what may stand there, the word probably meant. */
export interface LessonFault {
  readonly found: string;
  readonly why: string;
  readonly allowed: string;
  readonly nearest?: string;
}

/** A name that is known nowhere, with the names that are. */
function unknown(what: string, found: string, known: readonly string[]): LessonFault {
  const nearest = nearestWord(found, known);
  const why = `“${found}” is no ${what}`;
  const allowed = known.join(", ");
  return { found, why, allowed, ...(nearest === undefined ? {} : { nearest }) };
}

/** Far more than a line of a problem can carry. */
const longestShown = 60;

function cut(text: string): string {
  return text.length > longestShown ? `${text.slice(0, longestShown - 1)}…` : text;
}

/** What is found in the text of a lesson file while it is read. */
export const readingFaults = {
  noFrontMatter: {
    found: "",
    why: "the file does not begin with front matter",
    allowed: "a line of three hyphens, then the lesson's title and minutes",
  },
  openFrontMatter: {
    found: "---",
    why: "the front matter does not end",
    allowed: "a line of three hyphens behind its last field",
  },
  tooLong: (found: number, most: number): LessonFault => ({
    found: String(found),
    why: `the file has ${found} characters`,
    allowed: `at most ${most}`,
  }),
  tooDeep: (found: string): LessonFault => ({
    found,
    why: `“${cut(found)}” is a list or quote within too many others`,
    allowed: "at most 20 on one line",
  }),
  noStep: {
    found: "",
    why: "there is no step",
    allowed: "at least one heading that begins with ##",
  },
  emptyTitle: { found: "##", why: "the step has no title", allowed: "a title behind ##" },
  otherHeading: (found: string): LessonFault => ({
    found,
    why: `“${cut(found)}” is a heading of another rank`,
    allowed: "## for a step; the lesson's own title stands in the front matter",
  }),
  beforeFirstStep: (found: string): LessonFault => ({
    found,
    why: `“${cut(found)}” stands before the first step`,
    allowed: "nothing before the first heading with ##",
  }),
  unknownBlock: (found: string, known: readonly string[]): LessonFault =>
    unknown("block", found, known),
  openBlock: (found: string): LessonFault => ({
    found,
    why: `the block “${found}” does not end`,
    allowed: "a line of three backticks behind its last field",
  }),
  nestedBlock: (found: string): LessonFault => ({
    found,
    why: `the block “${found}” stands inside a list, a quote or notes`,
    allowed: "a block at the beginning of a line of the step itself",
  }),
  unknownSection: (found: string): LessonFault => ({
    ...unknown("section", found, ["notes"]),
    allowed: ":::notes and, behind it, :::",
  }),
  openNotes: {
    found: ":::notes",
    why: "the notes do not end",
    allowed: "a line of three colons before the next step",
  },
  emptyNotes: { found: ":::notes", why: "the notes are empty", allowed: "notes for the teacher" },
  strayEnd: { found: ":::", why: "nothing ends here", allowed: "::: only behind :::notes" },
  html: (found: string): LessonFault => ({
    found,
    why: `“${cut(found)}” is HTML, which is shown as text`,
    allowed: "Markdown without HTML",
  }),
  picture: (found: string): LessonFault => ({
    found,
    why: `“${cut(found)}” is a picture, which is not loaded`,
    allowed: "a show block, which draws the reed",
  }),
  link: (found: string): LessonFault => ({
    found,
    why: `the link “${cut(found)}” leads nowhere`,
    allowed: "links with https:, http: or mailto:",
  }),
  yaml: (found: string): LessonFault => ({
    found,
    why: `this is no YAML: ${found}`,
    allowed: "lines such as “ask: Where does the point go?”",
  }),
  missing: (where: string, path: string, allowed: string): LessonFault => ({
    found: "",
    why: path === "" ? `${where} is empty` : `${where}: ${path} is missing`,
    allowed,
  }),
  wrong: (where: string, path: string, found: string, allowed: string): LessonFault => ({
    found,
    why: `${where}${path === "" ? "" : `: ${path}`} is ${cut(found)}`,
    allowed,
  }),
  strayField: (where: string, found: string, known: readonly string[]): LessonFault =>
    unknown(`field of ${where}`, found, known),
};

/** What does not fit the model. */
export const modelFaults = {
  unknownName: (what: string, found: string, known: readonly string[]): LessonFault =>
    unknown(what, found, known),
  twice: (found: string): LessonFault => ({
    found,
    why: `“${found}” stands here twice`,
    allowed: "each name once",
  }),
  noValue: (id: string, found: string, unit: string): LessonFault => ({
    found,
    why: `${id} is “${cut(found)}”`,
    allowed:
      unit === "mm" ? "a number, or a number with mm, in or thou" : "a number without a unit",
  }),
  outOfRange: (id: string, found: number, min: number, max: number, unit: string): LessonFault => ({
    found: String(found),
    why: `${id} is ${found}${unit === "mm" ? " mm" : ""}`,
    allowed: `its range, ${min} to ${max}${unit === "mm" ? " mm" : ""}`,
  }),
  notCounted: (found: string, features: readonly string[]): LessonFault => ({
    found,
    why: `“${found}” does not count in this lesson`,
    allowed: `one of the lesson's features: ${features.join(", ")}`,
  }),
  cannotSeparate: (found: string, features: readonly string[]): LessonFault => ({
    found,
    why: found,
    allowed: `other or more features of the model: ${features.join(", ")}`,
  }),
  noShare: (found: number): LessonFault => ({
    found: String(found),
    why: `a per cent is ${found}`,
    allowed: "0 to 100",
  }),
  noSum: (found: number): LessonFault => ({
    found: String(found),
    why: `the three per cents sum to ${found}`,
    allowed: "three per cents that sum to 100",
  }),
};

/** What is wrong with an exercise, a claim or the lesson as a whole. */
export const lessonFaults = {
  noChange: (block: string): LessonFault => ({
    found: block,
    why: `the ${block} changes nothing`,
    allowed: "a value that differs from the reed's and counts in this lesson",
  }),
  smallMove: (share: number): LessonFault => ({
    found: pointsOf(share),
    why: `the point moves by ${pointsOf(share)} only`,
    allowed: "a change that moves it by at least 1.4 points, or nobody sees the difference",
  }),
  lockedMoves: (found: string): LessonFault => ({
    found,
    why: `“${found}” is missing and locked`,
    allowed: "locks on other features; what is missing stays as it is anyway",
  }),
  outOfReach: (
    left: number,
    within: number,
    holding: readonly string[],
    most?: number,
  ): LessonFault => ({
    found: pointsOf(left),
    why:
      most === undefined
        ? `the target is out of reach: the nearest end is ${pointsOf(left)} away`
        : `the target is out of reach for ${most === 1 ? "1 feature" : `${most} features`}: the nearest end is ${pointsOf(left)} away`,
    allowed:
      `a target at most ${pointsOf(within)} from it` +
      (holding.length > 0 ? `; what holds it back: ${holding.join(", ")}` : ""),
  }),
  alreadyThere: (away: number, within: number): LessonFault => ({
    found: pointsOf(away),
    why: `the point is there already: ${pointsOf(away)} away`,
    allowed: `a start that is more than ${pointsOf(within)} away`,
  }),
  noRightOption: {
    found: "",
    why: "no option is right",
    allowed: "right: true with at least one option",
  },
  badOrder: (found: readonly number[], count: number): LessonFault => ({
    found: found.join(", "),
    why: `shown: ${found.join(", ")} does not name every option once`,
    allowed: `the numbers 1 to ${count}, each once, in the order in which a class sees the options`,
  }),
  onlyRightOptions: {
    found: "",
    why: "every option is right",
    allowed: "at least one option that is tempting and wrong",
  },
  sameOption: (found: string): LessonFault => ({
    found,
    why: `the option “${cut(found)}” stands here twice`,
    allowed: "options that differ",
  }),
  wrongKey: (text: string, right: boolean, claim: string, computed: string): LessonFault => ({
    found: claim,
    why: `the option “${cut(text)}” is marked ${right ? "right" : "wrong"}, but its claim “${claim}” is ${right ? "false" : "true"}: ${computed}`,
    allowed: "a mark that agrees with the claim",
  }),
  opposite: (a: string, b: string): LessonFault => ({
    found: b,
    why: `“${a}” and “${b}” do not belong in one sitting`,
    allowed: "actions that the rules of a sitting let meet",
  }),
  anyOrder: {
    found: "",
    why: "every order of these actions is sensible",
    allowed: "at least two actions of different rank",
  },
  inOrder: {
    found: "",
    why: "the actions stand in a sensible order already",
    allowed: "a list that the student has to put in order",
  },
  noCaution: (action: string, caution: string): LessonFault => ({
    found: action,
    why: `“${action}” needs the caution “${caution}”, which was not shown yet`,
    allowed: `a show block with cautions: [${caution}] before it in the lesson`,
  }),
  badClaim: (found: string): LessonFault => ({
    found,
    why: `the claim “${cut(found)}” cannot be read`,
    allowed:
      "such as shorter bladeLength → high; less wings → away from loud; clipTip like shorter bladeLength; " +
      "rounder firstWire stronger than thinner wings; roundFirstWire raises openingHeight; higher openingHeight gives more peakFlow at fullVolume; clipTip cannot be undone; Teal near everyday",
  }),
  falseClaim: (says: string, claim: string, computed: string): LessonFault => ({
    found: claim,
    why: `“${says}” claims ${claim}, which is false: ${computed}`,
    allowed: "what follows from the model under this lesson's own features",
  }),
  readingTime: (needed: number, said: number, least: number, most: number): LessonFault => ({
    found: String(said),
    why: `minutes is ${said}, but reading and doing take about ${needed}`,
    allowed: `a whole number from ${least} to ${most}`,
  }),
  noNotes: {
    found: "",
    why: "no step has notes for the teacher",
    allowed: "at least one :::notes section",
  },
  noExercise: {
    found: "",
    why: "the student has nothing to do",
    allowed: "at least one predict, aim, choose, order, read or stand-in",
  },
};
