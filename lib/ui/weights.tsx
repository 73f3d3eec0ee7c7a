import { decibans, oddsInWords } from "./figures";
import css from "./weights.module.css";

export interface Weight { says: string; decibans: number; from?: string | undefined }

/**
 * What speaks for one fibre rather than another: one length a finding, filled for, outlined against, from one middle
 * line and on one scale. `before` (the prior), the findings, `held` (the damping) and `capped` add up to `total` exactly.
 */
export function Weights({ leading, rival, before, findings, held, capped, total }: {
  leading: string; rival: string; before: number; findings: Weight[]; held: number; capped: number; total: number;
}) {
  const speaking = findings.filter((f) => decibans(f.decibans) !== "0").sort((a, b) => Math.abs(b.decibans) - Math.abs(a.decibans));
  const silent = findings.filter((f) => decibans(f.decibans) === "0");
  const full = scaleOf([before, held, capped, total, ...speaking.map((f) => f.decibans)]);
  return (
    <>
      <table className={css.weights}>
        <caption className="unseen">Weights in decibans, for {leading} above zero, for {rival} below</caption>
        <thead>
          <tr className={css.head}>
            <th scope="col"><span className="unseen">Finding</span></th>
            <th scope="col" className={css.sides}><span>for {rival}</span><span>for {leading}</span></th>
            <th scope="col" className={css.figure}>decibans</th>
          </tr>
        </thead>
        <tbody>
          <Row says="Before any evidence" decibans={before} full={full} aside />
          {speaking.map((f, i) => <Row key={i} {...f} full={full} />)}
          <Row says="Held back, because words and photos can mislead as a whole" decibans={held} full={full} aside />
          {decibans(capped) !== "0" && <Row says="Held back, because evidence of this kind carries no further" decibans={capped} full={full} aside />}
        </tbody>
        <tfoot>
          <Row says={`Altogether, ${oddsInWords(total)}`} decibans={total} full={full} />
        </tfoot>
      </table>
      {silent.length > 0 && (
        <details className={css.silent}>
          <summary>{silent.length === 1 ? "One finding says" : `${silent.length} findings say`} nothing about {leading} or {rival}</summary>
          <ul>{silent.map((f, i) => <li key={i}>{f.says}</li>)}</ul>
        </details>
      )}
      <p className={`small ${css.key}`}>Ten decibans are ten to one, three are two to one. Filled speaks for {leading}, outlined against.</p>
    </>
  );
}

function Row({ says, from, decibans: db, full, aside = false }: Weight & { full: number; aside?: boolean }) {
  return (
    <tr className={aside ? css.aside : undefined}>
      <th scope="row">{says}{from && <small> {from}</small>}</th>
      <td className={css.length} aria-hidden="true"><Bar share={db / full} /></td>
      <td className={`num ${css.figure}`}>{decibans(db)}</td>
    </tr>
  );
}

/** A length from the middle: `share` −1 to 1 of half the width. */
function Bar({ share }: { share: number }) {
  const half = Math.min(Math.abs(share), 1) * 50;
  const x = share >= 0 ? 50 : 50 - half;
  return (
    <svg className={css.bar} width="100%" height="22" focusable="false">
      {half > 0 && <rect className={share >= 0 ? css.for : css.against} x={`${x.toFixed(2)}%`} width={`${half.toFixed(2)}%`} y="5" height="12" />}
      <line className={css.middle} x1="50%" x2="50%" y1="0" y2="22" />
    </svg>
  );
}

const STEPS = [5, 10, 15, 20, 30, 40, 60] as const;
/** The smallest round number of decibans that holds every length. */
export function scaleOf(weights: readonly number[]): number {
  const most = Math.max(0, ...weights.map(Math.abs));
  return STEPS.find((s) => s >= most) ?? Math.ceil(most / 20) * 20;
}
