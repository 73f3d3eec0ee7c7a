import type { CSSProperties } from "react";
import type { Source } from "../trade/fibres";
import type { Cell, FactTable, TableColumn, TableRow, Unit } from "../trade/table";
import { percent } from "./figures";
import css from "./printed-table.module.css";

/** How a row is known, in plain words. */
export const HOW_WORDS: Readonly<Record<Source["how"], string>> = {
  read: "read in a published text", memory: "from memory", computed: "worked out", "common practice": "common practice", elicited: "our own judgement (elicited)",
};

/** Tables of what the trade knows, each folded behind its name. */
export function Tables({ tables }: { tables: readonly FactTable[] }) {
  return <div className={css.tables}>{tables.map((t) => <Folded key={t.id} table={t} />)}</div>;
}

function Folded({ table }: { table: FactTable }) {
  const sources = sourcesOf(table.rows);
  return (
    <details className={css.folded} id={`table-${table.id}`}>
      <summary>{table.name}<span className={css.count}> {table.rows.length === 1 ? "one row" : `${table.rows.length} rows`}</span></summary>
      <p className={css.about}>{table.about}</p>
      <div className={css.scroll} tabIndex={0} role="region" aria-label={table.name}>
        <table className={css.table}>
          <thead>
            <tr>
              <th scope="col"><span className="unseen">Row</span></th>
              {table.columns.map((c) => <th key={c.name} scope="col" className={c.unit === "text" ? css.words : undefined}>{headOf(c)}</th>)}
              {sources.length > 1 && <th scope="col">source</th>}
            </tr>
          </thead>
          <tbody>
            {table.rows.map((r) => (
              <tr key={r.id}>
                <th scope="row">{r.name}</th>
                {table.columns.map((c, i) => <Figure key={c.name} cell={r.cells[i] ?? null} unit={c.unit} />)}
                {sources.length > 1 && <td className={css.mark}>{sources.findIndex((s) => isFrom(r, s)) + 1}</td>}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <ol className={sources.length > 1 ? css.sources : css.source}>{sources.map((s) => <li key={`${s.how} ${s.source}`}>{sayHow(s)}</li>)}</ol>
    </details>
  );
}

const isFrom = (row: Source, s: Source) => row.how === s.how && row.source === s.source;
/** The sources of a table's rows, each once, in the order of the rows. */
const sourcesOf = (rows: readonly TableRow[]): Source[] => rows.filter((r, i) => rows.findIndex((o) => isFrom(o, r)) === i);
/** A source says by itself where it is elicited or common practice; the others are told how they are known. */
const sayHow = ({ how, source }: Source): string => (/^(elicited|common practice)/iu.test(source) ? `${source}.` : `${HOW_WORDS[how].replace(/^./u, (c) => c.toUpperCase())}: ${source}.`).replace(/\.+$/u, ".");

const UNIT_WORDS: Readonly<Partial<Record<Unit, string>>> = { years: "years", pounds: "£ a m²", cleans: "cleans", decibans: "dB", minutes: "min", percent: "%", times: "×" };
function headOf({ name, unit }: TableColumn): string {
  const words = UNIT_WORDS[unit];
  return words === undefined || name.includes(words) ? name : `${name}, ${words}`;
}

const style = (vars: Readonly<Record<`--${string}`, number>>) => vars as CSSProperties;

/** One cell: a chance with its length, a range with its band, another number, or words. */
function Figure({ cell, unit }: { cell: Cell; unit: Unit }) {
  if (cell === null) return <td><span className="unseen">none</span></td>;
  if (typeof cell === "string") return <td className={css.words}>{cell}</td>;
  if (typeof cell === "object") return <td className={`num ${css.range}`} style={style({ "--low": cell.low, "--mid": cell.median, "--high": cell.high })}>{cell.low}–{cell.median}–{cell.high}</td>;
  return unit === "chance" ? <td className={`num ${css.chance}`} style={style({ "--share": cell })}>{chanceOf(cell)}</td> : <td className="num">{cell}</td>;
}

/** A chance to the whole per cent; smaller than one, to a tenth or two figures, as the table states it. */
const chanceOf = (p: number): string => (p > 0 && p < 0.1 ? `${Number((p * 100).toPrecision(2))}\u00a0%` : percent(p));
