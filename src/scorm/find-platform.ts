/** A platform's functions by their names: text in, text out. */
export type PlatformApi = Readonly<Record<string, unknown>>;

/** The parts of a window that lead to a platform; any of them may refuse to be looked at. */
export interface Surroundings {
  readonly parent?: unknown;
  readonly opener?: unknown;
  readonly top?: unknown;
}

/** So many windows are looked at on one way up; frames in frames are seldom more than three deep. */
const mostSteps = 12;

/**
 * The platform of a page: looked for in the page's own window, up its parents, then likewise from the window that
 * opened it. A window of another origin refuses to be looked at; the way leads on behind it.
 *
 * Shape   a window, the property under which a platform stands → its functions, or undefined where there is none.
 * Throws  nothing.
 * Source  the search that ADL describes for content (SCORM Run-Time Environment, "Finding the API"), with a cap.
 */
export function findPlatform(view: Surroundings, name: string): PlatformApi | undefined {
  return (
    upFrom(view, name) ??
    upFrom(look(view, "opener"), name) ??
    upFrom(look(look(view, "top"), "opener"), name)
  );
}

function upFrom(start: unknown, name: string): PlatformApi | undefined {
  let view = start;
  for (let step = 0; step < mostSteps && isThing(view); step += 1) {
    const found = look(view, name);
    if (isThing(found)) return found as PlatformApi;
    const parent = look(view, "parent");
    if (parent === view) return undefined;
    view = parent;
  }
  return undefined;
}

function isThing(value: unknown): value is object {
  return (typeof value === "object" || typeof value === "function") && value !== null;
}

/** A property, or undefined where it must not be looked at. */
function look(thing: unknown, name: string): unknown {
  try {
    return isThing(thing) ? (thing as Readonly<Record<string, unknown>>)[name] : undefined;
  } catch {
    return undefined;
  }
}
