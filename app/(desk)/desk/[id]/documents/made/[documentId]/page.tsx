import { Link } from "@/lib/ui/link";
import { Enclose } from "@/app/(desk)/desk/[id]/enclose";
import { JUDGED_SINCE } from "@/app/(desk)/desk/[id]/judged-since";
import { Refused } from "@/app/(desk)/_parts/refused";
import { staffCallerOrRedirect } from "@/app/_server/caller";
import { readDocument } from "@/lib/enquiry/read-document";
import { PrintedSheet } from "@/lib/ui/printed-document";
import { dayAndClock } from "@/lib/ui/time";
import { readSettings } from "@/lib/workshop/settings";
import css from "./made.module.css";

// The title is the document's own and stands in the page.
export const metadata = { title: null };

interface Props { params: Promise<{ id: string; documentId: string }> }

export default async function Page({ params }: Props) {
  const caller = await staffCallerOrRedirect();
  const { id, documentId } = await params;
  const now = new Date();
  const [read, settings] = await Promise.all([readDocument(caller, { enquiryId: id, documentId }), readSettings()]);
  if (!read.ok) return <Refused refusal={read} />;
  const { document: d, content, reference, newerId, mayEnclose, boxed } = read.value;
  return (
    <div className={css.page}>
      <title>{`${d.title} · ${reference}`}</title>
      <p className="small no-print"><Link href={`/desk/${id}#documents`}>Back to the enquiry</Link> <span className="num">· {reference}</span></p>
      <h1 className={css.h1}><bdi>{d.title}</bdi></h1>
      <p className={css.made}>Version {d.version}, made by <bdi>{d.by}</bdi> <time dateTime={d.at}>{dayAndClock(d.at, now.toISOString(), settings)}</time>. {d.altered ? <><strong>{d.altered.why}</strong> ({dayAndClock(d.altered.at, now.toISOString(), settings)})</> : "It stays as it is."}{d.judgedSince && <> <strong>{JUDGED_SINCE}</strong> ({dayAndClock(d.judgedSince, now.toISOString(), settings)})</>}{newerId && <> There is <Link href={`/desk/${id}/documents/made/${newerId}`}>a newer version</Link>.</>}</p>
      {boxed && <p className={css.boxed}><bdi>{boxed}</bdi></p>}
      <div className={`${css.bar} no-print`}>
        <a className="button quiet" href={`/documents/${d.id}`}>Open the PDF</a>
        {mayEnclose && <Enclose documentId={d.id} isEnclosed={d.isEnclosed} title={d.title} />}
        {d.canMakeAnew && <Link href={`/desk/${id}/documents/${d.rugId}/${d.kind}`}>Make it anew</Link>}
      </div>
      <PrintedSheet document={content} />
    </div>
  );
}
