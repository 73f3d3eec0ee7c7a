import { staffCallerOrRedirect } from "@/app/_server/caller";
import { listStaff } from "@/lib/staff/people";
import { readSettings } from "@/lib/workshop/settings";
import { Refused } from "../../_parts/refused";
import pageCss from "../page.module.css";
import { Invite } from "./invite";
import { Person } from "./person";
import { ROLE_IDS, ROLES } from "./schema";
import css from "./people.module.css";

export const metadata = { title: "People" };

export default async function Page() {
  const caller = await staffCallerOrRedirect();
  const [people, { locale, timeZone }] = await Promise.all([listStaff(caller), readSettings()]);
  if (!people.ok) return <Refused refusal={people} />;
  const date = new Intl.DateTimeFormat(locale, { timeZone, dateStyle: "long" });
  return (
    <div className={pageCss.narrow}>
      <h1>People</h1>
      <dl className={css.roles}>{ROLE_IDS.map((r) => <div key={r}><dt>{ROLES[r].name}</dt><dd>{ROLES[r].may}</dd></div>)}</dl>
      <ul className={css.people}>
        {people.value.map((p) => <Person key={p.id} person={p} isSelf={p.id === caller.staffId} since={date.format(new Date(p.since))} />)}
      </ul>
      <Invite />
    </div>
  );
}
