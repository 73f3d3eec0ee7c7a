// Runs in threads of its own, so that a picture that hangs the decoder can be stopped by ending the thread. A thread serves many
// pictures: starting the decoder takes longer than most of them. Plain JavaScript: it is started by its path, from tests,
// commands and the built server alike.
import { readFile } from "node:fs/promises";
import { parentPort } from "node:worker_threads";
import heif from "libheif-js/wasm-bundle.js";

await heif.ready;
const RGB = heif.heif_colorspace.heif_colorspace_RGB.value, INTERLEAVED = heif.heif_chroma.heif_chroma_interleaved_RGB.value;
const CHANNEL = heif.heif_channel.heif_channel_interleaved.value;
/** Bytes of the decoder's own structures: an error (three words) and the description of the tiles. */
const ERROR_BYTES = 12, TILING_BYTES = 128;
const word = (at) => heif.HEAPU32[at >> 2];

/** What the decoder says of a damaged picture; the thread is as good as before. Anything else that is thrown ends it. */
class Damaged extends Error {}

/** Opens the picture that the file calls its main one, does `work` with it, and gives back the decoder's memory. */
async function withPicture(file, work) {
  const bytes = await readFile(file);
  const kept = heif._malloc(bytes.length), context = heif._heif_context_alloc(), slot = heif._malloc(ERROR_BYTES + 4);
  const sure = (call, ...given) => {
    call(slot, ...given);
    if (word(slot) !== 0) throw new Damaged(`HEIC: the decoder says ${word(slot)}.${word(slot + 4)}`);
  };
  let handle = 0;
  try {
    heif.HEAPU8.set(bytes, kept);
    sure(heif._heif_context_read_from_memory_without_copy, context, kept, bytes.length, 0);
    sure(heif._heif_context_get_primary_image_handle, context, slot + ERROR_BYTES);
    handle = word(slot + ERROR_BYTES);
    return work(handle, sure);
  } finally {
    if (handle) heif._heif_image_handle_release(handle);
    heif._heif_context_free(context);
    heif._free(slot);
    heif._free(kept);
  }
}

/** Size, tiles and colour profile, upright; one tile where the picture has none, or is only a part of what its tiles show. */
const look = ({ file }) => withPicture(file, (handle, sure) => {
  const at = heif._malloc(TILING_BYTES);
  try {
    sure(heif._heif_image_handle_get_image_tiling, handle, 1, at);
    const [, columns, rows, tileWidth, tileHeight, tiledWidth, tiledHeight, top, left] = Array.from(heif.HEAPU32.subarray(at >> 2, (at >> 2) + 9));
    const width = heif._heif_image_handle_get_width(handle), height = heif._heif_image_handle_get_height(handle), icc = profileOf(handle, sure);
    if (tiledWidth !== width || tiledHeight !== height) return { width, height, icc, columns: 1, rows: 1, tileWidth: width, tileHeight: height, before: { x: 0, y: 0 } };
    // What the last tiles have too much stands before the first ones where the picture is turned; by how much the decoder tells wrongly.
    const before = { x: left === 0 ? 0 : columns * tileWidth - width, y: top === 0 ? 0 : rows * tileHeight - height };
    return { width, height, icc, columns, rows, tileWidth, tileHeight, before };
  } finally {
    heif._free(at);
  }
});

function profileOf(handle, sure) {
  const length = heif._heif_image_handle_get_raw_color_profile_size(handle);
  if (length === 0) return null;
  const at = heif._malloc(length);
  try {
    sure(heif._heif_image_handle_get_raw_color_profile, handle, at);
    return heif.HEAPU8.slice(at, at + length);
  } finally {
    heif._free(at);
  }
}

/** Decodes some tiles of a picture into `pixels`, which other threads may be filling too, with the colours converted on the way; how many pixels that were. */
const decode = ({ file, pixels, width, height, tiles, whole, toSrgb }) => withPicture(file, (handle, sure) => {
  const into = { data: new Uint8Array(pixels), width, height }, slot = heif._malloc(8);
  let laid = 0;
  try {
    for (const { column, row, x, y } of tiles) {
      if (whole) sure(heif._heif_decode_image, handle, slot, RGB, INTERLEAVED, 0);
      else sure(heif._heif_image_handle_decode_image_tile, handle, slot, RGB, INTERLEAVED, 0, column, row);
      const image = word(slot);
      try {
        const at = heif._heif_image_get_plane_readonly(image, CHANNEL, slot + 4);
        const size = { width: heif._heif_image_get_width(image, CHANNEL), height: heif._heif_image_get_height(image, CHANNEL) };
        laid += lay(into, { data: heif.HEAPU8, at, stride: word(slot + 4), x, y, ...size }, toSrgb);
      } finally {
        heif._heif_image_release(image);
      }
    }
    return laid;
  } finally {
    heif._free(slot);
  }
});

/** Lays a tile into the picture, cut at its edges; how many pixels are left of it. */
function lay(into, tile, toSrgb) {
  const from = Math.max(0, -tile.x), to = Math.min(tile.width, into.width - tile.x);
  const first = Math.max(0, -tile.y), last = Math.min(tile.height, into.height - tile.y);
  for (let row = first; row < last; row++) {
    const source = tile.at + row * tile.stride, target = 3 * ((tile.y + row) * into.width + tile.x);
    if (toSrgb) convert(tile.data, source + 3 * from, into.data, target + 3 * from, to - from, toSrgb);
    else into.data.set(tile.data.subarray(source + 3 * from, source + 3 * to), target + 3 * from);
  }
  return Math.max(0, to - from) * Math.max(0, last - first);
}

/** Into sRGB, by the tables of lib/photo/profile.ts. */
function convert(source, from, target, to, count, { redGreen: [rgOfR, rgOfG, rgOfB], blue: [bOfR, bOfG, bOfB], level }) {
  for (let i = from, o = to, end = from + 3 * count; i < end; i += 3, o += 3) {
    const r = source[i], g = source[i + 1], b = source[i + 2];
    const light = (rgOfR[r] + rgOfG[g] + rgOfB[b]) | 0;
    target[o] = level[light >>> 16];
    target[o + 1] = level[light & 0xffff];
    target[o + 2] = level[bOfR[r] + bOfG[g] + bOfB[b]];
  }
}

const WORK = { look, decode };
parentPort.on("message", async ({ work, ...given }) => {
  const answer = await WORK[work](given).then((value) => ({ value }), (error) => {
    if (error instanceof Damaged) return { damaged: error.message };
    throw error;
  });
  parentPort.postMessage({ ...answer, heldBytes: heif.HEAPU8.length });
});
