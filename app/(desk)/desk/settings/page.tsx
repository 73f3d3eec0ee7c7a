import { Link } from "@/lib/ui/link";
import { staffCallerOrRedirect } from "@/app/_server/caller";
import { forbids } from "@/lib/staff/deeds";
import { ratePerArea, ratePerLength } from "@/lib/words/measures";
import { countJudgedOtherwise } from "@/lib/enquiry/judge-open-anew";
import { EMERGENCY_NUMBERS } from "@/lib/trade/emergency-numbers";
import { readSettings } from "@/lib/workshop/settings";
import { Refused } from "../../_parts/refused";
import css from "../page.module.css";
import { JudgedEarlier } from "./judged-earlier";
import { valuesOf } from "./schema";
import { SettingsForm } from "./settings-form";
import tables from "./tables.module.css";

const TITLE = "Settings";
// The title stands in the form, because it begins with "Error:" after a failed attempt.
export const metadata = { title: null };

export default async function Page() {
  const caller = await staffCallerOrRedirect();
  const no = forbids(caller, "change-settings");
  if (no) return <Refused refusal={no} />;
  const settings = await readSettings();
  const { prices, currency, jurisdiction } = settings;
  const earlier = await countJudgedOtherwise(caller);
  const usual = EMERGENCY_NUMBERS[jurisdiction];
  return (
    <div className={css.narrow}>
      <h1>{TITLE}</h1>
      <ul className={tables.more}>
        <li><Link href="/desk/settings/reagents">Bench tests and reagents</Link> <small>Which tests may be made here.</small></li>
        <li><Link href="/desk/settings/paragraphs">Paragraphs of the letters</Link> <small>What drafts say, and when.</small></li>
        <li><Link href="/desk/settings/losses">What mistakes cost</Link> <small>The figures behind what is advised.</small></li>
        <li><Link href="/desk/settings/fibres">Which rugs write in</Link> <small>Where every judgement of a fibre begins.</small></li>
      </ul>
      <JudgedEarlier count={earlier.ok ? earlier.value : 0} />
      <SettingsForm title={TITLE} values={valuesOf(settings)} usualEmergency={`${usual.number} (${usual.source}${usual.how === "memory" ? ", from memory" : ""})`} unit={settings.areaUnit} rates={{ cleanPerM2: ratePerArea(prices.cleanPerM2, currency, settings), bindingPerM: ratePerLength(prices.bindingPerM, currency, settings) }} />
    </div>
  );
}
