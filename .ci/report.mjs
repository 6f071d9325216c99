// `npm run report`: the plans for every demo reed and every part to play, so that a change of model, costs or rules is
// seen. Prints a table and a sum; judges nothing.
import { runnerImport } from "vite";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));
const load = async (file) =>
  (await runnerImport(`${root}src/${file}`, { configFile: false })).module;
const engine = await load("lib/engine.ts");
const { demoReeds } = await load("reed/demo-reeds.ts");
const { targets, targetRadius } = await load("reed/targets.ts");

const map = engine.compileModel(engine.bassoonModel);
const stepsText = ({ steps }) =>
  steps.map(({ action, amount }) => `${action} ${amount}`).join(", ") || "nothing to do";

const rows = demoReeds.flatMap(({ reed, readings }) =>
  targets.map(({ id, blend }) => {
    const start = engine.place(map, readings).raw;
    const { plans, reached, obstacle } = engine.planAdjustments(
      map,
      readings,
      blend,
      engine.bassoonActions,
      { radius: targetRadius },
    );
    const away = Math.hypot(...start.map((share, k) => share - blend[k]));
    return { reed, id, reached, obstacle, away, plans };
  }),
);

console.log("reed      part       reached  moves  cost  distance         plan");
for (const { reed, id, reached, obstacle, away, plans } of rows) {
  plans.forEach((plan, i) => {
    const name = i === 0 ? `${reed.padEnd(9)} ${id.padEnd(10)}` : " ".repeat(20);
    const told = reached ? "yes" : obstacle;
    const way = `${away.toFixed(3)} → ${plan.distance.toFixed(3)}`;
    const kind = reached && plans.length > 1 ? `${plan.kind}: ` : "";
    console.log(
      `${name} ${told.padEnd(8)} ${String(plan.steps.length).padStart(5)} ${plan.cost.toFixed(1).padStart(5)}` +
        `  ${way.padEnd(15)}  ${kind}${stepsText(plan)}`,
    );
  });
}

const mean = (numbers) => numbers.reduce((sum, one) => sum + one, 0) / numbers.length;
const reached = rows.filter((row) => row.reached);
const missed = rows.filter((row) => !row.reached);
console.log(`\n${reached.length} of ${rows.length} reached`);
if (reached.length > 0) {
  const first = reached.map(({ plans }) => plans[0]);
  const undoable = reached.filter(({ plans }) => plans.some(({ kind }) => kind === "undoable"));
  console.log(
    `  ${undoable.length} by moves that can be undone; ${mean(first.map(({ steps }) => steps.length)).toFixed(1)} moves ` +
      `and a cost of ${mean(first.map(({ cost }) => cost)).toFixed(1)} on average`,
  );
}
if (missed.length > 0) {
  const left = mean(missed.map(({ plans }) => plans[0].distance));
  console.log(`${missed.length} not: ${left.toFixed(3)} away at the end on average`);
}
