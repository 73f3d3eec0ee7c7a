import { edgesRange, type MeasuredPlan } from "../enquiry/measured-plan";
import type { PlanMarks } from "../enquiry/mark-schema";
import type { PhotoDeskView } from "../enquiry/measured-views";
import type { CutDown } from "../photo/cut-down";
import { KEPT_WHOLE } from "../triage/finding";
import { cutName } from "./plan-words";
import { DOUBT_FIGURES, estimate, length, run, size, smallArea, type Figures } from "../words/measures";
import { percent } from "./figures";
import css from "./plan-reading.module.css";

type Money = PhotoDeskView["money"];

/** The damaged places with their areas and where they lie. */
export function Places({ measured: { places, damagedCm2, damagedSdCm2, share }, figures }: { measured: MeasuredPlan; figures: Figures }) {
  const far = (cm: number) => length(Math.round(cm), figures);
  if (places.length === 0) return <p className={css.none}>No damage is outlined yet.</p>;
  return (
    <>
      <p className={css.all}>Damaged: about <b className="num">{smallArea(damagedCm2, figures)}</b>, give or take <span className="num">{smallArea(damagedSdCm2, figures, DOUBT_FIGURES)}</span>; {percent(share)} of the rug.</p>
      <ol className={css.places}>
        {places.map(({ areaCm2, toEdges: e }, i) => (
          <li key={i} className="small num">{smallArea(areaCm2, figures)}; to the edges {far(e.left)} left, {far(e.right)} right, {far(e.top)} top, {far(e.bottom)} bottom</li>
        ))}
      </ol>
    </>
  );
}

/** One way of cutting down in figures: what remains, its new edges and what they cost. */
export function wayInWords(way: CutDown, money: Money): string {
  const pieces = way.pieces.map((b) => size(Math.round(b.right - b.left), Math.round(b.bottom - b.top), money)).join(" and ");
  return `${pieces}; ${percent(way.shareKept)} kept; ${run(way.bindingM, money)} of binding, about ${edgesInWords(way, money)}`;
}

/** What new edges come to: as drawn, and up to what new ones all round would be before the rug is seen. */
function edgesInWords(way: CutDown, { bindingPerM, currency, locale }: Money): string {
  const { low, high } = edgesRange(way, bindingPerM);
  const [drawn, allRound] = [low, high].map((amount) => estimate(amount, currency, locale));
  return drawn === allRound ? `${drawn}` : `${drawn}, or up to ${allRound} if all its edges have to be new`;
}

/** The ways that leave something of use, to choose from. */
export function Ways({ measured, chosen, choose, money, name }: { measured: MeasuredPlan; chosen: PlanMarks["chosen"]; choose: (chosen: PlanMarks["chosen"]) => void; money: Money; name: string }) {
  if (measured.places.length === 0) return null;
  if (measured.ways.length === 0) return <p className={css.none}>No piece of use would remain.</p>;
  return (
    <fieldset className={css.ways}>
      <legend>What can be kept</legend>
      {measured.ways.map((way) => (
        <label key={way.kind}>
          <input type="radio" name={name} checked={chosen === way.kind} onChange={() => choose(way.kind)} />
          <span>{cutName(way.kind)}<small className="num">{wayInWords(way, money)}</small></span>
        </label>
      ))}
      <label><input type="radio" name={name} checked={chosen === KEPT_WHOLE} onChange={() => choose(KEPT_WHOLE)} /><span>Do not cut it down</span></label>
    </fieldset>
  );
}
