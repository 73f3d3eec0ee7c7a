"use client";
import { useId, useState, type ReactNode } from "react";
import type { Point } from "../../photo/homography";
import type { Box } from "../../photo/polygon";
import { useSay } from "../browser-words";
import { placeInWords } from "./handle";
import css from "./marker.module.css";
import { addPoint, cornerHandles, dueCorner, isRoundTheRug, movePlanHandle, outlineOf, pointHandles, pointKey, putCorner, removeOutline, removePoint, type PlanDraft } from "./plan-draft";
import { PlanOutline } from "./plan-outline";
import { Stage } from "./stage";
import type { useUndo } from "./use-undo";

interface Props {
  photo: { id: string; width: number; height: number };
  alt: string;
  draft: ReturnType<typeof useUndo<PlanDraft>>;
  /** Puts the width along the edges that fit the stated size; asked once the corners are put. */
  seat: (draft: PlanDraft) => PlanDraft;
  /** What is kept by the way that is chosen, to be drawn on the photo. */
  cut: { pieces: readonly Box[]; widthCm: number; lengthCm: number } | null;
  /** Beside the photo: sizes, numbers, ways. */
  children: ReactNode;
}

const LAST_CORNER = 3;
type Tool = "corners" | "damage";

/** A rug's four corners and the outlines of its damaged places, put and moved on its photo. */
export function PlanMarker({ photo, alt, draft: { value: draft, canUndo, begin, adjust, change, undo }, seat, cut, children }: Props) {
  const say = useSay();
  const [help, group] = [useId(), useId()];
  const [tool, setTool] = useState<Tool>(isRoundTheRug(draft) ? "damage" : "corners");
  const [active, setActive] = useState<string | null>(null);
  const [isNew, setIsNew] = useState(draft.outlines.length === 0);
  const [said, setSaid] = useState("");
  const current = isNew ? draft.outlines.length : Math.min(outlineOf(active) ?? draft.outlines.length - 1, draft.outlines.length - 1);
  const put = (at: Point) => {
    if (tool === "corners") {
      const due = dueCorner(draft);
      change((d) => {
        const put = putCorner(d, outlineOf(active) === null ? active : null, at);
        return due === LAST_CORNER ? seat(put) : put;
      });
      setSaid(due === null ? placeInWords(at, say) : `Corner ${due + 1}: ${placeInWords(at, say)}`);
      return;
    }
    const outline = Math.max(0, current);
    change((d) => addPoint(d, outline, at));
    setActive(pointKey(outline, draft.outlines[outline]?.length ?? 0));
    setIsNew(false);
    setSaid(`Damaged place ${outline + 1}, a point ${placeInWords(at, say)}`);
  };
  const take = (next: Tool) => {
    setTool(next);
    setActive(null);
    // Corners moved by hand are read once they are left: while one is held, the numbers must not change places.
    if (next === "damage") adjust(seat);
  };
  const drop = (to: (d: PlanDraft) => PlanDraft, words: string) => { change(to); setActive(null); setSaid(words); };
  const place = draft.outlines[current];
  return (
    <div className={css.marker}>
      <p id={help} className={css.ask}>{askFor(tool, draft, isNew)}</p>
      <div className={css.body}>
        <div>
          <Stage photo={photo} alt={alt} describedBy={help} handles={tool === "corners" ? cornerHandles(draft) : pointHandles(draft)} active={active} onActive={(key) => { setActive(key); if (outlineOf(key) !== null) setIsNew(false); }}
            onMove={(key, to, isBegun) => { if (isBegun) begin(); adjust((d) => movePlanHandle(d, key, to)); setSaid(placeInWords(to, say)); }}
            onTouch={put} onUndo={undo} onRemove={(key) => drop((d) => removePoint(d, key), "The point is gone.")}>
            <PlanOutline photo={photo} corners={[...draft.corners]} outlines={draft.outlines} cut={cut} isWaiting={!isRoundTheRug(draft)} sides={["width", "length"]} />
          </Stage>
          <div className={css.tools}>
            <fieldset className={css.shapes}>
              <legend className="unseen">What to mark</legend>
              {([["corners", "Corners"], ["damage", "Damaged places"]] as const).map(([id, label]) => (
                <label key={id}><input type="radio" name={group} checked={tool === id} onChange={() => take(id)} /> {label}</label>
              ))}
            </fieldset>
            {tool === "damage" && <button type="button" className={css.plain} onClick={() => put(pointBeside(place))}>Add a point</button>}
            {tool === "damage" && draft.outlines.length > 0 && !isNew && <button type="button" className={css.plain} onClick={() => { setIsNew(true); setActive(null); }}>Another place</button>}
            {tool === "damage" && place && <button type="button" className={css.plain} onClick={() => drop((d) => removeOutline(d, current), "The place is gone.")}>Take this place away</button>}
            <button type="button" className={css.plain} onClick={undo} disabled={!canUndo}>Undo</button>
          </div>
        </div>
        <div>{children}</div>
      </div>
      <p className="unseen" aria-live="polite">{said}</p>
    </div>
  );
}

/** For the keyboard: between the first and the last point of a place, else in the middle of the photo. */
function pointBeside(place: readonly Point[] | undefined): Point {
  const [first, last] = [place?.[0], place?.at(-1)];
  if (!first || !last) return { x: 0.5, y: 0.5 };
  return place?.length === 1 ? { x: first.x + 0.08, y: first.y } : place?.length === 2 ? { x: last.x, y: last.y + 0.08 } : { x: (first.x + last.x) / 2, y: (first.y + last.y) / 2 };
}

function askFor(tool: Tool, draft: PlanDraft, isNew: boolean): string {
  if (tool === "damage") return isNew ? "Touch round the damaged place, point by point." : "Go on round it, or move the points. On a keyboard, Delete takes away the point you are on.";
  const due = dueCorner(draft);
  if (due === null) return "Move the corners until they sit. From corner 1 to corner 2 is the width.";
  return due === 0 ? "Touch the four corners of the rug, one after the other, going round." : `Now corner ${due + 1}.`;
}
