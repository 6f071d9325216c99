// `npm run bench`: what the inner loops of the engine and the lip model cost on this machine, next to their budgets. Prints medians; judges nothing.
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { acousticsLines } from "./bench-acoustics.mjs";

const root = fileURLToPath(new URL("..", import.meta.url));
const [library, lipLibrary] = ["engine", "acoustics"].map((door) => `${root}dist/lib/${door}.js`);
if (!existsSync(library) || !existsSync(lipLibrary)) {
  const built = spawnSync("npm", ["run", "build"], { cwd: root, stdio: "inherit", shell: true });
  if (built.status !== 0) process.exit(1);
}
const engine = await import(library);
const acoustics = await import(lipLibrary);

const rounds = 15;
const million = 1_000_000;
const frame = [
  [0, 0],
  [400, 20],
  [180, 330],
];

/** A seeded stream of numbers in [0, 1): the same reeds in every run (mulberry32). */
function seeded(seed) {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

function median(numbers) {
  const sorted = numbers.toSorted((a, b) => a - b);
  return sorted[sorted.length >> 1];
}

/** Median over rounds of the nanoseconds that one of `count` repetitions takes, after two rounds to warm up. */
function measure(count, work) {
  const times = [];
  for (let round = -2; round < rounds; round += 1) {
    const start = process.hrtime.bigint();
    work(count);
    const spent = Number(process.hrtime.bigint() - start);
    if (round >= 0) times.push(spent / count);
  }
  return median(times);
}

const random = seeded(20);
const model = engine.bassoonModel;
const map = engine.compileModel(model);
const reeds = Array.from({ length: 64 }, () =>
  Object.fromEntries(model.features.map(({ id, min, max }) => [id, min + random() * (max - min)])),
);
const targets = Array.from({ length: 64 }, () => {
  const [a, b, c] = [random(), random(), random()];
  return [a / (a + b + c), b / (a + b + c), c / (a + b + c)];
});
const byId = new Map(model.features.map((feature) => [feature.id, feature]));
const ranges = map.features.map((id) => byId.get(id));
const rows = new Float64Array(million * ranges.length);
for (let i = 0; i < rows.length; i += 1) {
  const { min, max } = ranges[i % ranges.length];
  rows[i] = min + random() * (max - min);
}
const shares = new Float64Array(million * 3).map(() => random());
const placed = new Float64Array(million * 3);
const points = new Float64Array(million * 2);
const copied = new Float64Array(million * 2);

// Every result goes through here, so that no loop can be left out as idle.
let kept = 0;
const keep = (value) => {
  kept += value;
};

function repeat(work) {
  return (count) => {
    for (let i = 0; i < count; i += 1) keep(work(i & 63));
  };
}

const place = measure(
  200_000,
  repeat((i) => engine.place(map, reeds[i]).raw[0]),
);
const placeMany = measure(million, () => keep(engine.placeMany(map, rows, placed)[0]));
const solveFor = measure(
  4_000,
  repeat((i) => engine.solveFor(map, reeds[i], targets[i], {}).blend[0]),
);
const featureReach = measure(
  8_000,
  repeat((i) => engine.featureReach(map, reeds[i], {}).polygon.length),
);
const freedoms = reeds.map((reed) => engine.finishingFreedom(model, reed));
const actionReach = measure(
  8_000,
  repeat(
    (i) => engine.actionReach(map, reeds[i], engine.bassoonActions, freedoms[i]).polygon.length,
  ),
);
const requests = reeds.map((_, i) => ({
  feature: map.features[i % map.features.length],
  change: (random() - 0.5) * ranges[i % ranges.length].step * 10,
  mode: i % 2 === 0 ? "instead" : "offset",
}));
const standIns = measure(
  2_000,
  repeat((i) => engine.standIns(map, reeds[i], requests[i], freedoms[i]).pairs.length),
);
const handStandIns = measure(
  2_000,
  repeat(
    (i) =>
      engine.handStandIns(map, reeds[i], requests[i], engine.bassoonActions, freedoms[i]).length,
  ),
);
// Reeds near the middle, as people have them, for every one of 64 targets; the slowest of all counts too.
const near = targets.map(() =>
  Object.fromEntries(
    ranges.map(({ id, corners: { high, low, loud } }) => {
      const [a, b] = [random(), random()];
      return [
        id,
        (high + low + loud) / 3 +
          ((a + b - 1) * (Math.max(high, low, loud) - Math.min(high, low, loud))) / 2,
      ];
    }),
  ),
);
const plan = (i) => engine.planAdjustments(map, near[i], targets[i], engine.bassoonActions);
const planAdjustments = measure(
  64,
  repeat((i) => plan(i).plans.length),
);
const slowestPlan = Math.max(...near.map((_, i) => measure(1, () => keep(plan(i).plans.length))));
const toPoints = measure(million, () => keep(engine.blendsToPoints(shares, frame, points)[0]));
const copy = measure(million, () => {
  copied.set(points);
  keep(copied[0]);
});

const lines = [
  ["place", place / 1000, "µs", 1],
  ["placeMany, a reed", placeMany, "ns", 40],
  ["solveFor", solveFor / 1000, "µs", 50],
  ["featureReach", featureReach / 1000, "µs", 30],
  ["actionReach", actionReach / 1000, "µs", 30],
  ["standIns", standIns / 1000, "µs", 300],
  ["handStandIns", handStandIns / 1000, "µs", 300],
  ["planAdjustments, mean of 64", planAdjustments / 1e6, "ms", 50],
  ["planAdjustments, slowest of 64", slowestPlan / 1e6, "ms", 50],
  ["blendsToPoints, a point beyond a copy", toPoints - copy, "ns", 3],
  ...acousticsLines(acoustics, reeds, measure, repeat),
];
for (const [name, spent, unit, budget] of lines) {
  const over = spent > budget ? "  over" : "";
  console.log(
    `${name.padEnd(40)} ${spent.toFixed(2).padStart(8)} ${unit}   budget ${budget} ${unit}${over}`,
  );
}
if (Number.isNaN(kept)) console.log("a result was not a number");
