import type { Rgb } from "../../photo/strip";

/** The pixels of a loaded picture at a long side of so many, as the arithmetic of lib/photo takes them. Null where the browser gives none. */
export function picturePixels(image: HTMLImageElement, side: number): Rgb | null {
  const scale = Math.min(1, side / Math.max(image.naturalWidth, image.naturalHeight));
  const [width, height] = [Math.max(1, Math.round(image.naturalWidth * scale)), Math.max(1, Math.round(image.naturalHeight * scale))];
  const canvas = document.createElement("canvas");
  canvas.width = width;
  canvas.height = height;
  const context = canvas.getContext("2d", { willReadFrequently: true });
  if (!context) return null;
  context.drawImage(image, 0, 0, width, height);
  const { data: rgba } = context.getImageData(0, 0, width, height);
  const data = new Uint8Array(width * height * 3);
  for (let from = 0, to = 0; from < rgba.length; from += 4, to += 3) {
    data[to] = rgba[from]!; data[to + 1] = rgba[from + 1]!; data[to + 2] = rgba[from + 2]!;
  }
  return { data, width, height };
}
