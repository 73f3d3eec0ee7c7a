import { Link } from "@/lib/ui/link";
import type { EnquiryView } from "@/lib/enquiry/views";
import css from "./since.module.css";

/** Letters from the client's address of which nobody has said yet that they belong here, above the letter that would leave without them. */
export function InPost({ view: { inPost, client } }: { view: EnquiryView }) {
  if (inPost.length === 0) return null;
  return (
    <section className={css.since} aria-label="In the Post from this address">
      <p className={css.why}><b>{inPost.length === 1 ? "A letter" : `${inPost.length} letters`} from <bdi>{client.name}</bdi>’s address {inPost.length === 1 ? "waits" : "wait"} in the Post.</b> Say first where {inPost.length === 1 ? "it belongs" : "they belong"}.</p>
      {inPost.map(({ id, subject }) => <p key={id}><Link href={`/desk/post/${id}`}><bdi>{subject || "No subject"}</bdi></Link></p>)}
    </section>
  );
}
