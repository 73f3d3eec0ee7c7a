"use client";
import { lazy, Suspense, useEffect, useRef, useState } from "react";
import type { Result } from "../../enquiry/caller";
import type { SpotMarks } from "../../enquiry/mark-schema";
import type { ClientSpots as Kept } from "../../enquiry/measured-views";
import type { PhotoView } from "../../enquiry/views";
import { UNSAID_PHOTO, type ShownKind } from "../../trade/questions";
import { useSay, type SayInBrowser } from "../browser-words";
import css from "./client-spots.module.css";

const Marker = lazy(() => import("./spot-marker").then((m) => ({ default: m.SpotMarker })));

/** Photos of the rug's face, the most telling first. */
const SHOW_A_CHANGE: readonly ShownKind[] = ["trouble", "whole", "pile", UNSAID_PHOTO];
/** Of these photos, those in which somebody may be asked for a change: of the trouble where there are any, else of the whole rug, else of its pile. */
export function photosOfChange<P extends Pick<PhotoView, "kind">>(photos: readonly P[]): readonly P[] {
  const kind = SHOW_A_CHANGE.find((k) => photos.some((p) => p.kind === k));
  return photos.filter((p) => p.kind === kind);
}

const namesIn = (say: SayInBrowser) => ({
  untouched: { name: say("spots.clean"), tag: say("spots.clean-tag") }, affected: { name: say("spots.changed"), tag: say("spots.changed-tag") },
});
const asksIn = (say: SayInBrowser) => ({ first: say("spots.first"), then: say("spots.then"), placed: say("spots.placed"), proposed: say("spots.proposed") });

export interface ClientSpotsProps {
  photo: PhotoView;
  /** What the photo shows. */
  alt: string;
  /** What the photo is called, where it does not stand just above. */
  name?: string;
  kept: Kept[string] | undefined;
  keep: (input: { id: string; photoId: string; marks: SpotMarks }) => Promise<Result<{ id: string }>>;
  takeBack: (measurementId: string) => Promise<Result<null>>;
  onChange: () => void;
}

/** "Touch a clean spot and the changed spot": optional, folded away, fetched when it is opened. No numbers: what they mean is for the letter. */
export function ClientSpots({ photo, alt, name, kept, keep, takeBack, onChange }: ClientSpotsProps) {
  const say = useSay();
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
    setSaid(answer.ok ? say("spots.taken-back") : answer.say);
    if (answer.ok) { setOwn(null); setRounds((n) => n + 1); onChange(); }
    status.current?.focus();
  };
  return (
    <details ref={fold} className={css.fold} onToggle={(e) => setIsOpen(e.currentTarget.open)}>
      <summary>
        {name && <img className={css.face} src={`/photos/${photo.id}/320`} alt="" width={photo.width} height={photo.height} loading="lazy" />}
        <span className={css.what}>{standing ? say("spots.shown") : <>{say("spots.show")} <small>{say("spots.if-you-like")}</small></>}{name && <small className={css.name}>{name}</small>}</span>
      </summary>
      {isOpen && (
        <Suspense fallback={<p className="small">{say("page.moment")}</p>}>
          <p className="small">{say("spots.helps")}</p>
          <Marker key={rounds} photo={photo} alt={alt} kept={rounds === 0 ? (kept?.marks ?? null) : null} names={namesIn(say)} asks={asksIn(say)} keepLabel={say(standing ? "spots.keep-now" : "spots.keep")} keep={send}
            beside={standing && <button type="button" className={css.plain} onClick={() => void back(standing.id)}>{say("spots.take-back")}</button>} />
        </Suspense>
      )}
      <p className={css.said} role="status" tabIndex={-1} ref={status}>{said}</p>
    </details>
  );
}
