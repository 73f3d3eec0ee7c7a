import "server-only";
import { writeFile } from "node:fs/promises";
import type { Sharp } from "sharp";
import { appraise, type Measured } from "./appraise";
import { fromPixels, openPicture, type Pixels } from "./pictures";

/** Without codes fitted to the picture: they take more than half of the time of a full size and save two per cent of its bytes. */
const QUICK = { optimiseCoding: false } as const;
/** Quality of the kept pictures: above it files grow faster than what the eye sees. *elicited* */
const FULL = { quality: 88, ...QUICK } as const;
const SMALL = { quality: 82, ...QUICK } as const;
/**
 * Of the copy on which colours are compared: at 82 the rounding of JPEG alone moved a dark patch by 1.1 ΔE00, at 92 by less
 * than 0.5 (the chart in tests/reference/colour.test.ts).
 */
const LARGE = { quality: 92, ...QUICK } as const;
/** Pixels of the long side at which lib/photo measures; its limits hold at this size. */
const MEASURE_SIDE = 1024;

export interface SizeFiles { full: string; "1600": string; "320": string }

/** What is known of a picture once its sizes are made. Pixels, upright. */
export interface Made { width: number; height: number; measured: Measured }

/**
 * Writes the three kept sizes of a picture, opened by `open` as often as it is read, and answers its upright size and what was measured in it.
 * The full size is the picture `coded` as it came, bare, where there is one that decodes without a single warning; otherwise
 * it is coded anew. Either way all of it is decoded, so damage anywhere rejects here. What is written is upright sRGB on white
 * and carries no metadata: the library keeps none unless asked. Copies are never larger than the picture.
 */
export async function makeSizes(open: () => Sharp, files: SizeFiles, coded: Buffer | null = null): Promise<Made> {
  return (coded && (await keepCoded(coded, files))) ?? codeAnew(open, files);
}

/** The copies are made of what is kept, which reads every coded bit of it. Null where that fails for any reason: then the other way meets it again, and tells. */
async function keepCoded(coded: Buffer, files: SizeFiles): Promise<Made | null> {
  try {
    await writeFile(files.full, coded);
    const { width, height } = await openPicture(files.full).metadata();
    return { width, height, measured: await makeCopies(openPicture(files.full, "warning"), files) };
  } catch {
    return null;
  }
}

async function codeAnew(open: () => Sharp, files: SizeFiles): Promise<Made> {
  // Side by side, on the processors there are; neither may still be writing when this ends, whatever became of the other.
  const [full, measured] = await Promise.allSettled([upright(open()).jpeg(FULL).toFile(files.full), makeCopies(open(), files)]);
  // The library tells of an error once: of two at a time either may have the reason.
  if (full.status === "rejected" || measured.status === "rejected") {
    const reasons = [full, measured].flatMap((r) => (r.status === "rejected" ? [r.reason as Error] : []));
    throw new AggregateError(reasons, reasons.map((r) => r.message).join("; "));
  }
  return { width: full.value.width, height: full.value.height, measured: measured.value };
}

const upright = (picture: Sharp): Sharp => picture.autoOrient().flatten({ background: "#fff" }).toColourspace("srgb");

async function makeCopies(picture: Sharp, files: SizeFiles): Promise<Measured> {
  const large = await pixelsOf(upright(picture), 1600);
  const [measured, ...written] = await Promise.allSettled([
    pixelsOf(fromPixels(large), MEASURE_SIDE).then(appraise),
    fromPixels(large).jpeg(LARGE).toFile(files["1600"]),
    fromPixels(large).resize(320, 320, { fit: "inside", withoutEnlargement: true }).jpeg(SMALL).toFile(files["320"]),
  ]);
  for (const one of [measured, ...written]) if (one.status === "rejected") throw one.reason;
  return (measured as PromiseFulfilledResult<Measured>).value;
}

/** RGB pixels of a picture brought to a long side of so many pixels; never enlarged. */
export async function pixelsOf(picture: Sharp, side: number): Promise<Pixels> {
  const { data, info } = await picture.resize(side, side, { fit: "inside", withoutEnlargement: true }).toColourspace("srgb").raw().toBuffer({ resolveWithObject: true });
  return { data, width: info.width, height: info.height, channels: 3 };
}
