import type { SinceView } from "@/lib/enquiry/draft-types";
import { dayAndClock } from "@/lib/ui/time";
import { Came, hasCome, type Beside } from "./came";
import css from "./since.module.css";

/** What the client wrote and sent since our last letter, or since they asked, above the answer to it. */
export function Since({ since, ...by }: Beside & { since: SinceView }) {
  const { name, now, place } = by;
  if (!hasCome(since)) return null;
  return (
    <section className={css.since} aria-label={since.at === null ? "Since they asked" : "Since our last letter"}>
      <h3 className={css.heading}>{since.at === null ? <><bdi>{name}</bdi> wrote again</> : <>Since our letter{since.hasLeft ? "," : " was approved, which has not left yet,"} {dayAndClock(since.leftAt ?? since.at, now, place)}</>}</h3>
      <Came came={since} {...by} />
    </section>
  );
}
