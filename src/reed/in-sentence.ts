/**
 * A label as it stands inside a sentence. English writes it small; a language that does not has its own rule here.
 *
 * @example inSentence("Blade length") → "blade length"
 */
export function inSentence(label: string): string {
  return label.toLowerCase();
}
