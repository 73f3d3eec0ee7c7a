import "server-only";
import { findLabels, FIND_SIDE } from "../label/find-label";
import { greyOf, type Grey } from "../label/grey";
import { waysToRead } from "../label/agree";
import { looksAt, sheetOf, type Look } from "../label/looks";
import { withMissed, type Sheet } from "../label/missed";
import { confidenceOf, LIKELY, textOf, type LabelLines, type Seen, type Sense } from "../label/seen";
import { withoutStrays } from "../label/strays";
import { normalDegrees, scaled, uprightAround, type Turned } from "../label/turned";
import { fromPixels, openPicture, pgmOf } from "./pictures";
import { pixelsOf } from "./sizes";
import { readBlock, type ReadingLanguage } from "./text-reader";

/** A part of a picture, in shares of its width and height. */
export interface Frame { readonly x: number; readonly y: number; readonly width: number; readonly height: number }
/** What was read of a label. */
export interface LabelText {
  /** Lines parted by line ends. */
  readonly text: string;
  readonly lines: LabelLines;
  /** Mean over the letters, 0 guessed to 1 sure. */
  readonly confidence: number;
  /** The upright rectangle around the label. */
  readonly crop: Frame;
  /** How far its lines are turned clockwise, −180 to 180. */
  readonly degrees: number;
}
/** Pixels of the long side at which labels are read; larger photos are made smaller. *elicited* */
const READ_SIDE = 4000;
/** A reading that nobody judges is good from this confidence. *elicited* */
const SURE = 0.9;
/** White around the print, in pixels: the reader loses letters at an edge. */
const EDGE = 12;

interface Way { readonly languages: readonly ReadingLanguage[]; readonly size: number }
const FIRST: Way = { languages: ["eng"], size: 1 };
/** What is tried, one after the other, while the words make no full sense. In the order in which they helped on drawn labels. */
const FURTHER: readonly Way[] = [
  { languages: ["pol"], size: 1 }, { languages: ["deu"], size: 1 }, { languages: ["eng"], size: 0.7 }, { languages: ["fra"], size: 1 }, { languages: ["pol"], size: 1.4 }, { languages: ["por"], size: 1 },
];

/** `seen`: the reading whose words these are, with their places; `sheet`: the print that was read. */
interface Best { lines: LabelLines; seen: Seen; sense: number; look: Look; sheet: Sheet }

/**
 * Finds the label in a kept picture, or in the frame that a person drew, and reads it. Null where there is no print that
 * could be read. Rejects with ReaderTrouble where the reader fails or takes too long; never uses the network.
 */
export async function readLabelPhoto(file: string, { frame = WHOLE, sense }: { frame?: Frame; sense?: Sense } = {}): Promise<LabelText | null> {
  const { grey, places } = await openFrame(file, frame);
  let best: Best | null = null;
  for await (const place of places()) {
    for (const look of looksAt(grey, place)) {
      const found = await readLook(grey, look, { sense, atLeast: best?.sense ?? 0 });
      if (found && (!best || found.sense > best.sense)) best = found;
      if (best && best.sense >= LIKELY) return answer(best, { grey, frame });
    }
  }
  return best && answer(best, { grey, frame });
}
const WHOLE: Frame = { x: 0, y: 0, width: 1, height: 1 };

/** Reads one look; where the first reading is a label's words but not clear, further readings are laid beside it. */
async function readLook(grey: Grey, look: Look, { sense, atLeast }: { sense: Sense | undefined; atLeast: number }): Promise<Best | null> {
  const readings: Seen[] = [];
  let best: Best | null = null;
  const sheet = sheetOf(grey, look, 1);
  for (const { languages, size } of [FIRST, ...FURTHER]) {
    readings.push(await readOnce(size === 1 ? sheet : sheetOf(grey, look, size), languages));
    for (const { lines, seen } of readings.flatMap((first) => waysToRead([first, ...readings.filter((r) => r !== first)]).map((lines) => ({ lines, seen: first })))) {
      const found = { lines, seen, look, sheet, sense: senseOf(lines, sense) };
      if (found.lines.length > 0 && (!best || found.sense > best.sense)) best = found;
      if (best && best.sense >= 1) return best;
    }
    if (!best || best.sense < LIKELY || best.sense < atLeast) return best;
  }
  return best;
}

/** Confidence parts readings of the same sense. */
function senseOf(lines: LabelLines, sense: Sense | undefined): number {
  const confidence = confidenceOf(lines);
  if (!sense) return confidence >= SURE ? 1 : confidence;
  const made = sense(textOf(lines), confidence);
  return made >= 1 ? 1 : made + 0.05 * confidence;
}

async function readOnce(sheet: Sheet, languages: readonly ReadingLanguage[]): Promise<Seen> {
  const seen = await readBlock(pgmOf(sheet, EDGE), languages);
  const place = (w: { left: number; top: number; right: number; bottom: number }) =>
    ({ left: (w.left - EDGE) / sheet.width, right: (w.right - EDGE) / sheet.width, top: (w.top - EDGE) / sheet.height, bottom: (w.bottom - EDGE) / sheet.height });
  return seen.map((line) => line.filter((w) => /[\p{L}\p{N}%]/u.test(w.text)).map((w) => ({ text: w.text, confidence: w.confidence, ...place(w) }))).filter((line) => line.length > 0);
}

function answer({ lines: read, seen, look, sheet }: Best, { grey, frame }: { grey: Grey; frame: Frame }): LabelText {
  const inside = uprightAround(look.place, grey);
  const lines = withoutStrays(withMissed(read, seen, sheet));
  return {
    text: textOf(lines), lines, confidence: confidenceOf(lines), degrees: normalDegrees(look.place.degrees),
    crop: { x: frame.x + inside.x * frame.width, y: frame.y + inside.y * frame.height, width: inside.width * frame.width, height: inside.height * frame.height },
  };
}

/** The framed part as grey levels, and where in it the label may lie: what looks like one, then all of it; all of it first where a person framed it. */
async function openFrame(file: string, frame: Frame): Promise<{ grey: Grey; places: () => AsyncGenerator<Turned> }> {
  const { width, height } = await openPicture(file).metadata();
  const left = Math.min(width - 1, Math.floor(frame.x * width)), top = Math.min(height - 1, Math.floor(frame.y * height));
  const part = { left, top, width: Math.max(1, Math.min(width - left, Math.round(frame.width * width))), height: Math.max(1, Math.min(height - top, Math.round(frame.height * height))) };
  const full = await pixelsOf(openPicture(file).extract(part), READ_SIDE);
  const all: Turned = { x: full.width / 2, y: full.height / 2, width: full.width, height: full.height, degrees: 0 };
  async function* places(): AsyncGenerator<Turned> {
    if (frame !== WHOLE) yield all;
    const small = await pixelsOf(fromPixels(full), FIND_SIDE);
    for (const found of findLabels(small)) yield scaled(found, full.width / small.width);
    if (frame === WHOLE) yield all;
  }
  return { grey: greyOf(full), places };
}
