import type { Purpose } from "../engine/model.js";
import { adviceWords } from "./advice-words.js";
import { inSentence } from "./in-sentence.js";
import { measureWords } from "./measure-words.js";
import { comparisonWords } from "./comparison-words.js";
import { embedWords } from "./embed-words.js";
import { percentagePoints, withMinus } from "./percentage-words.js";
import { planPageWords } from "./plan-page-words.js";
import { list, purposeWords, triangleWords } from "./triangle-words.js";

/** A piece of a sentence: plain words, or the name of a purpose (drawn in its colour). */
export type Phrase = string | { readonly purpose: Purpose; readonly words: string };

/** A sentence as pieces. */
export type Sentence = readonly Phrase[];

/** How a feature is spoken of when it has less or more than the all-round reed. */
interface FeatureWords {
  readonly less: string;
  readonly more: string;
  /** "wings pull", but "a tip pulls". */
  readonly plural?: boolean;
}

const signed = new Intl.NumberFormat("en-GB", {
  maximumFractionDigits: 0,
  signDisplay: "exceptZero",
});
// Making a format costs a hundred times what using one does, and a drag writes forty numbers a move.
const formats = new Map<number, Intl.NumberFormat>();

function formatOf(decimals: number): Intl.NumberFormat {
  const known = formats.get(decimals);
  if (known) return known;
  const made = new Intl.NumberFormat("en-GB", {
    minimumFractionDigits: decimals,
    maximumFractionDigits: decimals,
    useGrouping: false,
    signDisplay: "negative",
  });
  formats.set(decimals, made);
  return made;
}

/** The same inside a sentence. */
const purposeInSentence: Readonly<Record<Purpose, string>> = {
  high: "the high register",
  low: "soft and low playing",
  loud: "full volume",
};

const featureWords: Readonly<Record<string, FeatureWords>> = {
  bladeLength: { less: "short blade", more: "long blade" },
  tipWidth: { less: "narrow tip", more: "wide tip" },
  throatWidth: { less: "narrow throat", more: "wide throat" },
  firstWire: { less: "flat first wire", more: "round first wire" },
  secondWire: { less: "flat second wire", more: "round second wire" },
  heart: { less: "thin heart", more: "thick heart" },
  wings: { less: "thin wings", more: "thick wings", plural: true },
  spine: { less: "thin spine", more: "thick spine" },
  rails: { less: "thin rails", more: "thick rails", plural: true },
  tip: { less: "thin tip", more: "thick tip" },
  backRise: { less: "parallel profile", more: "steep profile" },
  hinging: { less: "weak hinging", more: "strong hinging", plural: false },
  openingHeight: { less: "low opening", more: "tall opening" },
  openingWidth: { less: "narrow opening", more: "wide opening" },
};

function purpose(id: Purpose): Phrase {
  return { purpose: id, words: purposeInSentence[id] };
}

/** Weaves names of purposes into a sentence. */
function sentence(parts: TemplateStringsArray, ...slots: readonly Phrase[]): Sentence {
  return parts
    .flatMap((part, i) => (i < slots.length ? [part, slots[i]!] : [part]))
    .filter((one) => one !== "");
}

/** "short blade", or "less Bore" for a feature of a teacher's own model. */
function spoken(id: string, label: string, more: boolean): string {
  const words = featureWords[id];
  if (words) return more ? words.more : words.less;
  return `${more ? "more" : "less"} ${inSentence(label)}`;
}

/** "short blade" → "a short blade"; plurals and uncountables stand alone. */
function withArticle(id: string, words: string): string {
  const words0 = featureWords[id];
  if (!words0 || words0.plural || id === "hinging") return words;
  return `${/^[aeiou]/.test(words) ? "an" : "a"} ${words}`;
}

const longestQuoted = 40;

/** A text as a sentence can carry it. */
function cut(text: string): string {
  return text.length > longestQuoted ? `${text.slice(0, longestQuoted - 1)}…` : text;
}

/** A field of a link as a sentence can carry it. */
function linkField(value: string | undefined): string {
  return value === undefined ? "missing" : JSON.stringify(cut(value));
}

