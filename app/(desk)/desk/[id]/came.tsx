import { Link } from "@/lib/ui/link";
import type { CameView, MessageView } from "@/lib/enquiry/draft-types";
import { EnclosedFiles, LeftOut } from "@/lib/ui/enclosed-files";
import { FoldedPerhaps } from "@/lib/ui/folded-perhaps";
import { OwnWords } from "@/lib/ui/own-words";
import { dayAndClock, type Place } from "@/lib/ui/time";
import { NotTheirs, WhoseMessage } from "./own-message";
import css from "./since.module.css";

/** New photos and answers, in words; empty where there are none. */
function besideWords({ photos, answers }: CameView): string {
  const came = [...(photos > 0 ? [photos === 1 ? "one new photo" : `${photos} new photos`] : []), ...(answers ? ["new answers"] : [])];
  return came.join(" and ");
}

export const hasCome = (came: CameView): boolean => came.messages.length > 0 || besideWords(came) !== "";

/** That a message seems to correct an answer: the message by its instant, the answer in words, and where staff correct it; null for those who may not. */
export interface Corrects { at: string; ask: string; says: readonly string[]; href: string | null }
/** Who wrote, and what is said beside their words. */
export interface Beside { name: string; now: string; place: Place; corrects: readonly Corrects[] }

/** What a client wrote, word for word, and what else came with it. */
export function Came({ came, ...by }: Beside & { came: CameView }) {
  const beside = besideWords(came);
  return (
    <>
      <Written messages={came.messages} {...by} />
      {beside && <p className="small">With the enquiry now: {beside}.</p>}
    </>
  );
}

const anAddress = (address: string) => (address ? <bdi>{address}</bdi> : "somebody who names no address");

/** Messages word for word, and whose they are. `decidedElsewhere`: of which it is asked elsewhere on the page whether they are the client's. */
export function Written({ messages, name, now, place, corrects, decidedElsewhere = [] }: Beside & { messages: readonly MessageView[]; decidedElsewhere?: readonly string[] }) {
  return (
    <>
      {messages.map((m) => (
        <figure key={`${m.at} ${m.other?.postId} ${m.owned?.postId}`} className={css.message}>
          {m.other && <p><b>From {anAddress(m.other.address)}, not the address we know.</b> It answers a letter of ours. Our letters go to <bdi>{name}</bdi> alone.</p>}
          <blockquote className={css.words} dir="auto">{m.text ? <OwnWords text={m.text} /> : "No words of its own."}</blockquote>
          <figcaption className="small">{m.other ? "By mail" : <bdi>{name}</bdi>}, <time dateTime={m.cameAt ?? m.at}>{dayAndClock(m.cameAt ?? m.at, now, place)}</time>{m.owned && <>. It came from {anAddress(m.owned.address)}, and somebody here said that it is theirs.</>}</figcaption>
          {m.other === null && corrects.filter((c) => c.at === m.at).map((c) => <Correcting key={c.ask} corrects={c} />)}
          {m.hidesPerhaps && <div className={css.beside}><FoldedPerhaps postId={m.hidesPerhaps} of={null} /></div>}
          {m.enclosed && <><EnclosedFiles post={m.enclosed} /><LeftOut post={m.enclosed} of={null} /></>}
          {m.other && !decidedElsewhere.includes(m.other.postId) && <WhoseMessage postId={m.other.postId} name={name} />}
          {m.owned && !decidedElsewhere.includes(m.owned.postId) && <NotTheirs postId={m.owned.postId} name={name} />}
        </figure>
      ))}
    </>
  );
}

/** Nothing is changed by words alone: a person reads them, and corrects the answer. */
function Correcting({ corrects: { ask, says, href } }: { corrects: Corrects }) {
  return (
    <p className={`small ${css.beside} no-print`}>
      <b>This seems to correct an answer:</b> {ask}{says.length > 0 && <>, <q><bdi>{says.join("; ")}</bdi></q></>}. {href ? <><Link href={href}>Correct it<span className="unseen">: {ask}</span></Link>, and the rug is judged anew.</> : "Until it is corrected, the rug is judged by it."}
    </p>
  );
}
