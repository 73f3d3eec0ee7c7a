import css from "./cautions.module.css";

/** What keeps people safe, before the work it belongs to. */
export function Cautions({ cautions, title }: { cautions: readonly string[]; title: string }) {
  return (
    <section className={css.cautions} aria-label={title}>
      <h2>{title}</h2>
      <ul>{cautions.map((c) => <li key={c}>{c}</li>)}</ul>
    </section>
  );
}
