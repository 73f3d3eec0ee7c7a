import type { EnclosedFileView, PostView } from "../enquiry/views";
import css from "./enclosed.module.css";

const sizeOf = ({ kilobytes }: EnclosedFileView): string => (kilobytes < 1024 ? `${kilobytes} kB` : `${(kilobytes / 1024).toFixed(1)} MB`);

/** Files that came with a message and are no photos: each by its name and size, to be saved. Nothing where none came. */
export function EnclosedFiles({ post: { id, files } }: { post: Pick<PostView, "id" | "files"> }) {
  if (files.length === 0) return null;
  return (
    <div className={`${css.enclosed} ${css.came}`}>
      <p>Enclosed files</p>
      <ul>{files.map((f) => <li key={f.at}><a href={`/desk/post/${id}/enclosed/${f.at}`} download><span className="unseen">Save </span><bdi>{f.name}</bdi></a> <small className="num">{sizeOf(f)}</small></li>)}</ul>
      <p className="small">They are kept with the message and nobody has looked into them. Open them only if you trust who sent them.</p>
    </div>
  );
}

/** What else came with a message and is not kept with the enquiry, in sentences, with the message to save. `of`: its subject, for those who hear the link alone; null where it stands beside its words. */
export function LeftOut({ post: { id, leftOut }, of }: { post: Pick<PostView, "id" | "leftOut">; of: string | null }) {
  if (leftOut.length === 0) return null;
  return (
    <div className={`small ${css.enclosed} ${css.came}`}>
      <p>With it, and not shown here:</p>
      <ul>{leftOut.map((line) => <li key={line} dir="auto">{line}</li>)}</ul>
      <a href={`/desk/post/${id}/eml`} download>Save the message with it{of && <span className="unseen">: {of}</span>}</a>
    </div>
  );
}
