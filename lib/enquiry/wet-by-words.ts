import { isGasTold, isMouldy, type Aided } from "../reply/happened";
import { FIRST_AID, firstAidSentences, firstAidUnread } from "../trade/first-aid";
import type { LetterSign } from "../trade/letter-signs";
import type { EnquiryAnswers, RugAnswers } from "../trade/questions";
import type { Assessment } from "../triage/assessment";
import { findingsFromAnswers } from "../triage/findings-from-answers";
import { letterUrgency, saidOfWater, type LetterUrgency } from "../triage/letter-signs";
import { readTold } from "../triage/told";

export type FirstAidKind = NonNullable<LetterSign["firstAid"]>;
type Judged = Pick<Assessment, "firstAid">;

/** The first aid of every rug that it was answered for. */
const answeredAid = (assessments: readonly Judged[]) => assessments.flatMap((a) => (a.firstAid === null ? [] : [a.firstAid]));

/** What first aid words call for that nobody has asked about yet; null where something wet was answered, and where they speak of none. */
export function wetByWords(assessments: readonly Judged[], byWords: readonly LetterUrgency[]): FirstAidKind | null {
  const said = answeredAid(assessments).length > 0 ? [] : byWords.flatMap((u) => (u.firstAid === null || u.firstAid === "unread" ? [] : u.firstAid));
  return said.includes("hands-off") ? "hands-off" : (said[0] ?? null);
}

/** Which first aid is for this enquiry: by what was answered, else by words nobody has read; null where nothing is wet by either. Said of all its rugs at once, it lets nobody touch any where one may not be touched. */
export function firstAidOf(assessments: readonly Judged[], byWords: readonly LetterUrgency[]): FirstAidKind | null {
  const answered = answeredAid(assessments);
  if (answered.length === 0) return wetByWords(assessments, byWords);
  return answered.some((aid) => FIRST_AID.handsOff.every((s) => aid.includes(s))) ? "hands-off" : "whole";
}

/** What the newest of a client's messages that speaks of water says of it; null where none does. `messages`: in any order. */
export function newestOfWater(messages: readonly { at: Date; text: string }[]): "wet" | "dry" | null {
  const newestFirst = [...messages].sort((a, b) => b.at.getTime() - a.at.getTime());
  return newestFirst.map(({ text }) => saidOfWater(text)).find((said) => said !== null) ?? null;
}

/** The same beside what was answered, and when: words from before that count only where the answer says as they do that it is dry. */
export const saidSince = (messages: readonly { at: Date; text: string }[], answered: { isDry: boolean; at: Date }): "wet" | "dry" | null =>
  newestOfWater(messages.filter((m) => m.at > answered.at)) ?? (answered.isDry && newestOfWater(messages) === "dry" ? "dry" : null);

/** First aid as it goes out at once with the acknowledgement. */
export interface FirstAidAtOnce { /** For what is wet, for what may be gas, or where nobody could read whether anything is wet. */ of: "wet" | "gas" | "unread"; /** In English, as an assessment holds it. */ lines: string[] }

/** What first aid at once is chosen by. `answers`: of each rug. */
interface AtOnce { assessments: readonly Judged[]; byWords: readonly LetterUrgency[]; answers: readonly RugAnswers[]; emergencyNumber: string | undefined }

/** What a client is told at once, before anybody has read what they wrote; null where nothing is wet by what can be read. */
export function firstAidAtOnce({ assessments, byWords, answers, emergencyNumber }: AtOnce): FirstAidAtOnce | null {
  const aid = firstAidOf(assessments, byWords);
  const isGas = answers.some(isGasTold);
  if (aid) return { of: isGas ? "gas" : "wet", lines: firstAidSentences(emergencyNumber, aid === "hands-off", isGas) };
  return byWords.some((u) => u.firstAid === "unread") ? { of: "unread", lines: firstAidUnread(emergencyNumber) } : null;
}

/** Among how many rugs mould is warned of at once, wet or dry; null where it is feared in none. */
export const mouldAmong = (rugs: readonly Aided[]): number | null => (rugs.some(isMouldy) ? rugs.length : null);

/** What is urgent in the words somebody began with, by what they have answered beside them. */
export const urgencyOfStory = (answers: RugAnswers, enquiry: EnquiryAnswers): LetterUrgency | null =>
  (answers.story ? letterUrgency(answers.story, readTold(findingsFromAnswers(answers, enquiry)).answered) : null);
