"use client";
import { useRouter } from "next/navigation";
import { useEffect, useRef, useTransition, type ReactNode } from "react";
import { reach } from "@/app/(desk)/_parts/reach";
import type { EnquiryView, LetterView } from "@/lib/enquiry/views";
import { DeskSheet } from "@/lib/ui/desk-sheet";
import { Enclosed } from "@/lib/ui/enclosed";
import { giveUp, notReadOut, readOut, takeBack } from "./actions";
import css from "./letter-desk.module.css";
import { newestOfOurs } from "./letter-in-short";
import { useOnceAt } from "./reply-desk";
import { Ring } from "./undelivered";

/** The newest letter of ours where nothing is being written: held, sent, or not sent and why. */
export function Gone({ view, to, when, children, tell, isApprovedNow }: {
  view: EnquiryView; to: ReactNode; when: Readonly<Record<string, string>>; children: ReactNode; tell: (say: string, focus?: boolean) => void;
  /** It was approved a moment ago, on this page: the person is brought to where it stands, and can be taken back. */
  isApprovedNow: boolean;
}) {
  const letter = newestOfOurs(view.letters);
  const router = useRouter();
  const [isBusy, start] = useTransition();
  const stands = useRef<HTMLDivElement>(null);
  useEffect(() => { if (isApprovedNow) stands.current?.focus(); }, [isApprovedNow]);
  useOnceAt(letter?.state === "held" ? letter.notBefore : (letter?.readOutUntil ?? null), router.refresh);
  /** `stays`: the letter stands here still, with what can be done about it; whoever pressed is left where that is. */
  const run = (call: () => ReturnType<typeof takeBack>, say: string, stays = false) => start(async () => {
    const result = await reach(call);
    const isBrought = result.ok && stays;
    tell(result.ok ? say : result.say, !isBrought);
    if (isBrought) stands.current?.focus();
    router.refresh();
  });
  if (!letter) return <div className={css.empty}><p>No letter is being written.</p><div className={css.bar}>{children}</div></div>;
  return (
    <>
      {/* Above the letter, side by side: a long one reaches below the window, and there are minutes to take it back. */}
      <div ref={stands} tabIndex={-1} className={css.stands} role="group" aria-label="Where the letter stands">
        <Stands letter={letter} when={when[letter.id]} telephone={view.client.telephone} />
      </div>
      <div className={`${css.bar} ${css.above} no-print`}>
        {letter.isToBeReadOut && <button type="button" className="button" disabled={isBusy} onClick={() => run(() => readOut(letter.id), "Recorded. It is their turn now.", true)}>I rang and read it out</button>}
        {letter.readOutUntil && <button type="button" className="button quiet" disabled={isBusy} onClick={() => run(() => notReadOut(letter.id), letter.to ? "Taken back. The letter stands as it did before." : "Taken back. The letter is still to be read out.", true)}>It was not read out</button>}
        {letter.canGiveUp && letter.nextTry && <button type="button" className="button quiet" disabled={isBusy} onClick={() => run(() => readOut(letter.id), "Recorded. It is not sent any more.", true)}>I rang and read it out</button>}
        {letter.canGiveUp && <button type="button" className="button quiet" disabled={isBusy} onClick={() => run(() => giveUp(letter.id), "Given up. It is not tried again; its words are here, to be changed or sent anew.")}>Do not try it again</button>}
        {letter.canTakeBack && <button type="button" className="button quiet" disabled={isBusy} onClick={() => run(() => takeBack(letter.id), "Taken back. It has not left, and can be changed.")}>Take it back</button>}
        {children}
        <a href={`/desk/letters/${letter.id}/eml`} download>Read as .eml</a>
      </div>
      <DeskSheet to={to} subject={letter.subject} text={letter.text} label={letter.kind === "question" ? "Question" : "Reply"} foot={letter.enclosures.length > 0 && <Enclosed enclosures={letter.enclosures} />} />
    </>
  );
}

function Stands({ letter, when, telephone }: { letter: LetterView; when: string | undefined; telephone: string | null }) {
  return <><b>{letter.says}</b>{letter.isToBeReadOut ? telephone && <> <Ring telephone={telephone} />.</> : when && <> {when}</>}{letter.canGiveUp && telephone && <> Or ring <Ring telephone={telephone} />.</>}{letter.approvedBy && <small> Approved by <bdi>{letter.approvedBy}</bdi>.</small>}</>;
}
