import { execFileSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import fc from "fast-check";
import sharp from "sharp";
import { afterAll, describe, expect, it } from "vitest";
import { assessAnswers } from "../../../lib/enquiry/assess-answers";
import { drawPdf } from "../../../lib/print/draw-pdf";
import { MARGIN } from "../../../lib/print/pen";
import type { PrintedDocument } from "../../../lib/reply/documents/blocks";
import { conditionReport, type ConditionReport } from "../../../lib/reply/documents/condition-report";
import { cutDownPlan } from "../../../lib/reply/documents/cut-down-plan";
import type { Assessment } from "../../../lib/triage/assessment";
import type { RugAnswers } from "../../../lib/trade/questions";
import { paperOf } from "../../../lib/words/locales";
import type { Figures } from "../../../lib/words/measures";
import { DEFAULT_SETTINGS } from "../../../lib/workshop/settings-schema";
import { EVERYDAY } from "../../../prisma/demo/enquiries-everyday";
import { FIBRE } from "../../../prisma/demo/enquiries-fibre";
import { URGENT } from "../../../prisma/demo/enquiries-urgent";
import { hasPrograms } from "../../programs";
import { range } from "../reply/make";
import { JUDGED_RUGS, OWNER, TOLD } from "../reply/documents/made";

const folder = mkdtempSync(path.join(tmpdir(), "blank-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Of a page before the last, so much of what can be written on may be blank at its foot. */
const MOST = 0.4;
/** Dots an inch that a page is looked at with, and points an inch. */
const [DPI, POINTS] = [36, 72];
/** The lowest that is written on, above the foot of a page, in points from its lower edge: the margin and the room for the foot. */
const FOOT = MARGIN + 16;

const pictures = await Promise.all([[400, 300], [300, 400], [800, 250], [300, 300]].map(([width, height]) => sharp({ create: { width: width as number, height: height as number, channels: 3, background: "#a0522d" } }).jpeg().toBuffer()));

/** How much of each page is blank at its foot, 0–1, as it is seen (poppler). */
async function blankIn(document: PrintedDocument): Promise<number[]> {
  const at = mkdtempSync(path.join(folder, "pages-"));
  writeFileSync(path.join(at, "d.pdf"), await drawPdf(document, { photo: (id) => pictures[Number(id) % pictures.length] ?? null, createdAt: new Date("2026-11-28T09:00:00Z") }));
  execFileSync("pdftoppm", ["-gray", "-r", String(DPI), path.join(at, "d.pdf"), path.join(at, "page")]);
  const pages = readdirSync(at).filter((f) => f.endsWith(".pgm")).sort().map((f) => blankOf(readFileSync(path.join(at, f))));
  rmSync(at, { recursive: true });
  return pages;
}
/** Of a page in grey (PGM, P5): its head is three numbers, its width, its height and its white, and then one byte a dot. */
function blankOf(page: Buffer): number {
  const [head = "", width = "", height = ""] = /^P5\s+(\d+)\s+(\d+)\s+255\s/u.exec(page.toString("latin1", 0, 40)) ?? [];
  const end = Number(height) - (FOOT * DPI) / POINTS;
  const dots = page.subarray(head.length);
  let last = Math.floor(end) - 1;
  while (last > 0 && dots.subarray(last * Number(width), (last + 1) * Number(width)).every((grey) => grey > 200)) last -= 1;
  return (end - last) / (end - (MARGIN * DPI) / POINTS);
}

const FIGURES: readonly Figures[] = [{ locale: "en-GB", areaUnit: "m2" }, { locale: "en-US", areaUnit: "sqft" }];
const photosOf = (n: number, first = 0): ConditionReport["photos"] =>
  Array.from({ length: n }, (_, i) => ({
    id: String(first + i), shows: "The whole rug", takenOn: i % 2 ? "28 November 2026" : null, shape: { width: 400, height: 300 },
    marks: i === 1 ? (["untouched", "affected", "damaged"] as const).map((what) => ({ what, outline: [{ x: 0.2, y: 0.2 }, { x: 0.4, y: 0.2 }, { x: 0.3, y: 0.5 }] })) : [],
  }));
const report = (assessment: Assessment, figures: Figures, rest: Partial<ConditionReport>) =>
  conditionReport({
    reference: "K7-204", place: { n: 1, of: 1 }, theirReference: null, asker: OWNER, rug: "A grey rug", told: { ...TOLD, account: null }, assessment, photos: [], isLabelShown: false, reports: [], tests: [], moisture: [], inspection: null, cutDown: range(60, 70, 230), cutting: "unplanned",
    madeBy: "Nell Harrow", workshop: { name: "Lantern Yard Rug Workshop", lines: ["3 Lantern Yard, Harrowmere"] }, today: "28 November 2026", judgedOn: "28 November 2026", figures, ...rest,
  });

const quoted = (text: string): ConditionReport["told"]["account"] => (text === "" ? null : { text, isQuoted: true });

async function endsWell(document: PrintedDocument, name: string): Promise<number> {
  const blank = await blankIn(document);
  for (const [page, share] of blank.slice(0, -1).entries()) expect(share, `${name}, page ${page + 1} of ${blank.length}`).toBeLessThanOrEqual(MOST);
  return blank.length;
}

describe.skipIf(!hasPrograms("pdftoppm"))("the foot of a page (poppler)", { timeout: 240_000 }, () => {
  it("measures what is blank", async () => {
    const line = { kind: "paragraph" as const, text: "A line." };
    const [full = 1, rest = 0] = await blankIn({ title: "Lines", language: "en-GB", head: null, blocks: Array.from({ length: 36 }, () => line) });
    expect(full).toBeLessThan(0.05);
    expect(rest).toBeGreaterThan(0.8);
  });

  it("is never two fifths blank in a report on an enquiry of the demo, on A4 and on US Letter", async () => {
    const pages: number[] = [];
    for (const [n, { file, photos }] of [...EVERYDAY, ...FIBRE, ...URGENT].entries()) {
      const { rugs } = assessAnswers({
        channel: file.channel ?? "web", asOf: "2026-11-28T09:00:00Z", enquiry: { wetNow: file.wetNow, reason: file.reason }, client: { name: "Ana Example", isTrade: false }, workshop: DEFAULT_SETTINGS,
        rugs: file.rugs.map((answers) => ({ answers: answers as RugAnswers, colours: [], photos: [] })),
      });
      for (const [i, { assessment }] of rugs.entries()) for (const figures of FIGURES) {
        const { story, ...answers } = file.rugs[i] as RugAnswers;
        pages.push(await endsWell(report(assessment, figures, { told: { ...TOLD, answers, account: quoted(story ?? "") }, photos: photosOf(photos[i]?.length ?? 0) }), `enquiry ${n}, rug ${i}, ${paperOf(figures.locale)}`));
      }
    }
    expect(pages.length).toBeGreaterThan(40);
    expect(Math.max(...pages)).toBeGreaterThan(2);
  });

  it("is never two fifths blank, whatever was told, shown, measured and found", async () => {
    await fc.assert(fc.asyncProperty(
      fc.record({ rug: fc.constantFrom(...JUDGED_RUGS), figures: fc.constantFrom(...FIGURES), lines: fc.nat(24), photos: fc.nat(8), first: fc.nat(3), reports: fc.nat(3), found: fc.nat(12) }),
      async ({ rug: { name, assessment, isInspected }, figures, lines, photos, first, reports, found }) => {
        await endsWell(report(assessment, figures, {
          told: { ...TOLD, account: quoted(Array.from({ length: lines }, (_, i) => `Line ${i} of what happened.`).join("\n")) }, photos: photosOf(photos, first),
          reports: Array.from({ length: reports }, (_, i) => ({ by: `Laboratory ${i}`, on: "20 November 2026", reference: "FF-118", part: "pile" as const, found: "viscose" })),
          inspection: isInspected ? { by: "Ivo Castellane", on: "26 November 2026", found: "A hand’s breadth is distorted. ".repeat(found + 1), isBeyondRepair: true } : null,
        }), name);
      }), { numRuns: 12 });
  });

  it("is never two fifths blank in a plan of one to three ways, of a rug of any shape", async () => {
    const pieces = (widthCm: number, lengthCm: number) => [{ left: 0, top: 0, right: widthCm, bottom: lengthCm / 2 }];
    for (const figures of FIGURES) for (const [widthCm, lengthCm] of [[200, 300], [300, 200], [80, 400], [400, 80], [250, 250]] as const) for (const ways of [1, 2, 3]) {
      const kinds = (["edge-off", "split-in-two", "equal-ends"] as const).slice(0, ways);
      await endsWell(cutDownPlan({
        asker: OWNER, reference: "K7-204", rug: "a grey rug", size: { widthCm, lengthCm }, photoTop: "left", damaged: [], isTufted: ways === 2, isProposed: ways !== 2, inspected: ways === 3 ? "yes" : "no", figures, workshop: { name: "Lantern Yard", lines: [] },
        ways: kinds.map((kind) => ({ kind, pieces: pieces(widthCm, lengthCm), shareKept: 0.5, bindingM: 2.02, cost: { range: range(60, 70, 90), currency: "EUR" } })),
      }), `${ways} ways of ${widthCm} × ${lengthCm}, ${paperOf(figures.locale)}`);
    }
  });
});
