// One tiny script: it fetches the code of an element when such an element is in the page, now or later.
import { defineElement } from "./define-element.js";
import { warnOnce } from "./warn-once.js";

const loaders: Readonly<Record<string, () => Promise<Parameters<typeof defineElement>[1]>>> = {
  "reed-bench": async () => (await import("./bench-element.js")).BenchElement,
  "reed-triangle": async () => (await import("./triangle-element.js")).TriangleElement,
  "reed-lamp": async () => (await import("./lamp-element.js")).LampElement,
  "reed-lip": async () => (await import("./lip-element.js")).LipElement,
  "reed-stand-ins": async () => (await import("./stand-ins-element.js")).StandInsElement,
  "reed-plan": async () => (await import("./plan-element.js")).PlanElement,
  "reed-lesson": async () => (await import("./lesson-element.js")).LessonElement,
};

const selector = Object.keys(loaders).join(",");
const asked = new Set<string>();

async function load(name: string): Promise<void> {
  if (asked.has(name)) return;
  asked.add(name);
  try {
    defineElement(name, await loaders[name]!());
  } catch (cause) {
    asked.delete(name); // the next such element tries again
    warnOnce(`<${name}> could not be loaded: ${String(cause)}`);
  }
}

function look(root: Document | Element): void {
  if (root instanceof Element && root.localName in loaders) void load(root.localName);
  for (const element of root.querySelectorAll(selector)) void load(element.localName);
}

new MutationObserver((changes) => {
  for (const { addedNodes } of changes)
    for (const node of addedNodes) if (node instanceof Element) look(node);
}).observe(document, { childList: true, subtree: true });
look(document);
