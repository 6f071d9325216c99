// @vitest-environment jsdom
import fc from "fast-check";
import type { LitElement } from "lit";
import { afterEach, beforeAll, beforeEach, describe, expect, test, vi } from "vitest";
import type { EmbeddedReed } from "../../src/embed/embedded-reed.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { demoReadings } from "../../src/reed/demo-readings.js";

const seed = 20_261_128;

beforeAll(async () => {
  // What jsdom has not: a form's value, a canvas, sizes, scrolling.
  HTMLElement.prototype.attachInternals = () =>
    ({ form: null, setFormValue: () => {} }) as unknown as ElementInternals;
  vi.spyOn(HTMLCanvasElement.prototype, "getContext").mockReturnValue(null);
  vi.stubGlobal(
    "ResizeObserver",
    class {
      observe(): void {}
      unobserve(): void {}
      disconnect(): void {}
    },
  );
  Element.prototype.scrollIntoView = () => {};
  await import("../../src/embed/elements-with-a-reed.js");
  // The parts that come late are there before the first element asks for them.
  await import("../../src/embed/plan-inside.js");
  await import("../../src/app/bench-stand-ins.js");
  await import("../../src/app/bench-lip.js");
  await import("../../src/app/reach-view.js");
}, 30_000);

let faults: string[] = [];
const onError = (event: ErrorEvent): void => void faults.push(String(event.error ?? event.message));
const onRejection = (cause: unknown): void => void faults.push(String(cause));

beforeEach(() => {
  faults = [];
  vi.spyOn(console, "warn").mockImplementation(() => {});
  vi.spyOn(console, "error").mockImplementation((...all) => void faults.push(all.join(" ")));
  window.addEventListener("error", onError);
  process.on("unhandledRejection", onRejection);
});
afterEach(() => {
  document.body.replaceChildren();
  window.removeEventListener("error", onError);
  process.off("unhandledRejection", onRejection);
});

const ids = bassoonModel.features.map(({ id }) => id);
const some = "bladeLength tipWidth throatWidth spine tip";

/** What a page may write into an attribute: what is meant, what is odd, nothing. */
const attributes: Readonly<Record<string, readonly string[]>> = {
  reed: ["Bittern", "teal", "Nobody", "", "__proto__", "constructor"],
  values: [
    '{"bladeLength":27.2,"spine":0.5}',
    "{}",
    "[]",
    "null",
    "7",
    "{",
    '{"tip":0,"heart":9999,"wings":-50}',
    '{"__proto__":1}',
    "",
  ],
  target: [
    "concerto",
    "20 50 30",
    "33.35 66.65 0",
    "1e308 1e308 1",
    "0 0 0",
    "-1 2 3",
    "nowhere",
    "",
  ],
  layers: ["reach pulls certainty", "none", "reach", "moon", ""],
  features: [some, "throatWidth tipWidth spine", "tip", "openingHeight openingWidth", "bore", ""],
  locked: ["", "all", "tip", "bladeLength spine", "bore", "firstWire"],
  still: [""],
  model: ["bassoon", "oboe", ""],
  for: ["nobody", ""],
  theme: ["night", "purple", ""],
  feature: ["spine", "bore", "firstWire", ""],
  bare: [""],
  name: ["reed", ""],
  lang: ["de", "en"],
};

const tags = [
  "reed-triangle",
  "reed-bench",
  "reed-lamp",
  "reed-lip",
  "reed-stand-ins",
  "reed-plan",
];

type Deed =
  | { readonly kind: "attribute"; readonly name: string; readonly value: string }
  | { readonly kind: "removed"; readonly name: string }
  | { readonly kind: "property"; readonly name: string; readonly value: unknown };

