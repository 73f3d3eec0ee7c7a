import type { SinceView } from "@/lib/enquiry/draft-types";
import { dayAndClock, type Place } from "@/lib/ui/time";
import { Came, hasCome } from "./came";
import css from "./since.module.css";

/** What the client wrote and sent since our last letter, or since they asked, above the answer to it. */
export function Since({ since, name, now, place }: { since: SinceView; name: string; now: string; place: Place }) {
  if (!hasCome(since)) return null;
  return (
    <section className={css.since} aria-label={since.at === null ? "Since they asked" : "Since our last letter"}>
      <h3 className={css.heading}>{since.at === null ? <><bdi>{name}</bdi> wrote again</> : <>Since our letter{since.hasLeft ? "," : " was approved, which has not left yet,"} {dayAndClock(since.leftAt ?? since.at, now, place)}</>}</h3>
      <Came came={since} name={name} now={now} place={place} />
    </section>
  );
}
