// Everything that must hold before a change lands, one step after the other: all of them run, and one failure fails the whole.
// The tests come last, so that their closing line is the last line of a good run.
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));

const steps = [
  ["types", "npm run --silent types"],
  ["lint", "npm run --silent lint"],
  ["format", "npm run --silent format:check"],
  ["build", "npm run --silent build"],
  ["tests", "vitest run"],
];

const failed = [];
for (const [name, command] of steps) {
  console.log(`\n== ${name}: ${command}`);
  const { status } = spawnSync(command, { cwd: root, stdio: "inherit", shell: true });
  if (status !== 0) failed.push(name);
}

if (failed.length > 0) {
  console.error(`\nFailed: ${failed.join(", ")}.`);
  process.exit(1);
}
