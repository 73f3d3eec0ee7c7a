import "server-only";
import { randomUUID } from "node:crypto";
import { answerLabelReading } from "../../lib/enquiry/answer-label-reading";
import type { Caller, Result } from "../../lib/enquiry/caller";
import { workOnLabel } from "../../lib/enquiry/label-work";
import type { PlanMarks, SpotMarks } from "../../lib/enquiry/mark-schema";
import { readEnquiry } from "../../lib/enquiry/read-enquiry";
import { readPhotoLabel } from "../../lib/enquiry/read-photo-label";
import { recordMeasurement } from "../../lib/enquiry/record-measurement";
import { hash } from "./canvas";
import { placeInPhoto, type Damage, type DrawOptions } from "./draw-rug";
import type { DemoEnquiry, DemoMark, DemoPlan, DemoSpots } from "./types";

/** A fingertip, as at the desk: of the photo's longer side. */
const RADIUS = 0.022;
const POINTS = 10;

function value<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(`The demo could not be measured: ${result.say}`);
  return result.value;
}

const spotsOf = ({ untouched, affected }: DemoSpots): SpotMarks =>
  ({ untouched: { shape: "circle", ...untouched, radius: RADIUS }, affected: { shape: "circle", ...affected, radius: RADIUS } });

/** The rug lies lengthwise in its photo: corners and damage are where they were drawn, as exactly as a hand puts them. */
function planOf({ chosen, borderCm = 0, isSymmetric = false }: DemoPlan, drawn: DrawOptions & { lengthCm: number; widthCm: number }): PlanMarks {
  const { lengthCm, widthCm } = drawn;
  const at = (x: number, y: number) => placeInPhoto(drawn, { x: Math.min(lengthCm, Math.max(0, x)), y: Math.min(widthCm, Math.max(0, y)) });
  return {
    corners: [at(0, 0), at(lengthCm, 0), at(lengthCm, widthCm), at(0, widthCm)], widthCm: lengthCm, lengthCm: widthCm,
    damaged: [drawn.damage ?? []].flat().map((d) => outlineOf(d, drawn).map(({ x, y }) => at(x, y))), borderCm, isSymmetric, chosen,
  };
}

/** Round a damaged place, in centimetres of the rug, a little uneven. */
function outlineOf({ x, y, r }: Damage, { lengthCm, widthCm, seed }: { lengthCm: number; widthCm: number; seed: number }) {
  return Array.from({ length: POINTS }, (_, n) => {
    const far = r * widthCm * (1 + 0.18 * hash(seed, n + 200)), angle = (2 * Math.PI * n) / POINTS;
    return { x: x * lengthCm + far * Math.cos(angle), y: y * widthCm + far * Math.sin(angle) };
  });
}

/** Measures photos of one enquiry as people would, so that whoever sees the demo first finds each kind of measurement. `by`: who here does it; `client`: the one who wrote. */
export async function measureDemo(demo: DemoEnquiry, { enquiryId, seed, by, client }: { enquiryId: string; seed: number; by: Caller; client: Caller }, now: Date): Promise<void> {
  if (!demo.marks) return;
  const { rugs } = value(await readEnquiry(by, enquiryId, now));
  for (const mark of demo.marks) {
    const photoId = rugs[0]?.photos[mark.photo]?.id ?? "";
    await measure(mark, { photoId, demo, seed, who: mark.by === "client" ? client : by }, now);
  }
}

async function measure(mark: DemoMark, { photoId, demo, seed, who }: { photoId: string; demo: DemoEnquiry; seed: number; who: Caller }, now: Date): Promise<void> {
  if ("label" in mark) {
    value(await readPhotoLabel(who, photoId));
    await workOnLabel(photoId);
    if (mark.label !== "open") value(await answerLabelReading(who, { photoId, answer: mark.label }, now));
    return;
  }
  const drawn = demo.photos[0]?.[mark.photo];
  const { lengthCm = 0, widthCm = 0 } = demo.file.rugs[0] ?? {};
  if (!drawn) throw new Error(`Expected a photo ${mark.photo} to measure but there is none`);
  const marked = "spots" in mark ? { kind: "spots", marks: spotsOf(mark.spots) } : { kind: "plan", marks: planOf(mark.plan, { ...drawn, lengthCm, widthCm, seed: seed * 10 }) };
  value(await recordMeasurement(who, { id: randomUUID(), photoId, marked, replaces: null }, now));
}
