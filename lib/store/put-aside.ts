import "server-only";
import { readdir, stat } from "node:fs/promises";
import path from "node:path";
import { removeFiles } from "./photo-layout";

const START = "before-restore-";
const ENDING = ".tar.gz";

/** Where what was here before a restore is put: in the data folder, named by the moment. */
export const putAsideName = (now: Date): string => `${START}${now.toISOString().replace(/[:.]/g, "-")}${ENDING}`;

/** Removes what was put aside before a moment: it holds what people were told would be gone. Returns the names. */
export async function removePutAside(dataDir: string, before: Date): Promise<string[]> {
  const old: string[] = [];
  for (const name of (await readdir(dataDir)).filter((n) => n.startsWith(START) && n.endsWith(ENDING))) {
    if ((await stat(path.join(/* turbopackIgnore: true */ dataDir, name))).mtime <= before) old.push(name);
  }
  await removeFiles(dataDir, old);
  return old;
}
