import "server-only";
import ExifReader from "exifreader";

/** What the camera wrote about the light. Null where it wrote nothing. */
export interface Exposure {
  exposureSeconds: number | null;
  fNumber: number | null;
  iso: number | null;
  /** Did the flash fire? */
  flash: boolean | null;
}
export interface CameraNotes { takenAt: Date | null; exposure: Exposure | null }

const NOTHING: CameraNotes = { takenAt: null, exposure: null };
/** Before digital cameras: a clock that was never set. */
const FIRST_YEAR = 1990;

/**
 * Reads time and exposure from the EXIF block of a picture; place, owner, serial numbers and thumbnail are not looked
 * at. Damaged notes are no reason to refuse a photo: they count as none. Fields by CIPA DC-008 (Exif 2.32).
 */
export function readCameraNotes(exif: Buffer | undefined): CameraNotes {
  if (!exif) return NOTHING;
  try {
    const start = exif.toString("latin1", 0, 6) === "Exif\0\0" ? 6 : 0;
    const tags = ExifReader.load(exif.subarray(start), { expanded: true, includeTags: { exif: WANTED } }).exif ?? {};
    const exposure: Exposure = {
      exposureSeconds: fraction(tags.ExposureTime?.value),
      fNumber: fraction(tags.FNumber?.value),
      iso: positive([tags.ISOSpeedRatings?.value].flat()[0]),
      flash: typeof tags.Flash?.value === "number" ? (tags.Flash.value & 1) === 1 : null,
    };
    const known = Object.values(exposure).some((value) => value !== null);
    return { takenAt: takenAt([tags.DateTimeOriginal?.value].flat()[0], [tags.OffsetTimeOriginal?.value].flat()[0]), exposure: known ? exposure : null };
  } catch {
    return NOTHING;
  }
}

const WANTED = ["ExposureTime", "FNumber", "ISOSpeedRatings", "Flash", "DateTimeOriginal", "OffsetTimeOriginal"];

const positive = (value: unknown): number | null => (typeof value === "number" && Number.isFinite(value) && value > 0 ? value : null);

function fraction(value: unknown): number | null {
  const [top, bottom] = Array.isArray(value) ? (value as unknown[]) : [];
  return typeof top === "number" && typeof bottom === "number" && bottom !== 0 ? positive(top / bottom) : null;
}

/**
 * EXIF writes the clock on the camera's display. With an offset beside it that is an instant; without one (most cameras
 * and older phones) the display's figures are kept as if they were UTC, so the instant may be off by up to 14 hours, and
 * the day and hour shown are the ones the owner saw.
 */
function takenAt(text: unknown, offset: unknown): Date | null {
  const parts = typeof text === "string" ? /^(\d{4}):(\d\d):(\d\d) (\d\d):(\d\d):(\d\d)/.exec(text) : null;
  if (!parts) return null;
  const zone = typeof offset === "string" && /^[+-]\d\d:\d\d/.test(offset) ? offset.slice(0, 6) : "Z";
  const at = new Date(`${parts[1]}-${parts[2]}-${parts[3]}T${parts[4]}:${parts[5]}:${parts[6]}${zone}`);
  return Number.isNaN(at.getTime()) || at.getUTCFullYear() < FIRST_YEAR ? null : at;
}
