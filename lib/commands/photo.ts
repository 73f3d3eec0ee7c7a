import { createReadStream } from "node:fs";
import { mkdtemp, rm, stat } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { planOf } from "../photo/plan";
import { sidesIn } from "../photo/rug-sides";
import type { Corners, Point } from "../photo/homography";
import { remarkOn } from "../photo/quality";
import { measureSpots, proposeSpotsIn } from "../photo/server/measure";
import { labelSense } from "../enquiry/label-sense";
import { readLabelPhoto } from "../photo/server/read-label-photo";
import { receivePhoto } from "../photo/server/receive";
import type { Spot } from "../photo/spot";
import { photoFileName } from "../store/photo-layout";
import { readLabel } from "../triage/read-label";
import { CommandError, runCommand } from "./command";

const USAGE = "Say which photo: npm run photo -- FILE [--spots X,Y X,Y] [--corners X,Y X,Y X,Y X,Y --size WIDTH×LENGTH] [--label]. Places are shares of the photo's width and height, 0 to 1.";
/** Of the longer side. *elicited*: a fingertip on a phone's screen. */
const RADIUS = 0.025;

interface Options { file: string; spots: Point[] | null; corners: Point[] | null; size: { widthCm: number; lengthCm: number } | null; label: boolean }

/**
 * Everything that is measured in one photo, as JSON. The file is taken in like a client's and thrown away.
 * @throws CommandError in one line for anything the person can put right.
 */
export async function photo(args: readonly string[]): Promise<string> {
  const { file, spots, corners, size, label } = optionsOf(args);
  const found = await stat(file).catch(() => null);
  if (!found?.isFile()) throw new CommandError(`${file}: there is no such file.`);
  const into = await mkdtemp(path.join(tmpdir(), "plainpile-photo-"));
  try {
    const taken = await receivePhoto(createReadStream(file), { name: path.basename(file), type: "" }, into);
    if (!taken.ok) throw new CommandError(`${file}: ${taken.say}`);
    const { width, height, takenAt, exposure, sha256, receivedBytes, receivedType, measured } = taken.photo;
    const copy = path.join(into, photoFileName(taken.photo.id, "1600"));
    const proposed = spots ? null : await proposeSpotsIn(copy);
    const compared = spots ? spotsAt(spots) : proposed;
    const plan = corners && size ? planOf(corners as unknown as Corners, size) : null;
    return JSON.stringify({
      file: path.basename(file), receivedType, receivedBytes, sha256, width, height, takenAt, exposure, colours: measured.colours, quality: { ...measured.quality, remark: remarkOn(measured.quality) },
      spots: compared ? { proposed: spots === null, ...compared, comparison: await measureSpots(copy, compared) } : null,
      plan: plan === null ? null : typeof plan === "string" ? plan : { widthCm: plan.widthCm, lengthCm: plan.lengthCm, sides: sidesIn(taken.photo, corners as unknown as Corners, plan), centreOfPhoto: plan.toPlan({ x: 0.5, y: 0.5 }) },
      ...(label ? { label: await labelIn(path.join(into, photoFileName(taken.photo.id, "full"))) } : {}),
    }, figures, 2);
  } finally {
    await rm(into, { recursive: true, force: true });
  }
}

/** Nothing that is measured in a photo is known to more places. */
const PLACES = 6;
const figures = (_: string, value: unknown): unknown => (typeof value === "number" && !Number.isInteger(value) ? Number(value.toPrecision(PLACES)) : value);

/** What is read of the label, and what its words say; null where there is no print. */
async function labelIn(file: string) {
  const read = await readLabelPhoto(file, { sense: labelSense });
  return read && { ...read, reading: readLabel(read.text) };
}

const spotAt = ({ x, y }: Point): Spot => ({ shape: "circle", x, y, radius: RADIUS });
const spotsAt = ([untouched, affected]: Point[]) => ({ untouched: spotAt(untouched as Point), affected: spotAt(affected as Point) });

function optionsOf(args: readonly string[]): Options {
  const rest = [...args];
  const take = (flag: string, count: number): string[] | null => {
    const at = rest.indexOf(flag);
    if (at < 0) return null;
    const values = rest.splice(at, count + 1).slice(1);
    if (values.length < count) throw new CommandError(`${flag} needs ${count === 1 ? "a value" : `${count} places`}. ${USAGE}`);
    return values;
  };
  const spots = take("--spots", 2)?.map(placeOf) ?? null;
  const corners = take("--corners", 4)?.map(placeOf) ?? null;
  const size = take("--size", 1)?.map(sizeOf)[0] ?? null;
  const label = take("--label", 0) !== null;
  if ((corners === null) !== (size === null)) throw new CommandError(`--corners and --size go together. ${USAGE}`);
  const unknown = rest.find((a) => a.startsWith("--"));
  if (unknown) throw new CommandError(`There is no option ${unknown}. ${USAGE}`);
  const [file, ...more] = rest;
  if (file === undefined || more.length > 0) throw new CommandError(USAGE);
  return { file, spots, corners, size, label };
}

function placeOf(text: string): Point {
  const [x, y, ...more] = text.split(",").map(Number);
  if (x === undefined || y === undefined || more.length > 0 || !(x >= 0 && x <= 1 && y >= 0 && y <= 1)) throw new CommandError(`${text} is no place: write X,Y, each from 0 to 1.`);
  return { x, y };
}

function sizeOf(text: string): { widthCm: number; lengthCm: number } {
  const [, width, length] = /^(\d+(?:\.\d+)?)\s*[x×]\s*(\d+(?:\.\d+)?)$/u.exec(text) ?? [];
  if (!width || !length) throw new CommandError(`${text} is no size: write WIDTHxLENGTH in centimetres, such as 170x240.`);
  return { widthCm: Number(width), lengthCm: Number(length) };
}

if (import.meta.filename === process.argv[1]) {
  await runCommand(async () => {
    console.log(await photo(process.argv.slice(2)));
  }, USAGE);
}
