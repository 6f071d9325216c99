// Finds a Chromium of the system: the browser tests drive it, and set-up installs one when there is none.
import { accessSync, constants } from "node:fs";
import { delimiter, join } from "node:path";

const names = ["chromium", "chromium-browser", "google-chrome"];

function runs(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** Path of the browser to drive, or undefined. The variable REEDPOINT_CHROMIUM comes first. */
export function findChromium(environment = process.env) {
  const chosen = environment.REEDPOINT_CHROMIUM;
  if (chosen) return runs(chosen) ? chosen : undefined;
  const folders = (environment.PATH ?? "").split(delimiter).filter(Boolean);
  return names.flatMap((name) => folders.map((folder) => join(folder, name))).find(runs);
}
