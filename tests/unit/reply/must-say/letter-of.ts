import { DEMO_WORKSHOP } from "../../../../prisma/demo/workshop";
import { assessAnswers, type AssessedEnquiry } from "../../../../lib/enquiry/assess-answers";
import type { EnquiryAnswers, RugAnswers, ShownKind } from "../../../../lib/trade/questions";
import type { Tone } from "../../../../lib/trade/tones";
import { DEFAULT_SETTINGS, type WorkshopSettings } from "../../../../lib/workshop/settings-schema";
import type { Line } from "./lists";

/** What somebody told, and how it reached us. */
export interface Told {
  answers: RugAnswers;
  enquiry?: EnquiryAnswers;
  photos?: readonly ShownKind[];
  channel?: "web" | "email";
  tone?: Tone;
  name?: string;
  workshop?: Partial<WorkshopSettings>;
}

/** The letter about one rug to an owner, judged as the server judges it. */
export const letterOf = ({ answers, enquiry = {}, photos = ["whole"], channel = "web", tone = "plain", name = "Ana Example", workshop = {} }: Told): AssessedEnquiry => assessAnswers({
  channel, asOf: "2026-11-28T09:00:00.000Z", enquiry, workshop: { ...DEFAULT_SETTINGS, ...DEMO_WORKSHOP, tone, ...workshop },
  client: { name, isTrade: false }, rugs: [{ answers, colours: [], photos }],
});

export const says = (meaning: string, pattern: RegExp): Line => [meaning, pattern];
/** With spaces that break, to read patterns against. */
export const plainly = (text: string): string => text.replaceAll("\u00a0", " ");
/** What a letter should say and does not. */
export const missing = (text: string, lines: readonly Line[]): string[] => lines.filter(([, p]) => !p.test(text)).map(([meaning]) => meaning);
/** What it says and should not, with its words. */
export const said = (text: string, lines: readonly Line[]): string[] => lines.flatMap(([meaning, p]) => (p.test(text) ? [`${meaning}: ${p.exec(text)?.[0]}`] : []));
