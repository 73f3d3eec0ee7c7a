import type { EnclosureView } from "../enquiry/views";
import css from "./enclosed.module.css";

/** What goes with a letter, each to be opened; nothing where nothing does. */
export function Enclosed({ enclosures, title = "With this letter" }: { enclosures: readonly EnclosureView[]; title?: string }) {
  if (enclosures.length === 0) return null;
  return (
    <div className={css.enclosed}>
      <p>{title}</p>
      <ul>{enclosures.map((e) => <li key={e.id}><a href={`/documents/${e.id}`}><bdi>{e.title}</bdi></a> <small>PDF</small></li>)}</ul>
    </div>
  );
}
