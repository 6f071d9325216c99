/** What parts of the app say to their owner; the triangle alone has none of them. */
export const partEvents: readonly string[] = [
  "value-picked",
  "lock-picked",
  "try-left",
  "try-accepted",
  "feature-pointed",
  "stand-ins-asked",
  "stand-ins-closed",
  "step-done",
  "quality-picked",
  "moves-picked",
  "bench-action",
  "plan-asked",
  "pressure-picked",
  "lip-preset-picked",
  "assumption-picked",
  "assumptions-reset",
  "lip-purpose-picked",
];

/** Fields inside speak of single numbers; the element tells the page of the reed. */
const native = ["input", "change"];

/** Keeps the events of the parts inside an element, `inner` by name; `take` gets those that ask for something. */
export function stopInside(
  root: Node,
  inner: readonly string[],
  take: (event: Event) => void,
): void {
  for (const type of inner)
    root.addEventListener(type, (event) => {
      event.stopPropagation();
      take(event);
    });
  for (const type of native) root.addEventListener(type, (event) => event.stopPropagation());
}
