import { withPngText, type PictureWords } from "../drawing/png-text.js";
import { standaloneSvg } from "./standalone-svg.js";

/** Pictures for a projector or a printed sheet are at least so wide, px. */
const leastWidth = 1600;

/** A drawing of the page as an SVG or PNG file with title and description inside. */
export async function pictureFile(
  kind: "SVG" | "PNG",
  source: SVGSVGElement,
  words: PictureWords,
): Promise<Blob> {
  const ground = getComputedStyle(source).getPropertyValue("--ground").trim() || "#fff";
  const text = standaloneSvg(source, words, ground);
  const svg = new Blob([text], { type: "image/svg+xml" });
  return kind === "SVG" ? svg : new Blob([await pngOf(svg, source, words)], { type: "image/png" });
}

async function pngOf(
  svg: Blob,
  source: SVGSVGElement,
  words: PictureWords,
): Promise<Uint8Array<ArrayBuffer>> {
  const [width, height] = [
    Number(source.getAttribute("width")),
    Number(source.getAttribute("height")),
  ];
  const scale = Math.max(2, leastWidth / width);
  const canvas = document.createElement("canvas");
  [canvas.width, canvas.height] = [Math.round(width * scale), Math.round(height * scale)];
  const image = new Image(canvas.width, canvas.height);
  const address = URL.createObjectURL(svg);
  try {
    image.src = address;
    await image.decode();
    canvas.getContext("2d")!.drawImage(image, 0, 0, canvas.width, canvas.height);
  } finally {
    URL.revokeObjectURL(address);
  }
  const drawn = await new Promise<Blob | null>((done) => canvas.toBlob(done, "image/png"));
  if (!drawn)
    throw new Error(`pictureFile: a canvas of ${canvas.width} × ${canvas.height} px gave no PNG`);
  return withPngText(new Uint8Array(await drawn.arrayBuffer()), words);
}

/** Hands a file to the person: the browser saves it under the name. */
export function saveFile(file: Blob, name: string): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(file);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}
