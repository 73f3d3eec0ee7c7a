"use client";
import { useRouter } from "next/navigation";
import { useRef, useState, useTransition } from "react";
import { reach } from "@/app/(desk)/_parts/reach";
import { setAside } from "./actions";
import css from "./enquiry.module.css";

/** Puts an enquiry in its place that its words alone brought to the top; what came of it is said where it stood. */
export function SetAside({ enquiryId, why, isOffered }: { enquiryId: string; why: string; isOffered: boolean }) {
  const [said, setSaid] = useState("");
  const [isBusy, start] = useTransition();
  const status = useRef<HTMLParagraphElement>(null);
  const router = useRouter();
  const run = () => start(async () => {
    const result = await reach(() => setAside({ enquiryId, why }));
    setSaid(result.ok ? "Put in its place in the queue." : result.say);
    status.current?.focus();
    router.refresh();
  });
  return (
    <div className="no-print">
      {isOffered && (
        <p className={css.aside}>
          <span>It stands here for what they wrote, and nobody has answered that yet.</span>
          <button type="button" className="button quiet" disabled={isBusy} onClick={run}>I have read it: it can wait its turn</button>
        </p>
      )}
      <p ref={status} role="status" tabIndex={-1} className={css.said}>{said}</p>
    </div>
  );
}
