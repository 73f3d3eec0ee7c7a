"use client";
import { useRouter } from "next/navigation";
import { useState, useTransition } from "react";
import { reach } from "@/app/(desk)/_parts/reach";
import { takeBack } from "../[id]/actions";
import css from "./letters.module.css";

/** Takes a held letter back from the list. What went wrong is said beside it. */
export function TakeBack({ letterId, subject }: { letterId: string; subject: string }) {
  const [said, setSaid] = useState("");
  const [isBusy, start] = useTransition();
  const router = useRouter();
  const run = () => start(async () => {
    const result = await reach(() => takeBack(letterId));
    setSaid(result.ok ? "Taken back." : result.say);
    router.refresh();
  });
  return (
    <>
      <button type="button" className={css.plain} disabled={isBusy} onClick={run}>Take it back <span className="unseen">{subject}</span></button>
      <span role="status" className="small">{said}</span>
    </>
  );
}
