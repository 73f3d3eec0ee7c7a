import { Zip, ZipPassThrough } from "fflate";
import type { Copy } from "@/lib/enquiry/copy-enquiry";
import { INERT_HEADERS } from "./route-headers";

/** A copy as one .zip, a file at a time: no more than one piece of one file is in memory. Photos are packed already, so nothing is packed again. */
export function zipResponse({ fileName, files }: Copy): Response {
  return new Response(zipStream(files), {
    headers: { ...INERT_HEADERS, "content-type": "application/zip", "content-disposition": `attachment; filename="${fileName}"` },
  });
}

function zipStream(files: Copy["files"]): ReadableStream<Uint8Array> {
  const pieces = zipped(files);
  return new ReadableStream({
    async pull(controller) {
      const { value, done } = await pieces.next();
      if (done) controller.close();
      else controller.enqueue(value);
    },
    cancel: async () => void (await pieces.return(undefined)),
  });
}

async function* zipped(files: Copy["files"]): AsyncGenerator<Uint8Array, undefined> {
  let ready: Uint8Array[] = [];
  let failed: Error | null = null;
  const zip = new Zip((error, piece) => {
    if (error) failed = error;
    else ready.push(piece);
  });
  const take = (): Uint8Array[] => {
    if (failed) throw failed;
    const taken = ready;
    ready = [];
    return taken;
  };
  for (const file of files) {
    const entry = new ZipPassThrough(file.name);
    zip.add(entry);
    for await (const piece of file.read()) {
      entry.push(piece);
      yield* take();
    }
    entry.push(new Uint8Array(), true);
    yield* take();
  }
  zip.end();
  yield* take();
  return undefined;
}
