/** Words around the list of lessons: what is kept, files, reviews, the presenter's view. English. */
export const lessonShelfWords = {
  keeping: {
    title: "Your progress",
    label: "Keep my progress on this device",
    off: "Nothing is kept: when this tab is closed, your answers are gone. You can save them as a file.",
    device:
      "Kept in this browser, on this device, and nowhere else. A browser may clear it away after weeks without a visit, so save a file now and then.",
    memory:
      "This browser does not let the page keep anything. Your answers last as long as this tab is open; save them as a file.",
    save: "Save progress as a file",
    open: "Open a file of progress",
    erase: "Erase my progress …",
    eraseTitle: "Erase my progress?",
    eraseAsk: "This erases all your answers, here and on this device. It cannot be undone.",
    eraseYes: "Erase it",
    eraseNo: "Leave it",
    erased: "Your progress is erased.",
    switchedOn: "Your progress is kept on this device from now on.",
    switchedOff: "Nothing is kept on this device any more.",
    taken: (lessons: number): string =>
      lessons === 1
        ? "Progress in 1 lesson was taken in."
        : `Progress in ${lessons} lessons was taken in.`,
    nothing: "Nothing was taken in.",
    tooLarge: (file: string): string => `${file} is larger than 5 MB: that is no file of progress.`,
    unread: (file: string): string => `${file} could not be read.`,
  },
  file: {
    title: "A lesson of your own",
    explain:
      "Drop a lesson file on this page, or pick one. It is read in this browser and sent nowhere.",
    pick: "Open a lesson file",
    help: "How to write one stands in the README, under “How to write a lesson”.",
    tooLarge: (file: string): string =>
      `${file} is larger than 1 MB: that is no lesson. Allowed is a text file that ends in .md.`,
    unread: (file: string): string => `${file} could not be read.`,
    fault:
      "This lesson could not be read because of a fault in Reedpoint, not in your connection. Your file may be fine.",
    opened: (title: string, problems: number): string =>
      problems === 0
        ? `${title} is open.`
        : `${title} is open, with ${problems === 1 ? "1 problem" : `${problems} problems`}.`,
    gone: "This link is to a lesson from a file. Open the file here first.",
    noProblem: (file: string): string => `${file}: no problem was found.`,
    problems: (file: string, count: number): string =>
      `${file}: ${count === 1 ? "1 problem" : `${count} problems`}`,
    noLesson: "There is no step that can be played. Mend the file, and open it again.",
    unsound: "This step has a problem, so it is not shown. The list above says which.",
    again: "Open it again, or another one",
  },
  presenter: {
    title: "Presenter's view",
    begin: "Present it to a class",
    beginHelp: "Opens a second window for the projector; this one keeps your notes.",
    audience: "Reedpoint: for the class",
    waits: "The lesson comes from the presenter's window.",
    connected: "The class's window is connected",
    lost: "Not connected to the other window",
    open: "Open the class's window",
    refused:
      "The browser did not open the window. Allow this page to open windows, and press again.",
    freeze: "Freeze",
    blank: "Blank",
    point: "Point",
    seesNothing: "The class sees a dark picture.",
    stillSees: (title: string): string => `The class still sees “${title}”.`,
    keys: "Clicker: Page down and Page up turn the steps, a full stop blanks the class's window, Escape brings it back.",
    notes: "Notes",
    noNotes: "No notes for this step.",
    upNext: "Next:",
    lastStep: "the end of the lesson",
    size: "Size for the last row",
    sizeHelp:
      "Type must be as tall as the farthest seat's distance, divided by 200 times the height of the picture. Without numbers it is 28 px on a picture of 1080.",
    seat: "Farthest seat, m",
    height: "Height of the picture, m",
    type: (share: string): string => `The smallest type is ${share} of the picture's height.`,
    end: "Stop presenting",
  },
  review: {
    title: "Mixed review",
    due: "A mixed review is due: three questions from different lessons.",
    begin: "Begin the review",
    goOn: "Go on with the review",
    failed: "The review could not be loaded. Check your connection and try again.",
    none: (days: number): string =>
      `No review is open. One becomes due ${days} days after you have answered in three lessons.`,
    from: (lesson: string): string => `From the lesson “${lesson}”`,
    question: (number: number, all: number): string => `Question ${number} of ${all}`,
    questions: "Questions of the review",
    next: "Next question",
    previous: "Question before",
    done: (days: number): string =>
      `That was the review. The next one becomes due ${days} days after this one was begun.`,
    open: "Some questions are still open.",
    gone: "This question is no longer in its lesson.",
  },
};
