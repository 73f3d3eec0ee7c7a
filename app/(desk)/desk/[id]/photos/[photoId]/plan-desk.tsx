"use client";
import { Link } from "@/lib/ui/link";
import { useRouter } from "next/navigation";
import { useId, useMemo, useRef, useState } from "react";
import { reach } from "@/app/(desk)/_parts/reach";
import { MARK_LIMITS, type PlanMarks } from "@/lib/enquiry/mark-schema";
import { KEPT_WHOLE } from "@/lib/triage/finding";
import { measurePlan } from "@/lib/enquiry/measured-plan";
import type { PhotoDeskView, PlanView } from "@/lib/enquiry/measured-views";
import { sidesIn, type Sides } from "@/lib/photo/rug-sides";
import { shownAs } from "@/lib/trade/questions";
import { closedOutlines, FRESH_PLAN, isRoundTheRug, keptPlan, seated, swapped, type PlanDraft } from "@/lib/ui/marking/plan-draft";
import { PlanMarker } from "@/lib/ui/marking/plan-marker";
import { useUndo } from "@/lib/ui/marking/use-undo";
import { PlanDrawing } from "@/lib/ui/plan-drawing";
import { Places, Ways } from "@/lib/ui/plan-reading";
import { keepMeasurement, takeAway } from "./actions";
import css from "./photo.module.css";

type Fields = Pick<PlanMarks, "isSymmetric" | "chosen"> & Record<"widthCm" | "lengthCm" | "borderCm", string>;

const textOf = (cm: number | null) => (cm === null ? "" : String(cm));
const fieldsOf = (kept: PlanView | undefined, rug: PhotoDeskView["rug"]): Fields => ({
  widthCm: textOf(kept?.marks.widthCm ?? rug.widthCm), lengthCm: textOf(kept?.marks.lengthCm ?? rug.lengthCm), borderCm: textOf(kept?.marks.borderCm ?? 0),
  isSymmetric: kept?.marks.isSymmetric ?? false, chosen: kept?.marks.chosen ?? null,
});
/** What was typed as a number; NaN where it is none. */
const numberOf = (text: string) => (text.trim() === "" ? NaN : Number(text.replace(",", ".")));
const sizeOf = ({ widthCm, lengthCm }: Fields) => ({ widthCm: numberOf(widthCm), lengthCm: numberOf(lengthCm) });

