import { isSlide, type Slide } from "./presenter-messages.js";

/** How a lesson is being presented: what a reload must bring back. */
export interface Presenting {
  /** Names the pair of windows. */
  readonly id: string;
  /** What the class keeps seeing while the presenter goes on; absent: what the presenter sees. */
  readonly frozen?: Slide;
  /** The class sees nothing. */
  readonly blank: boolean;
  /** Whether the pointer over the lesson is shown to the class. */
  readonly points: boolean;
  /** The farthest seat, and the height of the picture, both in metres. */
  readonly seat?: number;
  readonly height?: number;
}

const audienceField = "audience";

/** A new pair of windows, or one that was there before. */
export function newPresenting(
  id = crypto.getRandomValues(new Uint32Array(2)).join(""),
): Presenting {
  return { id, blank: false, points: false };
}

/** What can be used of presenting that a reload brings back. */
export function presentingFrom(kept: unknown): Presenting | undefined {
  if (typeof kept !== "object" || kept === null) return undefined;
  const { id, frozen, blank, points, seat, height } = kept as Record<string, unknown>;
  if (typeof id !== "string" || !/^\d{1,24}$/.test(id)) return undefined;
  const length = (value: unknown): value is number =>
    typeof value === "number" && Number.isFinite(value) && value > 0;
  return {
    id,
    ...(isSlide(frozen) ? { frozen } : {}),
    blank: blank === true,
    points: points === true,
    ...(length(seat) ? { seat } : {}),
    ...(length(height) ? { height } : {}),
  };
}

/** The address of the window that the class sees. */
export function audienceAddress(id: string): string {
  const address = new URL(location.href);
  address.hash = "";
  address.search = "";
  address.searchParams.set(audienceField, id);
  return address.href;
}

/** Which pair the window belongs to whose address this is; undefined for any other page. */
export function audienceOf(address: string): string | undefined {
  const id = new URL(address).searchParams.get(audienceField);
  return id !== null && /^\d{1,24}$/.test(id) ? id : undefined;
}
