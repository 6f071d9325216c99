/** What a PNG file says of itself. */
export interface PictureWords {
  readonly title: string;
  readonly description: string;
}

const signatureLength = 8;

/**
 * The PNG file with a title and a description inside, as iTXt chunks right after its header.
 *
 * Shape   bytes of a PNG file → bytes of a PNG file that shows the same.
 * Throws  RangeError when the bytes do not begin as a PNG file does.
 * Source  Portable Network Graphics (PNG) Specification, W3C Recommendation, sections 5.3 (chunks), 11.3.3.4 (iTXt;
 *         keywords Title and Description).
 */
export function withPngText(png: Uint8Array, words: PictureWords): Uint8Array<ArrayBuffer> {
  const view = new DataView(png.buffer, png.byteOffset, png.byteLength);
  if (png.length < 33 || view.getUint32(0) !== 0x89504e47 || view.getUint32(12) !== 0x49484452)
    throw new RangeError(
      "withPngText: these bytes are no PNG file; allowed: signature, then an IHDR chunk",
    );
  const headerEnd = signatureLength + 12 + view.getUint32(8);
  const chunks = [textChunk("Title", words.title), textChunk("Description", words.description)];
  const parts = [png.subarray(0, headerEnd), ...chunks, png.subarray(headerEnd)];
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** Keyword, no compression, no language, no translated keyword, then the text in UTF-8. */
function textChunk(keyword: string, text: string): Uint8Array {
  const encoder = new TextEncoder();
  const data = encoder.encode(`iTXt${keyword}\0\0\0\0\0${text}`);
  const chunk = new Uint8Array(data.length + 8);
  const view = new DataView(chunk.buffer);
  view.setUint32(0, data.length - 4);
  chunk.set(data, 4);
  view.setUint32(chunk.length - 4, crc32(data));
  return chunk;
}

/** Cyclic redundancy check of a chunk, polynomial 0xEDB88320 (PNG specification, annex D). */
function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit += 1) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  }
  return (crc ^ 0xffffffff) >>> 0;
}
