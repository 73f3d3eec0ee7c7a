import { Link } from "@/lib/ui/link";
import { staffCallerOrRedirect } from "@/app/_server/caller";
import { readPost, type MailboxView, type SuppressedView } from "@/lib/enquiry/read-post";
import type { PostView } from "@/lib/enquiry/views";
import { countInWords, sentenceCase } from "@/lib/ui/figures";
import { KeepFresh } from "@/lib/ui/keep-fresh";
import { dayAndClock, type Place } from "@/lib/ui/time";
import { readSettings } from "@/lib/workshop/settings";
import { Refused } from "../../_parts/refused";
import { Drop } from "./drop";
import { Lift } from "./lift";
import css from "./post.module.css";
import { POST_KINDS, senderOf, subjectOf } from "./words";

export const metadata = { title: "Post" };

interface Show { now: string; place: Place }

export default async function Page() {
  const caller = await staffCallerOrRedirect();
  const [post, place] = await Promise.all([readPost(caller), readSettings()]);
  if (!post.ok) return <Refused refusal={post} />;
  const { open, settled, suppressed, mailbox, mayLift } = post.value;
  const show = { now: new Date().toISOString(), place };
  const here = (state: PostView["state"]) => settled.filter((p) => p.state === state);
  return (
    <>
      <h1>{waitingInPost(open.length)}</h1>
      <Mailbox mailbox={mailbox} {...show} />
      <Drop />
      <Group name="Waits for you" says="Say where each belongs." posts={open} {...show} />
      <Group name="With their enquiries" says="Answers, letters that became enquiries, and what came back." posts={here("filed")} {...show} />
      <Group name="Put aside" says="Kept; nothing needs doing." posts={here("aside")} {...show} />
      {suppressed.length > 0 && <Suppressed suppressed={suppressed} mayLift={mayLift} {...show} />}
      <KeepFresh />
    </>
  );
}

const waitingInPost = (n: number): string => (n === 0 ? "Nothing waits in the Post" : `${sentenceCase(countInWords(n))} ${n === 1 ? "waits" : "wait"} in the Post`);

function Mailbox({ mailbox, now, place }: { mailbox: MailboxView | null } & Show) {
  if (!mailbox) return <p className={css.note}>No mailbox is set up: letters come in as files, below. The README says how to have a mailbox read.</p>;
  const { name, trouble, troubleSince, lookedAt } = mailbox;
  if (trouble !== null) {
    return <p className={css.note}><strong>The mailbox <bdi>{name}</bdi> cannot be read{troubleSince && ` since ${dayAndClock(troubleSince, now, place)}`}.</strong> {trouble} It is tried again by itself.</p>;
  }
  return <p className={css.note}>The mailbox <bdi>{name}</bdi> {lookedAt ? `was read last ${dayAndClock(lookedAt, now, place)}` : "is being read for the first time"}. Nothing in it is changed from here.</p>;
}

function Group({ name, says, posts, now, place }: { name: string; says: string; posts: PostView[] } & Show) {
  if (posts.length === 0) return null;
  return (
    <section className={css.group}>
      <h2>{name} <small className="num">{posts.length}</small></h2>
      <p className="small">{says}</p>
      <ul className={css.list}>{posts.map((p) => <Message key={p.id} post={p} now={now} place={place} />)}</ul>
    </section>
  );
}

function Message({ post: p, now, place }: { post: PostView } & Show) {
  return (
    <li className={css.message}>
      <div className={css.what}>
        <Link href={`/desk/post/${p.id}`} dir="auto">{subjectOf(p)}</Link>
        <small>{p.kind && <>{POST_KINDS[p.kind]} · </>}<bdi>{senderOf(p)}</bdi>{p.pictures > 0 && <> · <span className="num">{p.pictures}</span> {p.pictures === 1 ? "photo" : "photos"}</>}</small>
      </div>
      <div className={css.says}>
        {p.readFirst && <><strong dir="auto">{p.readFirst.why}</strong>{" "}</>}
        {p.says && <span dir="auto">{p.says}</span>}
        {p.enquiry && <small><Link href={`/desk/${p.enquiry.id}`}><bdi>{p.enquiry.title}</bdi></Link> <span className="num">{p.enquiry.reference}</span></small>}
      </div>
      <time dateTime={p.arrivedAt} className="small num">{dayAndClock(p.arrivedAt, now, place)}</time>
    </li>
  );
}

function Suppressed({ suppressed, mayLift, now, place }: { suppressed: SuppressedView[]; mayLift: boolean } & Show) {
  return (
    <section className={css.group}>
      <h2>Addresses that take no mail <small className="num">{suppressed.length}</small></h2>
      <p className="small">They refused for good. No letter is sent there until somebody says why it should be; ring them instead.</p>
      <ul className={css.list}>
        {suppressed.map((s) => (
          <li key={s.address} className={css.message}>
            <div className={css.what}><b><bdi>{s.address}</bdi></b><small><bdi>{s.name}</bdi></small></div>
            <div className={css.says}><span dir="auto">{s.why}</span>{mayLift && <Lift address={s.address} />}</div>
            <time dateTime={s.since} className="small num">{dayAndClock(s.since, now, place)}</time>
          </li>
        ))}
      </ul>
    </section>
  );
}
