import { Link } from "@/lib/ui/link";
import { Refused } from "@/app/(desk)/_parts/refused";
import { staffCallerOrRedirect } from "@/app/_server/caller";
import { lossValues } from "@/lib/enquiry/table-forms";
import { forbids } from "@/lib/staff/deeds";
import { readSettings } from "@/lib/workshop/settings";
import page from "../../page.module.css";
import tables from "../tables.module.css";
import { LossesForm } from "./losses-form";

const TITLE = "What mistakes cost";
// The title stands in the form, because it begins with "Error:" after a failed attempt.
export const metadata = { title: null };

export default async function Page() {
  const caller = await staffCallerOrRedirect();
  const no = forbids(caller, "change-settings");
  if (no) return <Refused refusal={no} />;
  return (
    <div className={page.narrow}>
      <p className="small"><Link href="/desk/settings">Settings</Link></p>
      <h1>{TITLE}</h1>
      <p className={tables.lead}>
        What is advised is what costs least when it turns out wrong. Each figure is in ordinary cleans: 8 is as bad as eight cleans for
        nothing. They are judgements; write your own where you see it otherwise.
      </p>
      <LossesForm title={TITLE} values={lossValues(await readSettings())} />
    </div>
  );
}
