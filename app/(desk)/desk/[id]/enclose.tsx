"use client";
import { useRouter } from "next/navigation";
import { useOptimistic, useState, useTransition } from "react";
import { reach } from "@/app/(desk)/_parts/reach";
import { enclose } from "./actions";
import css from "./enclose.module.css";

/** Whether a document goes with the reply that is being written. */
export function Enclose({ documentId, isEnclosed, title }: { documentId: string; isEnclosed: boolean; title: string }) {
  const [said, setSaid] = useState("");
  const [, start] = useTransition();
  const [isIn, show] = useOptimistic(isEnclosed);
  const router = useRouter();
  const change = (to: boolean) => start(async () => {
    show(to);
    const result = await reach(() => enclose({ documentId, isEnclosed: to }));
    setSaid(result.ok ? (to ? "It goes with the letter." : "Taken from the letter.") : result.say);
    router.refresh();
  });
  return (
    <div className={`${css.enclose} no-print`}>
      <label><input type="checkbox" checked={isIn} onChange={(e) => change(e.target.checked)} /> Goes with the letter<span className="unseen">: {title}</span></label>
      <span role="status" className="small">{said}</span>
    </div>
  );
}
