import type { UsedParagraphs as Used } from "@/lib/enquiry/read-used-paragraphs";
import css from "./used-paragraphs.module.css";

/** From which paragraphs, in which version, the draft was put together. */
export function UsedParagraphs({ used }: { used: Used | null }) {
  if (!used) return null;
  return (
    <details className={`no-print ${css.used}`}>
      <summary>The paragraphs of the draft</summary>
      <p className="small">What version {used.revision}, by the program, was put together from. What was changed by hand since is not in it.</p>
      <ol>
        {used.paragraphs.map((p, i) => (
          <li key={i}>
            <p className="small">{p.place ?? "No longer among the paragraphs"}: {p.from === "workshop" ? "your words" : "as shipped"}, version {p.version}</p>
            {p.text && <p className="letter">{p.text}</p>}
          </li>
        ))}
      </ol>
    </details>
  );
}
