"use client";
import { useRouter } from "next/navigation";
import { useState, useTransition } from "react";
import { reach } from "@/app/(desk)/_parts/reach";
import type { Result } from "@/lib/enquiry/caller";
import { disown, own, takeOut } from "./actions";
import css from "./since.module.css";

function useDecision() {
  const [said, setSaid] = useState("");
  const [isBusy, start] = useTransition();
  const router = useRouter();
  const decide = (call: () => Promise<Result<null>>, then: () => void = router.refresh) => start(async () => {
    const result = await reach(call);
    setSaid(result.ok ? "" : result.say);
    if (result.ok) then();
    else router.refresh();
  });
  return { said, isBusy, decide, router };
}

/** A person says whose a message from an address we do not know is: the client's own, or none of this enquiry's, and then where it belongs is asked in the Post. */
export function WhoseMessage({ postId, name }: { postId: string; name: string }) {
  const { said, isBusy, decide, router } = useDecision();
  return (
    <div className={`${css.own} no-print`}>
      <button type="button" className="button quiet" disabled={isBusy} onClick={() => decide(() => own(postId))}>It is <bdi>{name}</bdi>’s own</button>
      <button type="button" className="button quiet" disabled={isBusy} onClick={() => decide(() => takeOut(postId), () => router.push(`/desk/post/${postId}`))}>It belongs elsewhere</button>
      <span role="status" className="small">{said}</span>
    </div>
  );
}

/** Takes back that it is the client's own. */
export function NotTheirs({ postId, name }: { postId: string; name: string }) {
  const { said, isBusy, decide } = useDecision();
  return (
    <div className={`${css.own} no-print`}>
      <button type="button" className="button quiet" disabled={isBusy} onClick={() => decide(() => disown(postId))}>It is not <bdi>{name}</bdi>’s own</button>
      <span role="status" className="small">{said}</span>
    </div>
  );
}