function anyDeed(names: readonly string[]): fc.Arbitrary<Deed> {
  const name = fc.constantFrom(...names);
  return fc.oneof(
    name.chain((one) =>
      fc
        .constantFrom(...attributes[one]!)
        .map((value): Deed => ({ kind: "attribute", name: one, value })),
    ),
    name.map((one): Deed => ({ kind: "removed", name: one })),
    fc
      .tuple(name, fc.constantFrom<unknown>(null, undefined, 7, {}, [], Number.NaN, true))
      .map(([one, value]): Deed => ({ kind: "property", name: one, value })),
  );
}

type Public = EmbeddedReed & Record<string, unknown>;

async function settled(element: Element): Promise<void> {
  for (let i = 0; i < 2; i += 1) {
    await (element as LitElement).updateComplete.catch((cause: unknown) =>
      faults.push(String(cause)),
    );
    await new Promise((done) => setTimeout(done));
  }
}

async function show(tag: string, all: Readonly<Record<string, string>>): Promise<Public> {
  const element = document.createElement(tag) as Public;
  for (const [name, value] of Object.entries(all)) element.setAttribute(name, value);
  document.body.append(element);
  await settled(element);
  return element;
}

function put(element: Public, deed: Deed): void {
  if (deed.kind === "attribute") element.setAttribute(deed.name, deed.value);
  else if (deed.kind === "removed") element.removeAttribute(deed.name);
  else Object.assign(element, { [deed.name]: deed.value });
}

/** What a hand does to the reed, whatever the page has said. */
function drag(element: Public): void {
  const gesture = "test";
  element.shared.dispatch({ type: "point-moved", target: [0.5, 0.3, 0.2], gesture });
  element.shared.dispatch({ type: "gesture-ended" });
}

/** The element as a page without any attribute has it, and then a reed that it must show. */
async function follows(element: Public): Promise<boolean> {
  for (const name of Object.keys(attributes)) element.removeAttribute(name);
  for (const name of ["values", "model"]) Object.assign(element, { [name]: null });
  element.setAttribute("reed", "Teal");
  await settled(element);
  const isShown = element.shadowRoot!.querySelector(".frame")!.childElementCount > 0;
  return isShown && JSON.stringify(element.values) === JSON.stringify(demoReadings["Teal"]);
}

async function played(tag: string, deeds: readonly Deed[]): Promise<readonly string[]> {
  faults = [];
  const element = document.createElement(tag) as Public;
  for (const deed of deeds.slice(0, 1)) put(element, deed);
  document.body.append(element);
  await settled(element);
  for (const deed of deeds.slice(1)) {
    put(element, deed);
    await settled(element);
  }
  drag(element);
  await settled(element);
  if (!(await follows(element))) faults.push("does not follow a good attribute any more");
  element.remove();
  return faults;
}

describe.each(tags)("<%s>", (tag) => {
  const names = (): string[] => {
    const { observedAttributes } = customElements.get(tag) as unknown as {
      readonly observedAttributes: readonly string[];
    };
    return Object.keys(attributes).filter((name) => observedAttributes.includes(name));
  };

  test("knows every attribute that is tried here, and none besides", () => {
    const { observedAttributes } = customElements.get(tag) as unknown as {
      readonly observedAttributes: readonly string[];
    };
    const untried = observedAttributes.filter((name) => !(name in attributes));
    expect(untried.filter((name) => name !== "lying")).toEqual([]);
  });

  test("takes every attribute alone, good, odd, empty, removed, null or undefined", async () => {
    for (const name of names()) {
      const deeds: Deed[] = [
        ...attributes[name]!.map((value): Deed => ({ kind: "attribute", name, value })),
        { kind: "removed", name },
        { kind: "property", name, value: null },
        { kind: "property", name, value: undefined },
      ];
      for (const deed of deeds)
        expect({ deed, faults: await played(tag, [deed]) }).toEqual({ deed, faults: [] });
    }
  }, 60_000);

  test("takes any of them after one another, and follows the next good one", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(anyDeed(names()), { minLength: 2, maxLength: 4 }),
        async (deeds) => {
          expect(await played(tag, deeds)).toEqual([]);
        },
      ),
      { seed, numRuns: 30, endOnFailure: true },
    );
  }, 60_000);
});

