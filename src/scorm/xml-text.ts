const signs: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&apos;",
  "\t": "&#9;",
  "\n": "&#10;",
  "\r": "&#13;",
};

/**
 * Text as XML and HTML can hold it, in an element or in quotes. What no XML document may hold (control characters,
 * halves of signs) is left out.
 *
 * Source  XML 1.0, 5th edition, 2.2 (Char) and 2.4.
 *
 * @example xmlText('"A & B"') → "&quot;A &amp; B&quot;"
 */
export function xmlText(text: string): string {
  return Array.from(text)
    .filter(isAllowed)
    .map((sign) => signs[sign] ?? sign)
    .join("");
}

function isAllowed(sign: string): boolean {
  const code = sign.codePointAt(0)!;
  if (code < 0x20) return code === 0x9 || code === 0xa || code === 0xd;
  return !(code >= 0xd800 && code <= 0xdfff) && code !== 0xfffe && code !== 0xffff;
}
