import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bassoonActions, bassoonModel } from "../../src/reed/bassoon.js";
import {
  pageNames,
  thousandthsBlend,
  type Wet,
  allRoundValues,
  decodeBench,
  encodeBench,
  newBench,
  type Bench,
  type Layer,
} from "../../src/reed/bench.js";
import type { SevenValues } from "../../src/engine/qualities.js";
import { demoReadings } from "../../src/reed/demo-readings.js";
import { planKinds, qualityIds } from "../../src/reed/looked-advice.js";
import { targets } from "../../src/reed/targets.js";
import { givenValues } from "../../src/reed/tried.js";
import { lengthUnits, toThousandths } from "../../src/reed/units.js";

const seed = 20_260_102;
const ids = bassoonModel.features.map(({ id }) => id);
const fresh = newBench(bassoonModel);
const ownBench: Bench = { ...fresh, reed: "Sedge" };
const encode = (bench: Bench): string => encodeBench(bench, bassoonModel);
const decode = (text: string) => decodeBench(text, bassoonModel);

/** Whole thousandths up to the seven digits of a cell, on some of the features. */
const anyValues = fc
  .tuple(
    ...bassoonModel.features.map(({ min, max }) =>
      fc.option(fc.integer({ min: min > 0 ? 1 : 0, max: Math.floor(10 * max * 1000) }), {
        nil: undefined,
      }),
    ),
  )
  .map((cells) =>
    Object.fromEntries(
      cells.flatMap((cell, i) => (cell === undefined ? [] : [[ids[i]!, (cell + 0) / 1000]])),
    ),
  );

const anyBench: fc.Arbitrary<Bench> = fc.record({
  model: fc.constant(bassoonModel.id),
  reed: fc.string({ maxLength: 80, unit: "binary" }).filter((name) => name.length <= 80),
  values: anyValues,
  locked: fc.subarray(ids),
  finished: fc.boolean(),
  unit: fc.constantFrom(...lengthUnits),
  target: fc.constantFrom("", ...targets.map(({ id }) => id)),
  layers: fc.subarray<Layer>([
    "readingLines",
    "certainty",
    "gaugeAlone",
    "coverage95",
    "pulls",
    "eachPull",
    "reach",
  ]),
  page: fc.constantFrom(...pageNames),
  unsound: fc.subarray(["soaked", "tight", "wires", "whole", "even", "instrument"]),
  overruled: fc.boolean(),
  wet: fc.constantFrom<Wet>("", "soaked", "dry"),
});

const anyAim = fc
  .tuple(fc.integer({ min: 0, max: 1000 }), fc.integer({ min: 0, max: 1000 }))
  .filter(([high, low]) => high + low <= 1000)
  .map(([high, low]) => ({ aim: thousandthsBlend(high, low), target: "own" }));
const anyPinned = fc
  .record({ reed: fc.string({ maxLength: 80 }), values: anyValues })
  .map((pinned) => ({ pinned }));

const anySitting = fc.array(
  fc.record({
    action: fc.constantFrom(...bassoonActions.actions.map(({ id }) => id)),
    amount: fc.integer({ min: 1, max: 99 }),
  }),
  { minLength: 1, maxLength: 4 },
);
/** Only the last sitting may be empty, and not when it is the only one. */
const anyDone = fc
  .tuple(fc.array(anySitting, { minLength: 1, maxLength: 4 }), fc.boolean())
  .map(([sittings, begun]) => ({ done: begun ? [...sittings, []] : sittings }));

const anySeven = fc
  .array(fc.integer({ min: 0, max: 1000 }), { minLength: 7, maxLength: 7 })
  .map((all) => all.map((one) => one / 100) as unknown as SevenValues);
const anyLooks = fc.record(
  {
    plan: fc.constantFrom(...planKinds),
    quality: fc.constantFrom(...qualityIds),
    judged: fc.dictionary(fc.constantFrom(...qualityIds), anySeven, {
      minKeys: 1,
      noNullPrototype: true,
    }),
  },
  { requiredKeys: [], noNullPrototype: true },
);

