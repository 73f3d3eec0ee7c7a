import { Link } from "./link";
import type { Slip as SlipView } from "../enquiry/views";
import { improvementFigures } from "../reply/phrases";
import { ComesBackLine } from "./comes-back-line";
import { Interval } from "./interval";
import { Strip } from "./strip";
import { heldInWords, waitingInWords, type Place } from "./time";
import css from "./slip.module.css";

/** Enquiries as slips, one below the other. `as`: the level of their titles below the heading they stand under. */
export function Slips({ slips, now, place, as }: { slips: SlipView[]; now: string; place: Place; as: "h2" | "h3" }) {
  return <ul className={css.slips}>{slips.map((s) => <Slip key={s.enquiryId} slip={s} now={now} place={place} as={as} />)}</ul>;
}

/** One enquiry in the queue. The whole slip leads to it; the link itself is the title, so that it is read out briefly. */
function Slip({ slip, now, place, as: H }: { slip: SlipView; now: string; place: Place; as: "h2" | "h3" }) {
  const waits = waitingInWords(slip.submittedAt, now);
  return (
    <li className={css.slip}>
      <div className={css.strip}><Strip colours={slip.colours} cells={10} upright /></div>
      <Thumb photoId={slip.photoId} />
      <div className={css.what}>
        <H className={css.title}><Link href={`/desk/${slip.enquiryId}`} className={css.link}><bdi>{slip.title}</bdi></Link></H>
        <p>{slip.sentence}</p>
        <p className={css.why} dir="auto">{slip.urgencyWhy}</p>
      </div>
      <div className={css.beliefs}>
        <div className={css.belief}><Fibre fibre={slip.fibre} /></div>
        <div className={css.belief}><ComesBack improvement={slip.improvement} open={slip.comesBackOpen} /></div>
      </div>
      <div className={css.waits}>
        <time dateTime={slip.submittedAt} className="num"><Came {...waits} /></time>
        <span>{heldInWords(slip.heldUntil, now, place) ?? slip.standing}</span>
        <span className="num">{slip.reference}</span>
      </div>
    </li>
  );
}

/** How long ago it came: to the ear what the eye sees, made a sentence; only what is shortened for the eye is said in other words. */
function Came({ short, spoken }: ReturnType<typeof waitingInWords>) {
  const ago = spoken !== "just now" && <span className="unseen"> ago</span>;
  return <><span className="unseen">came </span>{short === spoken ? short : <><span aria-hidden="true">{short}</span><span className="unseen">{spoken}</span></>}{ago}</>;
}

/** The photo, or a plain field where none was sent. It adds nothing to the words beside it, so it has none of its own. */
function Thumb({ photoId }: { photoId: string | null }) {
  if (!photoId) return <div className={css.noPhoto}>no photo</div>;
  return <div className={css.photo}><img src={`/photos/${photoId}/320`} alt="" width={104} height={84} loading="lazy" decoding="async" /></div>;
}

function Fibre({ fibre }: { fibre: SlipView["fibre"] }) {
  if (!fibre) return <small>not judged yet</small>;
  return (
    <>
      <Interval low={fibre.low} mid={fibre.probability} high={fibre.high} of={fibre.name} words={fibre.words} />
      <small>{fibreInWords(fibre)}</small>
    </>
  );
}

/** "viscose, very likely". A leading fibre that is itself unlikely is named as no more than that. */
export const fibreInWords = ({ name, words }: { name: string; words: string }): string =>
  (words.endsWith("unlikely") ? `cannot be told yet; ${name} comes first` : `${name}, ${words}`);

function ComesBack({ improvement: r, open }: { improvement: SlipView["improvement"]; open: string | null }) {
  if (open) return <small>{open}</small>;
  if (!r) return <small>not a matter of cleaning</small>;
  return <><ComesBackLine improvement={r} /><small>{comesBackInWords(r)}</small></>;
}

/** "comes back 20–35 %". */
export const comesBackInWords = (range: NonNullable<SlipView["improvement"]>): string => `comes back ${improvementFigures(range)}`;
