"use client";
import { Link } from "@/lib/ui/link";
import { useRouter } from "next/navigation";
import { useRef, useState, useTransition } from "react";
import { MOST_AREAS } from "@/lib/enquiry/blur-schema";
import { limitsOf, withFigure, type Area } from "@/lib/photo/area";
import { blur } from "./actions";
import css from "./blur.module.css";
import { useAreas } from "./use-areas";

const FIGURES = [["left", "from the left"], ["top", "from the top"], ["width", "wide"], ["height", "high"]] as const;
const percent = (share: number): number => Math.round(share * 1000) / 10;

/** Marks what is to be blurred, on the picture or in figures, shows it blurred, and does it. */
export function BlurForm({ enquiryId, photo }: { enquiryId: string; photo: { id: string; width: number; height: number; shows: string } }) {
  const router = useRouter();
  const { areas, picture, onKey, set, add, takeAway } = useAreas();
  const [said, setSaid] = useState("");
  const [isBusy, start] = useTransition();
  const status = useRef<HTMLParagraphElement>(null);
  const submit = () => start(async () => {
    const result = await blur({ photoId: photo.id, areas: [...areas] });
    if (result.ok) return router.push(`/desk/${enquiryId}`);
    setSaid(result.say);
    status.current?.focus();
  });
  return (
    <form className={css.form} onSubmit={(event) => { event.preventDefault(); submit(); }}>
      <noscript><p>Marking what is to be blurred needs JavaScript.</p></noscript>
      <div className={css.picture} {...picture}>
        <img src={`/photos/${photo.id}/1600`} alt={photo.shows} width={photo.width} height={photo.height} draggable={false} />
        {areas.map((area, i) => (
          <button key={i} type="button" data-area={i} className={css.area} style={boxOf(area)} onKeyDown={onKey(i)}
            aria-label={`Area ${i + 1}, ${inWords(area)}. Arrow keys move it, with Shift they change its size, with Alt by less.`} />
        ))}
      </div>
      <div className={css.side}>
        <p>Draw over what nobody should see; more than once if need be. An area can be moved with the pointer or the arrow keys.</p>
        <ol className={css.areas}>{areas.map((area, i) => <Figures key={i} at={i} area={area} set={set} takeAway={takeAway} />)}</ol>
        <button type="button" className="button quiet" disabled={areas.length >= MOST_AREAS} onClick={add}>Add an area</button>
        <div className={css.end}>
          <button className="button" disabled={areas.length === 0 || isBusy}>Blur for good</button>
          <Link href={`/desk/${enquiryId}`}>Leave it as it is</Link>
        </div>
        <p ref={status} role="status" tabIndex={-1} className={css.said}>{isBusy ? "One moment…" : said}</p>
      </div>
    </form>
  );
}

/** One area in figures, in per cent of the picture. */
function Figures({ at, area, set, takeAway }: { at: number; area: Area; set: (at: number, to: (area: Area) => Area) => void; takeAway: (at: number) => void }) {
  return (
    <li>
      <fieldset>
        <legend>Area {at + 1}</legend>
        {FIGURES.map(([side, words]) => (
          <label key={side}>
            <input type="number" className="num" min={percent(limitsOf(area, side).least)} max={percent(limitsOf(area, side).most)} step="any" value={percent(area[side])}
              onChange={(event) => set(at, (a) => withFigure(a, side, event.target.valueAsNumber / 100 || 0))} />
            % {words}
          </label>
        ))}
        <button type="button" className={css.away} onClick={() => takeAway(at)}>Take away<span className="unseen"> area {at + 1}</span></button>
      </fieldset>
    </li>
  );
}

const boxOf = ({ left, top, width, height }: Area) => ({ left: `${left * 100}%`, top: `${top * 100}%`, width: `${width * 100}%`, height: `${height * 100}%` });
const inWords = (a: Area): string => `${Math.round(percent(a.left))} per cent from the left, ${Math.round(percent(a.top))} from the top, ${Math.round(percent(a.width))} wide, ${Math.round(percent(a.height))} high`;
