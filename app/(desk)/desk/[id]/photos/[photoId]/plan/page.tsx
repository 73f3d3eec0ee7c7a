import { Link } from "@/lib/ui/link";
import { notFound } from "next/navigation";
import { Refused } from "@/app/(desk)/_parts/refused";
import { staffCallerOrRedirect } from "@/app/_server/caller";
import { measurePlan } from "@/lib/enquiry/measured-plan";
import { readPhotoDesk } from "@/lib/enquiry/read-photo-desk";
import type { PlanView } from "@/lib/enquiry/measured-views";
import { KEPT_WHOLE } from "@/lib/triage/finding";
import { shownAs } from "@/lib/trade/questions";
import { PlanOutline } from "@/lib/ui/marking/plan-outline";
import { PlanDrawing } from "@/lib/ui/plan-drawing";
import { size } from "@/lib/words/measures";
import { Places, wayInWords } from "@/lib/ui/plan-reading";
import { cutName } from "@/lib/ui/plan-words";
import { PrintButton } from "@/lib/ui/print-button";
import { readSettings } from "@/lib/workshop/settings";
import css from "./plan.module.css";

export const metadata = { title: "Plan and cut-down" };

interface Props { params: Promise<{ id: string; photoId: string }> }

/** The kept plan on paper: the photo as it was marked, the rug from above, and each way of cutting it down, to scale. */
export default async function Page({ params }: Props) {
  const caller = await staffCallerOrRedirect();
  const { id, photoId } = await params;
  const [read, workshop] = await Promise.all([readPhotoDesk(caller, { enquiryId: id, photoId }), readSettings()]);
  if (!read.ok) return <Refused refusal={read} />;
  const { rug, reference, photo, measurements, money } = read.value;
  const kept = measurements.find((m): m is PlanView => m.kind === "plan" && m.withdrawn === null);
  const measured = kept ? measurePlan(kept.marks) : null;
  if (!kept || !measured || typeof measured === "string") notFound();
  const { marks } = kept;
  return (
    <div className={css.page}>
      <p className="small no-print"><Link href={`/desk/${id}/photos/${photoId}?mark=plan`}>Back to the photo</Link></p>
      <div className={css.sheets}>
        <div className={css.above}><p className={`small ${css.head}`}><bdi>{workshop.name}</bdi><span className="num">{reference}</span></p></div>
        <div className={css.below}>
          <h1>Plan of <bdi>{rug.title}</bdi></h1>
          <p className={css.first}>About {size(marks.widthCm, marks.lengthCm, money)}. All measures were taken from a photo and are confirmed on the rug before anything is cut.</p>
          <div className={css.two}>
            <div className={css.photo}>
              <img src={`/photos/${photoId}/1600`} alt={`${shownAs(photo.kind).ask} of ${rug.title}, as it was marked`} width={photo.width} height={photo.height} />
              <svg viewBox={`0 0 ${photo.width} ${photo.height}`} aria-hidden="true" focusable="false"><PlanOutline photo={photo} corners={marks.corners} outlines={marks.damaged} /></svg>
            </div>
            <div><PlanDrawing measured={measured} borderCm={marks.borderCm} way={null} figures={money} /><Places measured={measured} figures={money} /></div>
          </div>
          {measured.ways.length > 0 && marks.chosen === null && <p>No cut-down is chosen. What could be kept:</p>}
          {measured.ways.length > 0 && marks.chosen === KEPT_WHOLE && <p>It was decided not to cut it down. What could be kept:</p>}
          {[...measured.ways].sort((a, b) => Number(b.kind === marks.chosen) - Number(a.kind === marks.chosen)).map((way) => (
            <section key={way.kind} className={css.way} aria-label={cutName(way.kind)}>
              <PlanDrawing measured={measured} borderCm={marks.borderCm} way={way} figures={money} />
              <div>
                <h2>{cutName(way.kind)}</h2>
                <p className="num">{wayInWords(way, money)}.</p>
                {marks.chosen === way.kind && <p className={css.chosen}>Chosen</p>}
              </div>
            </section>
          ))}
          <p className={css.last}>Cutting cannot be undone. Nothing is cut before its owner has agreed to the line on the rug itself; a signed, dated or antique rug is shown to a valuer first. The cost is that of the new edges alone.</p>
        </div>
      </div>
      <div className="no-print"><PrintButton label="Print this page" /></div>
    </div>
  );
}
