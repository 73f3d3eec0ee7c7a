import styles from "./swatch.module.css";
import { irregular } from "./weave";

const COLUMNS = 30;
const ROWS = 46;
const LONG = 12;
const HIGH = 10;
/** How far a stitch's tone may stray, in steps of the scale from undyed to dark. */
const TONES = 5;

/** How deep in the spill a place lies: 0 outside, 1 in the middle. Its edge is uneven, as spills are. */
function spill(x: number, y: number): number {
  const [dx, dy] = [(x - 0.6) / 0.34, (y - 0.36) / 0.24];
  const edge = 1 + 0.13 * Math.sin(5 * Math.atan2(dy, dx) + 1) + 0.07 * Math.sin(9 * Math.atan2(dy, dx));
  return Math.max(0, 1 - Math.hypot(dx, dy) / edge);
}

/** The plain border that runs round the piece, and the ground inside it. */
const isBorder = (k: number, row: number) => {
  const from = Math.min(k, COLUMNS - 1 - k, row / 1.2, (ROWS - 1 - row) / 1.2);
  return from >= 2 && from < 3.5;
};

function toneOf(k: number, row: number): number {
  const n = row * COLUMNS + k;
  const base = isBorder(k, row) ? 4 : 2;
  const paler = 3 * Math.min(1, 2.2 * spill(k / COLUMNS, row / ROWS));
  return Math.max(0, Math.min(TONES - 1, Math.round(base - paler + (irregular(n) - 0.5) * 1.3)));
}

/** All stitches of one tone as one path. */
function stitches(tone: number): string {
  let d = "";
  for (let row = 0; row < ROWS; row++) {
    for (let k = 0; k < COLUMNS; k++) {
      if (toneOf(k, row) !== tone) continue;
      d += `M${k * LONG + (row % 2) * (LONG / 2) + 5} ${24 + row * HIGH}h3`;
    }
  }
  return d;
}

const FRINGE = Array.from({ length: COLUMNS }, (_, k) => {
  const x = k * LONG + 9;
  const sway = Math.round((irregular(k + 5000) - 0.5) * 8);
  return `M${x} 20q${sway / 2} -10 ${sway} -18M${x} ${ROWS * HIGH + 18}q${-sway / 2} 10 ${-sway} 18`;
}).join("");

/** A piece of weave with a pale place where something was spilled. Greys only: colour belongs to people's own rugs. */
export function Swatch() {
  return (
    <svg className={styles.swatch} viewBox={`0 0 ${COLUMNS * LONG + 8} ${ROWS * HIGH + 40}`} fill="none" aria-hidden="true">
      <path d={FRINGE} className={styles.fringe} />
      {Array.from({ length: TONES }, (_, tone) => <path key={tone} d={stitches(tone)} className={styles[`tone${tone}`]} />)}
    </svg>
  );
}
