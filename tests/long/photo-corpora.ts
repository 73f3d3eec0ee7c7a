import { execFile, spawn } from "node:child_process";
import { mkdtemp, mkdir, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { createInterface } from "node:readline";
import { promisify } from "node:util";
import { isPicture, type Bare, type Taken } from "./photo-taken";
import type { LongCheck, Outcome } from "./check";

const run = promisify(execFile);
/** Source packages of Debian whose tests hold pictures that others made to break readers of pictures. */
const PACKAGES = ["pillow", "exiv2", "libimage-exiftool-perl", "libpng1.6", "libheif"];
const FETCH_MS = 5 * 60_000;
/** What one picture may cost: times a bare decode, plus so many milliseconds; and at most so long, and so much memory on top of the process's own. */
const MAY = { times: 1.5, plusMs: 100, ms: 10_000, megabytes: 300 } as const;
/** A file over the time may be timed again: another program may have had the processor. */
const TRIES = 4;
/** So many files that needed the most are taken again, each by a fresh process: in the first one a file may have used what another left behind. */
const ALONE = 24;

/** Fetches the sources of Debian's main archive and unpacks them under `into`; null, with the reason said, where that is not possible. */
async function fetchSources(into: string): Promise<string | null> {
  const lists = path.join(into, "lists"), sources = path.join(into, "sources.list"), files = path.join(into, "files");
  await Promise.all([mkdir(path.join(lists, "partial"), { recursive: true }), mkdir(files)]);
  const options = ["-q", ...[`Dir::Etc::sourcelist=${sources}`, "Dir::Etc::sourceparts=-", `Dir::State::lists=${lists}`, "Dir::Cache::pkgcache=", "Dir::Cache::srcpkgcache="].flatMap((o) => ["-o", o])];
  const apt = (...args: string[]) => run("apt-get", [...options, ...args], { cwd: files, timeout: FETCH_MS, maxBuffer: 64 * 1024 ** 2 });
  try {
    const { stdout } = await run("apt-get", ["indextargets", "--format", "$(REPO_URI) $(RELEASE)", "Created-By: Packages"]);
    const [uri, release] = stdout.split("\n").map((l) => l.split(" ")).find(([, r]) => r && !r.includes("-")) ?? [];
    if (!uri || !release) throw new Error("apt names no archive");
    await writeFile(sources, `deb-src [signed-by=/usr/share/keyrings/debian-archive-keyring.gpg] ${uri} ${release} main\n`);
    await apt("update");
    await apt("source", "--download-only", "-y", ...PACKAGES);
    for (const name of await readdir(files)) if (/\.orig\.tar\./.test(name)) await run("tar", ["-xf", name], { cwd: files });
    return files;
  } catch (error) {
    console.log(`Photos of Debian's source packages: left out, they could not be fetched (${(error as Error).message.split("\n").slice(0, 2).join(" ").trim()}).`);
    return null;
  }
}

async function picturesUnder(folder: string): Promise<string[]> {
  const found = [];
  for (const entry of await readdir(folder, { recursive: true, withFileTypes: true })) {
    const file = path.join(entry.parentPath, entry.name);
    if (entry.isFile() && !/\.(orig|debian)\.tar\.|\.dsc$/.test(entry.name) && isPicture(entry.name, (await readFile(file)).subarray(0, 8192))) found.push(file);
  }
  return found.sort();
}

/** Does `work` with the files one after the other in a process of their own; one that ends is begun anew behind the file that ended it. */
async function each<T extends { file: string }>(work: "take" | "bare", files: readonly string[], progress: (share: number) => void): Promise<{ taken: T[]; crashed: string[] }> {
  const taken: T[] = [], crashed: string[] = [];
  while (taken.length + crashed.length < files.length) {
    const rest = files.filter((f) => !crashed.includes(f) && !taken.some((t) => t.file === f));
    const child = spawn(process.execPath, ["--conditions=react-server", "--import", "tsx", path.join(import.meta.dirname, "photo-taken.ts"), work], { stdio: ["pipe", "pipe", "ignore"] });
    child.stdin.on("error", () => undefined);
    child.stdin.end(rest.join("\n"));
    let done = 0;
    for await (const line of createInterface({ input: child.stdout })) {
      taken.push(JSON.parse(line) as T);
      done += 1;
      progress(taken.length / files.length);
    }
    if (done < rest.length) crashed.push(rest[done] as string);
  }
  return { taken, crashed };
}

interface Timed extends Taken { bareMs: number }
/** The lesser of clock and processors: by the clock other programs count too, by the processors a second one that helps does. */
const spentMs = (t: { ms: number; processorMs: number }): number => Math.min(t.ms, t.processorMs);

/** Taken in, and beside it decoded barely, in another process. */
async function takeAll(files: readonly string[], progress: (share: number) => void): Promise<{ taken: Timed[]; crashed: string[] }> {
  const { taken, crashed } = await each<Taken>("take", files, progress);
  const bare = new Map((await each<Bare>("bare", taken.map((t) => t.file), () => undefined)).taken.map((b) => [b.file, spentMs(b)]));
  return { taken: taken.map((t) => ({ ...t, bareMs: bare.get(t.file) ?? 0 })), crashed };
}

const limitMs = (t: Timed): number => Math.min(MAY.ms, MAY.times * t.bareMs + MAY.plusMs);
const named = (files: readonly string[]): string => (files.length === 0 ? "none" : `${files.length}: ${files.slice(0, 5).map((f) => path.basename(f)).join(", ")}`);

/** Times those that took too long again, and keeps their best. */
async function timedAgain(taken: readonly Timed[]): Promise<Timed[]> {
  let best = [...taken];
  for (let n = 1; n < TRIES; n += 1) {
    const late = best.filter((t) => spentMs(t) > limitMs(t)).map((t) => t.file);
    if (late.length === 0) break;
    const again = new Map((await takeAll(late, () => undefined)).taken.map((t) => [t.file, t]));
    best = best.map((t) => { const a = again.get(t.file); return a && spentMs(a) - limitMs(a) < spentMs(t) - limitMs(t) ? a : t; });
  }
  return best;
}

/** Those that needed the most memory, each taken once more by a process that has taken nothing else of them. */
async function memoryAlone(taken: readonly Timed[]): Promise<Map<string, number>> {
  const most = [...taken].sort((a, b) => b.megabytes - a.megabytes).slice(0, ALONE);
  const alone = new Map<string, number>();
  for (const { file } of most) for (const again of (await each<Taken>("take", [file], () => undefined)).taken) alone.set(file, again.megabytes);
  return alone;
}

async function corpora(progress: (share: number) => void): Promise<Outcome[]> {
  const into = await mkdtemp(path.join(tmpdir(), "plainpile-corpora-"));
  try {
    const folder = await fetchSources(into);
    if (!folder) return [];
    const files = await picturesUnder(folder);
    const { taken: first, crashed } = await takeAll(files, progress);
    const taken = await timedAgain(first);
    const accepted = taken.filter((t) => t.type !== null);
    const late = taken.filter((t) => spentMs(t) > limitMs(t)).sort((a, b) => spentMs(b) / limitMs(b) - spentMs(a) / limitMs(a));
    const foreign = accepted.filter((t) => t.foreign), kept = accepted.filter((t) => t.notes.length > 0), failed = taken.filter((t) => t.trouble !== null);
    const slowest = Math.max(...taken.map((t) => t.ms)), alone = await memoryAlone(first);
    const [largest, memory] = first.map((t) => [t.file, Math.max(t.megabytes, alone.get(t.file) ?? 0)] as const).reduce((a, b) => (b[1] > a[1] ? b : a), ["", 0]);
    return [
      { name: "Files", measured: `${files.length}, of which ${accepted.length} taken`, required: "reported", holds: null },
      { name: "Files that ended the process", measured: named(crashed), required: "none", holds: crashed.length === 0 },
      { name: "Files neither taken nor refused", measured: named(failed.map((t) => t.file)), required: "none", holds: failed.length === 0 },
      { name: "SVG, GIF or TIFF taken", measured: named(foreign.map((t) => t.file)), required: "none", holds: foreign.length === 0 },
      { name: "Copies with EXIF, XMP or IPTC", measured: named(kept.map((t) => t.file)), required: "none", holds: kept.length === 0 },
      { name: `Over ${MAY.times} × a bare decode plus ${MAY.plusMs} ms`, measured: late.length ? `${named(late.map((t) => t.file))} (${spentMs(late[0]!).toFixed(0)} ms, bare ${late[0]!.bareMs.toFixed(0)})` : "none", required: "none", holds: late.length === 0 },
      { name: "The slowest", measured: `${slowest.toFixed(0)} ms`, required: `at most ${MAY.ms} ms`, holds: slowest <= MAY.ms },
      { name: "The most memory for one file", measured: `${memory.toFixed(0)} MB (${path.basename(largest)})`, required: `at most ${MAY.megabytes} MB`, holds: memory <= MAY.megabytes },
    ];
  } finally {
    await rm(into, { recursive: true, force: true });
  }
}

export const checks: LongCheck[] = [{ name: "Pictures in the source packages of Debian that nobody here made", run: corpora }];
