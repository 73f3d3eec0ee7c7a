"use client";
import { useRouter } from "next/navigation";
import { useState } from "react";
import { reach } from "@/app/(desk)/_parts/reach";
import type { SpotMarks } from "@/lib/enquiry/mark-schema";
import type { PhotoDeskView, SpotView } from "@/lib/enquiry/measured-views";
import type { Comparison } from "@/lib/photo/compare";
import { shownAs } from "@/lib/trade/questions";
import { SpotMarker } from "@/lib/ui/marking/spot-marker";
import { SpotOutline } from "@/lib/ui/marking/spot-outline";
import { SpotReading } from "@/lib/ui/spot-reading";
import { keepMeasurement, takeAway } from "./actions";
import css from "./photo.module.css";

const NAMES = { untouched: { name: "Untouched spot", tag: "untouched" }, affected: { name: "Affected spot", tag: "affected" } } as const;
const ASKS = {
  first: "Touch a spot that is untouched, then one that is affected.",
  then: "Now the affected spot.",
  placed: "Move either spot until it lies where it should. Arrow keys move the one you are on; with Shift they take longer steps.",
  proposed: "The program proposes these two. Say yes, or touch the photo to put them elsewhere.",
} as const;

/** Two spots of the photo at the desk: what stands can be moved, and another pair begun. */
export function SpotsDesk({ view }: { view: PhotoDeskView }) {
  const standing = view.measurements.filter((m): m is SpotView => m.kind === "spots" && m.withdrawn === null);
  const plan = view.measurements.find((m) => m.kind === "plan" && m.withdrawn === null);
  /** The measurement that is being moved; null while another pair is marked. */
  const [moving, setMoving] = useState<string | null>(standing[0]?.id ?? null);
  // Each turn to another pair begins the marker anew; keeping does not, so that focus and undo stay.
  const [turns, setTurns] = useState(0);
  const turnTo = (id: string | null) => { setMoving(id); setTurns((n) => n + 1); };
  const [said, setSaid] = useState("");
  const router = useRouter();
  // Kept once, however often the button is pressed; the next pair is another one.
  const [formId, setFormId] = useState(() => crypto.randomUUID());
  const keep = async (marks: SpotMarks) => {
    const kept = await reach(() => keepMeasurement({ id: formId, photoId: view.photo.id, marked: { kind: "spots", marks }, replaces: moving }));
    if (!kept.ok) return kept;
    setMoving(kept.value.id);
    setFormId(crypto.randomUUID());
    router.refresh();
    return kept;
  };
  const remove = async (id: string) => {
    const gone = await reach(() => takeAway(id));
    if (gone.ok) turnTo(null);
    setSaid(gone.ok ? "It no longer counts." : gone.say);
    router.refresh();
  };
  if (!view.mayMeasure) return null;
  return (
    <div className={css.work}>
      <SpotMarker key={turns} photo={view.photo} alt={`${shownAs(view.photo.kind).ask} of ${view.rug.title}`} kept={standing.find((m) => m.id === moving)?.marks ?? null} rug={plan?.kind === "plan" ? plan.marks.corners : null} names={NAMES} asks={ASKS}
        keepLabel={moving ? "Keep as it is now" : "Keep this measurement"} keep={keep} reading={readingOf}
        under={standing.filter((m) => m.id !== moving).map((m) => [m.marks.untouched, m.marks.affected].map((spot, i) => <SpotOutline key={`${m.id}${i}`} spot={spot} photo={view.photo} is="kept" />))}
        beside={<>
          {moving && <button type="button" className={css.plain} onClick={() => turnTo(null)}>Compare another pair</button>}
          {moving && <button type="button" className={css.plain} onClick={() => void remove(moving)}>Take this one away</button>}
          {standing.map((m, i) => m.id !== moving && <button key={m.id} type="button" className={css.plain} onClick={() => turnTo(m.id)}>Back to {standing.length > 1 ? `pair ${i + 1}` : "the one kept"}</button>)}
        </>} />
      <p role="status" className={css.said}>{said}</p>
    </div>
  );
}

const readingOf = (measured: Comparison | string) => (typeof measured === "string" ? <p className={css.wrong}>{measured}</p> : <SpotReading measured={measured} />);
