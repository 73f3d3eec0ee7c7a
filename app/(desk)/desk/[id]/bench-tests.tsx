import { Link } from "@/lib/ui/link";
import { isTestId, TEST_IDS, testRow } from "@/lib/enquiry/bench-test-schema";
import { LABORATORY, WEIGHINGS } from "@/lib/enquiry/laboratory-schema";
import type { BenchTestView, RugView } from "@/lib/enquiry/views";
import { lowerFirst, sentenceCase } from "@/lib/ui/figures";
import type { HeadingLevel } from "@/lib/ui/judgement";
import { dayAndClock, type Place } from "@/lib/ui/time";
import { withdraw } from "./actions";
import css from "./bench-tests.module.css";
import { Withdraw } from "./withdraw";

interface Props {
  enquiryId: string;
  rug: RugView;
  /** Ids of the tests that may be recorded here. */
  open: readonly string[];
  mayRecord: boolean;
  as: HeadingLevel;
  now: string;
  place: Place;
}

/** What was tested of a rug and what it said; and the way to record another. */
export function BenchTests({ enquiryId, rug, open, mayRecord, as: H, now, place }: Props) {
  const title = `tests-${rug.id}`;
  return (
    <section className={css.tests} aria-labelledby={title}>
      <H id={title}>Bench tests</H>
      {rug.tests.length === 0 && <p className={css.none}>Nothing has been tested yet. A test speaks louder than words and photos.</p>}
      <ol className={css.list}>{rug.tests.map((t) => <Recorded key={t.id} test={t} as={H === "h2" ? "h3" : "h4"} now={now} place={place} mayWithdraw={mayRecord} />)}</ol>
      {mayRecord && <Another at={`/desk/${enquiryId}/tests/${rug.id}`} open={open} />}
    </section>
  );
}

function Recorded({ test: t, as: H, now, place, mayWithdraw }: { test: BenchTestView; as: "h3" | "h4"; now: string; place: Place; mayWithdraw: boolean }) {
  const what = <>{sentenceCase(t.name)} <small>of {t.of}</small></>;
  return (
    <li className={t.withdrawn ? css.withdrawn : undefined}>
      <H className={css.name}>{t.withdrawn ? <s>{what}</s> : what}</H>
      <p className="small"><bdi>{t.by}</bdi>, <time dateTime={t.at}>{dayAndClock(t.at, now, place)}</time></p>
      <dl className={css.readings}>
        {t.readings.map((r) => <div key={r.ask}><dt>{r.ask}</dt><dd dir="auto">{t.withdrawn ? <s>{r.says}</s> : r.says}</dd></div>)}
      </dl>
      {t.says.map((s) => <p key={s} className={css.says}>{s}</p>)}
      {t.withdrawn && (
        <p className={css.says}><b>Withdrawn</b> by <bdi>{t.withdrawn.by}</bdi>, {dayAndClock(t.withdrawn.at, now, place)}: <span dir="auto">{t.withdrawn.why}</span></p>
      )}
      {mayWithdraw && <Withdraw id={t.id} isWithdrawn={t.withdrawn !== null} withdraw={withdraw} done="The rug was judged anew without it." />}
    </li>
  );
}

/** The tests to choose from, each with what it tells; those that are switched off are named. */
function Another({ at, open }: { at: string; open: readonly string[] }) {
  const off = TEST_IDS.filter((id) => !open.includes(id)).map((id) => testRow(id).name);
  return (
    <details className={`${css.another} no-print`}>
      <summary>Record a test or a report</summary>
      <ul>
        {open.filter(isTestId).map((id) => (
          <li key={id}><Link href={`${at}/${id}`}>{sentenceCase(testRow(id).name)}</Link> <small>{testRow(id).tells}</small></li>
        ))}
        <li>
          <Link href={`${at}/${LABORATORY}`}>Laboratory report</Link>
          <small>What a laboratory found, in per cent; or <Link href={`${at}/${WEIGHINGS}`}>its weighings</Link>, where it gives those.</small>
        </li>
      </ul>
      {off.length > 0 && <p className="small">Switched off by the owner, because of what they take: {off.map(lowerFirst).join("; ")}.</p>}
    </details>
  );
}
