import { Link } from "./link";
import type { QueueView, Slip as SlipView, UrgencyId } from "../enquiry/views";
import { countInWords, sentenceCase } from "./figures";
import { Slips } from "./slip";
import { dayAndClock, type Place } from "./time";
import css from "./queue.module.css";

/** What waiting costs, in the order of the queue. */
export const WAITING_COSTS: Record<UrgencyId, string> = {
  hours: "Loses by the hour", two_days: "Today", a_week: "This week", can_wait: "Can wait",
};
const ORDER = Object.keys(WAITING_COSTS) as UrgencyId[];

/** The morning's queue, grouped by what waiting costs; within a group as the server ordered it. */
export function Queue({ view, now, place }: { view: QueueView; now: string; place: Place }) {
  const groups = ORDER.map((urgency) => ({ urgency, slips: view.waiting.filter((s) => s.urgency === urgency) })).filter((g) => g.slips.length > 0);
  return (
    <>
      <div className={css.when}>
        <h1>{waitingForUs(view.waiting.length)}</h1>
        <span className="small">{newSince(view, now, place)}</span>
      </div>
      <LettersNote letters={view.letters} />
      {view.post > 0 && <p className={css.note}>{postInWords(view.post)}{view.readFirst && <strong dir="auto"> {view.readFirst}</strong>} <Link href="/desk/post">Open the Post</Link></p>}
      {groups.map((g) => <Group key={g.urgency} {...g} now={now} place={place} />)}
      {groups.length === 0 && <Nobody />}
    </>
  );
}

function Group({ urgency, slips, now, place }: { urgency: UrgencyId; slips: SlipView[]; now: string; place: Place }) {
  return (
    <section aria-labelledby={`when-${urgency}`}>
      <div className={css.when}><h2 id={`when-${urgency}`}>{WAITING_COSTS[urgency]}</h2><span className="small num">{slips.length}</span></div>
      <Slips slips={slips} now={now} place={place} as="h3" />
    </section>
  );
}

function Nobody() {
  return (
    <div className={css.nobody}>
      <p>Everything that came has had its answer, or waits for somebody else. What comes in next appears here by itself.</p>
      <p><Link href="/desk/everything">Look through everything</Link> or <Link href="/desk/telephone">enter an enquiry taken by telephone</Link>.</p>
    </div>
  );
}

/** "Eleven waiting for us". */
export const waitingForUs = (n: number): string => (n === 0 ? "Nobody is waiting for us" : `${sentenceCase(countInWords(n))} waiting for us`);

function newSince({ newSince: { count, since }, waiting }: QueueView, now: string, place: Place): string {
  if (waiting.length === 0) return "";
  const when = dayAndClock(since, now, place);
  return count === 0 ? `none of them came since ${when}` : `${countInWords(count)} came since ${when}`;
}

/** Letters that have not left: said at the head of the day, in a sentence each. */
function LettersNote({ letters }: { letters: QueueView["letters"] }) {
  const says = lettersInWords(letters);
  if (says.length === 0) return null;
  return <p className={css.note}>{says.join(" ")} <Link href="/desk/letters">See the letters</Link></p>;
}

/** What waits in the Post for somebody to say where it belongs. */
export const postInWords = (n: number): string => `${sentenceCase(countInWords(n))} ${n === 1 ? "message waits" : "messages wait"} in the Post.`;

/** What there is to say about letters that have not left; nothing when all have. */
export function lettersInWords({ notSent, failed, unknown, mailConfigured }: QueueView["letters"]): string[] {
  const letters = (n: number): string => `${sentenceCase(countInWords(n))} ${n === 1 ? "letter" : "letters"}`;
  const says: string[] = [];
  if (!mailConfigured) {
    says.push(notSent === 0 ? "No mail server is set up: letters will wait here and can be read as .eml."
      : `No mail server is set up: ${countInWords(notSent)} ${notSent === 1 ? "letter waits" : "letters wait"} here, not sent.`);
  } else if (notSent > 0) says.push(`${letters(notSent)} not sent yet.`);
  if (failed > 0) says.push(`${letters(failed)} could not be delivered.`);
  if (unknown > 0) says.push(`${letters(unknown)} may or may not have arrived.`);
  return says;
}
