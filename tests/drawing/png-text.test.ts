import { crc32, deflateSync } from "node:zlib";
import { expect, test } from "vitest";
import { withPngText } from "../../src/drawing/png-text.js";

interface Chunk {
  readonly type: string;
  readonly data: Buffer;
  readonly crcFits: boolean;
}

// An independent reader: lengths, types and checks as section 5.3 of the PNG specification lays them down; CRC by zlib.
function chunksOf(png: Buffer): Chunk[] {
  const chunks: Chunk[] = [];
  for (let at = 8; at < png.length;) {
    const length = png.readUInt32BE(at);
    const body = png.subarray(at + 4, at + 8 + length);
    const crc = png.readUInt32BE(at + 8 + length);
    chunks.push({
      type: body.toString("latin1", 0, 4),
      data: body.subarray(4),
      crcFits: crc === crc32(body),
    });
    at += 12 + length;
  }
  return chunks;
}

function chunk(type: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(type, "latin1"), data]);
  const [length, crc] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  crc.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, crc]);
}

/** One grey point. */
const png = Buffer.concat([
  Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
  chunk("IHDR", Buffer.from([0, 0, 0, 1, 0, 0, 0, 1, 8, 0, 0, 0, 0])),
  chunk("IDAT", deflateSync(Buffer.from([0, 128]))),
  chunk("IEND", Buffer.alloc(0)),
]);
const words = { title: "Bittern — “low”", description: "Réglé: 27.7 mm; ↑ high" };

test("the reader of this test reads the end mark that every PNG file has", () => {
  // PNG specification, section 11.2.5 with annex D: IEND is empty, and its check is AE 42 60 82.
  expect(png.subarray(-4).toString("hex")).toBe("ae426082");
});

test("title and description are inside, after the header, in UTF-8, and every check fits", () => {
  const chunks = chunksOf(Buffer.from(withPngText(png, words)));
  expect(chunks.map(({ type }) => type)).toEqual(["IHDR", "iTXt", "iTXt", "IDAT", "IEND"]);
  expect(chunks.every(({ crcFits }) => crcFits)).toBe(true);
  // iTXt: keyword, 0, compression flag and method 0, empty language 0, empty translated keyword 0, text.
  expect(chunks[1]!.data.toString("utf8")).toBe(`Title\0\0\0\0\0${words.title}`);
  expect(chunks[2]!.data.toString("utf8")).toBe(`Description\0\0\0\0\0${words.description}`);
});

test("what is no PNG file is refused", () => {
  expect(() => withPngText(new Uint8Array(40), words)).toThrow(/no PNG file/);
  expect(() => withPngText(new Uint8Array(0), words)).toThrow(RangeError);
});
