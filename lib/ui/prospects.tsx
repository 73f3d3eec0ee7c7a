import { Link } from "./link";
import { cutDownPhrase } from "../reply/cut-down-price";
import { beyondTold, isHarmTold, isWorthAsked } from "../reply/damage-told";
import { verdictIn } from "../reply/inspected";
import { AMOUNT_PHRASES, harmFigures, improvementFigures } from "../reply/phrases";
import type { ToldByLetter } from "../reply/told-by-letter";
import { METHODS } from "../trade/care";
import { TEXTURE_GRADES } from "../trade/texture";
import type { Assessment, Verdict } from "../triage/assessment";
import { wordsForChance } from "../triage/words";
import { ComesBackLine } from "./comes-back-line";
import { chancePercent, lowerFirst, sentenceCase } from "./figures";
import type { HeadingLevel } from "./judgement";
import { Length, spoken } from "./length";
import { Measure, Measures } from "./measure-row";
import { VERDICT_NAMES } from "./names";
import type { Words } from "../words/words";
import { YearsBand } from "./years-band";
import css from "./judgement.module.css";

/** What comes back, what may get worse, and whether it is beyond repair, where the letter tells of it; where it tells nothing, or there is no figure, why. */
export function Expected({ assessment: a, letter, words }: { assessment: Assessment; letter: ToldByLetter; words: Words }) {
  const { inspection } = letter;
  const verdict = inspection && <p className={css.plain}><bdi>{verdictIn(inspection, words)}</bdi></p>;
  if (letter.isHeldBack && letter.comesBackOpen) return <><p className={css.plain}>{sentenceCase(letter.comesBackOpen)}: the letter tells nothing yet of gain, harm{verdict ? "" : ", worth"} or years.</p>{verdict}</>;
  return (
    <>
      <Measures>
        {a.improvement && !letter.comesBackOpen && <Measure name="Comes back by" chart={<ComesBackLine improvement={a.improvement} />} figures={improvementFigures(a.improvement)} />}
        <Texture texture={a.texture} />
        <Chance name="The smell comes back in damp weather" share={a.odour?.returns ?? null} note={a.odour && a.odour.now < 1 ? `if it smells, which is ${wordsForChance({ probability: a.odour.now, low: a.odour.now })}` : undefined} />
        <Chance name="Made worse by cleaning" share={a.worse} figures={a.worse === null ? undefined : harmFigures(a.worse)} />
        <Chance name={isHarmTold(a) ? "Beyond economic repair" : "Work not worth its cost"} share={inspection ? null : beyondTold(a)} note="provisional, not inspected" />
      </Measures>
      {letter.comesBackOpen && <p className={css.plain}>{sentenceCase(letter.comesBackOpen)}.</p>}
      {verdict}
      {!inspection && a.beyondRepair !== null && !isWorthAsked(a) && <p className={css.plain}>{UNASKED}</p>}
      {whyUnstated(a.why, inspection !== null).map((why) => <p key={why} className={css.plain}>{why}</p>)}
    </>
  );
}

const UNASKED = "Whether it is beyond economic repair is not told: no damage was told of or measured, and no cleaning was asked for.";

/** Why expectations stand without a figure; once a person judged its worth (`isSeen`), not of that. Where one reason holds for several of them it is said once. */
export const whyUnstated = ({ improvement, worse, beyondRepair }: Assessment["why"], isSeen = false): string[] =>
  [...new Set([improvement, worse, ...(isSeen ? [] : [beyondRepair])].filter((why) => why !== undefined))];

