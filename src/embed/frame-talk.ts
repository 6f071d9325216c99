// What frame pages have in common: a look that can be asked for, a height that is told, and a conversation with the
// page around and with nobody else.
import { clampHeight, readCommand, type FrameMessage } from "./frame-messages.js";

/** What a frame page shows. */
export interface FrameContent {
  /** Shows what a code says. */
  readonly open: (code: string) => void;
  /** The code of what is shown now, of which an element has just told something. */
  readonly codeOf: (element: EventTarget) => string;
}

const isFramed = window.parent !== window;

function say(message: FrameMessage): void {
  // The page around may be anyone's: a height is no secret, and what the user does is told only where it was asked for.
  if (isFramed) window.parent.postMessage(message, "*");
}

let told = 0;

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

/** Opens what the address says, and whatever the page around says later. */
export function talkWithPageAround({ open, codeOf }: FrameContent): void {
  let isTelling = false;
  window.addEventListener("message", ({ data, source }) => {
    if (!isFramed || source !== window.parent) return;
    const command = readCommand(data);
    if (command?.type === "open") open(command.code);
    if (command?.type === "theme") setTheme(command.theme);
    if (command?.type === "measure") sayHeight(true);
    if (command?.type === "tell") isTelling = true;
  });
  window.addEventListener("hashchange", () => open(window.location.hash.slice(1)));
  document.addEventListener("change", (event) => {
    if (isTelling && event instanceof CustomEvent)
      say({ reedpoint: 1, type: "changed", code: codeOf(event.target!) });
  });
  setTheme(new URLSearchParams(window.location.search).get("theme"));
  open(window.location.hash.slice(1));
  new ResizeObserver(() => sayHeight()).observe(document.querySelector("main")!);
}
