import { lessonFeedbackWords } from "./lesson-feedback-words.js";
import { lessonShelfWords } from "./lesson-shelf-words.js";
import { platformWords } from "./platform-words.js";

/** Labels and remarks around lessons on the screen: English. */
export const lessonPlayerWords = {
  feedback: lessonFeedbackWords,
  ...lessonShelfWords,
  platform: platformWords,
  list: "Lessons",
  explain:
    "Each lesson lets you say first what will happen, and shows then what did. Nothing you answer leaves this page.",
  minutes: (count: number): string => (count === 1 ? "1 minute" : `${count} minutes`),
  answered: (done: number, all: number): string =>
    done === 0
      ? `${all} ${all === 1 ? "exercise" : "exercises"}`
      : `${done} of ${all} ${all === 1 ? "exercise" : "exercises"} answered`,
  finished: "All answered",
  counts: (labels: readonly string[]): string => `Only these count: ${labels.join(", ")}`,
  open: (title: string): string => `Open: ${title}`,
  back: "All lessons",
  loading: "The lesson is on its way …",
  failed: "This lesson could not be loaded: is the connection there?",
  unknown: (id: string): string => `There is no lesson “${id}”; all lessons stand below.`,
  focus: (labels: readonly string[]): string =>
    `In this lesson only these count: ${labels.join(", ")}. So its point is not that of the bench.`,
  step: (number: number, all: number): string => `Step ${number} of ${all}`,
  steps: "Steps of the lesson",
  next: "Next step",
  previous: "Step before",
  end: "You have come to the end of this lesson.",
  more: "What follows comes once you have answered.",
  invented: "Invented demo reed.",
  guess: "Your guess",
  guessHelp:
    "Drag the point, tap the triangle, use the arrow keys or the three sliders: where will the point go?",
  sure: "How sure are you?",
  sureness: ["It is a guess", "Fairly sure", "Sure"] as readonly [string, string, string],
  lock: "Lock in",
  lockHint: "Once locked in, the guess stays; then the reed changes.",
  check: "Check",
  again: "Try again",
  startAgain: "Back to the start",
  lacks: {
    guess: "Put the point first where you think it will go. If it stays, press it where it is.",
    sure: "Say how sure you are, too.",
    answer: "Pick an answer first.",
    shares: "Type all three shares first, each from 0 to 100.",
    moved: "Move something first.",
  },
  locked: "Locked in",
  hint: (given: number): string => (given === 0 ? "Hint" : `Another hint (${given} of 3)`),
  hints: "Hints",
  why: "Why",
  pulls: "The pulls that made the move, in points",
  together: "Together",
  feature: "Change",
  upward: (action: string): string => `Earlier: ${action}`,
  downward: (action: string): string => `Later: ${action}`,
  share: (name: string): string => `${name}, per cent`,
  inWords: {
    title: "The task in words",
    lines:
      "For each purpose, nine lines part the way from the side opposite its corner to the corner into ten equal steps. Line 1 is next to the side.",
    /** In quarters of a step, so that counting lines is as good as seeing them. */
    line: (corner: string, share: number): string => {
      const quarters = Math.round(share * 40);
      const [line, rest] = [Math.floor(quarters / 4), quarters % 4];
      const name = (number: number): string =>
        number === 0 ? "the side" : number === 10 ? "the corner" : `line ${number}`;
      const where = [
        `on ${name(line)}`,
        `a little beyond ${name(line)}`,
        `halfway between ${name(line)} and ${name(line + 1)}`,
        `a little short of ${name(line + 1)}`,
      ][rest];
      return `Going toward “${corner}”, the point lies ${where}.`;
    },
  },
  toRead: "Triangle of purposes with the point whose shares are to be read",
  stays: (labels: readonly string[]): string => `These stay as they are: ${labels.join(", ")}.`,
  isFinished: "The reed is finished: cane can be taken away, not put back.",
  atMost: (count: number): string =>
    count === 1 ? "You may move one feature." : `You may move at most ${count} features.`,
  target: "Where it is to go",
  was: "Where it was",
  beside: "The other reed",
  first: "The one reed",
  cautions: "Before hands act: the rules of your workshop or school come first.",
};
