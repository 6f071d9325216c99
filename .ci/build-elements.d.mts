/** The hash that a page can pin a script by. */
export function integrityOf(path: string): string;
