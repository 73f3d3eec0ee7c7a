"use client";
import { useRouter } from "next/navigation";
import { useId, useRef, useState, useTransition, type FormEvent } from "react";
import { reach } from "@/app/(desk)/_parts/reach";
import { PHOTO_KINDS, UNSAID_PHOTO, type ShownKind } from "@/lib/trade/questions";
import { nameIt } from "./actions";
import css from "./photo.module.css";

const KINDS = Object.entries(PHOTO_KINDS) as [Exclude<ShownKind, typeof UNSAID_PHOTO>, (typeof PHOTO_KINDS)[keyof typeof PHOTO_KINDS]][];

/** What a photo shows: asked of whoever looks at one that came by mail, and to be put right for any other. */
export function Shows({ photoId, kind }: { photoId: string; kind: ShownKind }) {
  const field = useId();
  const [chosen, setChosen] = useState<ShownKind>(kind);
  const [said, setSaid] = useState("");
  const [isBusy, start] = useTransition();
  const status = useRef<HTMLParagraphElement>(null);
  const router = useRouter();
  const submit = (event: FormEvent) => {
    event.preventDefault();
    start(async () => {
      const result = await reach(() => nameIt({ photoId, from: kind, to: chosen }));
      setSaid(result.ok ? "Kept. The rug was judged anew." : result.say);
      status.current?.focus();
      router.refresh();
    });
  };
  return (
    <div className={`${css.shows} no-print`}>
      {kind === UNSAID_PHOTO && <p>It came by mail, and nobody has said yet what it shows.</p>}
      <form onSubmit={submit} className={css.say}>
        <label htmlFor={field}>It shows</label>
        <select id={field} value={chosen} onChange={(e) => setChosen(e.target.value as ShownKind)}>
          {kind === UNSAID_PHOTO && <option value={UNSAID_PHOTO}>Not said yet</option>}
          {KINDS.map(([id, { ask }]) => <option key={id} value={id}>{ask}</option>)}
        </select>
        <button className="button quiet" disabled={isBusy || chosen === kind}>Keep</button>
      </form>
      <p ref={status} role="status" tabIndex={-1} className={css.said}>{said}</p>
    </div>
  );
}
