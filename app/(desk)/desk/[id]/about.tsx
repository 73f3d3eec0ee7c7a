import { Link } from "@/lib/ui/link";
import type { EnquiryView } from "@/lib/enquiry/views";
import { DeskSheet } from "@/lib/ui/desk-sheet";
import { Enclosed } from "@/lib/ui/enclosed";
import { EnclosedFiles, LeftOut } from "@/lib/ui/enclosed-files";
import { FoldedPerhaps } from "@/lib/ui/folded-perhaps";
import { sentenceCase } from "@/lib/ui/figures";
import { OwnWords } from "@/lib/ui/own-words";
import { nextTryInWords } from "@/lib/ui/next-try";
import { dayAndClock, type Place } from "@/lib/ui/time";
import { ToldList } from "@/lib/ui/told-list";
import { toldOfEnquiry } from "@/lib/ui/told";
import css from "./enquiry.module.css";
import { Ring } from "./undelivered";

/** Who wrote, who else is in the matter, and what they wrote before. */
export function Client({ view }: { view: EnquiryView }) {
  const { client, parties } = view;
  return (
    <section className={css.block}>
      <h2>Who wrote</h2>
      <p className={css.who}>
        <b><bdi>{client.name}</bdi></b>{client.isTrade && ", cleans rugs"}<br />
        {client.email ? <a href={`mailto:${client.email}`}>{client.email}</a> : "no e-mail address"}
        {client.suppressedWhy !== null && <> <strong>takes no mail</strong>: <span dir="auto">{client.suppressedWhy}</span> (<Link href="/desk/post">see the Post</Link>)</>}
        {client.telephone && <> · <Ring telephone={client.telephone} /></>}
      </p>
      {view.may.correctClient && <p className={`${css.who} no-print`}><Link href={`/desk/${view.id}/client`}>Correct name, e-mail or telephone</Link></p>}
      {parties.map((p) => <p key={`${p.kind}-${p.name}`} className={css.who}>{PARTIES[p.kind] ?? p.kind}: <bdi>{p.name}</bdi>{p.reference && `, ${p.reference}`}</p>)}
      <ToldList told={toldOfEnquiry(view.answers)} none="Nothing was answered about the enquiry as a whole." />
      {client.earlier.length > 0 && (
        <>
          <h3 className={css.sub}>Earlier enquiries</h3>
          <ul className={css.plain}>{client.earlier.map((e) => <li key={e.id}><Link href={`/desk/${e.id}`}><bdi>{e.title}</bdi></Link> <small className="num">{e.reference}</small></li>)}</ul>
        </>
      )}
    </section>
  );
}
const PARTIES: Readonly<Record<string, string>> = { "trade-customer": "The cleaner's customer", insurer: "Insurer", seller: "Seller" };

/** Every letter so far, folded: its subject, where it stands, and its words. */
export function Letters({ view, now, place }: { view: EnquiryView; now: string; place: Place }) {
  if (view.letters.length === 0) return null;
  return (
    <section className={css.block}>
      <h2>Letters</h2>
      {view.letters.map((l) => (
        <details key={l.id} className={css.letter}>
          <summary><span dir="auto">{l.subject}</span> <small>{sentenceCase(dayAndClock(l.sentAt ?? l.createdAt, now, place))}. {l.says} {nextTryInWords(l, now, place)}</small></summary>
          <DeskSheet to={<bdi>{l.to}</bdi>} subject={l.subject} text={l.text} label={l.subject} foot={<><Enclosed enclosures={l.enclosures} /><a href={`/desk/letters/${l.id}/eml`} download>Read as .eml</a></>} />
        </details>
      ))}
    </section>
  );
}

/** What the client wrote by mail, folded; what it repeats of earlier letters only on request. */
export function Received({ view, now, place }: { view: EnquiryView; now: string; place: Place }) {
  if (view.post.length === 0) return null;
  return (
    <section className={css.block}>
      <h2>What came by mail</h2>
      {view.post.map((p) => (
        <div key={p.id}>
        <details className={css.letter}>
          <summary><span dir="auto">{p.subject || "Without a subject"}</span> <small>{sentenceCase(dayAndClock(p.arrivedAt, now, place))}. {p.says}</small></summary>
          {p.text && <div className={css.words}><OwnWords text={p.text} /></div>}
          {p.quoted && <details><summary><small>What it repeats of earlier letters</small></summary><p className={`small ${css.words}`} dir="auto">{p.quoted}</p></details>}
          <Link href={`/desk/post/${p.id}`}>See it in the Post</Link>
        </details>
        {p.hidesPerhaps && <FoldedPerhaps postId={p.id} of={p.subject} />}
        <EnclosedFiles post={p} />
        <LeftOut post={p} of={p.subject} />
        </div>
      ))}
    </section>
  );
}

/** Who did what, newest first. */
export function History({ history, now, place }: { history: EnquiryView["history"]; now: string; place: Place }) {
  return (
    <section className={css.block}>
      <h2>What was done</h2>
      <ol className={css.history}>
        {history.map((h, i) => <li key={i}><time dateTime={h.at} className="small num">{dayAndClock(h.at, now, place)}</time><span><bdi>{h.who}</bdi> {h.what}{h.sentences.length > 0 && <AllTheSame sentences={h.sentences} />}</span></li>)}
      </ol>
    </section>
  );
}

/** What a letter was sent with all the same: each sentence once, with what was said of it. */
function AllTheSame({ sentences }: { sentences: EnquiryView["history"][number]["sentences"] }) {
  const once = [...new Set(sentences.map((s) => s.sentence))].map((sentence) => ({ sentence, whys: [...new Set(sentences.filter((s) => s.sentence === sentence).map((s) => s.why))] }));
  return (
    <ul className={css.allTheSame}>
      {once.map(({ sentence, whys }) => <li key={sentence} className="small">{sentence ? <q dir="auto">{sentence}</q> : "Left out:"} {whys.join(" ")}</li>)}
    </ul>
  );
}
