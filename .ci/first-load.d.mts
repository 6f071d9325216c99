import type { Plugin } from "vite";

/** A vite plugin: every module that an entry (one of them, by its name) imports at once, by whatever way, goes into one file. */
export function firstLoad(entry?: string): Plugin;
