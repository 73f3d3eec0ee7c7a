import { Link } from "@/lib/ui/link";
import { notFound } from "next/navigation";
import { Refused } from "@/app/(desk)/_parts/refused";
import { staffCallerOrRedirect } from "@/app/_server/caller";
import type { ParagraphView } from "@/lib/enquiry/paragraph-views";
import { readParagraph } from "@/lib/enquiry/read-paragraphs";
import { dayAndClock } from "@/lib/ui/time";
import { readSettings } from "@/lib/workshop/settings";
import tables from "../../tables.module.css";
import { keepParagraph } from "../actions";
import css from "../paragraphs.module.css";
import { Back } from "./back";
import { ParagraphForm } from "./paragraph-form";

// The title stands in the form, because it begins with "Error:" after a failed attempt.
export const metadata = { title: null };
const NEW = "new";

export default async function Page({ params }: { params: Promise<{ id: string }> }) {
  const caller = await staffCallerOrRedirect();
  const { id } = await params;
  const read = await readParagraph(caller, id === NEW ? null : id);
  if (!read.ok && read.code === "not-found") notFound();
  if (!read.ok) return <Refused refusal={read} />;
  const view = read.value;
  const place = view.places.find((p) => p.id === view.values["place"])?.name ?? "";
  const restored = view.versions.filter((v) => v.text === null).length;
  const title = view.id === null ? "A paragraph of your own" : `Paragraph: ${place.toLowerCase()}`;
  return (
    <div className={tables.wide}>
      <p className="small"><Link href="/desk/settings">Settings</Link> · <Link href="/desk/settings/paragraphs">Paragraphs of the letters</Link></p>
      <h1>{view.id === null ? title : place}</h1>
      <ParagraphForm key={`${view.id}-${restored}`} view={view} title={title} action={keepParagraph.bind(null, view.id, view.seen)} />
      <History view={view} />
    </div>
  );
}

/** What the paragraph said before, and the way back. */
async function History({ view: { id, seen, shippedText, versions } }: { view: ParagraphView }) {
  if (id === null || versions.length === 0) return null;
  const [place, now] = [await readSettings(), new Date().toISOString()];
  return (
    <section className={css.history} aria-labelledby="history">
      <h2 id="history">What it said before</h2>
      <Back id={id} seen={seen} shippedText={shippedText} />
      <ol>
        {versions.map((v) => (
          <li key={v.version}>
            <p className="small">Version {v.version}, <bdi>{v.by}</bdi>, {dayAndClock(v.at, now, place)}</p>
            <p className="letter">{v.text ?? "Back to the shipped text."}</p>
            {v.reason && <p className="small">Says more than we know, kept because: “{v.reason}”</p>}
          </li>
        ))}
      </ol>
    </section>
  );
}
