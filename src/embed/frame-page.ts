// The frame page: one element that shows the reed of the address, as tall as it needs, in a conversation with the page
// around it and with nobody else.
import { startState } from "../app/bench-state.js";
import { bassoonModel } from "../reed/bassoon.js";
import { decodeBench, encodeBench } from "../reed/bench.js";
import * as elements from "./elements-with-a-reed.js";
import type { EmbeddedReed } from "./embedded-reed.js";
import { talkWithPageAround } from "./frame-talk.js";
import { warnOnce } from "./warn-once.js";

void elements;

const shows: Readonly<Record<string, string>> = {
  bench: "reed-bench",
  triangle: "reed-triangle",
  lamp: "reed-lamp",
  lip: "reed-lip",
  "stand-ins": "reed-stand-ins",
  plan: "reed-plan",
};

const asked = new URLSearchParams(window.location.search);

/** What the address asks for by name; else the page that its state was on. */
function nameOf(page: string): string {
  const show = asked.get("show");
  if (show !== null && !Object.hasOwn(shows, show))
    warnOnce(`show: “${show}” is not known; allowed: ${Object.keys(shows).join(", ")}`);
  return shows[show ?? page] ?? shows[page] ?? "reed-bench";
}

function codeOf(element: EmbeddedReed): string {
  return encodeBench(element.shared.state.present.bench, bassoonModel);
}

/** Shows the reed of a code; of a code that cannot be read, what can be read of it. */
async function open(code: string): Promise<void> {
  const { bench, problems } = decodeBench(code || "v=1&model=bassoon", bassoonModel);
  for (const problem of problems) warnOnce(problem);
  const name = nameOf(bench.page);
  let element = document.querySelector<EmbeddedReed>(name);
  if (!element) {
    element = document.createElement(name) as EmbeddedReed;
    for (const flag of ["locked", "bare", "lying"])
      if (asked.has(flag)) element.setAttribute(flag, "");
    const feature = asked.get("feature");
    if (feature !== null) element.setAttribute("feature", feature);
    document.querySelector(".reed")!.replaceChildren(element);
    await element.updateComplete; // what its attributes say comes first
  }
  const locked = asked.has("locked") ? bassoonModel.features.map(({ id }) => id) : bench.locked;
  element.shared.open(startState(bassoonModel, { ...bench, locked }));
}

talkWithPageAround({
  open: (code) => void open(code),
  codeOf: (element) => codeOf(element as EmbeddedReed),
});
