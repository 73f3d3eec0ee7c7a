import Link from "next/link";
import { Refused } from "@/app/(desk)/_parts/refused";
import { staffCallerOrRedirect } from "@/app/_server/caller";
import { readPhotoDesk } from "@/lib/enquiry/read-photo-desk";
import type { PhotoDeskView } from "@/lib/enquiry/views";
import { PHOTO_KINDS } from "@/lib/trade/questions";
import { readSettings } from "@/lib/workshop/settings";
import { Kept } from "./kept";
import css from "./photo.module.css";
import { PlanDesk } from "./plan-desk";
import { SpotsDesk } from "./spots-desk";

// The title is the photo's own and stands in the page.
export const metadata = { title: null };

interface Props { params: Promise<{ id: string; photoId: string }>; searchParams: Promise<{ mark?: string }> }

export default async function Page({ params, searchParams }: Props) {
  const caller = await staffCallerOrRedirect();
  const [{ id, photoId }, { mark }] = await Promise.all([params, searchParams]);
  const [read, place] = await Promise.all([readPhotoDesk(caller, { enquiryId: id, photoId }), readSettings()]);
  if (!read.ok) return <Refused refusal={read} />;
  const view = read.value;
  const isPlan = mark === "plan";
  const name = PHOTO_KINDS[view.photo.kind].ask;
  return (
    <div className={css.page}>
      <title>{`${name} · ${view.reference}`}</title>
      <p className="small no-print"><Link href={`/desk/${id}`}><bdi>{view.rug.title}</bdi></Link> <span className="num">· {view.reference}</span></p>
      <h1>{name}</h1>
      <nav className={`${css.ways} no-print`} aria-label="What to measure">
        <Link href={`/desk/${id}/photos/${photoId}`} aria-current={isPlan ? undefined : "page"}>Two spots</Link>
        <Link href={`/desk/${id}/photos/${photoId}?mark=plan`} aria-current={isPlan ? "page" : undefined}>Plan and cut-down</Link>
      </nav>
      {isPlan ? <PlanDesk key={photoId} view={view} /> : <SpotsDesk key={photoId} view={view} />}
      <Kept view={view} kind={isPlan ? "plan" : "spots"} now={new Date().toISOString()} place={place} />
      <Others view={view} isPlan={isPlan} />
    </div>
  );
}

function Others({ view: { enquiryId, others, rug }, isPlan }: { view: PhotoDeskView; isPlan: boolean }) {
  if (others.length === 0) return null;
  return (
    <section className={`${css.others} no-print`} aria-label={`Other photos of ${rug.title}`}>
      <h2>Other photos of this rug</h2>
      <ul>
        {others.map((p) => (
          <li key={p.id}>
            <Link href={`/desk/${enquiryId}/photos/${p.id}${isPlan ? "?mark=plan" : ""}`}><img src={`/photos/${p.id}/320`} alt={PHOTO_KINDS[p.kind].ask} width={p.width} height={p.height} loading="lazy" /></Link>
          </li>
        ))}
      </ul>
    </section>
  );
}
