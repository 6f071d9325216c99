import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";

export const dist = fileURLToPath(new URL("../../dist/", import.meta.url));

/** Every file that a module loads before it runs: itself and what it imports, not what it imports later. */
export function loadedWith(entry: string, seen = new Set<string>()): Set<string> {
  if (seen.has(entry)) return seen;
  seen.add(entry);
  const code = readFileSync(join(dist, entry), "utf8");
  for (const [, from] of code.matchAll(/(?:\bfrom|\bimport)\s*["'`](\.{1,2}\/[^"'`]+)["'`]/g))
    loadedWith(join(dirname(entry), from!), seen);
  return seen;
}

/** Bytes of a file as gzip -9 packs it. */
export function packed(file: string): number {
  return gzipSync(readFileSync(join(dist, file)), { level: 9 }).length;
}

/** Bytes of a module with everything that it loads before it runs, each file packed by itself as it travels. */
export function packedWith(entry: string): number {
  return [...loadedWith(entry)].reduce((sum, file) => sum + packed(file), 0);
}