describe("<reed-lesson>", () => {
  const lessons = {
    lesson: ["06-shape", "nothing", ""],
    step: ["2", "0", "x", ""],
    model: ["oboe", ""],
  };

  test("takes every attribute, good, odd, empty, removed, null or undefined, and shows the next good lesson", async () => {
    const { LessonElement } = await import("../../src/embed/lesson-element.js");
    if (!customElements.get("reed-lesson")) customElements.define("reed-lesson", LessonElement);
    for (const [name, values] of Object.entries(lessons)) {
      for (const value of [...values, null, undefined]) {
        const element = document.createElement("reed-lesson") as InstanceType<typeof LessonElement>;
        element.setAttribute("lesson", "06-shape");
        document.body.append(element);
        await settled(element);
        if (typeof value === "string") element.setAttribute(name, value);
        else Object.assign(element, { [name]: value });
        await settled(element);
        element.removeAttribute(name);
        element.setAttribute("lesson", "01-parts");
        await vi.waitFor(
          () =>
            expect(element.source).toMatchObject({
              title: expect.stringContaining("parts of a blade") as unknown,
            }),
          10_000,
        );
        expect({ name, value, faults }).toEqual({ name, value, faults: [] });
        element.remove();
      }
    }
  }, 60_000);
});

describe("features that count", () => {
  test("a plan over five features is a plan with hands that change these", async () => {
    const element = await show("reed-plan", {
      reed: "Bittern",
      features: some,
      target: "concerto",
    });
    const plan = element.shadowRoot!.querySelector("bench-plan")!;
    expect(faults).toEqual([]);
    expect(plan.shadowRoot!.querySelectorAll("reed-steps").length).toBeGreaterThan(0);
  });

  test("a triangle over three features has its reach, and a lock of another feature holds nothing", async () => {
    const element = await show("reed-triangle", {
      features: "throatWidth tipWidth spine",
      locked: "bladeLength",
      layers: "certainty reach",
    });
    const before = element.values;
    drag(element);
    expect(element.values).not.toEqual(before);
    expect(faults).toEqual([]);
    expect(Object.keys(element.values).toSorted()).toEqual(["spine", "throatWidth", "tipWidth"]);
  });

  test("nothing said again where nothing was said leaves what the user has moved", async () => {
    const element = document.createElement("reed-triangle") as EmbeddedReed;
    document.body.append(element);
    await element.updateComplete;
    element.shared.dispatch({ type: "point-moved", target: [0.5, 0.2, 0.3] });
    const { values } = element;
    Object.assign(element, { reed: undefined, features: null });
    await element.updateComplete;
    expect(element.values).toBe(values);
  });

  test.each([null, undefined])("locked set to %s sets everything free again", async (nothing) => {
    const element = await show("reed-triangle", { locked: ids.join(" ") });
    Object.assign(element, { locked: nothing });
    await settled(element);
    const before = element.values;
    drag(element);
    expect(element.values).not.toEqual(before);
  });
});

describe("shares of a target", () => {
  test.each(["33.35 66.65 0", "1 1 1", "1e308 1e308 1", "99.96 0.03 0.01"])(
    "%s are whole thousandths that sum to 1, none below 0",
    async (target) => {
      const element = document.createElement("reed-triangle") as Public;
      element.setAttribute("target", target);
      document.body.append(element);
      await settled(element);
      const { aim } = element.shared.state.present.bench;
      if (!aim) return expect(target).toContain("e308"); // too large to be shares
      expect(Math.min(...aim)).toBeGreaterThanOrEqual(0);
      expect(aim.reduce((sum, share) => sum + Math.round(share * 1000), 0)).toBe(1000);
    },
  );
});

