/** One thing that is wrong in a file. */
export interface Problem {
  /** Where: `features[3].corners.high`; the empty text is the file as a whole. */
  readonly path: string;
  /** What stands there; `undefined` when it is missing. */
  readonly found: unknown;
  /** What may stand there, in words. */
  readonly allowed: string;
  /** One sentence with all of it. */
  readonly message: string;
}

/**
 * A model or action file that cannot be used, with every problem of it.
 *
 * @example new ModelError("model", problems).problems[0].path → "features[3].corners.high"
 */
export class ModelError extends Error {
  readonly problems: readonly Problem[];
  constructor(what: string, problems: readonly Problem[]) {
    const count = problems.length === 1 ? "1 problem" : `${problems.length} problems`;
    super(`The ${what} has ${count}:\n${problems.map(({ message }) => `- ${message}`).join("\n")}`);
    this.name = "ModelError";
    this.problems = problems;
  }
}
