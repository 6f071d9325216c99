/** Lessons on a learning platform: what the page says, and the dialog that makes a package. English. */
export const platformWords = {
  needsScript: "This lesson computes in the browser and needs JavaScript.",
  courseTitle: (lessons: number): string => `Bassoon reeds: ${lessons} lessons`,
  pageTitle: "A lesson about bassoon reeds",
  progress: (answered: number, all: number): string =>
    all === 0
      ? "This lesson has no exercises: it is done at its last step."
      : `${answered} of ${all} exercises answered`,
  score: (right: number, all: number, perCent: number): string =>
    `${right} of ${all} right at the first try: ${perCent} of 100.`,
  passed: (mastery: number): string => `Passed; ${mastery} were asked for.`,
  failed: (mastery: number): string => `Not passed; ${mastery} were asked for.`,
  completed: "This lesson is completed.",
  rule: "The score counts the exercises whose first answer was right; hints cost nothing, and what is tried again changes nothing. It is told when every exercise has been answered.",
  states: {
    absent:
      "No learning platform found: nothing is sent and nothing kept. The lesson works all the same.",
    closed:
      "The learning platform has not begun this lesson: nothing is sent and nothing kept. Open the lesson there again.",
    open: "Connected with the learning platform: it is told of your answers, score and time. Your name is never read.",
    refusing:
      "The learning platform has not taken the last of it. Go on: it will be told again with the next answer.",
    over: "The learning platform has closed this sitting: nothing more is sent. Open the lesson there again.",
  },
  sentTitle: "What is sent to a learning platform",
  sent: [
    "that you have begun, and that you have answered everything;",
    "the score at the end, and whether that passes where a pass mark is set;",
    "every answer that you hand in, whether it was right, when, and how long it took;",
    "how long the lesson was open;",
    "where you are and what you have answered, so that you can go on another time.",
  ],
  notRead: "Your name and your number there are never read. Nothing goes anywhere else.",

  open: "For a learning platform …",
  title: "A package for a learning platform",
  explain:
    "A zip file with this lesson, which a learning platform takes as a SCORM package. It holds the lesson without its notes for the teacher, and all that plays it.",
  edition: "Edition",
  editions: { "1.2": "SCORM 1.2 (most platforms)", "2004": "SCORM 2004, 4th edition" },
  mastery: "Pass mark, per cent",
  masteryHint: "Leave it empty if finishing is enough.",
  masteryFault: (value: string): string =>
    `The pass mark is “${value}”; allowed is a whole number from 0 to 100, or nothing.`,
  told: "The platform is told of answers, score, time and place in the lesson. Names and numbers of students are never read.",
  save: "Save the package",
  saved: (name: string): string => `Saved as ${name}.`,
  failedToSave: "The package could not be made: is the connection there?",
  faulty: "This lesson has problems (they stand above): a package is made once they are mended.",
  oneFile:
    "A page of one file cannot make packages: it does not hold the files that play them. Use the page that it was saved from, or the command.",
};
