import type { CSSProperties, ReactNode } from "react";
import type { Source } from "../trade/fibres";
import type { Cell, FactTable, TableColumn, TableRow, Unit } from "../trade/table";
import { number } from "../words/measures";
import { printedIn } from "../words/printed-tables";
import type { Words } from "../words/words";
import { inPage } from "./in-page";
import css from "./printed-table.module.css";

/** How a row is known, in plain words. */
export const sayHow = (how: Source["how"], { say }: Words): string => (how === "common practice" ? say("how.common-practice") : say(`how.${how}`));

/** Tables of what the trade knows, each folded behind its name. */
export function Tables({ tables, words }: { tables: readonly FactTable[]; words: Words }) {
  return <div className={css.tables}>{tables.map((t) => <Folded key={t.id} table={t} words={words} />)}</div>;
}

function Folded({ table, words }: { table: FactTable; words: Words }) {
  const { say } = words;
  const print = printedIn(words);
  const sources = sourcesOf(table.rows);
  return (
    <details className={css.folded}>
      <summary>{print(table.name)}<span className={css.count}> {say("table.rows", { n: table.rows.length })}</span></summary>
      {/* A link to what stands inside opens what is folded. */}
      <p className={css.about} id={`table-${table.id}`}>{print(table.about)}</p>
      <div className={css.scroll} tabIndex={0} role="region" aria-label={print(table.name)}>
        <table className={css.table}>
          <thead>
            <tr>
              <th scope="col"><span className="unseen">{say("table.row")}</span></th>
              {table.columns.map((c) => <th key={c.name} scope="col" className={c.unit === "text" ? css.words : undefined}>{headOf(c, words)}</th>)}
              {sources.length > 1 && <th scope="col">{say("table.source")}</th>}
            </tr>
          </thead>
          <tbody>
            {table.rows.map((r) => (
              <tr key={r.id}>
                <th scope="row">{print(r.name)}</th>
                {table.columns.map((c, i) => <Figure key={i} cell={r.cells[i] ?? null} unit={c.unit} words={words} />)}
                {sources.length > 1 && <td className={css.mark}>{sources.findIndex((s) => isFrom(r, s)) + 1}</td>}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <ol className={sources.length > 1 ? css.sources : css.source}>{sources.map((s) => <li key={`${s.how} ${s.source}`}>{known(s, words)}</li>)}</ol>
    </details>
  );
}

const isFrom = (row: Source, s: Source) => row.how === s.how && row.source === s.source;
/** The sources of a table's rows, each once, in the order of the rows. */
const sourcesOf = (rows: readonly TableRow[]): Source[] => rows.filter((r, i) => rows.findIndex((o) => isFrom(o, r)) === i);

/** A source says by itself where it is elicited or common practice; the others are told how they are known. */
function known({ how, source: recorded }: Source, words: Words) {
  const source = recorded.replace(/\.+$/u, "");
  const cite = (parts: ReactNode[]) => <cite lang="en">{inPage(parts)}</cite>;
  return inPage(/^(elicited|common practice)/iu.test(source) ? words.parts("table.source-alone", { source, cite }) : words.parts("table.known", { how: sayHow(how, words), source, cite }));
}

function headOf({ name, unit }: TableColumn, words: Words): string {
  const said = printedIn(words)(name);
  if (unit === "chance" || unit === "range" || unit === "number" || unit === "text") return said;
  const inUnit = words.say(`unit.${unit}`);
  return said.includes(inUnit) ? said : words.say("table.in-unit", { name: said, unit: inUnit });
}

const style = (vars: Readonly<Record<`--${string}`, number>>) => vars as CSSProperties;
/** Decimals beyond those that any table states. */
const DECIMALS = 6;

/** One cell: a chance with its length, a range with its band, another number, or words. There are thousands: what they look like hangs on the table and on what they carry, not on a class each. */
function Figure({ cell, unit, words }: { cell: Cell; unit: Unit; words: Words }) {
  const figure = (n: number) => number(n, words.locale, DECIMALS);
  if (cell === null) return <td>–</td>;
  if (typeof cell === "string") return <td className={css.words}>{printedIn(words)(cell)}</td>;
  if (typeof cell === "object") return <td style={style({ "--low": cell.low, "--mid": cell.median, "--high": cell.high })}>{figure(cell.low)}–{figure(cell.median)}–{figure(cell.high)}</td>;
  return unit === "chance" && cell > 0 ? <td style={style({ "--share": Number(cell.toPrecision(3)) })}>{sayShare(cell, words)}</td> : <td>{unit === "chance" ? sayShare(cell, words) : figure(cell)}</td>;
}

const percents = (figure: number, { say, locale }: Words): string => say("table.percent", { figure: number(figure, locale, DECIMALS) });

/** A share, 0–1, to the whole per cent. Under 1 it is never told as 100: nothing is that sure. */
export const sayPercent = (p: number, words: Words): string =>
  p < 1 && p >= 0.995 ? words.say("table.over-percent", { figure: number(99, words.locale) }) : percents(Math.round(p * 100), words);

/** As above; smaller than a tenth, to two figures, as the tables state it. */
const sayShare = (p: number, words: Words): string => (p < 0.1 ? percents(Number((p * 100).toPrecision(2)), words) : sayPercent(p, words));
