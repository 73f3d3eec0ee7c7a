import type { Enclosed } from "../mail/incoming/read-message";
import type { EnclosedFileView } from "./views";

/** What of a message is told of as left out. */
export interface WithEnclosures { readonly otherEnclosures: readonly Enclosed[]; readonly brokenPictures?: readonly string[] }

/** Parts a file's name from its size. No name and no sentence holds it: names of enclosures are of one line, without control characters. */
const SIZE_AFTER = "\t";

/** The column of what was enclosed with a message and is not kept with the enquiry, a line each: its files with their bytes, in their order, then what is only told of. null for none. */
export function leftOutColumn({ otherEnclosures, brokenPictures = [] }: WithEnclosures, more: readonly string[] = []): string | null {
  const files = otherEnclosures.map(({ name, content }) => `${name}${SIZE_AFTER}${content.length}`);
  return [...files, ...brokenPictures, ...more].join("\n") || null;
}

/** The files that can be saved alone, and the sentences about everything else, from that column. A file of which no size was kept is only told of. */
export function readLeftOut(column: string | null): { files: EnclosedFileView[]; leftOut: string[] } {
  const lines = (column ?? "").split("\n").filter((line) => line !== "");
  const files = lines.filter((line) => line.includes(SIZE_AFTER)).map((line, at) => {
    const [name = "", bytes = ""] = line.split(SIZE_AFTER);
    return { at, name, kilobytes: Math.max(1, Math.round(Number(bytes) / 1024)) };
  });
  return { files, leftOut: counted(lines.filter((line) => !line.includes(SIZE_AFTER))) };
}

/** What is said several times is said once, with how often. */
function counted(lines: readonly string[]): string[] {
  return [...new Set(lines)].map((line) => {
    const times = lines.filter((l) => l === line).length;
    return times === 1 ? line : `${line} (${times} times)`;
  });
}
