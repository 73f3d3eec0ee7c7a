import { EVERYDAY } from "../../../../prisma/demo/enquiries-everyday";
import { FIBRE } from "../../../../prisma/demo/enquiries-fibre";
import { URGENT } from "../../../../prisma/demo/enquiries-urgent";
import type { DemoEnquiry } from "../../../../prisma/demo/types";
import { DEMO_WORKSHOP } from "../../../../prisma/demo/workshop";
import { assessAnswers, type AssessedEnquiry } from "../../../../lib/enquiry/assess-answers";
import { DEFAULT_SETTINGS } from "../../../../lib/workshop/settings-schema";

/** The day the demo's letters are written for. */
const AS_OF = "2026-11-28T09:00:00.000Z";
const WORKSHOP = { ...DEFAULT_SETTINGS, ...DEMO_WORKSHOP };

/** The letter of one enquiry of the demo, judged as the demo judges it; colours as they were drawn instead of measured. */
function letterOf({ file, photos }: DemoEnquiry): AssessedEnquiry {
  return assessAnswers({
    channel: file.channel ?? "web", asOf: AS_OF, enquiry: { wetNow: file.wetNow, reason: file.reason }, workshop: WORKSHOP,
    client: { name: file.client?.name ?? "", isTrade: file.reason === "trade" },
    rugs: file.rugs.map((answers, at) => ({
      answers, colours: (photos[at]?.[0]?.colours ?? []).map((hex, n) => ({ hex, share: 0.5 / (n + 1) })),
      photos: (photos[at] ?? []).map((p) => (p.kind === "bad" ? "whole" as const : p.kind)),
    })),
  });
}

export const DEMO_LETTERS: ReadonlyMap<string, AssessedEnquiry> = new Map([...URGENT, ...FIBRE, ...EVERYDAY].map((demo) => [demo.file.client?.name ?? "", letterOf(demo)]));
