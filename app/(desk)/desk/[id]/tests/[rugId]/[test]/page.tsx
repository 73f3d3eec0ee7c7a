import { randomUUID } from "node:crypto";
import { Link } from "@/lib/ui/link";
import { notFound } from "next/navigation";
import { Refused } from "@/app/(desk)/_parts/refused";
import { staffCallerOrRedirect } from "@/app/_server/caller";
import { isTestId, testRow } from "@/lib/enquiry/bench-test-schema";
import { LABORATORY, WEIGHINGS } from "@/lib/enquiry/laboratory-schema";
import { readEnquiry } from "@/lib/enquiry/read-enquiry";
import type { TestId } from "@/lib/trade/bench-tests";
import { Cautions } from "@/lib/ui/cautions";
import { sentenceCase } from "@/lib/ui/figures";
import { closedReadings, openTests } from "@/lib/workshop/open-tests";
import { readSettings, type WorkshopSettings } from "@/lib/workshop/settings";
import { ReportForm } from "./report-form";
import { TestForm, type Hidden } from "./test-form";
import css from "./test.module.css";
import { WeighingsForm } from "./weighings-form";

// The title stands in the form, because it begins with "Error:" after a failed attempt.
export const metadata = { title: null };

interface Props { params: Promise<{ id: string; rugId: string; test: string }> }

export default async function Page({ params }: Props) {
  const caller = await staffCallerOrRedirect();
  const { id, rugId, test } = await params;
  const [enquiry, settings] = await Promise.all([readEnquiry(caller, id, new Date()), readSettings()]);
  if (!enquiry.ok) return <Refused refusal={enquiry} />;
  const rug = enquiry.value.rugs.find((r) => r.id === rugId);
  if (!rug || !(test === LABORATORY || test === WEIGHINGS || isTestId(test))) notFound();
  // The id is the form's own: sent twice, it is recorded once.
  const form = { id: randomUUID(), enquiryId: id, rugId };
  return (
    <div className={css.page}>
      <p className="small"><Link href={`/desk/${id}#tests-${rugId}`}><bdi>{rug.title}</bdi></Link> <span className="num">· {enquiry.value.reference}</span></p>
      {test === LABORATORY ? <Report form={form} /> : test === WEIGHINGS ? <Weighings form={form} /> : <Bench test={test} form={form} reagents={settings.reagents} />}
    </div>
  );
}

function Bench({ test, form, reagents }: { test: TestId; form: Hidden; reagents: WorkshopSettings["reagents"] }) {
  const { name, tells, cautions, takes } = testRow(test);
  const title = sentenceCase(name);
  return (
    <>
      <h1>{title}</h1>
      <p className={css.tells}>{tells}</p>
      <p className={css.takes}>It takes {takes.fibres}, and about <span className="num">{takes.minutes}</span> minutes.</p>
      <Cautions title="Before you begin" cautions={cautions} />
      {openTests(reagents).includes(test) ? <TestForm test={test} title={title} form={form} closed={closedReadings(test, reagents)} />
        : <p className={css.off}>Switched off here. The owner can switch its reagent on in the settings, once it was assessed for this workshop.</p>}
    </>
  );
}

function Report({ form }: { form: Hidden }) {
  return (
    <>
      <h1>Laboratory report</h1>
      <p className={css.tells}>What a laboratory found in a sample of this rug. It outweighs every other finding.</p>
      <ReportForm title="Laboratory report" form={form} />
    </>
  );
}

function Weighings({ form }: { form: Hidden }) {
  return (
    <>
      <h1>Laboratory’s weighings</h1>
      <p className={css.tells}>Where the report gives masses, the per cents are worked out from them by Regulation (EU) No 1007/2011, Annexes VIII and IX, with agreed allowances.</p>
      <WeighingsForm title="Laboratory’s weighings" form={form} />
    </>
  );
}
