"use client";
import { useRouter } from "next/navigation";
import { useTransition, type ReactNode } from "react";
import { reach } from "@/app/(desk)/_parts/reach";
import type { EnquiryView } from "@/lib/enquiry/views";
import { DeskSheet } from "@/lib/ui/desk-sheet";
import { Enclosed } from "@/lib/ui/enclosed";
import { second } from "./actions";
import { Asked } from "./asked";
import { JUDGED_SINCE } from "./judged-since";
import { Moved } from "./moved";
import { movedIn } from "./moved-in";
import { enclosedOf } from "./enclosed-of";
import css from "./letter-desk.module.css";

/** What a trainee approved, waiting for somebody who may sign it. Changing it ends the waiting: then the words are new. */
export function SecondDesk({ view, waits: { by, asItIs }, draft, to, change, tell }: {
  view: EnquiryView; waits: NonNullable<EnquiryView["waitsForSecond"]>; draft: NonNullable<EnquiryView["draft"]>; to: ReactNode; change: () => void; tell: (say: string, focus?: boolean) => void;
}) {
  const router = useRouter();
  const [isBusy, start] = useTransition();
  const moved = draft.today && movedIn(draft.today, draft);
  const enclosed = enclosedOf(view);
  const overtaken = enclosed.filter((d) => d.judgedSince !== null).map((d) => ({ ...d, isSaid: asItIs.some((said) => said.documentId === d.id && said.judgedAt === d.judgedSince) }));
  const isOpen = moved !== null || overtaken.some((d) => !d.isSaid);
  const send = () => start(async () => {
    const result = await reach(() => second({ enquiryId: view.id, documents: enclosed.map((d) => d.id), heard: view.heard }));
    tell(result.ok ? "Approved by a second person." : result.say, true);
    router.refresh();
  });
  return (
    <>
      <p className={css.second}><bdi>{by}</bdi> approved this. {view.may.second ? "Read it, and send it if you would sign it." : "It waits for a second person."}</p>
      {view.asked && <Asked asked={view.asked} text={draft.text} />}
      {moved && <Moved moved={moved}>{view.may.edit && <p>It is sent once somebody has taken this in, or left the letter as it is: “Change it”.</p>}</Moved>}
      <DeskSheet to={to} subject={draft.subject} text={draft.text} label="The letter that waits" foot={enclosed.length > 0 && <Enclosed enclosures={enclosed} />} />
      {overtaken.map((d) => (
        <p key={d.id} className={css.stale}>
          <b><bdi>{d.title}</bdi>:</b> {JUDGED_SINCE} {d.isSaid ? <><bdi>{by}</bdi> sends it as it is.</> : view.may.edit && `It is sent once somebody has ${d.canMakeAnew ? "made it anew, " : ""}left it out, or said that it goes as it is: “Change it”.`}
        </p>
      ))}
      <div className={`${css.bar} ${css.stays} no-print`}>
        {view.may.second && !isOpen && <button type="button" className="button" disabled={isBusy} onClick={send}>{isBusy ? "One moment" : "Send it"}</button>}
        {view.may.edit && <button type="button" className="button quiet" disabled={isBusy} onClick={change}>Change it</button>}
      </div>
    </>
  );
}
