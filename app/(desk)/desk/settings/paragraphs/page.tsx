import { Link } from "@/lib/ui/link";
import { Refused } from "@/app/(desk)/_parts/refused";
import { staffCallerOrRedirect } from "@/app/_server/caller";
import type { ParagraphLine, PlaceOfParagraphs } from "@/lib/enquiry/paragraph-views";
import { readParagraphs } from "@/lib/enquiry/read-paragraphs";
import { readSettings } from "@/lib/workshop/settings";
import tables from "../tables.module.css";
import css from "./paragraphs.module.css";
import { ToneForm } from "./tone-form";

export const metadata = { title: "Paragraphs of the letters" };

export default async function Page() {
  const places = await readParagraphs(await staffCallerOrRedirect());
  if (!places.ok) return <Refused refusal={places} />;
  const { tone } = await readSettings();
  return (
    <div className={tables.wide}>
      <p className="small"><Link href="/desk/settings">Settings</Link></p>
      <h1>Paragraphs of the letters</h1>
      <p className={tables.lead}>
        Every draft is put together from these, from the top down. Within a place they are tried in order, and the first whose condition
        holds is used. Change any of them, or add your own; letters that were approved keep the words they used.
      </p>
      <div className={css.head}>
        <ToneForm tone={tone} />
        <Link className="button quiet" href="/desk/settings/paragraphs/new">Write one of your own</Link>
      </div>
      <Places places={places.value} />
      {places.value.map((place) => <Place key={place.id} place={place} />)}
    </div>
  );
}

/** The page is long: what it holds, in the order of a letter, each name leading to its place. */
function Places({ places }: { places: PlaceOfParagraphs[] }) {
  return (
    <nav aria-label="Places in a letter">
      <ol className={css.places}>
        {places.map(({ id, name, paragraphs }) => (
          <li key={id}><a href={`#place-${id}`}>{name}</a> <span className="small">{paragraphs.length}</span></li>
        ))}
      </ol>
    </nav>
  );
}

function Place({ place: { id, name, ofEachRug, paragraphs } }: { place: PlaceOfParagraphs }) {
  return (
    <section className={css.place} aria-labelledby={`place-${id}`}>
      <div className={css.of}>
        <h2 id={`place-${id}`}>{name}</h2>
        <p className="small">{ofEachRug ? "For each rug" : "Once in a letter"}</p>
      </div>
      {paragraphs.length === 0 ? <p className="small">Nothing stands here yet.</p> : (
        <ol className={css.rows}>{paragraphs.map((p) => <Row key={p.id} paragraph={p} />)}</ol>
      )}
    </section>
  );
}

function Row({ paragraph: { id, text, when, from, version, off, tones } }: { paragraph: ParagraphLine }) {
  const marks = [off && "Switched off", from === "workshop" && `Your words, version ${version}`, tones > 0 && (tones === 1 ? "One variant" : `${tones} variants`)].filter(Boolean);
  return (
    <li className={off ? css.off : undefined}>
      <Link href={`/desk/settings/paragraphs/${id}`} className={`letter ${css.words}`}>{text}</Link>
      <p className="small">{when.length === 0 ? "Always, where nothing above it was used." : `${when.join(". ")}.`}</p>
      {marks.length > 0 && <p className={css.marks}>{marks.join(" · ")}</p>}
    </li>
  );
}