/** The plan of the rug at the desk: corners, size, damage, and what can be kept, all of it following what is marked. */
export function PlanDesk({ view }: { view: PhotoDeskView }) {
  const kept = view.measurements.find((m): m is PlanView => m.kind === "plan" && m.withdrawn === null);
  const draft = useUndo(kept ? keptPlan(kept.marks) : FRESH_PLAN);
  const [fields, setFields] = useState(() => fieldsOf(kept, view.rug));
  const [said, setSaid] = useState("");
  const [isBusy, setIsBusy] = useState(false);
  const [formId, setFormId] = useState(() => crypto.randomUUID());
  const status = useRef<HTMLParagraphElement>(null);
  const router = useRouter();
  const ways = useId();
  const seat = (sizes: Fields) => (d: PlanDraft) => seated(d, view.photo, sizeOf(sizes));
  const set = (more: Partial<Fields>) => {
    setFields((f) => ({ ...f, ...more }));
    if ("widthCm" in more || "lengthCm" in more) draft.adjust(seat({ ...fields, ...more }));
  };
  const isMarked = isRoundTheRug(draft.value);
  const marks = useMemo((): PlanMarks => ({
    corners: [...draft.value.corners] as PlanMarks["corners"], ...sizeOf(fields), damaged: closedOutlines(draft.value),
    borderCm: fields.borderCm.trim() === "" ? 0 : numberOf(fields.borderCm), isSymmetric: fields.isSymmetric, chosen: fields.chosen,
  }), [draft.value, fields]);
  const measured = useMemo(() => (isMarked ? measurePlan(marks) : null), [isMarked, marks]);
  const chosen = measured && typeof measured === "object" ? measured.chosen : null;
  const decided = fields.chosen === KEPT_WHOLE ? fields.chosen : (chosen?.kind ?? null);
  const tell = (words: string) => { setSaid(words); setIsBusy(false); status.current?.focus(); router.refresh(); };
  const keep = async () => {
    setIsBusy(true);
    const result = await reach(() => keepMeasurement({ id: formId, photoId: view.photo.id, marked: { kind: "plan", marks: { ...marks, chosen: decided } }, replaces: kept?.id ?? null }));
    if (result.ok) setFormId(crypto.randomUUID());
    tell(result.ok ? "The plan is kept, and the rug judged anew with it." : result.say);
  };
  const remove = async (id: string) => {
    setIsBusy(true);
    const result = await reach(() => takeAway(id));
    tell(result.ok ? "The plan no longer counts." : result.say);
  };
  if (!view.mayMeasure) return null;
  return (
    <PlanMarker photo={view.photo} alt={`${shownAs(view.photo.kind).ask} of ${view.rug.title}`} draft={draft}
      seat={seat(fields)}
      cut={chosen ? { pieces: chosen.pieces, widthCm: marks.widthCm, lengthCm: marks.lengthCm } : null}>
      <Sizes fields={fields} set={set} />
      {typeof measured === "string" && <p className={css.wrong}>{measured}</p>}
      {measured && typeof measured === "object" && (
        <>
          <WhichSide sides={sidesIn(view.photo, marks.corners, marks)} isSquare={marks.widthCm === marks.lengthCm} swap={() => draft.change(swapped)} />
          <PlanDrawing measured={measured} borderCm={marks.borderCm} way={chosen} figures={view.money} />
          <Places measured={measured} figures={view.money} />
          <Ways measured={measured} chosen={decided} choose={(next) => set({ chosen: next })} money={view.money} name={ways} />
        </>
      )}
      <div className={css.send}>
        <button type="button" className="button" disabled={!isMarked || isBusy} onClick={() => void keep()}>{kept ? "Keep as it is now" : "Keep this plan"}</button>
        {kept && <Link href={`/desk/${view.enquiryId}/photos/${view.photo.id}/plan`}>To print</Link>}
        {kept && <button type="button" className={css.plain} disabled={isBusy} onClick={() => void remove(kept.id)}>Take it away</button>}
      </div>
      <p ref={status} role="status" tabIndex={-1} className={css.said}>{said}</p>
    </PlanMarker>
  );
}

const SIDES_SAID: Record<Sides, string> = {
  "as-marked": "The size and the shape of the rug in the photo agree on which edge is the width.",
  swapped: "The shape of the rug in the photo says that width and length are the other way round.",
  unclear: "The photo does not show clearly which edge is the width: please compare it with the rug.",
};

/** Which edge is the width, what the photo says of it, and the button that makes it the other one. */
function WhichSide({ sides, isSquare, swap }: { sides: Sides; isSquare: boolean; swap: () => void }) {
  return (
    <p className={css.side}>
      {isSquare ? "Both sides are of one length, so either may be called the width." : SIDES_SAID[sides]}{" "}
      <button type="button" className={css.plain} onClick={swap}>Swap width and length</button>
    </p>
  );
}

function Sizes({ fields, set }: { fields: Fields; set: (more: Partial<Fields>) => void }) {
  const [width, length, border] = [useId(), useId(), useId()];
  return (
    <fieldset className={css.sizes}>
      <legend className="unseen">Size of the rug</legend>
      {([["widthCm", width, "Width, cm"], ["lengthCm", length, "Length, cm"], ["borderCm", border, "Border, cm"]] as const).map(([name, id, label]) => (
        <div key={name} className="field">
          <label htmlFor={id}>{label}</label>
          <input id={id} inputMode="decimal" autoComplete="off" value={fields[name]} maxLength={8} onChange={(e) => set({ [name]: e.target.value })} />
        </div>
      ))}
      <p className="small">A border of this width is kept whole or taken off whole; 0 where there is none, {MARK_LIMITS.borderCm} at most.</p>
      <label className={css.tick}><input type="checkbox" checked={fields.isSymmetric} onChange={(e) => set({ isSymmetric: e.target.checked })} /> Keep the pattern even on both sides</label>
    </fieldset>
  );
}
