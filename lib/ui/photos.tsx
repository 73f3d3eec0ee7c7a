"use client";
import { Link } from "./link";
import { useRef, useState } from "react";
import type { MeasurementView } from "../enquiry/measured-views";
import type { PhotoView, UnopenedView } from "../enquiry/views";
import { shownAs } from "../trade/questions";
import { PlanOutline } from "./marking/plan-outline";
import { SpotOutline } from "./marking/spot-outline";
import css from "./photos.module.css";

/**
 * A rug's photos, small; one at a time large in a dialog. Without script each is a link to the large picture.
 * The first is shown twice as wide: the whole rug or the trouble, as the client put it first. A label is shown to its edges: its words reach that far. What was marked is drawn on
 * each; below `measureAt` lies the page where one is measured. `blur`: where the page lies on which a photo, by its id, is
 * blurred in part; null for those who may not. `unopened`: what came as photos and could not be opened, each with its message to save.
 */
export function Photos({ photos, unopened, rug, measured, measureAt, blur }: { photos: PhotoView[]; unopened: UnopenedView[]; rug: string; measured: readonly MeasurementView[]; measureAt: string; blur: string | null }) {
  const dialog = useRef<HTMLDialogElement>(null);
  const [at, setAt] = useState(0);
  if (photos.length === 0) return unopened.length > 0 ? <Unopened photos={unopened} /> : <p className={css.none}>No photo was sent.</p>;
  const open = (i: number) => {
    setAt(i);
    dialog.current?.showModal();
  };
  return (
    <>
      <ul className={css.photos}>
        {photos.map((p, i) => (
          <li key={p.id} className={p.kind === "label" ? css.label : undefined}>
            <figure>
              <a href={`/photos/${p.id}/1600`} aria-label={`${nameOf(p)}, open large`} onClick={(e) => { e.preventDefault(); open(i); }}>
                <img src={`/photos/${p.id}/320`} srcSet={`/photos/${p.id}/320 320w, /photos/${p.id}/1600 1600w`} sizes={i === 0 ? "(min-width: 64rem) 22rem, 60vw" : "11rem"}
                  alt={`${nameOf(p)} of ${rug}`} width={p.width} height={p.height} loading={i < 3 ? "eager" : "lazy"} decoding="async" />
                <Marks photo={p} measured={measured.filter((m) => m.photoId === p.id)} fit={p.kind === "label" ? "meet" : "slice"} />
              </a>
              <figcaption>{nameOf(p).split(",")[0]} <Link className="no-print" href={`${measureAt}/${p.id}`}>Measure<span className="unseen"> {nameOf(p)}</span></Link></figcaption>
            </figure>
          </li>
        ))}
      </ul>
      <Unopened photos={unopened} />
      {photos.map((p) => p.remark && <p key={p.id} className={css.remark}>{nameOf(p)}: {p.remark}</p>)}
      <dialog ref={dialog} className={css.dialog} aria-label={`Photos of ${rug}`} onClick={(e) => e.target === dialog.current && dialog.current?.close()}>
        <Large photo={photos[at]} measured={measured.filter((m) => m.photoId === photos[at]?.id)} at={at} of={photos.length} go={setAt} blur={blur} close={() => dialog.current?.close()} />
      </dialog>
    </>
  );
}

/** What came as photos and could not be opened, each in the message that keeps it, and what its sender is asked. */
function Unopened({ photos }: { photos: UnopenedView[] }) {
  if (photos.length === 0) return null;
  return (
    <div className={css.none}>
      <p>{photos.length === 1 ? "A photo came by mail and could not be opened:" : "Photos came by mail and could not be opened:"}</p>
      <ul>{photos.map(({ postId, name }, i) => <li key={i}><bdi>{name}</bdi> <a href={`/desk/post/${postId}/eml`} download>Save the message with it<span className="unseen">: {name}</span></a></li>)}</ul>
      <p className="small">Their own page asks for {photos.length === 1 ? "it again as a JPEG" : "them again as JPEGs"}.</p>
    </div>
  );
}

/** What was marked, over a picture that fills its box (`slice`) or shows whole (`meet`). */
function Marks({ photo, measured, fit }: { photo: PhotoView; measured: readonly MeasurementView[]; fit: "slice" | "meet" }) {
  const label = photo.label && photo.label.lines.length > 0 && photo.label.state !== "refused" ? photo.label.crop : null;
  if (measured.length === 0 && !label) return null;
  return (
    <svg className={css.marks} viewBox={`0 0 ${photo.width} ${photo.height}`} preserveAspectRatio={`xMidYMid ${fit}`} aria-hidden="true" focusable="false">
      {measured.map((m) => (m.kind === "spots" ? [m.marks.untouched, m.marks.affected].map((spot, i) => <SpotOutline key={`${m.id}${i}`} spot={spot} photo={photo} />)
        : <PlanOutline key={m.id} photo={photo} corners={m.marks.corners} outlines={m.marks.damaged} />))}
      {label && <SpotOutline spot={{ shape: "rectangle", ...label }} photo={photo} />}
    </svg>
  );
}

interface LargeProps {
  photo: PhotoView | undefined;
  measured: readonly MeasurementView[];
  at: number;
  of: number;
  go: (i: number) => void;
  blur: string | null;
  close: () => void;
}
function Large({ photo, measured, at, of, go, blur, close }: LargeProps) {
  if (!photo) return null;
  return (
    <div className={css.large}>
      <div className={css.bar}>
        <p role="status">{nameOf(photo)}{of > 1 && <span className="num">, {at + 1} of {of}</span>}{photo.remark && <small> {photo.remark}</small>}</p>
        {of > 1 && <button type="button" onClick={() => go((at + of - 1) % of)}>Before</button>}
        {of > 1 && <button type="button" onClick={() => go((at + 1) % of)}>Next</button>}
        <a href={`/photos/${photo.id}/full`} target="_blank" rel="noreferrer">Full size</a>
        {blur && <Link href={`${blur}/${photo.id}`}>Blur a part</Link>}
        <button type="button" onClick={close}>Close</button>
      </div>
      <div className={css.whole}>
        <img key={photo.id} src={`/photos/${photo.id}/1600`} alt={nameOf(photo)} width={photo.width} height={photo.height} />
        <Marks photo={photo} measured={measured} fit="meet" />
      </div>
    </div>
  );
}

/** What the photo shows, as far as somebody said, e.g. "The label". */
const nameOf = (p: PhotoView): string => shownAs(p.kind).ask;
