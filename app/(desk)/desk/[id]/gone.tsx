"use client";
import { useRouter } from "next/navigation";
import { useTransition, type ReactNode } from "react";
import { reach } from "@/app/(desk)/_parts/reach";
import type { EnquiryView, LetterView } from "@/lib/enquiry/views";
import { DeskSheet } from "@/lib/ui/desk-sheet";
import { Enclosed } from "@/lib/ui/enclosed";
import { takeBack } from "./actions";
import css from "./letter-desk.module.css";
import { newestOfOurs } from "./letter-in-short";
import { useOnceAt } from "./reply-desk";

/** The newest letter of ours where nothing is being written: held, sent, or not sent and why. */
export function Gone({ view, to, when, children, tell }: {
  view: EnquiryView; to: ReactNode; when: Readonly<Record<string, string>>; children: ReactNode; tell: (say: string, focus?: boolean) => void;
}) {
  const letter = newestOfOurs(view.letters);
  const router = useRouter();
  const [isBusy, start] = useTransition();
  useOnceAt(letter?.state === "held" ? letter.notBefore : null, router.refresh);
  const run = (call: () => ReturnType<typeof takeBack>, say: string) => start(async () => {
    const result = await reach(call);
    tell(result.ok ? say : result.say, true);
    router.refresh();
  });
  if (!letter) return <div className={css.empty}><p>No letter is being written.</p><div className={css.bar}>{children}</div></div>;
  return (
    <>
      {/* Above the letter: a long one reaches below the window, and there are minutes to take it back. */}
      <div className={`${css.bar} ${css.above} no-print`}>
        {letter.canTakeBack && <button type="button" className="button quiet" disabled={isBusy} onClick={() => run(() => takeBack(letter.id), "Taken back. It has not left, and can be changed.")}>Take it back</button>}
        {children}
        <a href={`/desk/letters/${letter.id}/eml`} download>Read as .eml</a>
      </div>
      <DeskSheet to={to} subject={letter.subject} text={letter.text} label={letter.kind === "question" ? "Question" : "Reply"} foot={<Foot letter={letter} when={when[letter.id]} />} />
    </>
  );
}

function Foot({ letter, when }: { letter: LetterView; when: string | undefined }) {
  return <><b>{letter.says}</b>{when && <> {when}</>}{letter.approvedBy && <small> Approved by <bdi>{letter.approvedBy}</bdi>.</small>}<Enclosed enclosures={letter.enclosures} /></>;
}