describe("a bench that is a picture", () => {
  /** The shares are told in fields that are off, and there is nothing to take back. */
  function isToldAndOff(root: ShadowRoot): void {
    expect(root.querySelectorAll(".tools")).toHaveLength(0);
    const shares = root.querySelector("reed-shares")!.shadowRoot!;
    expect(shares.querySelector("fieldset")!.disabled).toBe(true);
    const told = [...shares.querySelectorAll<HTMLInputElement>("input[type=number]")];
    expect(told.reduce((sum, { value }) => sum + Number(value), 0)).toBe(100);
  }

  test.each(["locked", "still"])("by %s moves in none of its parts", async (name) => {
    const element = document.createElement("reed-bench") as Public;
    element.setAttribute(name, "");
    document.body.append(element);
    await settled(element);
    const root = element.shadowRoot!;
    isToldAndOff(root);
    const rows = root
      .querySelector("bench-recipe")!
      .shadowRoot!.querySelector("reed-recipe")!
      .shadowRoot!.querySelectorAll("reed-feature-row");
    expect(rows).toHaveLength(ids.length);
    for (const row of rows) {
      const inside = row.shadowRoot!;
      const slider = inside.querySelector("reed-feature-slider")!.shadowRoot!;
      expect(slider.querySelector("input")!.disabled).toBe(true);
      expect(inside.querySelector<HTMLInputElement>("input[type=text]")!.readOnly).toBe(true);
      expect(inside.querySelectorAll(".lock, .forget")).toHaveLength(0);
    }
  });

  test("in a form that is switched off moves in none of its parts either", async () => {
    expect.hasAssertions();
    const element = document.createElement("reed-bench") as Public;
    document.body.append(element);
    (element as unknown as { formDisabledCallback?(off: boolean): void }).formDisabledCallback?.(
      true,
    );
    await settled(element);
    isToldAndOff(element.shadowRoot!);
  });
});

test("undo away from one's own target moves the point again, not a target that is gone", async () => {
  const element = document.createElement("reed-bench") as Public;
  document.body.append(element);
  await settled(element);
  const triangle = () =>
    element.shadowRoot!.querySelector("bench-place") as LitElement & { moves: string };
  const ask = (action: object) => {
    const event = new Event("bench-action", { bubbles: true, composed: true });
    triangle().dispatchEvent(Object.assign(event, { action }));
  };
  ask({ type: "target-set", target: "own" });
  await settled(element);
  expect(triangle().moves).toBe("aim");
  ask({ type: "undo" });
  await settled(element);
  expect(element.shared.state.present.bench.target).toBe("");
  expect(triangle().moves).toBe("point");
});

test("what changes while a form is off holds nothing once it is on again", async () => {
  const element = await show("reed-triangle", {});
  const switched = element as unknown as { formDisabledCallback(off: boolean): void };
  switched.formDisabledCallback(true);
  element.setAttribute("target", "concerto");
  await settled(element);
  switched.formDisabledCallback(false);
  await settled(element);
  const before = element.values;
  drag(element);
  expect(element.values).not.toEqual(before);
});

test("locked as a flag, as some templates set it, is a picture or nothing", async () => {
  const warned = vi.mocked(console.warn).mockClear();
  const element = await show("reed-triangle", {});
  for (const [flag, isStill] of [
    [true, true],
    [false, false],
  ] as const) {
    Object.assign(element, { locked: flag });
    await settled(element);
    const before = element.values;
    drag(element);
    expect(element.values === before).toBe(isStill);
  }
  expect(warned).not.toHaveBeenCalled();
});

test.each(tags)("<%s>: words that are taken back leave those before", async (tag) => {
  const element = await show(tag, {});
  Object.assign(element, { text: undefined });
  await settled(element);
  Object.assign(element, { text: null });
  await settled(element);
  expect(faults).toEqual([]);
  expect(element.shadowRoot!.querySelector(".frame")!.childElementCount).toBeGreaterThan(0);
});
