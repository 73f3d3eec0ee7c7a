import { fill } from "../words/fill";
import { figuresOf } from "../words/locales";
import { TABLES_EN } from "../words/tables";
import type { Words } from "../words/words";
import type { Refusal, Result } from "./caller";
import type { FieldErrors } from "./step-forms";
import type { PhotoView } from "./views";
import { isUnreadKey, limitsIn, SENTENCE_KEYS, wrong } from "./wrong";

const KEYS = new Map(SENTENCE_KEYS.map((key) => [wrong(key), key]));
const TABLE_KEYS = new Map([...TABLES_EN].map(([key, text]) => [text, key]));

/** What stands around the typed words in a sentence that names them. */
const UNREAD = SENTENCE_KEYS.filter(isUnreadKey).map((key) => {
  const [before = "", after = ""] = wrong(key).split("{typed}");
  return { key, before, after };
});

/** A sentence that names what was typed, in a client's words; null where it is none. */
function retellUnread(words: Words, sentence: string): string | null {
  const of = UNREAD.find(({ before, after }) => sentence.startsWith(before) && sentence.endsWith(after));
  return of ? fill(words.open(of.key), { typed: sentence.slice(of.before.length, sentence.length - of.after.length) }) : null;
}

/** An English sentence of `wrong`, or of the tables, in a client's words; any other sentence as it is. */
export function retell(words: Words, sentence: string): string {
  const key = KEYS.get(sentence);
  if (key !== undefined) return fill(words.open(key), limitsIn(figuresOf(words.locale)));
  const tableKey = TABLE_KEYS.get(sentence);
  return tableKey === undefined ? (retellUnread(words, sentence) ?? sentence) : words.table(tableKey);
}

export const retellFields = (words: Words, errors: FieldErrors): FieldErrors =>
  Object.fromEntries(Object.entries(errors).map(([field, sentence]) => [field, retell(words, sentence)]));

/** What came of sending a photo, its remark in a client's words. */
export function retellPhoto(words: Words, sent: Result<PhotoView>): Result<PhotoView> {
  return sent.ok ? { ok: true, value: retellRemark(words, sent.value) } : retellResult(words, sent);
}
export const retellRemark = (words: Words, photo: PhotoView): PhotoView => ({ ...photo, remark: photo.remark && retell(words, photo.remark) });

/** What came of an operation, with what was refused said in a client's words. */
export function retellResult<R extends { ok: true } | Refusal>(words: Words, result: R): R {
  if (result.ok) return result;
  return { ...result, say: retell(words, result.say), ...(result.fields ? { fields: retellFields(words, result.fields) } : {}) };
}
