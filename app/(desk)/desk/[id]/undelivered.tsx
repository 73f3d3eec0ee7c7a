"use client";
import { Link } from "@/lib/ui/link";
import { useRouter } from "next/navigation";
import { useTransition } from "react";
import { reach } from "@/app/(desk)/_parts/reach";
import type { EnquiryView } from "@/lib/enquiry/views";
import { readOut } from "./actions";
import css from "./letter-desk.module.css";

const OURS = { acknowledgement: "acknowledgement", reply: "letter", question: "question" } as const;

/** A letter that did not reach the client: why, and what can be done about it. */
export function Undelivered({ view: { id, undelivered, client, may }, tell }: { view: EnquiryView; tell: (say: string, focus?: boolean) => void }) {
  if (!undelivered) return null;
  const { kind, to, says, isInDoubt, canBeReadOut, letterId } = undelivered;
  return (
    <div className={css.undelivered} role="group" aria-label="Not delivered">
      <p><b>Our {OURS[kind]} to <bdi>{to}</bdi> {isInDoubt ? "may not have arrived" : "could not be delivered"}.</b> <span dir="auto">{says}</span></p>
      {client.email === to ? <p className="no-print">{may.correctClient ? <Link href={`/desk/${id}/client`}>Correct the address</Link> : "Ask the owner or a reviewer to correct the address"}{client.telephone && <>, or ring <Ring telephone={client.telephone} /></>}.</p>
        : <p>The address has been corrected since{client.email && <>: what you send now goes to <bdi>{client.email}</bdi></>}.</p>}
      {canBeReadOut && <Rang letterId={letterId} tell={tell} />}
    </div>
  );
}

/** Somebody told the client what the letter says. */
function Rang({ letterId, tell }: { letterId: string; tell: (say: string, focus?: boolean) => void }) {
  const router = useRouter();
  const [isBusy, start] = useTransition();
  const rang = () => start(async () => {
    const result = await reach(() => readOut(letterId));
    tell(result.ok ? "Recorded: it was read out." : result.say, true);
    router.refresh();
  });
  return <p className="no-print"><button type="button" className="button quiet" disabled={isBusy} onClick={rang}>I rang and read it out</button></p>;
}

/** A telephone number to be rung. */
export const Ring = ({ telephone }: { telephone: string }) => <a href={`tel:${telephone.replace(/[^\d+]/g, "")}`}>{telephone}</a>;
