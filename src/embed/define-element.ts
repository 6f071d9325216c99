import { define } from "../widgets/define.js";
import { warnOnce } from "./warn-once.js";

/** The version that every public element carries; the same as the package's. */
export const version = "0.1.0";

interface Versioned {
  readonly version?: string;
}

/** Defines a public element once. Where a page has loaded two versions the first one stays, and the page is told. */
export function defineElement(name: string, element: CustomElementConstructor & Versioned): void {
  const there = customElements.get(name) as Versioned | undefined;
  if (there && there.version !== element.version)
    warnOnce(
      `<${name}> is there already as version ${there.version ?? "unknown"}; version ${element.version} is left out`,
    );
  define(name, element);
}
