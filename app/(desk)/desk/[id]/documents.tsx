import { Link } from "@/lib/ui/link";
import type { PlanLack } from "@/lib/enquiry/measured-views";
import type { DocumentView, EnquiryView, RugView } from "@/lib/enquiry/views";
import { longDay } from "@/lib/enquiry/workshop-day";
import { DOCUMENTS } from "@/lib/reply/documents/offered";
import { dayAndClock, type Place } from "@/lib/ui/time";
import { withdrawSeen } from "./actions";
import css from "./documents.module.css";
import block from "./enquiry.module.css";
import { Enclose } from "./enclose";
import { JUDGED_SINCE } from "./judged-since";
import { wentWith } from "./went-with";
import { Withdraw } from "./withdraw";

interface Show { view: EnquiryView; now: string; place: Place }

/** What was made on paper of an enquiry, what goes with the letter, and what else can be made. */
export function Documents({ view, now, place }: Show) {
  return (
    <section id="documents" className={`${block.block} ${css.documents}`} aria-labelledby="documents-title">
      <h2 id="documents-title">Documents</h2>
      {view.documents.length === 0 && <p className={css.none}>None made yet.</p>}
      <ul className={css.list}>{[...view.documents].reverse().map((d) => <Made key={d.id} document={d} view={view} now={now} place={place} />)}</ul>
      {view.rugs.map((rug) => <OfRug key={rug.id} rug={rug} view={view} place={place} />)}
    </section>
  );
}

function Made({ document: d, view, now, place }: { document: DocumentView } & Show) {
  return (
    <li>
      <p className={css.name}><Link href={`/desk/${view.id}/documents/made/${d.id}`}><bdi>{d.title}</bdi></Link> {d.version > 1 && <small>version {d.version}</small>}</p>
      <p className="small">
        Made by <bdi>{d.by}</bdi> <time dateTime={d.at}>{dayAndClock(d.at, now, place)}</time>{wentWith(d)}. <a href={`/documents/${d.id}`}>PDF<span className="unseen"> of {d.title}</span></a>, {d.kilobytes} kB
      </p>
      {d.altered && <p className={css.altered}>{d.altered.why} <small><time dateTime={d.altered.at}>{dayAndClock(d.altered.at, now, place)}</time></small></p>}
      {d.judgedSince && <p className={css.altered}>{JUDGED_SINCE} <small><time dateTime={d.judgedSince}>{dayAndClock(d.judgedSince, now, place)}</time></small></p>}
      {view.may.enclose && <Enclose documentId={d.id} isEnclosed={d.isEnclosed} title={d.title} />}
    </li>
  );
}

const LACKS = {
  photo: { why: "there is no photo of the rug from above", mend: "" },
  corners: { why: "its corners and its damage are not marked in a photo", mend: "Mark them" },
  damage: { why: "no damage is outlined on its plan", mend: "Outline it" },
  way: { why: "no way of cutting it down is chosen on its plan", mend: "Choose one" },
  decision: { why: "it was decided on its plan not to cut it down", mend: "Decide anew" },
} as const satisfies Record<PlanLack["lacks"], { why: string; mend: string }>;

/** Why no cut-down plan can be made yet, and the way to what is missing. */
function PlanLacks({ lacks, photoId, enquiryId }: PlanLack & { enquiryId: string }) {
  const { why, mend } = LACKS[lacks];
  return (
    <li>
      {DOCUMENTS["cut-down-plan"].name}
      <small>Not yet: {why}.{photoId && <> <Link href={`/desk/${enquiryId}/photos/${photoId}?mark=plan`}>{mend}<span className="unseen"> for the cut-down plan</span></Link></>}</small>
    </li>
  );
}

/** The inspection of a rug that a report goes by, and what can be made of it. */
function OfRug({ rug, view, place }: { rug: RugView; view: EnquiryView; place: Place }) {
  const at = `/desk/${view.id}/documents/${rug.id}`;
  const { inspection } = rug;
  return (
    <div className={css.rug}>
      {view.rugs.length > 1 && <h3><bdi>{rug.title}</bdi></h3>}
      {inspection
        ? <p className={css.seen}>Inspected by <bdi>{inspection.by}</bdi> on {longDay(inspection.day, place.locale)}: <span dir="auto">{inspection.found}</span> {inspection.isBeyondRepair ? "Beyond economic repair." : "Not beyond economic repair."}{inspection.isOvertaken && " Flood or waste water was told of only after that: letters and reports leave this verdict out until somebody has looked again."}</p>
        : <p className={css.seen}>Not inspected, so a report on it is provisional.</p>}
      {view.may.inspect && (
        <div className={css.inspect}>
          <Link href={`${at}/inspection`}>{inspection ? "Record another inspection" : "Record an inspection"}</Link>
          {inspection && <Withdraw key={inspection.id} id={inspection.id} isWithdrawn={false} withdraw={withdrawSeen} done="It no longer counts." />}
        </div>
      )}
      {rug.offers.length > 0 && (
        <details className={`${css.make} no-print`}>
          <summary>Make a document</summary>
          <ul>
            {rug.offers.map((kind) => <li key={kind}><Link href={`${at}/${kind}`}>{DOCUMENTS[kind].name}</Link> <small>{DOCUMENTS[kind].tells}</small></li>)}
            {rug.planLack && <PlanLacks {...rug.planLack} enquiryId={view.id} />}
          </ul>
        </details>
      )}
    </div>
  );
}
