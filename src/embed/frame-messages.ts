/** What a page may ask of a frame that it holds. */
export type FrameCommand =
  | { readonly reedpoint: 1; readonly type: "open"; readonly code: string }
  | { readonly reedpoint: 1; readonly type: "theme"; readonly theme: "paper" | "night" | "auto" }
  /** The frame says how tall it is, now and whenever that changes; it does so by itself, too. */
  | { readonly reedpoint: 1; readonly type: "measure" }
  /** From now on the frame says what the user does to the reed. */
  | { readonly reedpoint: 1; readonly type: "tell" };

/** What a frame says to the page around it. */
export type FrameMessage =
  | { readonly reedpoint: 1; readonly type: "height"; readonly height: number }
  | { readonly reedpoint: 1; readonly type: "changed"; readonly code: string };

/** No link of the app comes near this. */
const longestCode = 8000;

const checks: Readonly<Record<FrameCommand["type"], (data: Fields) => boolean>> = {
  open: ({ code }) => typeof code === "string" && code.length <= longestCode,
  theme: ({ theme }) => theme === "paper" || theme === "night" || theme === "auto",
  measure: () => true,
  tell: () => true,
};

const keys: Readonly<Record<FrameCommand["type"], readonly string[]>> = {
  open: ["reedpoint", "type", "code"],
  theme: ["reedpoint", "type", "theme"],
  measure: ["reedpoint", "type"],
  tell: ["reedpoint", "type"],
};

type Fields = Readonly<Record<string, unknown>>;

/**
 * A command, if the data are one to the letter; anything else is none.
 *
 * @example readCommand({ reedpoint: 1, type: "theme", theme: "night" }) → the same; with theme "pink" → undefined
 */
export function readCommand(data: unknown): FrameCommand | undefined {
  if (typeof data !== "object" || data === null) return undefined;
  const fields = data as Fields;
  const { reedpoint, type } = fields;
  if (reedpoint !== 1 || typeof type !== "string" || !Object.hasOwn(checks, type)) return undefined;
  const kind = type as FrameCommand["type"];
  const known = Object.keys(fields).every((key) => keys[kind].includes(key));
  return known && checks[kind](fields) ? (fields as unknown as FrameCommand) : undefined;
}

/** A frame is never lower than a line and never taller than a long page, px. */
const [least, most] = [80, 8000];

/** The height that a frame asks for, within reason; undefined where the data ask for none. */
export function readHeight(data: unknown): number | undefined {
  if (typeof data !== "object" || data === null) return undefined;
  const { reedpoint, type, height } = data as Fields;
  if (reedpoint !== 1 || type !== "height" || typeof height !== "number") return undefined;
  return Number.isFinite(height) ? clampHeight(height) : undefined;
}

export function clampHeight(height: number): number {
  return Math.min(most, Math.max(least, Math.ceil(height)));
}
