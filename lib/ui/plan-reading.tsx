import { edgesCost, type MeasuredPlan } from "../enquiry/measured-plan";
import type { PhotoDeskView } from "../enquiry/views";
import type { CutDown, CutKind } from "../photo/cut-down";
import { cutName } from "./plan-words";
import { money as amount, percent } from "./figures";
import css from "./plan-reading.module.css";

type Money = PhotoDeskView["money"];
const cm = (x: number) => Math.round(x);

/** The damaged places with their areas and where they lie. */
export function Places({ measured: { places, damagedCm2, damagedSdCm2, share } }: { measured: MeasuredPlan }) {
  if (places.length === 0) return <p className={css.none}>No damage is outlined yet.</p>;
  return (
    <>
      <p className={css.all}>Damaged: about <b className="num">{cm(damagedCm2).toLocaleString("en-GB")} cm²</b>, give or take <span className="num">{cm(damagedSdCm2).toLocaleString("en-GB")}</span>; {percent(share)} of the rug.</p>
      <ol className={css.places}>
        {places.map(({ areaCm2, toEdges: e }, i) => (
          <li key={i} className="small num">{cm(areaCm2).toLocaleString("en-GB")} cm²; to the edges {cm(e.left)} cm left, {cm(e.right)} right, {cm(e.top)} top, {cm(e.bottom)} bottom</li>
        ))}
      </ol>
    </>
  );
}

/** One way of cutting down in figures: what remains, its new edges and what they cost. */
export function wayInWords(way: CutDown, { bindingPerM, currency, locale }: Money): string {
  const pieces = way.pieces.map((b) => `${cm(b.right - b.left)} × ${cm(b.bottom - b.top)} cm`).join(" and ");
  return `${pieces}; ${percent(way.shareKept)} kept; ${way.bindingM.toFixed(1)} m of binding, ${amount(edgesCost(way, bindingPerM), currency, locale)}`;
}

/** The ways that leave something of use, to choose from. */
export function Ways({ measured, chosen, choose, money, name }: { measured: MeasuredPlan; chosen: CutKind | null; choose: (kind: CutKind | null) => void; money: Money; name: string }) {
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
      <label><input type="radio" name={name} checked={chosen === null} onChange={() => choose(null)} /><span>Do not cut it down</span></label>
    </fieldset>
  );
}
