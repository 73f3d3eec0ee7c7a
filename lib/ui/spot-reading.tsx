import { hexOf } from "../photo/colour";
import type { Comparison } from "../photo/compare";
import { isNearWhite } from "../photo/yellowness";
import { DoubtLine } from "./doubt-line";
import { Measure, Measures } from "./measure-row";
import css from "./spot-reading.module.css";

/** The end of the drawn line: a difference that nobody overlooks, and as many times that as a larger one needs. Elicited. */
const LINE_DELTA_E = 25;
const lineFor = (high: number): number => LINE_DELTA_E * Math.max(1, Math.ceil(high / LINE_DELTA_E));
/** A normal distribution's 90th percentile: eight in ten lie between. */
const Z90 = 1.2816;
const signed = (x: number) => `${x < 0 ? "−" : "+"}${Math.abs(x).toFixed(1)}`;

/** What two spots of a photo measure: the numbers, each with what it means. */
export function SpotReading({ measured: m }: { measured: Comparison }) {
  const [low, high] = [Math.max(0, m.deltaE - Z90 * m.uncertainty), m.deltaE + Z90 * m.uncertainty];
  const end = lineFor(high);
  const onLine = (deltaE: number) => deltaE / end;
  const range = `${low.toFixed(1)} to ${high.toFixed(1)}`;
  return (
    <div className={css.reading}>
      <div className={css.colours} aria-hidden="true">
        <span style={{ background: hexOf(m.untouched.mean) }} /><span style={{ background: hexOf(m.affected.mean) }} />
      </div>
      <p className={css.says}>{m.says}</p>
      <Measures>
        <Measure name="ΔE00" note={`on a line to ${end}`} chart={<DoubtLine low={onLine(low)} mid={onLine(m.deltaE)} high={onLine(high)} label={`ΔE00 between ${range}, middle ${m.deltaE.toFixed(1)}`} />} figures={range} />
      </Measures>
      <dl className={css.parts}>
        <div><dt>Lightness</dt><dd className="num">{signed(m.lightness)}</dd><dd className="small">{m.lightness < 0 ? "darker" : "lighter"}</dd></div>
        <div><dt>Chroma</dt><dd className="num">{signed(m.chroma)}</dd><dd className="small">{m.chroma < 0 ? "duller" : "stronger"}</dd></div>
        <div><dt>Hue</dt><dd className="num">{signed(m.hue)}</dd><dd className="small">parts of ΔE00</dd></div>
        {isNearWhite(m.untouched.mean) && <div><dt>Yellowness</dt><dd className="num">{signed(m.yellowness)}</dd><dd className="small">ASTM E313, D65</dd></div>}
        <div><dt>Grey scale</dt><dd className="num">{m.grade.toFixed(1)}</dd><dd className="small">indicative, 5 is none</dd></div>
      </dl>
    </div>
  );
}
