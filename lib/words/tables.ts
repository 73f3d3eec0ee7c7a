import { CUT_NAMES } from "../photo/cut-names";
import { NOT_A_PHOTO, NOT_COMPARED, NOT_TAKEN, REMARKS } from "../photo/sentences";
import { BENCH_TESTS, type BenchTestRow } from "../trade/bench-tests";
import { CAUTIONS, LEFT_AS_IT_IS, METHOD_IDS, METHOD_SENTENCES, METHODS, type MethodId } from "../trade/care";
import { CARE_WORDS } from "../trade/care-words";
import { COMPARED, type Compared } from "../trade/compared";
import { DAMAGE_IDS, mechanismName, type MechanismId } from "../trade/damage";
import { FIBRES, type BlendId, type FibreId } from "../trade/fibres";
import { FIRST_AID } from "../trade/first-aid";
import { ONLY_INSPECTION } from "../trade/inspection";
import { ACTIONS, REFERRALS, type ActionId, type ReferralId } from "../trade/losses";
import { NOT_STATED } from "../trade/not-stated";
import type { QuestionRow } from "../trade/question-row";
import { PHOTO_KINDS, QUESTIONS, shownAs, UNSAID_PHOTO, type PhotoKind, type QuestionId } from "../trade/questions";
import { NOT_LEGAL_ADVICE, RIGHTS } from "../trade/rights";
import { SAID_DRY, URGENCY } from "../trade/urgency";
import { WORDING_FOR_TRADE, type TradeWording } from "../trade/wording-for-trade";

/**
 * The texts of the trade's tables that a client reads, on a page or on paper, by key. Their English stands in the tables themselves, beside what it
 * means; another language answers to the same keys. `trade.` before a question: as a colleague reads it.
 */
type PhotoTexts = "not-a-photo" | "not-taken" | "not-compared" | "remark";
type Asked = "ask" | "hint" | `answer.${string}` | `answer.${string}.hint`;
export type TableKey = `question.${QuestionId}.${Asked}` | `trade.question.${QuestionId}.${Asked}` | `photo.${PhotoKind}.${"ask" | "hint"}` | `photo.${typeof UNSAID_PHOTO}.ask` | `first-aid.${string}` | `${PhotoTexts}.${string}` | `fibre.${FibreId}.${"short" | "name"}` | `fibre.${BlendId}.turned`
  | `action.${ActionId}.why` | `referral.${ReferralId}` | `urgency.${number}.why` | "urgency.said-dry" | `inspection.${number}` | OfDocuments;
/** What documents take from the tables. `why`: why a method may or may not be used, the sentence and what stands in it. */
type OfDocuments =
  | `mechanism.${MechanismId}` | `treatment.${MethodId}` | `why.${string}` | `not-stated.${keyof typeof NOT_STATED}` | `compared.${Compared}`
  | `cut.${keyof typeof CUT_NAMES}` | `test.${string}` | `right.${string}`;

type Entry = readonly [TableKey, string];
const entry = (key: TableKey, text: string | undefined): Entry[] => (text === undefined ? [] : [[key, text]]);

function ofQuestion(prefix: `question.${QuestionId}` | `trade.question.${QuestionId}`, { ask, hint, answers = {} }: TradeWording | QuestionRow): Entry[] {
  return [
    ...entry(`${prefix}.ask`, ask), ...entry(`${prefix}.hint`, hint),
    ...Object.entries(answers).flatMap(([id, a]) => [...entry(`${prefix}.answer.${id}`, a.label), ...entry(`${prefix}.answer.${id}.hint`, a.hint)]),
  ];
}

const ofPhotos = (prefix: PhotoTexts, texts: Readonly<Record<string, string>>): Entry[] =>
  Object.entries(texts).map(([id, text]) => [`${prefix}.${id}`, text]);

/** A bench test and its answers, as a letter to a seller names them. */
const ofTest = ([id, { name, told = name, readings }]: [string, BenchTestRow]): Entry[] => [
  [`test.${id}`, told],
  ...Object.entries(readings).flatMap(([reading, r]) => (r.kind === "choice" ? Object.entries(r.answers).map(([answer, { label }]): Entry => [`test.${id}.${reading}.${answer}`, label]) : [])),
];

