import type { Plugin } from "vite";

/** A vite plugin: every module that an entry imports at once, by whatever way, goes into one file. */
export function firstLoad(): Plugin;
