import type { Asked } from "../photo/quality";

/** Milliseconds after which looking is given up: the server looks again in any case. *elicited* */
const PATIENCE_MS = 15_000;

export interface Look { id: number; file: File; asked: Asked }
export interface Looked { id: number; remark: string | null }

/**
 * Looks at photos on the device, by the same code as the server's, in a worker that is begun with the first of them. What the
 * device cannot open (HEIC in most browsers), or a device without workers or canvases for them, is silently left to the server.
 */
export function photoLooker(): { look(file: File, asked: Asked): Promise<string | null>; end(): void } {
  let worker: Worker | null = null;
  let count = 0;
  const start = () => new Worker(new URL("./look-at-photo.worker.ts", import.meta.url), { type: "module" });
  const look = (file: File, asked: Asked) => new Promise<string | null>((resolve) => {
    const id = count++;
    const here = (worker ??= start());
    const end = (remark: string | null) => {
      clearTimeout(timer);
      here.removeEventListener("message", hear);
      here.removeEventListener("error", fail);
      resolve(remark);
    };
    const hear = ({ data }: MessageEvent<Looked>) => { if (data.id === id) end(data.remark); };
    const fail = () => end(null);
    const timer = setTimeout(fail, PATIENCE_MS);
    here.addEventListener("message", hear);
    here.addEventListener("error", fail);
    here.postMessage({ id, file, asked } satisfies Look);
  });
  return {
    look: async (file, asked) => (typeof Worker === "undefined" || typeof OffscreenCanvas === "undefined" ? null : look(file, asked).catch(() => null)),
    end: () => {
      worker?.terminate();
      worker = null;
    },
  };
}
