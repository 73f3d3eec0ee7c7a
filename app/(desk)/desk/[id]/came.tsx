import type { CameView } from "@/lib/enquiry/draft-types";
import { dayAndClock, type Place } from "@/lib/ui/time";
import css from "./since.module.css";

/** New photos and answers, in words; empty where there are none. */
function besideWords({ photos, answers }: CameView): string {
  const came = [...(photos > 0 ? [photos === 1 ? "one new photo" : `${photos} new photos`] : []), ...(answers ? ["new answers"] : [])];
  return came.join(" and ");
}

export const hasCome = (came: CameView): boolean => came.messages.length > 0 || besideWords(came) !== "";

/** What a client wrote, word for word, and what else came with it. */
export function Came({ came, name, now, place }: { came: CameView; name: string; now: string; place: Place }) {
  const beside = besideWords(came);
  return (
    <>
      {came.messages.map((m) => (
        <figure key={m.at} className={css.message}>
          <blockquote className={css.words} dir="auto">{m.text}</blockquote>
          <figcaption className="small"><bdi>{name}</bdi>, <time dateTime={m.at}>{dayAndClock(m.at, now, place)}</time></figcaption>
        </figure>
      ))}
      {beside && <p className="small">With the enquiry now: {beside}.</p>}
    </>
  );
}
