// The frame page: one element that shows the reed of the address, as tall as it needs, in a conversation with the page
// around it and with nobody else.
import { startState } from "../app/bench-state.js";
import { bassoonModel } from "../reed/bassoon.js";
import { decodeBench, encodeBench } from "../reed/bench.js";
import type { EmbeddedReed } from "./embedded-reed.js";
import { clampHeight, readCommand, type FrameMessage } from "./frame-messages.js";
import * as elements from "./reed-elements.js";
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

const isFramed = window.parent !== window;
let told = 0;
let isTelling = false;

function say(message: FrameMessage): void {
  // The page around may be anyone's: a height is no secret, and what the user does is told only where it was asked for.
  if (isFramed) window.parent.postMessage(message, "*");
}

function sayHeight(again = false): void {
  const height = clampHeight(document.querySelector("main")!.getBoundingClientRect().height);
  if (!again && Math.abs(height - told) < 2) return;
  told = height;
  say({ reedpoint: 1, type: "height", height });
}

function setTheme(theme: string | null): void {
  const root = document.documentElement;
  if (theme === "paper" || theme === "night") root.setAttribute("data-theme", theme);
  else root.removeAttribute("data-theme");
}

window.addEventListener("message", ({ data, source }) => {
  if (!isFramed || source !== window.parent) return;
  const command = readCommand(data);
  if (command?.type === "open") void open(command.code);
  if (command?.type === "theme") setTheme(command.theme);
  if (command?.type === "measure") sayHeight(true);
  if (command?.type === "tell") isTelling = true;
});

window.addEventListener("hashchange", () => void open(window.location.hash.slice(1)));
document.addEventListener("change", (event) => {
  if (isTelling && event instanceof CustomEvent)
    say({ reedpoint: 1, type: "changed", code: codeOf(event.target as EmbeddedReed) });
});

setTheme(asked.get("theme"));
void open(window.location.hash.slice(1));
new ResizeObserver(() => sayHeight()).observe(document.querySelector("main")!);
