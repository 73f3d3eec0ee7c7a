"use client";
import { useId, useMemo, useRef, useState, type ReactNode } from "react";
import type { SpotMarks } from "../../enquiry/mark-schema";
import type { Result } from "../../enquiry/caller";
import { compareSpots, type Comparison } from "../../photo/compare";
import { proposeSpots } from "../../photo/propose-spots";
import type { Rgb } from "../../photo/strip";
import { useSay } from "../browser-words";
import { placeInWords } from "./handle";
import css from "./marker.module.css";
import { picturePixels } from "./picture-pixels";
import { SpotOutline } from "./spot-outline";
import { centreOf, dueSpot, FRESH_SPOTS, keptSpots, moveHandle, RADIUS_LIMITS, reshape, resize, spotHandles, WHICH, type SpotDraft, type Which } from "./spots";
import { Stage } from "./stage";
import { useUndo } from "./use-undo";

/** Pixels of the long side on which spots are compared and proposed: as at the server. */
const COMPARE_SIDE = 1600;
const PROPOSE_SIDE = 480;

export interface SpotMarkerProps {
  photo: { id: string; width: number; height: number };
  /** What the photo shows. */
  alt: string;
  /** What stands already; null: the program proposes. */
  kept: SpotMarks | null;
  /** The rug's corners in the photo, where they are known: nothing is proposed beside it. */
  rug?: readonly { x: number; y: number }[] | null;
  names: Readonly<Record<Which, { name: string; tag: string }>>;
  /** What to do, and what the program has proposed. */
  asks: { first: string; then: string; placed: string; proposed: string };
  keepLabel: string;
  keep: (marks: SpotMarks) => Promise<Result<unknown>>;
  /** The numbers that follow the spots; a client is shown none. */
  reading?: (measured: Comparison | string) => ReactNode;
  /** Drawn under the spots, in the photo's pixels. */
  under?: ReactNode;
  /** Beside the button that keeps. */
  beside?: ReactNode;
}

/** Two spots of one photo, touched, moved and kept. */
export function SpotMarker({ photo, alt, kept, rug = null, names, asks, keepLabel, keep, reading, under, beside }: SpotMarkerProps) {
  const say = useSay();
  const help = useId();
  const { value: draft, canUndo, begin, adjust, change, undo, restart } = useUndo<SpotDraft>(kept ? keptSpots(kept) : FRESH_SPOTS);
  const [active, setActive] = useState<Which>("untouched");
  const [pixels, setPixels] = useState<Rgb | null>(null);
  const [said, setSaid] = useState("");
  /** What came of keeping; cleared by the next change. */
  const [outcome, setOutcome] = useState("");
  const [isBusy, setIsBusy] = useState(false);
  const status = useRef<HTMLParagraphElement>(null);
  const isReady = draft.touched.length === 2 || draft.isProposed;
  const measured = useMemo(() => (pixels && isReady && reading ? compareSpots(pixels, draft.marks) : null), [pixels, isReady, reading, draft.marks]);
  const picture = (image: HTMLImageElement) => {
    setPixels(picturePixels(image, COMPARE_SIDE));
    const small = kept ? null : picturePixels(image, PROPOSE_SIDE);
    const proposed = small && proposeSpots(small, rug);
    if (proposed) restart({ marks: proposed, touched: [], isProposed: true });
  };
  const move = (key: string, to: { x: number; y: number }, isBegun: boolean) => {
    if (isBegun) begin();
    adjust((d) => moveHandle(d, key, to));
    setOutcome("");
    setSaid(placeInWords(to, say));
  };
  const touch = (at: { x: number; y: number }) => {
    const due = draft.isProposed ? active : dueSpot(draft, active);
    change((d) => moveHandle(d, due, at));
    setActive(due === "untouched" ? "affected" : "untouched");
    setOutcome("");
    setSaid(say("spots.touched", { name: names[due].name, place: placeInWords(at, say) }));
  };
  const send = async () => {
    setIsBusy(true);
    const result = await keep(draft.marks);
    setIsBusy(false);
    // What was kept is no proposal any more.
    if (result.ok) adjust((d) => ({ ...d, touched: WHICH, isProposed: false }));
    setOutcome(result.ok ? say("spots.kept") : result.say);
    status.current?.focus();
  };
  const ask = draft.isProposed ? asks.proposed : draft.touched.length === 0 ? asks.first : draft.touched.length === 1 ? asks.then : asks.placed;
  return (
    <div className={css.marker}>
      <p id={help} className={css.ask}>{ask}</p>
      <div className={css.body}>
      <Stage photo={photo} alt={alt} describedBy={help} handles={spotHandles(draft, names, (name) => say("spots.corner", { name }))} active={active} onActive={(key) => setActive(key.startsWith("untouched") ? "untouched" : "affected")}
        onMove={move} onTouch={touch} onUndo={undo} onPicture={picture}>
        {under}
        {WHICH.map((which) => <SpotOutline key={which} spot={draft.marks[which]} photo={photo} is={draft.touched.includes(which) ? null : "waiting"} />)}
      </Stage>
      <div>
      <div className={css.tools}>
        <Shape draft={draft} onShape={(shape) => change((d) => reshape(d, shape, photo.width / photo.height))} onSize={(radius) => adjust((d) => resize(d, radius))} onSizing={begin} />
        <button type="button" className={css.plain} onClick={undo} disabled={!canUndo}>{say("mark.undo")}</button>
      </div>
      {measured !== null && reading?.(measured)}
      <div className={css.keep}>
        <button type="button" className="button" onClick={() => void send()} disabled={!isReady || isBusy}>{draft.isProposed ? say("spots.yes") : keepLabel}</button>
        {beside}
      </div>
      <p className={css.refused} role="status" tabIndex={-1} ref={status}>{outcome}</p>
      </div>
      </div>
      <p className="unseen" aria-live="polite">{said}</p>
    </div>
  );
}

function Shape({ draft, onShape, onSize, onSizing }: { draft: SpotDraft; onShape: (shape: "circle" | "rectangle") => void; onSize: (radius: number) => void; onSizing: () => void }) {
  const say = useSay();
  const group = useId();
  const spot = draft.marks.affected;
  return (
    <>
      <fieldset className={css.shapes}>
        <legend className="unseen">{say("spots.shape")}</legend>
        {([["circle", say("spots.round")], ["rectangle", say("spots.rectangle")]] as const).map(([shape, label]) => (
          <label key={shape}><input type="radio" name={group} checked={spot.shape === shape} onChange={() => onShape(shape)} /> {label}</label>
        ))}
      </fieldset>
      {spot.shape === "circle" && (
        <label className={css.size}>{say("spots.size")} <input type="range" min={RADIUS_LIMITS.least} max={RADIUS_LIMITS.most} step={0.005} value={spot.radius}
          aria-valuetext={say("spots.size-value", { share: Math.round(200 * spot.radius), place: placeInWords(centreOf(spot), say) })} onPointerDown={onSizing} onKeyDown={onSizing} onChange={(e) => onSize(Number(e.target.value))} /></label>
      )}
    </>
  );
}
