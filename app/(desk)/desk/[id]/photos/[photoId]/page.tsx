import { Link } from "@/lib/ui/link";
import { Refused } from "@/app/(desk)/_parts/refused";
import { staffCallerOrRedirect } from "@/app/_server/caller";
import { readPhotoDesk } from "@/lib/enquiry/read-photo-desk";
import type { PhotoDeskView } from "@/lib/enquiry/measured-views";
import { shownAs } from "@/lib/trade/questions";
import { readSettings } from "@/lib/workshop/settings";
import { Kept } from "./kept";
import css from "./photo.module.css";
import { LabelDesk } from "./label-desk";
import { PlanDesk } from "./plan-desk";
import { Shows } from "./shows";
import { SpotsDesk } from "./spots-desk";

// The title is the photo's own and stands in the page.
export const metadata = { title: null };

/** What can be measured in a photo; the first where the address names none. */
const WAYS = [
  { mark: undefined, name: "Two spots", kind: "spots" },
  { mark: "plan", name: "Plan and cut-down", kind: "plan" },
  { mark: "label", name: "Label", kind: null },
] as const;
type Way = (typeof WAYS)[number];
const hrefOf = (enquiryId: string, photoId: string, { mark }: Way) => `/desk/${enquiryId}/photos/${photoId}${mark ? `?mark=${mark}` : ""}`;

interface Props { params: Promise<{ id: string; photoId: string }>; searchParams: Promise<{ mark?: string }> }

export default async function Page({ params, searchParams }: Props) {
  const caller = await staffCallerOrRedirect();
  const [{ id, photoId }, { mark }] = await Promise.all([params, searchParams]);
  const [read, place] = await Promise.all([readPhotoDesk(caller, { enquiryId: id, photoId }), readSettings()]);
  if (!read.ok) return <Refused refusal={read} />;
  const view = read.value;
  const way = WAYS.find((w) => w.mark === mark) ?? WAYS[0];
  const name = shownAs(view.photo.kind).ask;
  return (
    <div className={css.page}>
      <title>{`${name} · ${view.reference}`}</title>
      <p className="small no-print"><Link href={`/desk/${id}`}><bdi>{view.rug.title}</bdi></Link> <span className="num">· {view.reference}</span></p>
      <h1>{name}</h1>
      <Shows key={photoId} photoId={photoId} kind={view.photo.kind} />
      <nav className={`${css.ways} no-print`} aria-label="What to measure">
        {WAYS.map((w) => <Link key={w.name} href={hrefOf(id, photoId, w)} aria-current={w === way ? "page" : undefined}>{w.name}</Link>)}
      </nav>
      {way.mark === undefined && <SpotsDesk key={photoId} view={view} />}
      {way.mark === "plan" && <PlanDesk key={photoId} view={view} />}
      {way.mark === "label" && <LabelDesk key={photoId} photo={view.photo} />}
      {way.kind && <Kept view={view} kind={way.kind} now={new Date().toISOString()} place={place} />}
      <Others view={view} way={way} />
    </div>
  );
}

function Others({ view: { enquiryId, others, rug }, way }: { view: PhotoDeskView; way: Way }) {
  if (others.length === 0) return null;
  return (
    <section className={`${css.others} no-print`} aria-label={`Other photos of ${rug.title}`}>
      <h2>Other photos of this rug</h2>
      <ul>
        {others.map((p) => (
          <li key={p.id}>
            <Link href={hrefOf(enquiryId, p.id, way)}><img src={`/photos/${p.id}/320`} alt={shownAs(p.kind).ask} width={p.width} height={p.height} loading="lazy" /></Link>
          </li>
        ))}
      </ul>
    </section>
  );
}
