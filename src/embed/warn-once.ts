const warned = new Set<string>();

/** Tells whoever wrote the page what was not understood, once; the element goes on with what it would have had. */
export function warnOnce(message: string): void {
  if (warned.has(message)) return;
  warned.add(message);
  console.warn(`Reedpoint: ${message}`);
}
