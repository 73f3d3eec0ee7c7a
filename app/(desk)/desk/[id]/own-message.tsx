"use client";
import { useRouter } from "next/navigation";
import { useState, useTransition } from "react";
import { reach } from "@/app/(desk)/_parts/reach";
import { own } from "./actions";
import css from "./since.module.css";

/** A person says that a message from an address we do not know is the client's own: it then stands on their page as theirs, with its photos. */
export function OwnMessage({ postId, name }: { postId: string; name: string }) {
  const [said, setSaid] = useState("");
  const [isBusy, start] = useTransition();
  const router = useRouter();
  const run = () => start(async () => {
    const result = await reach(() => own(postId));
    setSaid(result.ok ? "" : result.say);
    router.refresh();
  });
  return (
    <div className={`${css.own} no-print`}>
      <button type="button" className="button quiet" disabled={isBusy} onClick={run}>It is <bdi>{name}</bdi>’s own</button>
      <span role="status" className="small">{said}</span>
    </div>
  );
}
