import type { Plugin } from "vite";

/** Takes indentation and comments out of html and css templates. */
export function tightTemplates(): Plugin;
