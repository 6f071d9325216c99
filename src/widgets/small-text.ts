/**
 * The text of a file that somebody picked or dropped; what is too large is not read at all.
 *
 * Unit    bytes.
 * Throws  nothing.
 */
export async function smallText(
  file: File,
  mostBytes: number,
): Promise<{ readonly text: string } | { readonly fault: "tooLarge" | "unread" }> {
  if (file.size > mostBytes) return { fault: "tooLarge" };
  try {
    return { text: await file.text() };
  } catch (cause) {
    console.warn("Reedpoint: a file could not be read", cause);
    return { fault: "unread" };
  }
}
