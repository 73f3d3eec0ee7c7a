"use client";
import { useRouter } from "next/navigation";
import { useState, useTransition } from "react";
import { reach } from "@/app/(desk)/_parts/reach";
import { enclose } from "./actions";
import css from "./enclose.module.css";

/** Whether a document goes with the reply that is being written. */
export function Enclose({ documentId, isEnclosed, title }: { documentId: string; isEnclosed: boolean; title: string }) {
  const [said, setSaid] = useState("");
  const [isBusy, start] = useTransition();
  const router = useRouter();
  const change = () => start(async () => {
    const result = await reach(() => enclose({ documentId, isEnclosed: !isEnclosed }));
    setSaid(result.ok ? (isEnclosed ? "Taken from the letter." : "It goes with the letter.") : result.say);
    router.refresh();
  });
  return (
    <div className={`${css.enclose} no-print`}>
      <label><input type="checkbox" checked={isEnclosed} disabled={isBusy} onChange={change} /> Goes with the letter<span className="unseen">: {title}</span></label>
      <span role="status" className="small">{said}</span>
    </div>
  );
}
