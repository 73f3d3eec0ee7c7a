import { qualityOf, remarkOn } from "../photo/quality";
import type { Rgb } from "../photo/strip";
import type { Look, Looked } from "./look-at-photo";

/** Pixels of the long side at which lib/photo measures. */
const SIDE = 1024;

self.addEventListener("message", async ({ data: { id, file, asked } }: MessageEvent<Look>) => {
  const remark = await rgbOf(file).then((picture) => remarkOn(qualityOf(picture), asked), () => null);
  self.postMessage({ id, remark } satisfies Looked);
});

/** The picture as the server would measure it. Rejects for what this browser cannot open. */
async function rgbOf(file: File): Promise<Rgb> {
  const bitmap = await createImageBitmap(file);
  const scale = Math.min(1, SIDE / Math.max(bitmap.width, bitmap.height));
  const width = Math.max(1, Math.round(bitmap.width * scale)), height = Math.max(1, Math.round(bitmap.height * scale));
  const context = new OffscreenCanvas(width, height).getContext("2d", { willReadFrequently: true });
  if (!context) throw new Error("This browser gives a worker no canvas.");
  context.imageSmoothingQuality = "high";
  // A see-through picture stands on white, as it does on the server.
  context.fillStyle = "#fff";
  context.fillRect(0, 0, width, height);
  context.drawImage(bitmap, 0, 0, width, height);
  bitmap.close();
  const rgba = context.getImageData(0, 0, width, height).data;
  const data = new Uint8Array(width * height * 3);
  for (let i = 0; i < width * height; i++) {
    data[3 * i] = rgba[4 * i]!;
    data[3 * i + 1] = rgba[4 * i + 1]!;
    data[3 * i + 2] = rgba[4 * i + 2]!;
  }
  return { data, width, height };
}
