"use client";
import { lazy, Suspense, useEffect, useRef, useState } from "react";
import type { Refusal } from "../../enquiry/caller";
import type { SpotMarks } from "../../enquiry/mark-schema";
import type { ClientSpots as Kept, PhotoView } from "../../enquiry/views";
import { PHOTO_KINDS, type PhotoKind } from "../../trade/questions";
import css from "./client-spots.module.css";

const Marker = lazy(() => import("./spot-marker").then((m) => ({ default: m.SpotMarker })));

/** Photos of the rug's face, the most telling first. */
const SHOW_A_CHANGE: readonly PhotoKind[] = ["trouble", "whole", "pile"];
/** Of these photos, those in which somebody may be asked for a change: of the trouble where there are any, else of the whole rug, else of its pile. */
export function photosOfChange<P extends Pick<PhotoView, "kind">>(photos: readonly P[]): readonly P[] {
  const kind = SHOW_A_CHANGE.find((k) => photos.some((p) => p.kind === k));
  return photos.filter((p) => p.kind === kind);
}

const NAMES = { untouched: { name: "Clean spot", tag: "clean" }, affected: { name: "Changed spot", tag: "changed" } } as const;
const ASKS = {
  first: "Touch a clean spot first, then the changed one.",
  then: "Thank you. Now the changed spot.",
  placed: "Move either of them until it lies where it should.",
  proposed: "Are these two right? Say yes, or touch the photo where they should be: the clean spot first.",
} as const;

export interface ClientSpotsProps {
  photo: PhotoView;
  kept: Kept[string] | undefined;
  keep: (input: { id: string; photoId: string; marks: SpotMarks }) => Promise<{ ok: true } | Refusal>;
  takeBack: (measurementId: string) => Promise<{ ok: true } | Refusal>;
  onChange: () => void;
}

/** "Touch a clean spot and the changed spot": optional, folded away, fetched when it is opened. No numbers: what they mean is for the letter. */
export function ClientSpots({ photo, kept, keep, takeBack, onChange }: ClientSpotsProps) {
  const fold = useRef<HTMLDetailsElement>(null);
  const [isOpen, setIsOpen] = useState(false);
  const [said, setSaid] = useState("");
  // Opened before the page was ready, it stays open.
  useEffect(() => setIsOpen(fold.current?.open === true), []);
  const tell = (answer: { ok: true } | Refusal, words: string) => {
    setSaid(answer.ok ? words : answer.say);
    if (answer.ok) onChange();
    return answer;
  };
  const send = async (marks: SpotMarks) => tell(await keep({ id: crypto.randomUUID(), photoId: photo.id, marks }), "");
  return (
    <details ref={fold} className={css.fold} onToggle={(e) => setIsOpen(e.currentTarget.open)}>
      <summary>{kept ? "You showed us a clean and a changed spot" : "Show us a clean and a changed spot"} <small>if you like</small></summary>
      {isOpen && (
        <Suspense fallback={<p className="small">One moment…</p>}>
          <p className="small">It helps us see how far the colour has changed. You can leave it out.</p>
          <Marker key={kept?.id ?? "fresh"} photo={photo} alt={PHOTO_KINDS[photo.kind].ask} kept={kept?.marks ?? null} names={NAMES} asks={ASKS} keepLabel="Keep these two" keep={send}
            beside={kept && <button type="button" className={css.plain} onClick={() => void takeBack(kept.id).then((answer) => tell(answer, "They are taken back."))}>Take them back</button>} />
        </Suspense>
      )}
      <p className={css.said} role="status">{said}</p>
    </details>
  );
}
