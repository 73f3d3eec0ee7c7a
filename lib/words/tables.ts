import { NOT_A_PHOTO, NOT_TAKEN, REMARKS } from "../photo/sentences";
import { FIBRES, type FibreId } from "../trade/fibres";
import { FIRST_AID } from "../trade/first-aid";
import type { QuestionRow } from "../trade/question-row";
import { PHOTO_KINDS, QUESTIONS, type PhotoKind, type QuestionId } from "../trade/questions";
import { WORDING_FOR_TRADE, type TradeWording } from "../trade/wording-for-trade";

/**
 * The texts of the trade's tables that a client reads, by key. Their English stands in the tables themselves, beside what it
 * means; another language answers to the same keys. `trade.` before a question: as a colleague reads it.
 */
type Asked = "ask" | "hint" | `answer.${string}` | `answer.${string}.hint`;
export type TableKey = `question.${QuestionId}.${Asked}` | `trade.question.${QuestionId}.${Asked}` | `photo.${PhotoKind}.${"ask" | "hint"}` | `first-aid.${string}` | `${"not-a-photo" | "not-taken" | "remark"}.${string}` | `fibre.${FibreId}.short`;

type Entry = readonly [TableKey, string];
const entry = (key: TableKey, text: string | undefined): Entry[] => (text === undefined ? [] : [[key, text]]);

function ofQuestion(prefix: `question.${QuestionId}` | `trade.question.${QuestionId}`, { ask, hint, answers = {} }: TradeWording | QuestionRow): Entry[] {
  return [
    ...entry(`${prefix}.ask`, ask), ...entry(`${prefix}.hint`, hint),
    ...Object.entries(answers).flatMap(([id, a]) => [...entry(`${prefix}.answer.${id}`, a.label), ...entry(`${prefix}.answer.${id}.hint`, a.hint)]),
  ];
}

const ofPhotos = (prefix: "not-a-photo" | "not-taken" | "remark", texts: Readonly<Record<string, string>>): Entry[] =>
  Object.entries(texts).map(([id, text]) => [`${prefix}.${id}`, text]);

const entries: Entry[] = [
  ...FIBRES.map(({ id, short }): Entry => [`fibre.${id}.short`, short]),
  ...(Object.keys(QUESTIONS) as QuestionId[]).flatMap((id) => [
    ...ofQuestion(`question.${id}`, QUESTIONS[id]), ...ofQuestion(`trade.question.${id}`, WORDING_FOR_TRADE[id] ?? {}),
  ]),
  ...(Object.keys(PHOTO_KINDS) as PhotoKind[]).flatMap((kind) => [...entry(`photo.${kind}.ask`, PHOTO_KINDS[kind].ask), ...entry(`photo.${kind}.hint`, PHOTO_KINDS[kind].hint)]),
  ...ofPhotos("not-a-photo", NOT_A_PHOTO), ...ofPhotos("not-taken", NOT_TAKEN), ...ofPhotos("remark", REMARKS),
  ["first-aid.lead", FIRST_AID.lead],
  ["first-aid.emergency", FIRST_AID.emergency("{number}")],
  ...FIRST_AID.steps.map((s, at): Entry => [`first-aid.step.${at}`, s]),
  ...FIRST_AID.handsOff.map((s, at): Entry => [`first-aid.hands-off.${at}`, s]),
  ...FIRST_AID.inShort.map((s, at): Entry => [`first-aid.short.${at}`, s]),
  ...FIRST_AID.dangers.map((s, at): Entry => [`first-aid.danger.${at}`, s]),
];

/** The tables' texts in English. */
export const TABLES_EN: ReadonlyMap<TableKey, string> = new Map(entries);
