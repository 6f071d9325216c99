/**
 * How far a key moves a slider, in the feature's unit: an arrow a step, with Shift a tenth of one (no finer than
 * the thousandths that are kept), the Page keys five steps; undefined for any other key.
 */
export function sliderMove(event: KeyboardEvent, step: number): number | undefined {
  if (event.ctrlKey || event.altKey || event.metaKey) return undefined;
  const fine = Math.max(step / 10, 0.001);
  switch (inReadingOrder(event)) {
    case "ArrowUp":
    case "ArrowRight":
      return event.shiftKey ? fine : step;
    case "ArrowDown":
    case "ArrowLeft":
      return event.shiftKey ? -fine : -step;
    case "PageUp":
      return 5 * step;
    case "PageDown":
      return -5 * step;
    default:
      return undefined;
  }
}

/** In a script from right to left a slider's greater values lie to the left. */
function inReadingOrder({ key, target }: KeyboardEvent): string {
  const sideways = key === "ArrowLeft" || key === "ArrowRight";
  if (!sideways || !(target instanceof Element)) return key;
  if (getComputedStyle(target).direction !== "rtl") return key;
  return key === "ArrowLeft" ? "ArrowRight" : "ArrowLeft";
}
