"use client";
import { useRouter } from "next/navigation";
import { useCallback, useRef, useState, type ReactNode } from "react";
import type { ChosenTime } from "@/lib/enquiry/send-at";
import type { EnquiryView } from "@/lib/enquiry/views";
import { DeskSheet } from "@/lib/ui/desk-sheet";
import { AskDesk } from "./ask-desk";
import css from "./letter-desk.module.css";
import { Gone } from "./gone";
import { ReplyDesk } from "./reply-desk";
import { letterInShort } from "./letter-in-short";
import { SecondDesk } from "./second-desk";
import { Undelivered } from "./undelivered";
import type { Words } from "./use-draft";
import { WAITS } from "./use-sending";

/**
 * The letter beside the evidence. One of: a reply being written, a question being written, a trainee's letter waiting
 * for a second person, or the last letter that left. What came of an action is said in one place that stays.
 */
export function LetterDesk({ view, since, question, to, tomorrow, mailNote, when }: {
  view: EnquiryView;
  /** What came since our last letter, and while it was held. */
  since: ReactNode;
  /** What "Ask for more" begins with. */
  question: { subject: string; text: string };
  to: ReactNode;
  /** What stands in the fields of a chosen time. */
  tomorrow: ChosenTime;
  /** Why an approved letter would not leave by itself, or how long it is held. */
  mailNote: string;
  /** When each letter leaves or is tried again, in the workshop's words, by letter id. */
  when: Readonly<Record<string, string>>;
}) {
  const [asking, setAsking] = useState(false);
  const [said, setSaid] = useState("");
  const [isApprovedNow, setApprovedNow] = useState(false);
  // What had come back by the time a letter was approved; null: nothing had.
  const [backThen, setBackThen] = useState<string | null>(null);
  // Words of a reply that could not be kept: they stay to be copied, also where the draft is gone.
  const [unkept, setUnkept] = useState<Words | null>(null);
  const status = useRef<HTMLParagraphElement>(null);
  const router = useRouter();
  const tell = useCallback((say: string, focus = false) => {
    setSaid(say);
    setApprovedNow(false);
    if (focus) status.current?.focus();
  }, []);
  const back = cameBack(view);
  const approved = useCallback((say: string) => {
    setSaid(say);
    setApprovedNow(true);
    setBackThen(back);
  }, [back]);
  // A letter that came back since it was approved here is not told of as approved any more.
  const isOver = isApprovedNow && back !== null && back !== backThen;
  const asked = (say: string) => {
    setAsking(false);
    if (say === WAITS) tell(say, true);
    else approved(say);
    router.refresh();
  };
  const askButton = view.may.ask && <button type="button" className="button quiet" onClick={() => { setAsking(true); tell(""); }}>Ask for more</button>;
  return (
    <section id="letter" className={css.desk} aria-label="The letter">
      <h2 className="unseen">The letter</h2>
      <Undelivered view={view} tell={tell} />
      {since}
      <div hidden={asking}>
        <Sheet view={view} to={to} tomorrow={tomorrow} when={when} tell={tell} unkept={setUnkept} approved={approved} isApprovedNow={isApprovedNow}>{askButton}</Sheet>
      </div>
      {asking && <AskDesk view={view} begin={question} to={to} done={asked} back={() => setAsking(false)} tell={tell} />}
      <p ref={status} role="status" tabIndex={-1} className={css.said}>{isOver ? letterInShort(view) : said}</p>
      {unkept && !view.draft && <Unkept words={unkept} to={to} away={() => setUnkept(null)} />}
      {mailNote && <p className={`small ${css.note}`}>{mailNote}</p>}
    </section>
  );
}

/** Names what came back to us of what had been approved: a letter that did not arrive, or was held back since its client wrote or its rug was judged anew. null: nothing. */
const cameBack = ({ undelivered, meanwhile }: EnquiryView): string | null => undelivered?.letterId ?? (meanwhile?.isHeldBack ? meanwhile.approvedAt : null);

/** The sheet that belongs on the desk as the enquiry stands. */
function Sheet({ view, to, tomorrow, when, tell, unkept, approved, isApprovedNow, children }: {
  view: EnquiryView; to: ReactNode; tomorrow: ChosenTime; when: Readonly<Record<string, string>>; tell: (say: string, focus?: boolean) => void; unkept: (words: Words | null) => void;
  approved: (say: string) => void; isApprovedNow: boolean; children: ReactNode;
}) {
  const [changing, setChanging] = useState<number | null>(null);
  const { draft, waitsForSecond } = view;
  if (!draft) return <Gone view={view} to={to} when={when} tell={tell} isApprovedNow={isApprovedNow}>{children}</Gone>;
  if (waitsForSecond && changing !== draft.number) {
    return <SecondDesk view={view} waits={waitsForSecond} draft={draft} to={to} change={() => setChanging(draft.number)} tell={tell} />;
  }
  return <ReplyDesk view={view} draft={draft} to={to} tomorrow={tomorrow} tell={tell} unkept={unkept} approved={approved}>{children}</ReplyDesk>;
}

/** What was written while somebody else sent the letter: nobody has it but this page. */
function Unkept({ words, to, away }: { words: Words; to: ReactNode; away: () => void }) {
  return (
    <div className={css.theirs} role="group" aria-label="What you wrote">
      <p><b>What you wrote was not kept and not sent.</b> Copy from it what you need.</p>
      <DeskSheet to={to} subject={words.subject} text={words.text} label="What you wrote" />
      <div className={css.bar}><button type="button" className="button quiet" onClick={away}>I do not need it</button></div>
    </div>
  );
}
