import { warnOnce } from "./warn-once.js";

const shows: Readonly<Record<string, string>> = {
  bench: "reed-bench",
  triangle: "reed-triangle",
  lamp: "reed-lamp",
  lip: "reed-lip",
  "stand-ins": "reed-stand-ins",
  plan: "reed-plan",
};

/** The tag that a frame shows: what its address asks for by name, else that of the page that its state was on. */
export function frameElement(show: string | null, page: string): string {
  const isKnown = show !== null && Object.hasOwn(shows, show);
  if (show !== null && !isKnown)
    warnOnce(`show: “${show}” is not known; allowed: ${Object.keys(shows).join(", ")}`);
  return shows[isKnown ? show : page] ?? "reed-bench";
}
