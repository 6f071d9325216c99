// For a page that holds frames: every <iframe data-reedpoint> becomes as tall as its content says.
import { readHeight } from "./frame-messages.js";

const frames = (): NodeListOf<HTMLIFrameElement> =>
  document.querySelectorAll<HTMLIFrameElement>("iframe[data-reedpoint]");

window.addEventListener("message", ({ data, source }) => {
  const height = readHeight(data);
  if (height === undefined) return;
  // A sandboxed frame has no origin that could be compared: which window it comes from is what counts.
  for (const frame of frames())
    if (frame.contentWindow === source && Math.abs(frame.offsetHeight - height) > 1)
      frame.style.height = `${height}px`;
});

/** A frame that has spoken before this script was there is asked once more; one that is still coming speaks by itself. */
for (const frame of frames())
  frame.contentWindow?.postMessage({ reedpoint: 1, type: "measure" }, "*");
