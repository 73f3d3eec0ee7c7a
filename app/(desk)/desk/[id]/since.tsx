import type { SinceView } from "@/lib/enquiry/draft-types";
import { dayAndClock, type Place } from "@/lib/ui/time";
import css from "./since.module.css";

/** What the client wrote and sent since our last letter, above the answer to it. */
export function Since({ since, name, now, place }: { since: SinceView; name: string; now: string; place: Place }) {
  const { messages, answers, photos } = since;
  const came = [...(photos > 0 ? [photos === 1 ? "one new photo" : `${photos} new photos`] : []), ...(answers ? ["new answers"] : [])];
  if (messages.length === 0 && came.length === 0) return null;
  return (
    <section className={css.since} aria-label="Since our last letter">
      <h3 className={css.heading}>Since our letter, {dayAndClock(since.at, now, place)}</h3>
      {messages.map((m) => (
        <figure key={m.at} className={css.message}>
          <blockquote className={css.words} dir="auto">{m.text}</blockquote>
          <figcaption className="small"><bdi>{name}</bdi>, <time dateTime={m.at}>{dayAndClock(m.at, now, place)}</time></figcaption>
        </figure>
      ))}
      {came.length > 0 && <p className="small">With the enquiry now: {came.join(" and ")}.</p>}
    </section>
  );
}
