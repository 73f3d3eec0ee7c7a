import { Link } from "@/lib/ui/link";
import { Refused } from "@/app/(desk)/_parts/refused";
import { staffCallerOrRedirect } from "@/app/_server/caller";
import { TEST_IDS, testRow } from "@/lib/enquiry/bench-test-schema";
import { readReagents, type ReagentView } from "@/lib/enquiry/read-reagents";
import type { TestId } from "@/lib/trade/bench-tests";
import { REAGENTS } from "@/lib/trade/reagents";
import { lowerFirst, sentenceCase } from "@/lib/ui/figures";
import { dayAndClock, type Place } from "@/lib/ui/time";
import { readSettings } from "@/lib/workshop/settings";
import css from "../tables.module.css";
import { Switch } from "./switch";

export const metadata = { title: "Bench tests and reagents" };

export default async function Page() {
  const reagents = await readReagents(await staffCallerOrRedirect());
  if (!reagents.ok) return <Refused refusal={reagents} />;
  const place = await readSettings();
  const now = new Date().toISOString();
  return (
    <div className={css.wide}>
      <p className="small"><Link href="/desk/settings">Settings</Link></p>
      <h1>Bench tests and reagents</h1>
      <p className={css.lead}>
        A test that needs a flame or a chemical stays off until you have assessed the work for your own workshop, written it down and
        trained those who do it. Your local rules come first; where they differ from what is said here, they hold.
      </p>
      {reagents.value.map((r) => <Reagent key={r.id} reagent={r} now={now} place={place} />)}
    </div>
  );
}

function Reagent({ reagent: { id, on }, now, place }: { reagent: ReagentView; now: string; place: Place }) {
  const { name, assessed, cautions, waste, neverWith } = REAGENTS[id];
  const takesIt = (t: TestId) => testRow(t).reagent === id || Object.values(testRow(t).readingReagents ?? {}).includes(id);
  const opens = TEST_IDS.filter(takesIt).map((t) => testRow(t).name.toLowerCase());
  return (
    <section className={css.reagent} aria-labelledby={`reagent-${id}`}>
      <div>
        <h2 id={`reagent-${id}`}>{sentenceCase(name)}</h2>
        <p className="small">For: {opens.join("; ")}.</p>
        <ul>
          {cautions.map((c) => <li key={c}>{c}</li>)}
          <li>Never near these, nor their waste: {neverWith.map((r) => REAGENTS[r].name).join("; ")}.</li>
          <li>Its own waste: {lowerFirst(waste)}</li>
        </ul>
      </div>
      <div>
        {on && <p><b>On</b> since {dayAndClock(on.at, now, place)}, switched on by <bdi>{on.by}</bdi>.</p>}
        <Switch key={on ? "on" : "off"} id={id} name={name} isOn={on !== null} assessed={assessed} />
      </div>
    </section>
  );
}
