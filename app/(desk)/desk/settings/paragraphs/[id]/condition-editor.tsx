"use client";
import { useState } from "react";
import type { ParagraphView } from "@/lib/enquiry/paragraph-views";
import { controlId, errorId, useFields } from "@/lib/ui/form-context";
import css from "../paragraphs.module.css";
import { conditionOf, linesOf, type Line } from "./condition-lines";

type Facts = Pick<ParagraphView, "facts" | "numbers">;

/** When a paragraph is used: lines of a fact and what it must be or must not be. Nothing but the fixed vocabulary can be said. */
export function ConditionEditor({ facts, numbers, json, changed }: Facts & { json: string; changed: () => void }) {
  const largest = Object.fromEntries(numbers.map((n) => [n.id, n.largest]));
  const [lines, setLines] = useState<Line[]>(() => linesOf(json, largest));
  const { errors } = useFields();
  const set = (next: Line[]) => {
    setLines(next);
    changed();
  };
  const add = (fact: string) => fact && set([...lines, numbers.some((n) => n.id === fact) ? { fact, how: "atLeast", values: [], percent: "33" } : { fact, how: "is", values: [], percent: "" }]);
  return (
    <fieldset className={css.when} aria-describedby={errors["when"] ? errorId("when") : undefined}>
      <legend>When it is used</legend>
      {errors["when"] && <p className="error" id={errorId("when")}>{errors["when"]}</p>}
      <p className="small">{lines.length === 0 ? "Always. Add a line to use it in some letters only." : "Where every line holds."}</p>
      {lines.map((line, at) => (
        <LineFields key={`${at}-${line.fact}`} at={at} line={line} facts={facts} numbers={numbers}
          set={(next) => set(lines.map((l, i) => (i === at ? next : l)))} remove={() => set(lines.filter((_, i) => i !== at))} />
      ))}
      <div className="field">
        <label htmlFor={controlId("when")}>Add a line about</label>
        <select id={controlId("when")} value="" onChange={(e) => add(e.target.value)}>
          <option value="">Choose</option>
          {[...facts, ...numbers].map(({ id, says }) => <option key={id} value={id}>{says}</option>)}
        </select>
      </div>
      <input type="hidden" name="when" value={JSON.stringify(conditionOf(lines, largest))} />
    </fieldset>
  );
}

interface LineProps extends Facts { at: number; line: Line; set: (line: Line) => void; remove: () => void }

function LineFields({ at, line, facts, numbers, set, remove }: LineProps) {
  const fact = facts.find((f) => f.id === line.fact);
  const says = fact?.says ?? numbers.find((n) => n.id === line.fact)?.says ?? line.fact;
  const ways = fact ? [["is", "is one of"], ["not", "is none of"]] as const : [["atLeast", "is at least"], ["below", "is below"]] as const;
  const toggle = (id: string, on: boolean) => set({ ...line, values: on ? [...line.values, id] : line.values.filter((v) => v !== id) });
  return (
    <div className={css.line} role="group" aria-label={says}>
      <div className={css.lineHead}>
        <b>{says}</b>
        <select aria-label={`${says}: must or must not`} value={line.how} onChange={(e) => set({ ...line, how: e.target.value as Line["how"] })}>
          {ways.map(([id, label]) => <option key={id} value={id}>{label}</option>)}
        </select>
        {!fact && <label className={css.percent}><input inputMode="decimal" aria-label={`${says}, per cent`} value={line.percent} onChange={(e) => set({ ...line, percent: e.target.value })} /> per cent</label>}
        <button type="button" className={css.remove} onClick={remove} aria-label={`Take away: ${says}`}>Take away</button>
      </div>
      {fact && (
        <div className={css.values}>
          {fact.values.map((v) => (
            <label key={v.id}><input type="checkbox" id={`line-${at}-${v.id}`} checked={line.values.includes(v.id)} onChange={(e) => toggle(v.id, e.target.checked)} /> {v.says}</label>
          ))}
        </div>
      )}
    </div>
  );
}
