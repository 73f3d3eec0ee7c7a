"use client";
import { useRouter } from "next/navigation";
import { useState, useTransition } from "react";
import { reach } from "@/app/(desk)/_parts/reach";
import { isWaitingForUs } from "@/lib/enquiry/states";
import type { EnquiryView } from "@/lib/enquiry/views";
import { dayAndClock, type Place } from "@/lib/ui/time";
import { move } from "./actions";
import { Line } from "./moved";
import moved from "./moved.module.css";
import css from "./since.module.css";

/** That our last letter no longer holds, at what, and where it is not our turn the step that begins the letter which follows it. */
export function OutdatedLetter({ view: { id, state, outdated, may }, now, place }: { view: EnquiryView; now: string; place: Place }) {
  if (!outdated) return null;
  const { leftAt, changes } = outdated;
  const isOurs = isWaitingForUs(state);
  return (
    <section className={css.since} aria-label="Our letter no longer holds">
      <p className={css.why}><b>Our letter of {dayAndClock(leftAt, now, place)} no longer holds.</b> Since then a rug was judged anew, and the client still goes by what we wrote. {isOurs && "The letter below takes its place."}</p>
      {!isOurs && may.moveTo.includes("our_turn") && <WriteAgain enquiryId={id} from={state} />}
      <details className={css.outdated}>
        <summary>What it said, and would say now</summary>
        <ul className={moved.list}>{changes.map((c) => <Line key={`${c.of?.rug} ${c.was}${c.now}`} {...c} />)}</ul>
      </details>
    </section>
  );
}

function WriteAgain({ enquiryId, from }: { enquiryId: string; from: EnquiryView["state"] }) {
  const [refused, setRefused] = useState("");
  const [isBusy, start] = useTransition();
  const router = useRouter();
  const write = () => start(async () => {
    const result = await reach(() => move({ enquiryId, from, to: "our_turn" }));
    setRefused(result.ok ? "" : result.say);
    router.refresh();
  });
  return (
    <div className="no-print">
      <button type="button" className="button quiet" disabled={isBusy} onClick={write}>Write what follows it</button>
      <p className={`small ${css.turn}`}>It is our turn then, wherever this stands now.</p>
      <p role="status" className={css.refused}>{refused}</p>
    </div>
  );
}
