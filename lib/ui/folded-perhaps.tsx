import { Link } from "./link";

/** That words of a message's writer may be among what was folded, and where that is open. `of`: its subject, for those who hear the link alone; null where it stands beside its words. */
export function FoldedPerhaps({ postId, of }: { postId: string; of: string | null }) {
  return <p className="small no-print">It repeats a letter below, and words of theirs may stand in that: <Link href={`/desk/post/${postId}#repeats`}>open it{of && <span className="unseen">: {of}</span>}</Link>.</p>;
}
