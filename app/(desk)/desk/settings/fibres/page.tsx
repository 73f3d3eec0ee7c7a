import { Link } from "@/lib/ui/link";
import { Refused } from "@/app/(desk)/_parts/refused";
import { staffCallerOrRedirect } from "@/app/_server/caller";
import { priorValues } from "@/lib/enquiry/table-forms";
import { forbids } from "@/lib/staff/deeds";
import { readSettings } from "@/lib/workshop/settings";
import page from "../../page.module.css";
import tables from "../tables.module.css";
import { FibresForm } from "./fibres-form";

const TITLE = "Which rugs write in";
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
        Of a hundred rugs people ask you about, how many have a pile of each fibre? It is where every judgement begins, before a word of
        the enquiry is read. Ours are a judgement; counts of your own are better.
      </p>
      <FibresForm title={TITLE} values={priorValues(await readSettings())} />
    </div>
  );
}
