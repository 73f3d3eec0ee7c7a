import type { ReactNode } from "react";
import css from "./measure-row.module.css";

/** Rows of named lengths: a name, a drawn length and its figures in words. */
export function Measures({ children }: { children: ReactNode }) {
  return <dl className={css.rows}>{children}</dl>;
}

/** One row. `chart` is an image with its own words; `figures` stands beside it for the eye and the ear. */
export function Measure({ name, note, chart, figures }: { name: string; note?: string | undefined; chart: ReactNode; figures: ReactNode }) {
  return (
    <div className={css.row}>
      <dt>{name}{note && <small> {note}</small>}</dt>
      <dd className={css.chart}>{chart}</dd>
      <dd className={`small num ${css.figures}`}>{figures}</dd>
    </div>
  );
}
