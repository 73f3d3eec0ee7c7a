import "server-only";
import path from "node:path";
import { keepFiles, newPhotoId, partName, photoFileName, PHOTO_SIZES, removeFiles, type PhotoSize } from "../../store/photo-layout";
import type { Area } from "../area";
import type { Measured } from "./appraise";
import { fromPixels, openPicture, type Pixels } from "./pictures";
import { makeSizes } from "./sizes";
import { inTurn } from "./turns";

/** Colours left along the longer side of what is blurred: of four by four nobody tells a face or a word. *elicited* */
const COLOURS = 4;

/**
 * Makes a photo anew with parts of it blurred, in all sizes, under an id of its own: whoever then points the row at it has
 * changed every copy at once, and the old files belong to nobody. What was there cannot be worked out again, because nothing is
 * left of it but a few mean colours. Rejects where the photo's file is missing.
 */
export async function blurKept(folder: string, photoId: string, areas: readonly Area[]): Promise<{ id: string; measured: Measured }> {
  const id = newPhotoId();
  const part = (size: PhotoSize) => partName(id, size);
  const at = (size: PhotoSize) => path.join(folder, part(size));
  try {
    return await inTurn(async () => {
      const pixels = await blurred(path.join(folder, photoFileName(photoId, "full")), areas);
      const { measured } = await makeSizes(() => fromPixels(pixels), { full: at("full"), "1600": at("1600"), "320": at("320") });
      await keepFiles(folder, PHOTO_SIZES.map((s) => ({ part: part(s), name: photoFileName(id, s) })));
      return { id, measured };
    });
  } catch (error) {
    await removeFiles(folder, PHOTO_SIZES.map(part));
    throw error;
  }
}

async function blurred(file: string, areas: readonly Area[]): Promise<Pixels> {
  const { data, info: { width, height } } = await openPicture(file).toColourspace("srgb").raw().toBuffer({ resolveWithObject: true });
  const picture: Pixels = { data, width, height, channels: 3 };
  const patches = await Promise.all(areas.map(async (area) => {
    const left = Math.floor(area.left * width), top = Math.floor(area.top * height);
    // Outward to whole pixels: half a pixel of a face is a pixel too many.
    const size = { width: Math.min(width, Math.ceil((area.left + area.width) * width)) - left, height: Math.min(height, Math.ceil((area.top + area.height) * height)) - top };
    const few = await fromPixels(picture).extract({ left, top, ...size }).resize(COLOURS, COLOURS, { fit: "inside", kernel: "cubic" }).raw().toBuffer({ resolveWithObject: true });
    const input = await fromPixels({ data: few.data, width: few.info.width, height: few.info.height, channels: 3 }).resize({ ...size, fit: "fill", kernel: "cubic" }).png().toBuffer();
    return { input, left, top };
  }));
  return { ...picture, data: await fromPixels(picture).composite(patches).removeAlpha().raw().toBuffer() };
}
