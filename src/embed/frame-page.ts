// The frame page: one element that shows the reed of the address, as tall as it needs, in a conversation with the page
// around it and with nobody else.
import { startState } from "../app/bench-state.js";
import { bassoonModel } from "../reed/bassoon.js";
import { decodeBench, encodeBench } from "../reed/bench.js";
import * as elements from "./elements-with-a-reed.js";
import type { EmbeddedReed } from "./embedded-reed.js";
import { frameElement } from "./frame-element.js";
import { talkWithPageAround } from "./frame-talk.js";
import { warnOnce } from "./warn-once.js";

void elements;

const asked = new URLSearchParams(window.location.search);

function codeOf(element: EmbeddedReed): string {
  return encodeBench(element.shared.state.present.bench, bassoonModel);
}

/** Shows the reed of a code; of a code that cannot be read, what can be read of it. */
async function open(code: string): Promise<void> {
  const { bench, problems } = decodeBench(code || "v=1&model=bassoon", bassoonModel);
  for (const problem of problems) warnOnce(problem);
  const name = frameElement(asked.get("show"), bench.page);
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