/** Some features tried at another value, some left out. */
function triedOn({ values }: Bench, some: number): Pick<Bench, "tried"> {
  const tried = Object.entries(values).flatMap(([id, value], i): [string, number | null][] =>
    (some >> i) % 3 === 0
      ? []
      : [[id, (some >> i) % 3 === 1 ? value + (value > 1 ? -0.001 : 0.001) : null]],
  );
  const whole = tried.map(([id, value]) => [id, value === null ? null : toThousandths(value)]);
  return tried.length > 0 ? { tried: Object.fromEntries(whole) } : {};
}

const anyFullBench: fc.Arbitrary<Bench> = fc
  .tuple(
    anyBench,
    fc.oneof(fc.constant({}), anyAim),
    fc.oneof(fc.constant({}), anyPinned),
    fc.oneof(fc.constant({}), anyDone),
    anyLooks,
    fc.nat(),
  )
  .map(([bench, aim, pinned, done, looks, some]) => {
    const given = givenValues(bassoonModel, { reed: bench.reed, ...done });
    const own = { ...bench, ...(given ? { values: given } : {}) };
    const measured = Object.keys(own.values);
    const expected = measured.slice(0, some % (measured.length + 1));
    return {
      ...own,
      ...triedOn(own, some),
      ...aim,
      ...pinned,
      ...done,
      ...looks,
      ...(expected.length > 0 ? { expected } : {}),
    };
  });