const ofDocuments: Entry[] = [
  ...([...DAMAGE_IDS, "soil-only"] as const).map((id): Entry => [`mechanism.${id}`, mechanismName(id)]),
  ...METHOD_IDS.flatMap((id): Entry[] => [[`treatment.${id}`, METHODS[id].name], ...(["fine", "test", "forbidden"] as const).map((verdict): Entry => [`why.${id}.${verdict}`, METHODS[id][verdict]])]),
  ...CARE_WORDS.map(({ say }, at): Entry => [`why.care.${at}`, say]),
  ...CAUTIONS.map(({ why }, at): Entry => [`why.caution.${at}`, why]), ...LEFT_AS_IT_IS.map(({ say }, at): Entry => [`why.left.${at}`, say]),
  ...Object.entries(METHOD_SENTENCES).map(([id, sentence]): Entry => [`why.sentence.${id}`, sentence("{why}", "{fibre}", "{chance}")]),
  ...Object.entries(NOT_STATED).map(([id, text]): Entry => [`not-stated.${id as keyof typeof NOT_STATED}`, text]),
  ...Object.entries(COMPARED).map(([id, text]): Entry => [`compared.${id as Compared}`, text]),
  ...Object.entries(CUT_NAMES).map(([id, text]): Entry => [`cut.${id as keyof typeof CUT_NAMES}`, text]),
  ...Object.entries(BENCH_TESTS).flatMap(ofTest),
  ...Object.entries(RIGHTS).flatMap(([place, rows]) => rows.map(({ say }, at): Entry => [`right.${place}.${at}`, say])), ["right.not-legal-advice", NOT_LEGAL_ADVICE],
];

const entries: Entry[] = [
  ...FIBRES.flatMap((f): Entry[] => [[`fibre.${f.id}.short`, f.short], [`fibre.${f.id}.name`, f.name], ...("turned" in f ? [[`fibre.${f.id}.turned`, f.turned] as Entry] : [])]),
  ...ofDocuments,
  ...(Object.keys(QUESTIONS) as QuestionId[]).flatMap((id) => [
    ...ofQuestion(`question.${id}`, QUESTIONS[id]), ...ofQuestion(`trade.question.${id}`, WORDING_FOR_TRADE[id] ?? {}),
  ]),
  ...entry(`photo.${UNSAID_PHOTO}.ask`, shownAs(UNSAID_PHOTO).ask),
  ...(Object.keys(PHOTO_KINDS) as PhotoKind[]).flatMap((kind) => [...entry(`photo.${kind}.ask`, PHOTO_KINDS[kind].ask), ...entry(`photo.${kind}.hint`, PHOTO_KINDS[kind].hint)]),
  ...ofPhotos("not-a-photo", NOT_A_PHOTO), ...ofPhotos("not-taken", NOT_TAKEN), ...ofPhotos("not-compared", NOT_COMPARED), ...ofPhotos("remark", REMARKS),
  ...(Object.keys(ACTIONS) as ActionId[]).map((id): Entry => [`action.${id}.why`, ACTIONS[id].why]),
  ...REFERRALS.map(({ when, to }): Entry => [`referral.${when}`, to]),
  ...URGENCY.map(({ why }, at): Entry => [`urgency.${at}.why`, why]), ["urgency.said-dry", SAID_DRY],
  ...ONLY_INSPECTION.map(({ say }, at): Entry => [`inspection.${at}`, say]),
  ["first-aid.lead", FIRST_AID.lead],
  ["first-aid.emergency", FIRST_AID.emergency("{number}")],
  ["first-aid.gas", FIRST_AID.gas.line("{number}")],
  ...FIRST_AID.steps.map((s, at): Entry => [`first-aid.step.${at}`, s]),
  ...FIRST_AID.handsOff.map((s, at): Entry => [`first-aid.hands-off.${at}`, s]),
  ["first-aid.mould", FIRST_AID.mould],
  ...FIRST_AID.unread.map((s, at): Entry => [`first-aid.unread.${at}`, s]),
  ...FIRST_AID.inShort.map(({ text }, at): Entry => [`first-aid.short.${at}`, text]),
  ...FIRST_AID.dangers.map((s, at): Entry => [`first-aid.danger.${at}`, s]),
];

/** The tables' texts in English. */
export const TABLES_EN: ReadonlyMap<TableKey, string> = new Map(entries);
