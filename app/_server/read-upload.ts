import "server-only";
import Busboy from "busboy";
import { AsyncLocalStorage } from "node:async_hooks";
import type { Readable } from "node:stream";
import { refuse, type Result } from "@/lib/enquiry/caller";

export interface Upload {
  fields: Record<string, string>;
  file: Readable;
  name: string;
  type: string;
}

/** How much is read, and what the sender is told where there was no form, no file in it, or not the whole of it. */
export interface Expected {
  mostBytes: number;
  says: { noForm: string; noFile: string; cut: string };
}

/**
 * Reads a multipart body with one file and hands the file on while it still arrives. What the handler leaves unread is
 * thrown away, so that the sender gets the answer instead of a broken connection. Never holds more than a chunk in memory.
 */
export function readUpload<T>(body: Readable, headers: Headers, handle: (upload: Upload) => Promise<Result<T>>, { mostBytes, says }: Expected): Promise<Result<T>> {
  return new Promise((resolve, reject) => {
    const fields: Record<string, string> = {};
    let handled: Promise<void> | null = null;
    // The parser calls back from wherever the bytes came; the handler needs the request it belongs to.
    const inThisRequest = AsyncLocalStorage.snapshot();
    const parser = parserFor(headers, mostBytes);
    if (!parser) return resolve(refuse("invalid", says.noForm));
    const end = (settle: () => void) => {
      body.unpipe(parser);
      body.resume();
      settle();
    };
    parser.on("field", (name, value) => {
      fields[name] = value;
    });
    parser.on("file", (_name, file, info) => {
      file.on("error", () => undefined);
      handled = inThisRequest(handle, { fields, file, name: info.filename ?? "", type: info.mimeType }).then(
        (result) => {
          file.resume();
          end(() => resolve(result));
        },
        (error: unknown) => {
          file.resume();
          end(() => reject(error as Error));
        },
      );
    });
    parser.on("close", () => {
      if (!handled) end(() => resolve(refuse("invalid", says.noFile)));
    });
    parser.on("error", () => {
      if (!handled) end(() => resolve(refuse("invalid", says.cut)));
    });
    body.on("error", (error) => parser.destroy(error));
    body.pipe(parser);
  });
}

function parserFor(headers: Headers, mostBytes: number): Busboy.Busboy | null {
  try {
    // One byte above the limit, so that the door behind it itself sees that it is too large and says so.
    return Busboy({ headers: Object.fromEntries(headers), limits: { files: 1, fields: 6, fieldSize: 200, fileSize: mostBytes + 1 } });
  } catch {
    return null;
  }
}
