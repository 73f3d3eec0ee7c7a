"use client";
import { useId, useRef, useState } from "react";
import type { Frame } from "../../enquiry/label-view";
import type { LabelSays } from "../../words/label-says";
import { useSay } from "../browser-words";
import { dueGrip, frameAround, frameHandles, moveFrame, type FrameDraft, type Grip } from "./frame";
import { placeInWords } from "./handle";
import css from "./marker.module.css";
import outline from "./outline.module.css";
import { Stage } from "./stage";
import { useUndo } from "./use-undo";

interface Props {
  photo: { id: string; width: number; height: number };
  /** Where the label was looked for or found. */
  found: Frame;
  /** Has that part read; a sentence where that could not be begun. */
  read: (frame: Frame) => Promise<string | null>;
  says: LabelSays;
}

/** A frame around the label, drawn by finger, mouse or keyboard, and read. */
export function FrameMarker({ photo, found, read, says }: Props) {
  const say = useSay();
  const help = useId();
  const { value: draft, canUndo, begin, adjust, change, undo } = useUndo<FrameDraft>(frameAround(found));
  const [active, setActive] = useState<Grip>("upper-left");
  const [said, setSaid] = useState("");
  const [refusal, setRefusal] = useState("");
  const [isBusy, setIsBusy] = useState(false);
  const status = useRef<HTMLParagraphElement>(null);
  const touch = (at: { x: number; y: number }) => {
    const grip = dueGrip(draft, active);
    change((d) => moveFrame(d, grip, at));
    setActive(grip === "upper-left" ? "lower-right" : grip);
    setSaid(placeInWords(at, say));
  };
  const send = async () => {
    setIsBusy(true);
    const no = await read(draft.frame);
    setIsBusy(false);
    setRefusal(no ?? "");
    if (no) status.current?.focus();
  };
  return (
    <div className={css.marker}>
      <p id={help} className={css.ask}>{says["label.frame"]}</p>
      <Stage photo={photo} alt={says["label.photo"]} describedBy={help} handles={frameHandles(draft, (grip) => says[`label.${grip}`])} active={active} onActive={(key) => setActive(key as Grip)} onTouch={touch} onUndo={undo}
        onMove={(key, to, isBegun) => { if (isBegun) begin(); adjust((d) => moveFrame(d, key as Grip, to)); setSaid(placeInWords(to, say)); }}>
        <FrameOutline frame={draft.frame} photo={photo} />
      </Stage>
      <div className={css.keep}>
        <button type="button" className="button" onClick={() => void send()} disabled={isBusy}>{says["label.read-part"]}</button>
        <button type="button" className={css.plain} onClick={undo} disabled={!canUndo}>{says["label.undo"]}</button>
      </div>
      <p className={css.refused} role="status" tabIndex={-1} ref={status}>{refusal}</p>
      <p className="unseen" aria-live="polite">{said}</p>
    </div>
  );
}

/** What lies outside of the frame is dimmed, so that what is read stands out. */
function FrameOutline({ frame, photo: { width, height } }: { frame: Frame; photo: Props["photo"] }) {
  const [x, y, w, h] = [frame.x * width, frame.y * height, frame.width * width, frame.height * height];
  return (
    <>
      <path className={outline.outside} fillRule="evenodd" d={`M0 0H${width}V${height}H0ZM${x} ${y}H${x + w}V${y + h}H${x}Z`} />
      {[outline.edge, outline.line].map((layer) => <rect key={layer} className={layer} x={x} y={y} width={w} height={h} />)}
    </>
  );
}
