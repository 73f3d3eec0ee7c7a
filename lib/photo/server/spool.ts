import "server-only";
import { createHash } from "node:crypto";
import { open } from "node:fs/promises";
import { MAX_PHOTO_BYTES } from "../limits";


export type Bytes = AsyncIterable<Uint8Array | string>;

/**
 * Writes what arrives to `file`, hashing on the way; memory holds one chunk at a time whatever the sender claims.
 * At the first byte over the limit it stops reading, which destroys the stream, and answers null.
 */
export async function spool(stream: Bytes, file: string): Promise<{ bytes: number; sha256: string } | null> {
  const hash = createHash("sha256");
  const handle = await open(file, "wx");
  let bytes = 0;
  try {
    for await (const chunk of stream) {
      const data = typeof chunk === "string" ? Buffer.from(chunk) : chunk;
      bytes += data.byteLength;
      if (bytes > MAX_PHOTO_BYTES) return null;
      hash.update(data);
      for (let written = 0; written < data.byteLength; ) written += (await handle.write(data, written)).bytesWritten;
    }
  } finally {
    await handle.close();
  }
  return { bytes, sha256: hash.digest("hex") };
}
