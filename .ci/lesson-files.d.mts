import type { Plugin } from "vite";

/** The plugin that makes modules of lesson files: `?lesson` and `?head`. */
export function lessonFiles(): Plugin;
