import css from "./interval.module.css";

/** The narrowest bar that can still be seen, as a share of the whole length. */
const NARROWEST = 0.012;

/** A length with its doubt: a band from `low` to `high` and a mark at `mid`, all 0–1 of the line. An image whose numbers stand in `label`. */
export function DoubtLine({ low, mid, high, label }: { low: number; mid: number; high: number; label: string }) {
  const width = Math.max(high - low, NARROWEST);
  const start = Math.min(Math.max(0, (low + high) / 2 - width / 2), 1 - width);
  return (
    <svg className={css.interval} role="img" aria-label={label} width="100%" height="18" focusable="false">
      <line className={css.rule} x1="0" x2="100%" y1="9" y2="9" />
      {["0", "50%", "100%"].map((x, i) => (
        <line key={x} className={css.rule} x1={x} x2={x} y1="6" y2="12" transform={i === 2 ? "translate(-0.5 0)" : i === 0 ? "translate(0.5 0)" : undefined} />
      ))}
      <rect className={css.band} x={at(start)} width={at(width)} y="5.5" height="7" rx="1" />
      <rect className={css.mark} x={at(mid)} width="2" y="1" height="16" transform={`translate(${(-2 * mid).toFixed(2)} 0)`} />
    </svg>
  );
}

const at = (share: number): string => `${(share * 100).toFixed(2)}%`;
