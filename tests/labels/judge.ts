import path from "node:path";
import sharp from "sharp";
import { labelSense } from "../../lib/enquiry/label-sense";
import { readLabelPhoto } from "../../lib/photo/server/read-label-photo";
import { ReaderTrouble } from "../../lib/photo/server/text-reader";
import { readLabel } from "../../lib/triage/read-label";
import { seeded } from "../../prisma/demo/canvas";
import { conditionsOf, LEVELS, type Level } from "./conditions";
import { drawLabel } from "./draw";
import { TYPEFACES } from "./typefaces";
import { LANGUAGES, labelWords, type LabelWords } from "./words";

export interface Judged {
  readonly words: LabelWords;
  readonly level: Level;
  readonly face: string;
  readonly read: string | null;
  /** Every part with its fibres and their per cent is as printed. */
  readonly right: boolean;
  /** Wrong, and nothing says so: neither a doubt of the reading nor a word marked as unsure. */
  readonly silent: boolean;
  /** The reader failed or took too long, as a client would be told. */
  readonly gaveUp: boolean;
}

/** The n-th label of a level: language and typeface take turns, so that all of both come. */
export function drawnLabel(level: Level, n: number) {
  const random = seeded(100_000 * (1 + LEVELS.indexOf(level)) + n);
  const words = labelWords(random, LANGUAGES[n % LANGUAGES.length]!);
  const face = TYPEFACES[(5 * n + Math.floor(n / TYPEFACES.length)) % TYPEFACES.length]!;
  return { words, face, picture: drawLabel(random, words, face, conditionsOf(random, level)) };
}

interface Part { readonly part: string; readonly fibres: readonly { readonly fibre: string; readonly percent: number | null }[] }
/** Parts and fibres in one order, for comparing. */
export const partsKey = (parts: readonly Part[]): string =>
  parts.map((p) => `${p.part}: ${p.fibres.map((f) => `${f.percent} ${f.fibre}`).sort().join(", ")}`).sort().join("; ");

/** Draws a label, keeps it as a photo is kept, and reads it as the desk does. */
export async function judgeLabel(level: Level, n: number, folder: string): Promise<Judged> {
  const { words, face, picture } = drawnLabel(level, n);
  const file = path.join(folder, `${level.replace(" ", "-")}-${n}.jpg`);
  await sharp(picture.data, { raw: { width: picture.width, height: picture.height, channels: 3 } }).jpeg({ quality: 88 }).toFile(file);
  const read = await readLabelPhoto(file, { sense: labelSense }).catch((error: unknown) => { if (error instanceof ReaderTrouble) return error; throw error; });
  const label = read instanceof ReaderTrouble ? null : read;
  const reading = label && readLabel(label.text);
  const right = reading !== null && partsKey(reading.components) === partsKey(words.says);
  const said = reading !== null && (reading.components.length === 0 || reading.doubts.length > 0 || (label?.lines.flat().some((w) => w.unsure) ?? false));
  return { words, level, face: face.name, read: label?.text ?? null, right, silent: !right && reading !== null && !said, gaveUp: read instanceof ReaderTrouble };
}
