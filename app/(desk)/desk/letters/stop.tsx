"use client";
import { useRouter } from "next/navigation";
import { useState, useTransition } from "react";
import { reach } from "@/app/(desk)/_parts/reach";
import { giveUp, takeBack } from "../[id]/actions";
import css from "./letters.module.css";

const DEEDS = {
  "take-back": { does: takeBack, name: "Take it back", done: "Taken back." },
  "give-up": { does: giveUp, name: "Do not try it again", done: "Given up: its words are at the enquiry." },
} as const;

/** Takes a held letter back from the list, or gives one up that did not get through. What went wrong is said beside it. */
export function Stop({ letterId, subject, deed }: { letterId: string; subject: string; deed: keyof typeof DEEDS }) {
  const { does, name, done } = DEEDS[deed];
  const [said, setSaid] = useState("");
  const [isBusy, start] = useTransition();
  const router = useRouter();
  const run = () => start(async () => {
    const result = await reach(() => does(letterId));
    setSaid(result.ok ? done : result.say);
    router.refresh();
  });
  return (
    <>
      <button type="button" className={css.plain} disabled={isBusy} onClick={run}>{name} <span className="unseen">{subject}</span></button>
      <span role="status" className="small">{said}</span>
    </>
  );
}
