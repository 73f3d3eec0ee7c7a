"use client";
import { lazy, Suspense, useEffect, useRef, useState } from "react";
import type { Result } from "../../enquiry/caller";
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
  keep: (input: { id: string; photoId: string; marks: SpotMarks }) => Promise<Result<{ id: string }>>;
  takeBack: (measurementId: string) => Promise<Result<null>>;
  onChange: () => void;
}

/** "Touch a clean spot and the changed spot": optional, folded away, fetched when it is opened. No numbers: what they mean is for the letter. */
export function ClientSpots({ photo, kept, keep, takeBack, onChange }: ClientSpotsProps) {
  const fold = useRef<HTMLDetailsElement>(null);
  const status = useRef<HTMLParagraphElement>(null);
  const [isOpen, setIsOpen] = useState(false);
  // What was kept or taken back on this page holds before the page is read again.
  const [own, setOwn] = useState<{ id: string } | null | undefined>(undefined);
  const [rounds, setRounds] = useState(0);
  const [said, setSaid] = useState("");
  const standing = own === undefined ? kept : own;
  // Opened before the page was ready, it stays open.
  useEffect(() => setIsOpen(fold.current?.open === true), []);
  const send = async (marks: SpotMarks) => {
    const answer = await keep({ id: crypto.randomUUID(), photoId: photo.id, marks });
    setSaid("");
    if (answer.ok) { setOwn(answer.value); onChange(); }
    return answer;
  };
  const back = async (id: string) => {
    const answer = await takeBack(id);
    setSaid(answer.ok ? "They are taken back." : answer.say);
    if (answer.ok) { setOwn(null); setRounds((n) => n + 1); onChange(); }
    status.current?.focus();
  };
  return (
    <details ref={fold} className={css.fold} onToggle={(e) => setIsOpen(e.currentTarget.open)}>
      <summary>{standing ? "You showed us a clean and a changed spot" : <>Show us a clean and a changed spot <small>if you like</small></>}</summary>
      {isOpen && (
        <Suspense fallback={<p className="small">One moment…</p>}>
          <p className="small">It helps us see how far the colour has changed. You can leave it out.</p>
          <Marker key={rounds} photo={photo} alt={PHOTO_KINDS[photo.kind].ask} kept={rounds === 0 ? (kept?.marks ?? null) : null} names={NAMES} asks={ASKS} keepLabel={standing ? "Keep as they are now" : "Keep these two"} keep={send}
            beside={standing && <button type="button" className={css.plain} onClick={() => void back(standing.id)}>Take them back</button>} />
        </Suspense>
      )}
      <p className={css.said} role="status" tabIndex={-1} ref={status}>{said}</p>
    </details>
  );
}
