import "server-only";
import { MAX_PIXELS } from "../limits";
import { toSrgbOf } from "../profile";
import { askDecoder, DamagedPicture, PARTS } from "./heic-threads";
import { fromPixels, openPicture, type Pixels } from "./pictures";
import { tagPng } from "./tag-png";

/** Milliseconds until a part of a picture is given up. Twelve megapixels take half a second on an idle machine. *elicited* */
const PATIENCE_MS = 60_000;

/** What a thread sees of a picture before it decodes it: pixels, upright; how far the first tile begins before the picture; its profile. */
interface Seen { width: number; height: number; columns: number; rows: number; tileWidth: number; tileHeight: number; before: { x: number; y: number }; icc: Uint8Array | null }
interface Tile { column: number; row: number; x: number; y: number }

/**
 * Decodes a HEIC picture to sRGB pixels: the one that the file calls its main picture, in tiles where it has some, on as many threads as
 * there are. The pixels are already upright (libheif applies the container's own rotation), so the EXIF orientation must
 * not be applied again. Rejects where the picture is damaged or the decoder takes too long.
 */
export async function decodeHeic(file: string, patienceMs = PATIENCE_MS): Promise<Pixels> {
  const seen = await askDecoder<Seen>({ work: "look", file }, patienceMs);
  const { width, height, icc } = seen;
  if (width * height > MAX_PIXELS) throw new RangeError("too many pixels");
  const toSrgb = icc && toSrgbOf(icc);
  const pixels = new SharedArrayBuffer(3 * width * height);
  const tiles = tilesOf(seen), whole = tiles.length === 1;
  const parts = Array.from({ length: Math.min(PARTS, tiles.length) }, (_, n) => tiles.filter((_, i) => i % PARTS === n));
  const laid = await Promise.allSettled(parts.map((part) => askDecoder<number>({ work: "decode", file, pixels, width, height, tiles: part, whole, toSrgb }, patienceMs)));
  // Thrown only now: no thread may still be reading the file, which goes as this ends.
  const pixelsLaid = laid.reduce((sum, part) => { if (part.status === "rejected") throw part.reason; return sum + part.value; }, 0);
  if (pixelsLaid !== width * height) throw new DamagedPicture("HEIC: the tiles do not make up the picture");
  const decoded: Pixels = { data: Buffer.from(pixels), width, height, channels: 3 };
  return icc && !toSrgb ? byPicture(decoded, icc) : decoded;
}

const tilesOf = ({ columns, rows, tileWidth, tileHeight, before }: Seen): Tile[] =>
  Array.from({ length: columns * rows }, (_, i) => [i % columns, Math.floor(i / columns)] as const)
    .map(([column, row]) => ({ column, row, x: column * tileWidth - before.x, y: row * tileHeight - before.y }));

/** Profiles of the less simple kinds are left to the picture library, by way of a PNG that carries them. */
async function byPicture(pixels: Pixels, icc: Uint8Array): Promise<Pixels> {
  const png = tagPng(await fromPixels(pixels).png({ compressionLevel: 0 }).toBuffer(), Buffer.from(icc));
  return { ...pixels, data: await openPicture(png).toColourspace("srgb").raw().toBuffer() };
}
