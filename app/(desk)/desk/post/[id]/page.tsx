import { Link } from "@/lib/ui/link";
import { staffCallerOrRedirect } from "@/app/_server/caller";
import { readPostItem, type RawView } from "@/lib/enquiry/read-post";
import type { PostView } from "@/lib/enquiry/views";
import { EnclosedFiles } from "@/lib/ui/enclosed-files";
import { OwnWords } from "@/lib/ui/own-words";
import { dayAndClock } from "@/lib/ui/time";
import { readSettings } from "@/lib/workshop/settings";
import { Refused } from "../../../_parts/refused";
import css from "../post.module.css";
import { PAGE_TITLE, POST_KINDS, senderOf, subjectOf } from "../words";
import { Sort, type Opens } from "./sort";

// The title stands in the page, because that of a form begins with "Error:" after a failed attempt.
export const metadata = { title: null };

interface Props { params: Promise<{ id: string }> }

/** One message that came, and what can be done with it. Nothing of its HTML or its enclosures is shown: strangers wrote them. */
export default async function Page({ params }: Props) {
  const caller = await staffCallerOrRedirect();
  const { id } = await params;
  const [found, place] = await Promise.all([readPostItem(caller, id), readSettings()]);
  if (!found.ok) return <Refused refusal={found} />;
  const { post, suggested, raw } = found.value;
  const now = new Date().toISOString();
  return (
    <>
      {opensOf(post) !== "with-sender" && <title>{PAGE_TITLE}</title>}
      <p className="small"><Link href="/desk/post">Post</Link></p>
      <h1 dir="auto">{subjectOf(post)}</h1>
      <div className={css.two}>
        <article className={css.sheet} aria-label="The message">
          <div className={css.head}>
            <p>{post.kind && `${POST_KINDS[post.kind]} · `}<bdi>{senderOf(post)}</bdi></p>
            <p className="small num">Came {dayAndClock(post.arrivedAt, now, place)}{post.broughtBy && <>, brought by <bdi>{post.broughtBy}</bdi></>}{post.sentAt && `; dated ${dayAndClock(post.sentAt, now, place)}`}</p>
          </div>
          {post.text && <div className={`letter ${css.text}`}><OwnWords text={post.text} /></div>}
          {post.quoted && <details id="repeats" className={css.quoted} open={post.hidesPerhaps}><summary>What it repeats of earlier letters</summary><pre dir="auto">{post.quoted}</pre></details>}
          {raw && <Raw raw={raw} />}
          <Enclosed post={post} />
        </article>
        <div>
          {post.says && <p dir="auto"><b>{post.says}</b></p>}
          {post.enquiry && <p>It lies with <Link href={`/desk/${post.enquiry.id}`}><bdi>{post.enquiry.title}</bdi></Link> <span className="num">{post.enquiry.reference}</span>.</p>}
          {post.state === "received" && <p>It is kept and will be read in a moment.</p>}
          <Sort key={post.state} postId={post.id} state={post.state} opens={opensOf(post)} isAnswered={post.kind === "letter"} suggested={suggested.map(({ reference, title }) => ({ reference, title }))} />
        </div>
      </div>
    </>
  );
}

/** How an enquiry can be opened with it: at once, or once somebody has written down who sent it. */
const opensOf = ({ kind, from }: PostView): Opens => (kind === "unreadable" ? "not" : from === null ? "with-sender" : "at-once");

/** Of what is no message: how much came, and the first words in it, as bare text. */
function Raw({ raw: { kilobytes, words } }: { raw: RawView }) {
  const size = kilobytes < 1024 ? `${kilobytes} kB` : `${(kilobytes / 1024).toFixed(1)} MB`;
  return (
    <>
      <p className={css.raw}>{size} came{words ? "" : ", and no words can be made out in it"}.</p>
      {words && <details className={css.quoted}><summary>The first words that can be made out</summary><pre dir="auto">{words}</pre></details>}
    </>
  );
}

function Enclosed({ post }: { post: PostView }) {
  const { id, pictures, leftOut, enquiry } = post;
  return (
    <div className={css.foot}>
      {pictures > 0 && <p>{pictures === 1 ? "One photo is enclosed." : `${pictures} photos are enclosed.`} {enquiry ? "What we took of them stands with the enquiry." : pictures === 1 ? "It is taken in with the enquiry." : "They are taken in with the enquiry."}</p>}
      <EnclosedFiles post={post} />
      {leftOut.length > 0 && <><p>Enclosed, and kept with this message alone:</p><ul>{leftOut.map((line) => <li key={line} dir="auto">{line}</li>)}</ul></>}
      <a href={`/desk/post/${id}/eml`} download>Save it as it came (.eml)</a>
    </div>
  );
}
