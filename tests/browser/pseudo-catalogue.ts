/** Languages that nobody speaks: each shows one way in which a page can fail a real one. */
export type PseudoLanguage = "long" | "doubled" | "rtl" | "markup";

/**
 * A catalogue with every word said otherwise; numbers stay as they are. It runs in the page, so it names nothing
 * outside itself.
 */
export function pseudoCatalogue<T>(catalogue: T, language: PseudoLanguage): T {
  const numbers = new Set(["percent", "signedPoints", "number"]);
  const said: Record<PseudoLanguage, (words: string) => string> = {
    long: (words) =>
      words.replaceAll(/[aeiou]/g, (vowel) => vowel + vowel) + "·".repeat(words.length / 6),
    doubled: (words) => `${words} ${words}`,
    // Hebrew letters stand for Latin ones: the script runs from right to left, figures and names of formats do not.
    rtl: (words) =>
      words.replaceAll(/\b[A-Z]{3}\b|[a-z]/gi, (letter) =>
        /^[A-Z]{3}$/.test(letter)
          ? letter
          : letter.replaceAll(/[a-z]/gi, (one) =>
              String.fromCodePoint(0x05d0 + ((one.toLowerCase().codePointAt(0)! - 97) % 27)),
            ),
      ),
    markup: (words) => `${words}<img src=x onerror="window.struck=1"><u>&amp;"'`,
  };
  const turned = (value: unknown, key: string): unknown => {
    if (typeof value === "string")
      return key === "purpose" || value === "" ? value : said[language](value);
    if (Array.isArray(value)) return value.map((one) => turned(one, ""));
    if (typeof value === "function") {
      const speak = value as (...words: unknown[]) => unknown;
      return numbers.has(key) ? speak : (...words: unknown[]) => turned(speak(...words), "");
    }
    if (typeof value !== "object" || value === null) return value;
    return Object.fromEntries(
      Object.entries(value).map(([name, one]) => [name, turned(one, name)]),
    );
  };
  return Object.assign(turned(catalogue, "") as object, {
    language: language === "rtl" ? "he" : "en",
    direction: language === "rtl" ? "rtl" : "ltr",
  }) as T;
}
