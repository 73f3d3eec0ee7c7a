import type { Told } from "./told";
import css from "./rug-evidence.module.css";

/** Questions and what was answered, as a list of pairs. */
export function ToldList({ told, none }: { told: Told[]; none: string }) {
  if (told.length === 0) return <p className="small">{none}</p>;
  return (
    <dl className={css.answers}>
      {told.map((t) => (
        <div key={t.ask}>
          <dt>{t.ask}</dt>
          <dd>{t.says.map((s, i) => <span key={i} dir="auto">{s}</span>)}</dd>
        </div>
      ))}
    </dl>
  );
}