/** Every word that the screens say in English: one catalogue a language. */
export const english = {
  ...triangleWords,
  percent: (share: number): string => withMinus(triangleWords.percent(share)),
  productName: "Reedpoint",
  /** A difference of shares in percentage points: "+3". */
  signedPoints: (share: number): string =>
    withMinus(signed.format(Math.abs(share) < 0.005 ? 0 : 100 * share)),
  number: (value: number, decimals: number): string => withMinus(formatOf(decimals).format(value)),

  triangle: {
    ...triangleWords.triangle,
    /** Beside a picture that does not move stand no tables. */
    alsoDrawn: (things: readonly string[], still?: boolean): string =>
      `Also drawn: ${list.format(things)}${still ? "" : "; in numbers in the tables below"}.`,
    help: "How to move the point",
    layers: "Layers of the triangle",
    readingLines: "Reading lines",
    eachPull: "one by one",
    certaintyFrom: "Certainty from",
    withRecipe: "gauge and recipe",
    gaugeAlone: "gauge alone",
    coverage: "Ellipse for",
    legend: {
      readingLines: "Each ends on the side where its share is read.",
      certainty: (of100: number, gaugeAlone: boolean): string =>
        gaugeAlone
          ? `Gauge errors alone keep the point inside the ellipse in ${of100} of 100 cases.`
          : `The reed lies inside the ellipse in ${of100} of 100 cases.`,
      pulls: "From the all-round reed, head to tail, in the order of the recipe.",
      reach:
        "Where hands can still bring this finished reed; the full line with easy amounts, the broken one with all that is possible.",
    },
    convention: "A share is 0 % on the side opposite its corner and 100 % in the corner.",
    ghost: "before",
    follows: "The recipe follows the point for",
    newReed: "a new reed",
    newReedHint: "Every feature may change within its range.",
    finishedReed: "this finished reed",
    finishedReedHint: "Cane can be taken away, not put back; the throat stays.",
  },
  target: {
    ...triangleWords.target,
    label: "Part to play",
    none: "none",
    noneNow: "No target.",
    /** A part as a sentence names it: "a wind quintet". */
    unsure: (part: string): string =>
      `How far it is to the zone for ${part} cannot be said from so few readings.`,
    within: (part: string): string => `It lies in the zone for ${part}.`,
    distance: (part: string, id: Purpose, now: number, wanted: number): string =>
      `For ${part} it needs above all ${percentagePoints(wanted - now)} ${wanted > now ? "more" : "less"} of ${purposeInSentence[id]}: ${triangleWords.percent(wanted)} instead of ${triangleWords.percent(now)}.`,
  },

  units: {
    mm: { name: "mm", sign: "mm", spoken: "millimetres" },
    in: { name: "inch", sign: "in", spoken: "inches" },
    thou: { name: "1/1000 inch", sign: "thou", spoken: "thousandths of an inch" },
  },

  pages: {
    title: "Pages",
    measure: "Measure",
    bench: "Bench",
    plan: "Plan",
    lip: "Lip and opening",
    lessons: "Lessons",
    coming: "This part is on its way …",
    failed: "This part could not be loaded: is the connection there? What you entered is kept.",
    again: "Try again",
  },

  bar: {
    reed: "Reed",
    allRound: "All-round reed",
    ownReed: "My reed",
    emptyReed: "My reed (nothing measured yet)",
    walkHelp: "Arrow keys walk through the reeds, Enter opens one.",
    openReed: "Open",
    worked: (name: string): string => `${name}, after steps`,
    demo: "Demo reeds (invented)",
    invented: "Invented demo reed:",
    inventedMark: "(invented demo reed)",
    unit: "Unit",
    undo: "Undo",
    redo: "Redo",
    /** With how many more there are that way. */
    travelled: {
      undo: (left: number): string =>
        left === 0 ? "Undone; nothing before it." : `Undone; ${left} before it.`,
      redo: (left: number): string =>
        left === 0 ? "Done again; nothing after it." : `Done again; ${left} after it.`,
    },
    more: "More",
    reset: "Reset",
    theme: "Look",
    themes: { auto: "As the device", paper: "Paper", night: "Night" },
    link: "Copy link",
    onePage: "Save as one page",
    pageFailed: "The page could not be made: is the connection there?",
    skipToRecipe: "To the recipe",
    close: "Close",
    linkCopied: "The link is copied.",
    linkFailed: "The link could not be copied: take it from the address bar.",
  },

  /** What is tried on the bench, over what the reed has. */
  tried: {
    begins: "Tried:",
    name: (name: string): string => `${name}, tried`,
    base: (given: boolean): string => (given ? "The reed as given" : "The reed as measured"),
    shares: (shares: string, given: boolean): string =>
      `${given ? "As given" : "As measured"}: ${shares}`,
    value: (value: string, given: boolean): string => `${given ? "as given" : "measured"} ${value}`,
    asMeasured: (given: boolean): string => (given ? "As given" : "As measured"),
    nowAsMeasured: (given: boolean): string =>
      given
        ? "Nothing is tried: the reed is as given."
        : "Nothing is tried: the reed is as measured.",
    back: "back",
    backTo: (label: string, value: string): string => `${label}: back to ${value}`,
    accept: "It is the reading",
    acceptFor: (label: string, value: string): string => `${label}: ${value} is the reading`,
  },

  reached: {
    stopped: (limits: readonly string[], locked: readonly string[]): string => {
      const parts = [
        limits.length > 0 ? `at the limit: ${list.format(limits)}` : "",
        locked.length > 0 ? `held: ${list.format(locked)}` : "",
      ].filter(Boolean);
      return `As near as it gets (${parts.join("; ")}).`;
    },
    more: (count: number): string => `${count} more`,
  },

  recipe: {
    title: "Recipe",
    ratios: "Ratios",
    allRoundMark: (value: string): string => `all-round value ${value}`,
    lock: (label: string): string => `Lock ${inSentence(label)}`,
    notMeasured: "not measured",
    leftOut: "left out",
    locked: "locked",
    forget: (label: string): string => `${label}: mark as not measured`,
    field: (label: string): string => `${label}, value`,
    howTo: (label: string): string => `${label}: how to measure it, and its stand-ins`,
    range: (low: string, high: string, unit: string): string =>
      `The slider goes from ${low} to ${high}${unit ? ` ${unit}` : ""}.`,
    badNumber: (typed: string, low: string, high: string, unit: string): string =>
      `“${typed}” is not a number; allowed: a number, as a rule ${low} to ${high}${unit ? ` ${unit}` : ""}.`,
    farOff: (typed: string, low: string, high: string, unit: string): string =>
      unit
        ? `${typed} is far outside ${low} to ${high} ${unit}: is the unit right?`
        : `${typed} is far outside ${low} to ${high} (a bare number): is it read rightly?`,
    stays: (value: string): string => `${value} still counts.`,
    outside: (low: string, high: string, unit: string): string =>
      `beyond the slider, which goes from ${low} to ${high}${unit ? ` ${unit}` : ""}`,
    pull: {
      toward: (id: Purpose): string => `pulls toward ${purposeWords[id]}`,
      away: (id: Purpose): string => `pulls away from ${purposeWords[id]}`,
      none: "does not pull now",
      ifMore: (toward: string): string => `more of it ${toward}`,
    },
    expected: "expected after the last step, not read again",
    repeats: (count: number): string => `mean of ${count} readings`,
    uneven: (label: string, spread: string): string =>
      `${label}: the readings differ by ${spread}. Even them first: a point hides unevenness.`,
  },

  drawing: {
    title: "The reed, held to a lamp",
    strip: "The reed",
    nameParts: "Name the parts",
    parts: {
      tip: "tip",
      heart: "heart",
      wings: "wing",
      spine: "spine",
      rails: "rail",
      backRise: "back",
      firstWire: "first wire",
      secondWire: "second wire",
      throatWidth: "throat",
    } as Readonly<Record<string, string>>,
    opening: "tip opening",
    wire: (which: "first" | "second"): string => `${which} wire`,
    section: (times: number): string =>
      `At the bottom the blade is cut along spine and rail, its thickness drawn ${times} times too great.`,
    readout: (thickness: string, fromTip: string): string =>
      `${thickness} thick, ${fromTip} behind the tip`,
    readoutHint: "Point at the blade, or touch it, to read its thickness.",
    filledIn: (names: readonly string[]): string =>
      `Not measured, so drawn as on the all-round reed: ${list.format(names)}.`,
    computed: "Computed from the recipe: bright where cane is thin, one band for every 0.05 mm.",
    describe: (parts: readonly string[]): string =>
      parts.length === 0
        ? "Drawing of a reed against the light. Nothing is measured yet."
        : `Drawing of the reed against the light: ${parts.join(", ")}.`,
  },

  certainty: {
    title: "How sure?",
    shares: (
      rows: readonly { readonly id: Purpose; readonly share: string; readonly sd: string }[],
    ): string => rows.map((row) => `${purposeWords[row.id]} ${row.share} ± ${row.sd}`).join(", "),
    ellipse: (major: string, minor: string, angle: string): string =>
      `95 % ellipse: half-axes ${major} and ${minor} of a side, turned ${angle}°.`,
    gaugeAlone: (major: string, minor: string): string =>
      `By the gauge alone: ${major} and ${minor}.`,
    sd: "± is one standard deviation: gauge errors, and that reeds of one blend differ in their recipes.",
    modelNote: "The triangle is a teaching model of common practice, not a measurement of sound.",
  },

  sentence: {
    nothing: sentence`Nothing is measured yet. Throat width, tip width and spine thickness together place a reed best.`,
    cannotPlace: (names: readonly string[]): Sentence =>
      sentence`${list.format(names)} alone cannot tell the three purposes apart. Readings of other features will place the reed.`,
    middle: sentence`This is an all-round reed: it lies in the middle of the three purposes`,
    corner: (id: Purpose): Sentence => sentence`This is nearly the corner reed for ${purpose(id)}`,
    beyondCorner: (id: Purpose): Sentence =>
      sentence`This reed goes further toward ${purpose(id)} than the corner reed`,
    beyondSide: (id: Purpose): Sentence =>
      sentence`This reed lies outside the triangle: it has less of ${purpose(id)} than any mix of the corner reeds`,
    leans: (id: Purpose, degree: "slightly" | "clearly" | "strongly", away?: Purpose): Sentence =>
      away
        ? sentence`This reed leans ${degree} toward ${purpose(id)} and away from ${purpose(away)}`
        : sentence`This reed leans ${degree} toward ${purpose(id)}`,
    between: (a: Purpose, b: Purpose, away: Purpose): Sentence =>
      sentence`This reed lies between ${purpose(a)} and ${purpose(b)}, away from ${purpose(away)}`,
    pulledBy: (
      features: readonly { id: string; label: string; more: boolean }[],
      outside: boolean,
    ): string => {
      const names = features.map((one) => withArticle(one.id, spoken(one.id, one.label, one.more)));
      const many = features.length > 1 || featureWords[features[0]!.id]?.plural === true;
      return `: ${list.format(names)} ${many ? "pull" : "pulls"} it ${outside ? "out there" : "there"} most.`;
    },
    pulledBack: (features: readonly { id: string; label: string; more: boolean }[]): string => {
      const names = features.map((one) => spoken(one.id, one.label, one.more));
      const many = features.length > 1 || featureWords[features[0]!.id]?.plural === true;
      return ` Its ${list.format(names)} ${many ? "pull" : "pulls"} back.`;
    },
    nothingPulls: ", and no feature pulls it far.",
    balanced: (features: readonly { id: string; label: string; more: boolean }[]): string => {
      const names = features.map((one) => spoken(one.id, one.label, one.more));
      return `, where its ${list.format(names)} balance each other.`;
    },
    cancels: " But its extremes cancel each other: most reeds at this place have a milder recipe.",
    tooFew: " With so few readings it may lie almost anywhere.",
    unmeasured: (names: readonly string[], leftOut: boolean): string => {
      const shown = names.length > 4 ? [...names.slice(0, 3), `${names.length - 3} more`] : names;
      return ` ${leftOut ? "Left out" : "Not measured"}: ${list.format(shown)}, so the place is less sure.`;
    },
    unsound: (helps: readonly string[]): string =>
      `A look before measuring failed, so this reed has no place in the triangle yet. First help: ${helps.join(" ")}`,
    end: ".",
  },

  readings: {
    open: "Paste readings",
    title: "Readings from a table",
    explain:
      "Paste two columns from a spreadsheet (feature, value; a third column may hold the unit), or choose or drop a CSV or " +
      "JSON file. A feature may stand in several rows: the mean counts.",
    area: "Pasted table",
    placeholder: "blade length\t27.7\ntip width\t15.3",
    unit: "Lengths without a unit are in",
    file: "Choose a file",
    drop: "or drop it here",
    take: "Take the good cells",
    cancel: "Close",
    accepted: (count: number, kept: number): string => {
      const taken = count === 1 ? "1 feature taken." : `${count} features taken.`;
      return kept === 0 ? taken : `${taken} ${kept} more kept as they were.`;
    },
    none: "Nothing could be taken; what was entered before is still there.",
    problems: (count: number): string =>
      count === 1 ? "1 cell was left out:" : `${count} cells were left out:`,
    moreProblems: (count: number): string => `… and ${count} more.`,
    tooLarge: (file: string): string =>
      `The file ${file} is too large for the readings of a reed; allowed: at most 200 kB.`,
    notLoaded:
      "The part that reads tables could not be loaded: is the connection there? Your table is still here; try again.",
    unreadable: (file: string): string =>
      `The file ${file} could not be read; allowed: a CSV or JSON text file.`,
  },

  ...comparisonWords,
  embed: embedWords,
  measure: measureWords,

  /** Stand-ins, plan, qualities, trouble: the sentences, and the labels around them. */
  advice: adviceWords,
  planPage: planPageWords,

  linkProblems: {
    version: (found: string | undefined, allowed: number): string =>
      `version is ${linkField(found)}; allowed: ${allowed}.`,
    model: (found: string | undefined, allowed: string): string =>
      `model is ${linkField(found)}; allowed: "${allowed}".`,
    encoding: (field: string, found: string): string =>
      `${field} is "${cut(found)}"; allowed: text in URL encoding.`,
    cellCount: (field: string, found: number, allowed: number): string =>
      `${field} has ${found} cells; allowed: ${allowed}, one a feature.`,
    lesson: (found: string): string =>
      `lesson is "${cut(found)}"; allowed: the name of a lesson and a step, as in 06-shape.2.`,
    aim: (found: string): string =>
      `aim is "${cut(found)}"; allowed: the shares high and low in whole thousandths, together at most 1000, as in 250.510.`,
    done: (found: string, allowed: readonly string[]): string =>
      `done names "${cut(found)}"; allowed: an action and its whole units, as in thinWings-2, of ${allowed.join(", ")}.`,
    doneMany: (count: number, most: number): string =>
      `done holds ${count} steps; allowed: at most ${most}.`,
    judged: (found: string, allowed: readonly string[]): string =>
      `judged names "${cut(found)}"; allowed: a quality and its seven values in whole hundredths from 0 to 1000, as in loudest-500.400.900.600.700.700.600, of ${allowed.join(", ")}.`,
    value: (field: string, id: string, found: string): string =>
      `${field}, ${id} is "${cut(found)}"; allowed: whole thousandths, or _ where nothing was measured.`,
    impossible: (field: string, id: string, found: number, min: number, max: number): string =>
      `${field}, ${id} is ${found}; allowed: about ${min} to ${max}.`,
    name: (field: string, found: string, allowed: readonly string[]): string =>
      `${field} names "${cut(found)}"; allowed: ${allowed.join(", ")}.`,
    flag: (field: string, found: string): string => `${field} is "${cut(found)}"; allowed: 1 or 0.`,
  },

  address: {
    problems: "Part of the link could not be read:",
  },
};

/** The shape that a catalogue of another language must have. */
export type Catalogue = typeof english;

/** A sentence as plain text, for a screen reader, a title or a test. */
export function sentenceText(pieces: Sentence): string {
  return pieces.map((piece) => (typeof piece === "string" ? piece : piece.words)).join("");
}
