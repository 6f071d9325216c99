import type { Plugin } from "vite";

/** Takes indentation and comments out of html and css templates. */
export function tightTemplates(): Plugin;

/** Takes remarks out of data files. */
export function withoutRemarks(): Plugin;

/** Puts into one file what would be fetched later. */
export function nothingLate(): Plugin;
