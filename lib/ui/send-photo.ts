import type { Result } from "../enquiry/caller";
import type { PhotoView } from "../enquiry/views";

/** What is said where no answer came. */
const lostAs = (say: string): Result<never> => ({ ok: false, code: "unavailable", say });

/** What the server answered about a photo; an answer that is none counts as a lost connection. */
export function readAnswer(text: string, lost: string): Result<PhotoView> {
  try {
    const answer = JSON.parse(text) as Result<PhotoView>;
    return typeof answer.ok === "boolean" ? answer : lostAs(lost);
  } catch {
    return lostAs(lost);
  }
}

interface Watch { onProgress: (share: number) => void; signal: AbortSignal; /** The sentence where the connection was lost. */ lost: string }

/** Sends one photo and tells how far it got (0–1). XMLHttpRequest, because fetch does not report what was sent. */
export function sendPhoto(file: File, fields: Readonly<Record<string, string>>, { onProgress, signal, lost }: Watch): Promise<Result<PhotoView>> {
  return new Promise((resolve) => {
    const form = new FormData();
    for (const [name, value] of Object.entries(fields)) form.append(name, value);
    form.append("file", file);
    const request = new XMLHttpRequest();
    request.open("POST", "/api/photos");
    request.upload.onprogress = (e) => { if (e.lengthComputable) onProgress(e.loaded / e.total); };
    request.onload = () => resolve(readAnswer(request.responseText, lost));
    request.onerror = request.onabort = () => resolve(lostAs(lost));
    signal.addEventListener("abort", () => request.abort());
    request.send(form);
  });
}

/** So many milliseconds, or until the device is back on line, whichever comes first. */
export function pause(ms: number): Promise<void> {
  return new Promise((resolve) => {
    const end = () => {
      clearTimeout(timer);
      window.removeEventListener("online", end);
      resolve();
    };
    const timer = setTimeout(end, ms);
    window.addEventListener("online", end);
  });
}
