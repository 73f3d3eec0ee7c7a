import { createHash } from "node:crypto";
import { mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import path from "node:path";

/** What something was made from: files and folders below the root, and what in them does not count. */
export interface Sources { of: readonly string[]; except?: readonly string[] }

function filesBelow(root: string, name: string, except: ReadonlySet<string>): string[] {
  if (except.has(name)) return [];
  const info = statSync(path.join(root, name), { throwIfNoEntry: false });
  if (!info) return [];
  if (!info.isDirectory()) return [name];
  return readdirSync(path.join(root, name)).sort().flatMap((entry) => filesBelow(root, `${name}/${entry}`, except));
}

/** SHA-256 over the names and contents of all sources. */
export function fingerprint(root: string, { of, except = [] }: Sources): string {
  const hash = createHash("sha256");
  const skip = new Set(except);
  for (const file of of.flatMap((name) => filesBelow(root, name, skip))) {
    const content = readFileSync(path.join(root, file));
    hash.update(`${file}\0${content.length}\0`).update(content);
  }
  return hash.digest("hex");
}

/** Whether the mark in `markFile` says that what it stands beside was made from just this. */
export function isMadeFrom(markFile: string, print: string): boolean {
  try {
    return (JSON.parse(readFileSync(markFile, "utf8")) as { madeFrom?: unknown }).madeFrom === print;
  } catch {
    return false;
  }
}

export function markMadeFrom(markFile: string, print: string): void {
  mkdirSync(path.dirname(markFile), { recursive: true });
  writeFileSync(markFile, JSON.stringify({ madeFrom: print, at: new Date().toISOString() }));
}
