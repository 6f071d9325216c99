/** Words of a wire's readings, which the guided sheet and the plan's steps both say: English. */
export const wireWords = {
  height: "height",
  width: "width",
  cannotRead: (typed: string): string =>
    `“${typed}” is no number; allowed: a number, with or without a unit.`,
};
