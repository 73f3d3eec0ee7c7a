import { Link } from "@/lib/ui/link";
import { staffCallerOrRedirect } from "@/app/_server/caller";
import { readLetters, type LetterOfEnquiry } from "@/lib/enquiry/read-letters";
import type { LetterStateId } from "@/lib/enquiry/views";
import { nextTryInWords } from "@/lib/ui/next-try";
import { dayAndClock, type Place } from "@/lib/ui/time";
import { readSettings } from "@/lib/workshop/settings";
import { Refused } from "../../_parts/refused";
import { Stop } from "./stop";
import css from "./letters.module.css";

export const metadata = { title: "Letters" };

/** The outbox in the order of what it asks of us. */
const GROUPS: { states: LetterStateId[]; name: string; says: string }[] = [
  { states: ["failed"], name: "Could not be delivered", says: "Correct the address, or ring them." },
  { states: ["unknown"], name: "May or may not have arrived", says: "The connection broke before the other side had answered." },
  { states: ["held"], name: "Held", says: "Approved; can still be taken back." },
  { states: ["waiting", "sending"], name: "Waiting to leave", says: "Not sent yet." },
];

export default async function Page() {
  const caller = await staffCallerOrRedirect();
  const now = new Date();
  const [letters, settings] = await Promise.all([readLetters(caller, now), readSettings()]);
  if (!letters.ok) return <Refused refusal={letters} />;
  const { notGone, gone, mailConfigured } = letters.value;
  const show = { now: now.toISOString(), place: settings };
  return (
    <>
      <h1>Letters</h1>
      {!mailConfigured && <p className={css.note}>No mail server is set up. Approved letters wait here, not sent, and can be read as .eml. The README says how to set one up.</p>}
      {notGone.every((l) => l.isReplaced) && <p className={css.none}>No letter is waiting to leave.</p>}
      <Group name="Failed at an address that was corrected since" says="Open the enquiry and approve the letter again: it goes to the address that stands there now." letters={notGone.filter((l) => l.isCorrected && !l.isReplaced)} {...show} />
      {GROUPS.map((g) => <Group key={g.name} name={g.name} says={g.says} letters={notGone.filter((l) => g.states.includes(l.letter.state) && !l.isReplaced && !l.isCorrected)} {...show} />)}
      <Group name="Written anew" says="They could not be delivered, and a newer letter has taken their place." letters={notGone.filter((l) => l.isReplaced)} {...show} />
      <Group name="Sent" says="Taken over by the mail server, or read out on the telephone." letters={gone} {...show} />
    </>
  );
}

interface Show { now: string; place: Place }

function Group({ name, says, letters, now, place }: { name: string; says: string; letters: LetterOfEnquiry[] } & Show) {
  if (letters.length === 0) return null;
  const byPeople = letters.filter((l) => l.letter.kind !== "acknowledgement");
  const automatic = letters.filter((l) => l.letter.kind === "acknowledgement");
  return (
    <section className={css.group}>
      <h2>{name} <small className="num">{letters.length}</small></h2>
      <p className="small">{says}</p>
      <Written letters={byPeople} now={now} place={place} />
      {automatic.length > 0 && (
        <details className={css.automatic} open={byPeople.length === 0 && automatic.length <= FEW}>
          <summary>{automatic.length} {automatic.length === 1 ? "acknowledgement" : "acknowledgements"}, written by the program</summary>
          <Written letters={automatic} now={now} place={place} />
        </details>
      )}
    </section>
  );
}

/** Acknowledgements are folded when there are more. */
const FEW = 5;

function Written({ letters, now, place }: { letters: LetterOfEnquiry[] } & Show) {
  if (letters.length === 0) return null;
  return <ul className={css.list}>{letters.map((l) => <Letter key={l.letter.id} item={l} now={now} place={place} />)}</ul>;
}

const KINDS = { acknowledgement: "Acknowledgement", reply: "Reply", question: "Question" } as const;

function Letter({ item: { letter: l, ...of }, now, place }: { item: LetterOfEnquiry } & Show) {
  return (
    <li className={css.letter}>
      <div className={css.what}>
        <Link href={`/desk/${of.enquiryId}`} dir="auto">{l.subject}</Link>
        <small>{KINDS[l.kind]} to <bdi>{of.toName}</bdi>{l.to && <>, <bdi>{l.to}</bdi></>} · <span className={`num ${css.reference}`}>{of.reference}</span></small>
      </div>
      <div className={css.stands}>
        <span dir="auto">{l.says}</span>{l.state === "held" && ` Until ${dayAndClock(l.notBefore, now, place)}.`} {nextTryInWords(l, now, place)}
        {l.approvedBy && <small>Approved by <bdi>{l.approvedBy}</bdi></small>}
      </div>
      <time dateTime={l.sentAt ?? l.createdAt} className="small num">{dayAndClock(l.sentAt ?? l.createdAt, now, place)}</time>
      <div className={css.does}>
        <a href={`/desk/letters/${l.id}/eml`} download>.eml<span className="unseen"> of {l.subject}</span></a>
        {(l.canTakeBack || l.canGiveUp) && <Stop letterId={l.id} subject={l.subject} deed={l.canTakeBack ? "take-back" : "give-up"} />}
      </div>
    </li>
  );
}
