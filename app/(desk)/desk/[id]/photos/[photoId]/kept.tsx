import type { MeasurementView, PhotoDeskView } from "@/lib/enquiry/measured-views";
import { planInWords } from "@/lib/ui/plan-words";
import { dayAndClock, type Place } from "@/lib/ui/time";
import type { Figures } from "@/lib/words/measures";
import css from "./photo.module.css";

const NONE = { spots: "No two spots of this photo are kept yet.", plan: "No plan is kept of this photo yet." } as const satisfies Record<MeasurementView["kind"], string>;

/** What was measured in this photo, what was moved and what was taken away: nothing is lost from sight. */
export function Kept({ view, kind, now, place }: { view: PhotoDeskView; kind: MeasurementView["kind"]; now: string; place: Place }) {
  const all = view.measurements.filter((m) => m.kind === kind);
  return (
    <section className={css.kept} aria-label="Kept measurements">
      <h2>Kept measurements</h2>
      {all.length === 0 && <p className={css.none}>{NONE[kind]}</p>}
      <ol>
        {all.map((m) => (
          <li key={m.id} className={m.withdrawn ? css.gone : undefined}>
            <p>{m.withdrawn ? <s>{wordsOf(m, view.money)}</s> : wordsOf(m, view.money)}</p>
            <p className="small">
              <bdi>{m.by}</bdi>, <time dateTime={m.at}>{dayAndClock(m.at, now, place)}</time>
              {m.withdrawn && <>. {m.withdrawn.why ? `${m.withdrawn.why} By ` : `${m.withdrawn.isMoved ? "Moved" : "Taken away"} by `}<bdi>{m.withdrawn.by}</bdi>, {dayAndClock(m.withdrawn.at, now, place)}</>}
            </p>
          </li>
        ))}
      </ol>
    </section>
  );
}

const wordsOf = (m: MeasurementView, figures: Figures): string => (m.kind === "spots" ? m.result.says : planInWords(m, figures));
