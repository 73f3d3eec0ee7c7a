import "server-only";
import { fromPixels, openPicture, type Pixels } from "./pictures";

/** Quality of the kept pictures: above it files grow faster than what the eye sees. *elicited* */
const FULL = { quality: 88 } as const;
const COPY = { quality: 82 } as const;
/** Pixels of the long side at which lib/photo measures; its limits hold at this size. */
const MEASURE_SIDE = 1024;

export interface SizeFiles { full: string; "1600": string; "320": string }

/**
 * Writes the three kept sizes from a picture (path or bytes) and answers its upright size and the pixels to measure.
 * The first line decodes every pixel, so damage anywhere rejects here. What is written is upright sRGB on white and
 * carries no metadata: the library keeps none unless asked. Copies are never larger than the picture.
 */
export async function makeSizes(picture: string | Buffer, files: SizeFiles): Promise<{ width: number; height: number; measure: Pixels }> {
  const { width, height } = await openPicture(picture).autoOrient().flatten({ background: "#fff" }).toColourspace("srgb").jpeg(FULL).toFile(files.full);
  const large = await pixelsOf(openPicture(files.full), 1600);
  await fromPixels(large).jpeg(COPY).toFile(files["1600"]);
  await fromPixels(large).resize(320, 320, { fit: "inside", withoutEnlargement: true }).jpeg(COPY).toFile(files["320"]);
  return { width, height, measure: await pixelsOf(fromPixels(large), MEASURE_SIDE) };
}

/** RGB pixels of a picture brought to a long side of so many pixels; never enlarged. */
export async function pixelsOf(picture: ReturnType<typeof openPicture>, side: number): Promise<Pixels> {
  const { data, info } = await picture.resize(side, side, { fit: "inside", withoutEnlargement: true }).toColourspace("srgb").raw().toBuffer({ resolveWithObject: true });
  return { data, width: info.width, height: info.height, channels: 3 };
}
