"use client";
import { useTransition } from "react";
import { reach } from "@/app/(desk)/_parts/reach";
import type { DraftView } from "@/lib/enquiry/draft-types";
import { takenIn } from "@/lib/reply/changes";
import { standBy } from "./actions";
import css from "./letter-desk.module.css";
import { Moved } from "./moved";
import { movedIn } from "./moved-in";
import type { Kept, Words } from "./use-draft";

/** Where the assessment moved after somebody wrote: each new wording can be taken in, the letter begun anew, or left as it is. */
export function MovedNote({ enquiryId, today, words, mayEdit, keep, swap, stood, refused }: {
  enquiryId: string; today: NonNullable<DraftView["today"]>; words: Words; mayEdit: boolean;
  keep: () => Promise<Kept>; swap: (next: Words) => void;
  /** Told the number of the revision that stays as it was written. */
  stood: (number: number) => void;
  refused: (why: { say: string; isConflict: boolean }) => void;
}) {
  const [isBusy, start] = useTransition();
  const moved = movedIn(today, words);
  if (!moved) return null;
  if (!mayEdit) return <Moved moved={moved} />;
  const leave = () => start(async () => {
    const kept = await keep();
    if (!("number" in kept)) return refused(kept);
    const result = await reach(() => standBy({ enquiryId, from: kept.number, mark: today.mark }));
    if (!result.ok) return refused({ say: result.say, isConflict: result.code === "changed-meanwhile" });
    stood(result.value.number);
  });
  return (
    <Moved moved={moved} take={(change) => swap({ ...words, text: takenIn(change, words.text) })} takeSubject={(subject) => swap({ ...words, subject })}>
      <div className={`${css.bar} no-print`}>
        <button type="button" className="button quiet" disabled={isBusy} onClick={leave}>I have looked: leave my words</button>
        <button type="button" className="button quiet" disabled={isBusy} onClick={() => swap(today.letter)}>Begin anew</button>
      </div>
    </Moved>
  );
}
