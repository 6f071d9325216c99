// Brings a fresh clone to where it can run. Uses nothing but Node itself, because nothing is installed yet.
//   node .ci/set-up.mjs             packages
//   node .ci/set-up.mjs --browser   packages, and Chromium for the browser tests where it can be had
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { delimiter, join } from "node:path";
import { fileURLToPath } from "node:url";
import { findChromium } from "./find-chromium.mjs";

const root = fileURLToPath(new URL("..", import.meta.url));
const stamp = join(root, "node_modules", ".reedpoint-lock");

function run(command, ...args) {
  // npm is a script with another ending on Windows and needs the shell there.
  const shell = process.platform === "win32";
  return spawnSync(command, args, { cwd: root, stdio: "inherit", shell }).status === 0;
}

function installPackages() {
  const lock = createHash("sha256")
    .update(readFileSync(join(root, "package-lock.json")))
    .digest("hex");
  if (existsSync(stamp) && readFileSync(stamp, "utf8") === lock) return;
  console.log("Installing packages …");
  if (!run("npm", "ci", "--no-audit", "--no-fund")) {
    console.error("Set-up stopped: `npm ci` failed; its own message stands above.");
    process.exit(1);
  }
  writeFileSync(stamp, lock);
}

function canInstallForAll() {
  const folders = (process.env.PATH ?? "").split(delimiter);
  return (
    process.getuid?.() === 0 &&
    folders.some((folder) => folder && existsSync(join(folder, "apt-get")))
  );
}

function installBrowser() {
  if (findChromium()) return;
  if (canInstallForAll() && !process.env.REEDPOINT_CHROMIUM) {
    console.log("Installing Chromium for the browser tests …");
    run("apt-get", "update", "-qq");
    run("apt-get", "install", "-y", "-qq", "chromium");
  }
  if (findChromium()) return;
  console.log(
    "No Chromium found: install `chromium` or set REEDPOINT_CHROMIUM to its path; until then the browser tests count as skipped.",
  );
}

installPackages();
if (process.argv.includes("--browser")) installBrowser();
