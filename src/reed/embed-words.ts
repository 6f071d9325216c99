/** Words of the dialog that makes a snippet for another page. */
export const embedWords = {
  open: "Put it into a page",
  title: "Put it into a page",
  explain:
    "Copy these lines into a course page, a slide or a worksheet that takes HTML. They show the reed as it is on the bench now.",
  ownLesson:
    'For the lesson file that is open: put the file beside your page, and name it in the element, <reed-lesson lesson="my-lesson.md">. A sandboxed frame, and a page that is opened from a disk, cannot fetch it.',
  explainLesson:
    "Copy these lines into a course page, a slide or a worksheet that takes HTML. They show the lesson at the step that is open; what is answered there stays there.",
  show: "Show",
  shows: {
    bench: "bench with recipe",
    triangle: "triangle",
    lamp: "reed against the lamp",
    lip: "lip and opening",
    "stand-ins": "stand-ins",
    plan: "plan",
    lesson: "this lesson",
  },
  as: "As",
  element: "an element, part of the page",
  frame: "a frame, for a page that takes no scripts of others",
  look: "Look",
  looks: { "": "as the page around it", paper: "paper", night: "night", auto: "as the device" },
  locked: "A picture only: nothing can be moved",
  address: "Where these files lie",
  addressHint: "The folder of this site, or of your school's own copy of it; it ends with a slash.",
  lines: "Lines to copy",
  copy: "Copy the lines",
  copied: "The lines are copied.",
  copyFailed: "They could not be copied: select them and copy them by hand.",
  preview: "So it looks",
  noPreview:
    "From a single file it cannot be shown here: the other page loads it from the folder above.",
  says: (name: string, sentence: string): string => `${name}: ${sentence}`,
} as const;