describe("a bench as one line of text", () => {
  test("comes back as it was, whatever it holds", () => {
    fc.assert(
      fc.property(anyFullBench, (bench) => {
        expect(decode(encode(bench))).toEqual({ bench, problems: [] });
      }),
      { seed, numRuns: 500 },
    );
  });

  test("keeps every thousandth of every reading", () => {
    for (let thousandths = 1; thousandths <= 31_000; thousandths += 1) {
      const bench = { ...ownBench, values: { bladeLength: thousandths / 1000 } };
      const back = decode(encode(bench)).bench.values["bladeLength"];
      if (back !== thousandths / 1000) expect(back).toBe(thousandths / 1000);
    }
    expect(decode(encode({ ...ownBench, values: { tip: 0.113 } })).bench.values).toEqual({
      tip: 0.113,
    });
  });

  test("is the same with the sign that begins an address's hash", () => {
    expect(decode(`#${encode(fresh)}`)).toEqual({ bench: fresh, problems: [] });
  });

  test("holds nothing that an address must escape, for any bench", () => {
    fc.assert(
      fc.property(anyFullBench, (bench) => {
        expect(encode(bench)).toMatch(/^[\w.=&%~!*'()-]*$/);
      }),
      { seed },
    );
  });

  test.each(["Heron", "heron", " HERON "])("the name %j alone is that demo reed", (name) => {
    expect(decode(`v=1&model=bassoon&reed=${encodeURIComponent(name)}`)).toEqual({
      bench: { ...fresh, reed: "Heron", values: demoReadings["Heron"], finished: true },
      problems: [],
    });
  });

  test("whatever name a link brings, the bench can be written into an address again", () => {
    const anyName = fc.oneof(
      fc.string({ unit: "binary", maxLength: 100 }),
      fc
        .array(fc.integer({ min: 0, max: 0xffff }), { maxLength: 90 })
        .map((units) => String.fromCharCode(...units)),
    );
    fc.assert(
      fc.property(anyName, anyName, (reed, raw) => {
        for (const text of [encode({ ...fresh, reed }), `v=1&model=bassoon&reed=${raw}`]) {
          const { bench } = decode(text);
          expect(decode(encode(bench)).bench).toEqual(bench);
        }
      }),
      { seed, numRuns: 500 },
    );
    const name = `${"a".repeat(79)}\u{1F426}`;
    const { bench } = decode(`v=1&model=bassoon&reed=${encodeURIComponent(name)}`);
    expect(bench.reed).toBe("a".repeat(79));
    expect(encode(bench)).toContain(`reed=${"a".repeat(79)}&`);
  });

  test("of the first bench is short and plain", () => {
    expect(encode(fresh)).toBe(
      "v=1&model=bassoon&values=27300.15000.8567.747.933.463.227.563.387.107.147.533.1233.11933&layers=certainty",
    );
  });
});

describe("the first bench", () => {
  test("has every feature at the mean of its corner values, in whole thousandths", () => {
    for (const { id, corners } of bassoonModel.features) {
      const mean = (corners.high + corners.low + corners.loud) / 3;
      const value = allRoundValues(bassoonModel)[id]!;
      expect(Math.abs(value - mean), id).toBeLessThanOrEqual(0.0005 + 1e-12);
      expect(Math.round(value * 1000) / 1000, id).toBe(value);
    }
  });
});

const reed: Bench = {
  model: "bassoon",
  reed: "Sedge",
  values: { ...allRoundValues(bassoonModel), spine: 0.512 },
  locked: ["spine", "tip"],
  finished: true,
  unit: "thou",
  target: "softLow",
  layers: ["readingLines"],
  page: "lip",
  unsound: ["tight"],
  overruled: true,
  wet: "soaked",
};
const { spine: _spine, ...withoutSpine } = reed.values;
const { bladeLength: _blade, ...withoutBlade } = reed.values;

/** The text of the reed with one field said otherwise, or left out. */
function withField(field: string, text: string | undefined): string {
  const parts = encode(reed)
    .split("&")
    .filter((part) => !part.startsWith(`${field}=`));
  return text === undefined ? parts.join("&") : [...parts, `${field}=${text}`].join("&");
}
const cells = (at: number, text: string): string =>
  ids.map((id, i) => (i === at ? text : String(Math.round(reed.values[id]! * 1000)))).join(".");

describe("a broken field is told, and the rest is kept", () => {
  test.each<[string, string, string, RegExp, Partial<Bench>]>([
    [
      "a reading with a point",
      "values",
      cells(7, "0,512"),
      /^values, spine is "0,512"; allowed/,
      { values: withoutSpine },
    ],
    [
      "an empty cell",
      "values",
      cells(7, ""),
      /^values, spine is ""; allowed/,
      { values: withoutSpine },
    ],
    [
      "a reading of eight digits",
      "values",
      cells(7, "12345678"),
      /^values, spine is/,
      { values: withoutSpine },
    ],
    [
      "a cell too few",
      "values",
      "1.2.3",
      /^values has 3 cells; allowed: 14/,
      { values: fresh.values },
    ],
    [
      "an unknown lock",
      "locked",
      "spine.bore.tip",
      /^locked names "bore"; allowed: bladeLength/,
      {},
    ],
    [
      "an unknown unit",
      "unit",
      "cubit",
      /^unit names "cubit"; allowed: mm, in, thou/,
      { unit: "mm" },
    ],
    [
      "an unknown page",
      "page",
      "attic",
      /^page names "attic"; allowed: measure, bench, plan, lip/,
      { page: "bench" },
    ],
    ["an unknown look", "unsound", "tight.loud", /^unsound names "loud"; allowed: soaked/, {}],
    [
      "a blade of no length",
      "values",
      cells(0, "0"),
      /^values, bladeLength is 0; allowed: about 24\.5/,
      { values: withoutBlade },
    ],
    ["an unknown layer", "layers", "readingLines.fog", /^layers names "fog"; allowed/, {}],
    ["another flag", "finished", "yes", /^finished is "yes"; allowed: 1 or 0/, { finished: false }],
    ["an aim of too much", "aim", "700.400", /^aim is "700.400"; allowed: the shares/, {}],
    ["an aim that is no place", "aim", "here", /^aim is "here"; allowed: the shares/, {}],
    ["a pinned reed of three cells", "pinned", "1.2.3", /^pinned has 3 cells; allowed: 14/, {}],
    [
      "a step of an unknown action",
      "done",
      "thinWings-2.glue-1",
      /^done names "glue-1"; allowed: an action/,
      { done: [[{ action: "thinWings", amount: 2 }]] },
    ],
    ["an unknown plan", "plan", "boldest", /^plan names "boldest"; allowed: undoable/, {}],
    ["an unknown quality", "quality", "smell", /^quality names "smell"; allowed: highEntries/, {}],
    [
      "a judgement of six values",
      "judged",
      "loudest-1.2.3.4.5.6~softest-0.100.200.300.400.500.1000",
      /^judged names "loudest-1.2.3.4.5.6"; allowed: a quality/,
      { judged: { softest: [0, 1, 2, 3, 4, 5, 10] } },
    ],
    [
      "a judgement beyond the scale",
      "judged",
      "softest-0.100.200.300.400.500.1001",
      /^judged names "softest/,
      {},
    ],
    [
      "something expected that is no feature",
      "expected",
      "tip.bore",
      /^expected names "bore"/,
      { expected: ["tip"] },
    ],
    [
      "bad URL encoding",
      "reed",
      "%E0%A4%A",
      /^reed is "%E0%A4%A"; allowed: text in URL/,
      { reed: "", values: fresh.values, tried: { spine: 0.512 } },
    ],
  ])("%s", (_name, field, text, problem, change) => {
    const { bench, problems } = decode(withField(field, text));
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatch(problem);
    expect(bench).toEqual({ ...reed, ...change });
  });

  test("one's own target needs a place", () => {
    const { bench, problems } = decode(withField("target", "own"));
    expect(problems).toHaveLength(1);
    expect(bench.target).toBe("");
  });

  test("more steps than any reed outlives are refused at once, and the rest is kept", () => {
    const many = Array.from({ length: 80_000 }, () => "thinWings-2").join(".");
    const { bench, problems } = decode(withField("done", many));
    expect(problems).toEqual(["done holds 80000 steps; allowed: at most 400."]);
    expect(bench).toEqual(reed);
  });

  test("every broken field is told at once", () => {
    const text = `v=1&model=bassoon&unit=cubit&finished=yes&locked=bore&values=${cells(0, "x")}`;
    expect(decode(text).problems).toHaveLength(4);
  });

  test.each([
    ["values", { values: fresh.values }],
    ["locked", { locked: [] }],
    ["unit", { unit: "mm" }],
    ["layers", { layers: ["certainty"] }],
    ["page", { page: "bench" }],
    ["unsound", { unsound: [] }],
    ["overruled", { overruled: false }],
    ["wet", { wet: "" }],
    ["finished", { finished: false }],
    ["reed", { reed: "", values: fresh.values, tried: { spine: 0.512 } }],
  ] as const)("a missing %s is no problem: it is as on a new bench", (field, change) => {
    expect(decode(withField(field, undefined))).toEqual({
      bench: { ...reed, ...change },
      problems: [],
    });
  });

  test.each([
    ["another version", withField("v", "2"), 'version is "2"; allowed: 1.'],
    ["no version", withField("v", undefined), "version is missing; allowed: 1."],
    ["another model", withField("model", "horn"), 'model is "horn"; allowed: "bassoon".'],
    ["no model", withField("model", undefined), 'model is missing; allowed: "bassoon".'],
  ])("%s is refused whole: a new bench, and one sentence", (_name, text, problem) => {
    expect(decode(text)).toEqual({ bench: fresh, problems: [problem] });
  });

  test("a link from before there was anything looked at opens as it did", () => {
    const old =
      "v=1&model=bassoon&reed=Sedge&values=27700.15300.8500.700.900.450.240.540.390.100.170.450.1100.11800&finished=1&target=everyday&done=thinWings-2~&layers=certainty&page=plan";
    const { bench, problems } = decode(old);
    expect(problems).toEqual([]);
    expect(bench).toMatchObject({ reed: "Sedge", target: "everyday", page: "plan" });
    for (const field of ["plan", "quality", "judged", "expected"])
      expect(bench).not.toHaveProperty(field);
    expect(encode(bench)).toBe(old);
  });

  test("a name longer than 80 signs is cut", () => {
    expect(decode(withField("reed", "x".repeat(200))).bench.reed).toBe("x".repeat(80));
  });

  test("a value that is not finite never comes out, and nothing is ever thrown", () => {
    const changed = fc
      .tuple(anyBench, fc.nat(), fc.string({ maxLength: 6, unit: "binary" }), fc.nat({ max: 8 }))
      .map(([bench, at, insert, cut]) => {
        const text = encode(bench);
        const from = at % (text.length + 1);
        return text.slice(0, from) + insert + text.slice(from + cut);
      });
    const anyText = fc.oneof(fc.string({ unit: "binary" }), changed);
    fc.assert(
      fc.property(anyText, (text) => {
        const { bench, problems } = decode(text);
        for (const value of Object.values(bench.values)) expect(Number.isFinite(value)).toBe(true);
        expect(bench.model).toBe("bassoon");
        expect(bench.locked.every((id) => ids.includes(id))).toBe(true);
        for (const problem of problems) expect(problem).toMatch(/; allowed: .*\.$/s);
      }),
      { seed, numRuns: 2000 },
    );
  });
});
