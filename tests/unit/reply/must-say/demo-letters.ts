import { EVERYDAY } from "../../../../prisma/demo/enquiries-everyday";
import { FIBRE } from "../../../../prisma/demo/enquiries-fibre";
import { URGENT } from "../../../../prisma/demo/enquiries-urgent";
import type { DemoEnquiry } from "../../../../prisma/demo/types";
import { DEMO_WORKSHOP } from "../../../../prisma/demo/workshop";
import { assessAnswers, type AssessedEnquiry } from "../../../../lib/enquiry/assess-answers";
import type { EnquiryAnswers, RugAnswers } from "../../../../lib/trade/questions";
import { TONE_IDS, type Tone } from "../../../../lib/trade/tones";
import { DEFAULT_SETTINGS } from "../../../../lib/workshop/settings-schema";

/** The day the demo's letters are written for. */
const AS_OF = "2026-11-28T09:00:00.000Z";
const WORKSHOP = { ...DEFAULT_SETTINGS, ...DEMO_WORKSHOP };

type DemoPhoto = DemoEnquiry["photos"][number][number];
const kindOf = ({ kind }: DemoPhoto) => (kind === "bad" ? "whole" as const : kind);
const isBad = ({ kind, quality = "good" }: DemoPhoto) => kind === "bad" || quality !== "good";

/** The letter of one enquiry of the demo in a tone, judged as the demo judges it; colours as they were drawn instead of measured. */
function letterOf({ file, photos }: Pick<DemoEnquiry, "file" | "photos">, tone: Tone): AssessedEnquiry {
  return assessAnswers({
    channel: file.channel ?? "web", asOf: AS_OF, enquiry: { wetNow: file.wetNow, reason: file.reason }, workshop: { ...WORKSHOP, tone },
    client: { name: file.client?.name ?? "", isTrade: file.reason === "trade" },
    rugs: file.rugs.map((answers, at) => ({
      answers, colours: (photos[at]?.[0]?.colours ?? []).map((hex, n) => ({ hex, share: 0.5 / (n + 1) })),
      photos: (photos[at] ?? []).filter((p) => !isBad(p)).map(kindOf), spoilt: (photos[at] ?? []).filter(isBad).map(kindOf),
    })),
  });
}

const DEMO = [...URGENT, ...FIBRE, ...EVERYDAY];
const clientOf = ({ file }: DemoEnquiry) => file.client?.name ?? "";
export const DEMO_CLIENTS: readonly string[] = DEMO.map(clientOf);
/** What a client of the demo answered of each rug. */
export const answersOf = (client: string): RugAnswers[] => DEMO.filter((demo) => clientOf(demo) === client).flatMap(({ file }) => file.rugs);
/** Why they write, and whether it is wet. */
export const reasonOf = (client: string): EnquiryAnswers => {
  const file = DEMO.find((demo) => clientOf(demo) === client)?.file;
  return { reason: file?.reason, wetNow: file?.wetNow };
};
/** The same in their own words. */
export const storiesOf = (client: string): (string | undefined)[] => answersOf(client).map((rug) => rug.story);
export const lettersTo = (client: string): { tone: Tone; letter: AssessedEnquiry }[] =>
  DEMO.filter((demo) => clientOf(demo) === client).flatMap((demo) => TONE_IDS.map((tone) => ({ tone, letter: letterOf(demo, tone) })));

/** The letter that the first of some clients of the demo would get who had asked of the rugs of all of them at once. */
export function letterAbout(clients: readonly string[], tone: Tone = "plain"): AssessedEnquiry {
  const [first, ...others] = clients.flatMap((client) => DEMO.filter((demo) => clientOf(demo) === client));
  if (!first) throw new Error(`Expected a client of the demo but received ${clients.join(", ") || "none"}`);
  const all = [first, ...others];
  return letterOf({ file: { ...first.file, rugs: all.flatMap(({ file }) => file.rugs) }, photos: all.flatMap(({ file, photos }) => file.rugs.map((_, at) => photos[at] ?? [])) }, tone);
}
