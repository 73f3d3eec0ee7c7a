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
