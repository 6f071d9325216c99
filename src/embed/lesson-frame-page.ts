// The page of a lesson in other people's frames; the script of the element stands beside it.
import { talkWithPageAround } from "./frame-talk.js";

/** The lesson of a code, and its step, counted from 1; the rest of a code is a bench's. */
const lessonIn = /(^|&)lesson=([^&]*?)(?:\.(\d+))?(?=&|$)/;

interface Shown extends HTMLElement {
  readonly lesson: string;
  readonly step: number;
}

talkWithPageAround({
  open(code) {
    const [, , lesson = "", step = "1"] = lessonIn.exec(code) ?? [];
    const place = document.querySelector(".reed")!;
    const element = place.querySelector("reed-lesson") ?? document.createElement("reed-lesson");
    element.setAttribute("lesson", lesson);
    element.setAttribute("step", step);
    if (!element.isConnected) place.replaceChildren(element);
  },
  codeOf(element) {
    const { lesson, step } = element as Shown;
    return `v=1&model=bassoon&page=lessons&lesson=${lesson}.${step}`;
  },
});