/** By which method, how long the rug has left and what it comes to in money. */
export function Prospects({ assessment: a, letter, currencyNow, as: H, words }: { assessment: Assessment; letter: ToldByLetter; currencyNow: string | null; as: HeadingLevel; words: Words }) {
  return (
    <>
      <section>
        <H>Methods</H>
        {letter.isHeldBack === "wet" && <p className={css.plain}>They write of water: until we know whether it is wet, nothing is tried, and it is not left as it is.</p>}
        <Methods methods={letter.isHeldBack === "wet" ? a.methods.filter((m) => m.method !== "none") : a.methods} />
      </section>
      <section>
        <H>Life left in ordinary use</H>
        {letter.lifeOnce && <p className={css.plain}>Only once {letter.lifeOnce}, as the letter says:</p>}
        {a.lifeYears && !letter.lifeOpen ? <YearsBand {...a.lifeYears} words={words} /> : <p className={css.plain}>{letter.lifeOpen ? `${sentenceCase(letter.lifeOpen)}.` : (a.why.lifeYears ?? "No figure.")}</p>}
      </section>
      <section>
        <H>Money</H>
        {a.money ? <Money assessment={a} money={a.money} words={words} /> : <p className={css.plain}>{a.why.money ?? "No figure."}</p>}
        {a.money && currencyNow && <p className={css.plain}>In {a.money.currency}, the workshop’s currency when this was judged. Judged anew, it comes in {currencyNow}: the owner has open enquiries judged anew under <Link href="/desk/settings">Settings</Link>.</p>}
      </section>
    </>
  );
}

/** `figures`: how the chance is told where a letter tells it by a range. */
function Chance({ name, share, note, figures = chancePercent(share ?? 0) }: { name: string; share: number | null; note?: string | undefined; figures?: string | undefined }) {
  if (share === null) return null;
  const words = wordsForChance({ probability: share, low: share });
  return <Measure name={name} note={[words, note].filter(Boolean).join("; ")} chart={<Length share={share} says={spoken(name, words, figures)} />} figures={figures} />;
}

/** The texture apart from the colour: the chance that it stays plainly flat or rough, and the likeliest grade now. */
function Texture({ texture }: { texture: Assessment["texture"] }) {
  if (!texture) return null;
  const likeliest = texture.now.indexOf(Math.max(...texture.now));
  return <Chance name="Stays plainly flat or rough" share={texture.after.slice(PLAINLY).reduce((x, y) => x + y, 0)} note={`now probably ${TEXTURE_GRADES[likeliest]}`} />;
}
/** The grade from which anybody sees it. */
const PLAINLY = 2;

const VERDICTS = ["suitable", "needs-testing-first", "ruled-out"] as const satisfies readonly Verdict[];

function Methods({ methods }: { methods: Assessment["methods"] }) {
  const sorted = VERDICTS.flatMap((v) => methods.filter((m) => m.verdict === v));
  return (
    <table className={css.methods}>
      <thead className="unseen"><tr><th scope="col">Method</th><th scope="col">Verdict and why</th></tr></thead>
      <tbody>
        {sorted.map((m) => (
          <tr key={m.method} className={m.verdict === "ruled-out" ? css.out : undefined}>
            <th scope="row">{sentenceCase(METHODS[m.method].name)}</th>
            <td><Why {...m} /></td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** The sentence begins with its verdict, which stands out; where it does not, the verdict is put before it. */
function Why({ verdict, why }: { verdict: Verdict; why: string }) {
  const [head, ...rest] = why.split(": ");
  return rest.length > 0 ? <><b>{head}:</b> {rest.join(": ")}</> : <><b>{sentenceCase(VERDICT_NAMES[verdict])}:</b> {lowerFirst(why)}</>;
}

const AMOUNTS = { clean: "To clean", cutDown: "To cut down and rebind", replace: "To replace", valueToday: "Worth today" } as const;

function Money({ assessment: a, money, words }: { assessment: Assessment; money: NonNullable<Assessment["money"]>; words: Words }) {
  const phrase = (k: keyof typeof AMOUNTS) => (k === "cutDown" ? cutDownPhrase(a, money.currency, words) : money[k] && AMOUNT_PHRASES[k](money[k], money.currency, words));
  const known = (Object.keys(AMOUNTS) as (keyof typeof AMOUNTS)[]).flatMap((k) => { const says = phrase(k); return says ? [{ name: AMOUNTS[k], says }] : []; });
  if (known.length === 0) return <p className={css.plain}>No figure.</p>;
  return (
    <dl className={css.money}>
      {known.map(({ name, says }) => <div key={name}><dt>{name}</dt><dd className="num">{says}</dd></div>)}
    </dl>
  );
}
