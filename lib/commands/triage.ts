import { createReadStream } from "node:fs";
import { mkdtemp, readFile, rm, stat } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { text } from "node:stream/consumers";
import * as z from "zod/mini";
import { assessAnswers } from "../enquiry/assess-answers";
import { findingsOfFile } from "../enquiry/bench-findings";
import { colourPhoto, sentKinds } from "../enquiry/photo-view";
import { enquiryFileSchema, type EnquiryFile } from "../enquiry/enquiry-file";
import { remarkOn } from "../photo/quality";
import { receivePhoto, type ReceivedPhoto } from "../photo/server/receive";
import { PHOTO_KINDS, type PhotoKind, type RugAnswers } from "../trade/questions";
import { DEFAULT_SETTINGS } from "../workshop/settings-schema";
import { CommandError, runCommand } from "./command";
import { explain } from "./explain";
import { readError } from "./read-error";
import { triageTable } from "./triage-table";

const USAGE = "Say which enquiry: npm run triage -- FILE [--table] [--explain], or - for standard input, or --schema.";

const OPTIONS: readonly string[] = ["--table", "--explain", "--schema"];

/** What the command reads and how it answers; a test passes its own. */
export interface TriageIo { stdin: NodeJS.ReadableStream; now: Date }

/**
 * One enquiry as JSON in, its assessment out, by the same function as the server's.
 * @throws CommandError in one line for anything the person can put right.
 */
export async function triage(args: readonly string[], io: TriageIo): Promise<string> {
  const flags = args.filter((a) => a.startsWith("--"));
  const [name, ...more] = args.filter((a) => !a.startsWith("--"));
  const unknown = flags.find((f) => !OPTIONS.includes(f));
  if (unknown) throw new CommandError(`There is no option ${unknown}. ${USAGE}`);
  if (flags.includes("--schema")) return JSON.stringify(z.toJSONSchema(enquiryFileSchema, { io: "input" }), null, 2);
  if (name === undefined || more.length > 0) throw new CommandError(USAGE);
  const file = parseEnquiry(name === "-" ? await text(io.stdin) : await readEnquiry(name), name === "-" ? "Standard input" : name);
  const { result, reasons } = await assessFile(file, { folder: name === "-" ? process.cwd() : path.dirname(path.resolve(name)), now: io.now });
  if (flags.includes("--explain")) return reasons.map(explain).join("\n\n");
  return flags.includes("--table") ? triageTable(result) : JSON.stringify(result.rugs.length === 1 ? result.rugs[0] : result, null, 2);
}

async function readEnquiry(name: string): Promise<string> {
  try {
    return await readFile(name, "utf8");
  } catch (error) {
    throw new CommandError(`${name} cannot be read: ${readError(error)}.`);
  }
}

/** @throws CommandError that names the place and what is wrong there. */
function parseEnquiry(json: string, name: string): EnquiryFile {
  let value: unknown;
  try {
    value = JSON.parse(json);
  } catch (error) {
    throw new CommandError(`${name} is not JSON: ${(error as Error).message.replace(/\s+/g, " ")}.`);
  }
  const parsed = enquiryFileSchema.safeParse(value);
  if (parsed.success) return parsed.data;
  const [issue] = parsed.error.issues;
  throw new CommandError(`${name}: ${issue ? sayIssue(issue) : "this is not an enquiry."}`);
}

/** The place as `rugs[0].price`, and what is wrong in words. */
function sayIssue(issue: z.core.$ZodIssue): string {
  const place = issue.path.reduce<string>((at, key) => (typeof key === "number" ? `${at}[${key}]` : at ? `${at}.${String(key)}` : String(key)), "") || "the enquiry";
  const one = (values: readonly unknown[]) => values.map(String).join(", ");
  switch (issue.code) {
    case "unrecognized_keys": return `${place} has no key ${issue.keys.map((k) => `“${k}”`).join(", ")}.`;
    case "invalid_type": return `${place} must be ${/^[aeiou]/.test(issue.expected) ? "an" : "a"} ${issue.expected}.`;
    case "invalid_value": return `${place} must be one of: ${one(issue.values)}.`;
    case "invalid_format": return `${place} is not written as a ${issue.format}.`;
    default: return `${place}: ${issue.message}`;
  }
}

type FileRug = EnquiryFile["rugs"][number];
interface Taken { path: string; kind: PhotoKind; photo: ReceivedPhoto }

/** Photos are taken in like the server's, measured, and thrown away. */
async function takePhotos(rug: FileRug, from: string, into: string): Promise<Taken[]> {
  const taken: Taken[] = [];
  for (const { path: name, kind = "whole" } of rug.photos ?? []) {
    const file = path.resolve(from, name);
    const found = await stat(file).catch(() => null);
    if (!found?.isFile()) throw new CommandError(`${name}: there is no such photo.`);
    const received = await receivePhoto(createReadStream(file), { name: path.basename(name), type: "" }, into);
    if (!received.ok) throw new CommandError(`${name}: ${received.say}`);
    taken.push({ path: name, kind, photo: received.photo });
  }
  return taken;
}

const answersOf = ({ photos: _photos, benchTests: _tests, laboratory: _report, ...answers }: FileRug): RugAnswers => answers;

/** What was measured in a photo, for the output. */
const measuredIn = ({ path: name, kind, photo }: Taken) => ({
  path: name, kind, width: photo.width, height: photo.height, takenAt: photo.takenAt?.toISOString() ?? null, sha256: photo.sha256,
  colours: photo.measured.colours, quality: { ...photo.measured.quality, remark: remarkOn(photo.measured.quality, PHOTO_KINDS[kind]) },
});

export type TriagedFile = Awaited<ReturnType<typeof assessFile>>["result"];

async function assessFile(file: EnquiryFile, { folder, now }: { folder: string; now: Date }) {
  const into = await mkdtemp(path.join(tmpdir(), "plainpile-triage-"));
  try {
    const photos: Taken[][] = [];
    for (const rug of file.rugs) photos.push(await takePhotos(rug, folder, into));
    const assessed = assessAnswers({
      channel: file.channel ?? "web", asOf: file.writtenAt ?? now.toISOString(),
      enquiry: { wetNow: file.wetNow, reason: file.reason },
      rugs: file.rugs.map((rug, at) => ({
        answers: answersOf(rug), tests: findingsOfFile(rug), ...sentKinds((photos[at] ?? []).map(({ kind, photo }) => ({ kind, quality: photo.measured.quality }))), colours: colourPhoto(photos[at] ?? [])?.photo.measured.colours ?? [],
      })),
      client: { name: file.client?.name ?? "", isTrade: file.reason === "trade", ...(file.client ? { email: file.client.email || null } : {}) }, workshop: DEFAULT_SETTINGS,
    });
    const { subject, text: draft } = assessed.draft;
    const result = { rugs: assessed.rugs.map(({ title, assessment }, at) => ({ title, ...assessment, photos: (photos[at] ?? []).map(measuredIn), subject, draft })) };
    return { result, reasons: assessed.rugs };
  } finally {
    await rm(into, { recursive: true, force: true });
  }
}

if (import.meta.filename === process.argv[1]) {
  await runCommand(async () => {
    console.log(await triage(process.argv.slice(2), { stdin: process.stdin, now: new Date() }));
  }, USAGE);
}
