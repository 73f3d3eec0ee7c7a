import { useId } from "react";
import type { MeasuredPlan } from "../enquiry/measured-plan";
import type { CutDown } from "../photo/cut-down";
import type { Box } from "../photo/polygon";
import { cutName } from "./plan-words";
import { length, size, type Figures } from "../words/measures";
import { percent } from "./figures";
import css from "./plan-drawing.module.css";

interface Props { measured: MeasuredPlan; borderCm: number; /** Drawn with its pieces; null: the rug as it lies. */ way: CutDown | null; figures: Figures }

const sides = (b: Box, figures: Figures) => size(Math.round(b.right - b.left), Math.round(b.bottom - b.top), figures);

/** The rug from above, to scale, with its damaged places and what is kept, all with their sizes as the workshop tells them. */
export function PlanDrawing({ measured: { plan: { widthCm, lengthCm }, places, share }, borderCm, way, figures }: Props) {
  const hatch = useId();
  const text = Math.max(widthCm, lengthCm) * 0.042;
  const margin = text * 2.4;
  const words = `Plan of the rug from above, to scale: ${size(widthCm, lengthCm, figures)}, ${places.length === 0 ? "no damage outlined" : `${percent(share)} damaged`}`
    + `${way ? `. ${cutName(way.kind)}: ${way.pieces.map((b) => sides(b, figures)).join(" and ")} remain${way.pieces.length === 1 ? "s" : ""}` : ""}.`;
  return (
    <svg className={css.plan} role="img" aria-label={words} viewBox={`${-margin} ${-margin} ${widthCm + margin * 1.4} ${lengthCm + margin * 1.4}`} style={{ fontSize: text }} focusable="false">
      <defs>
        <pattern id={hatch} width={text * 0.5} height={text * 0.5} patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><line x1="0" y1="0" x2="0" y2={text * 0.5} strokeWidth={text * 0.16} className={css.hatch} /></pattern>
      </defs>
      <rect className={way ? css.cutAway : css.rug} width={widthCm} height={lengthCm} />
      {way?.pieces.map((b, i) => <rect key={i} className={css.piece} x={b.left} y={b.top} width={b.right - b.left} height={b.bottom - b.top} />)}
      {borderCm > 0 && 2 * borderCm < Math.min(widthCm, lengthCm) && <rect className={css.border} x={borderCm} y={borderCm} width={widthCm - 2 * borderCm} height={lengthCm - 2 * borderCm} />}
      {places.map((p, i) => <polygon key={i} className={css.damage} fill={`url(#${hatch})`} points={p.outline.map(({ x, y }) => `${x.toFixed(1)},${y.toFixed(1)}`).join(" ")} />)}
      {way?.pieces.map((b, i) => <text key={i} className={css.size} x={(b.left + b.right) / 2} y={(b.top + b.bottom) / 2} textAnchor="middle" dominantBaseline="central" strokeWidth={text * 0.3}>{sides(b, figures)}</text>)}
      <Dimension from={0} to={widthCm} text={text} label={length(widthCm, figures)} />
      <g transform="rotate(-90)"><Dimension from={-lengthCm} to={0} text={text} label={length(lengthCm, figures)} /></g>
    </svg>
  );
}

/** A measured side along the top, with ticks at its ends. */
function Dimension({ from, to, text, label }: { from: number; to: number; text: number; label: string }) {
  const y = -text * 0.7;
  return (
    <g className={css.dimension}>
      <path d={`M${from} ${y}H${to}M${from} ${y - text * 0.3}v${text * 0.6}M${to} ${y - text * 0.3}v${text * 0.6}`} />
      <text x={(from + to) / 2} y={y - text * 0.45} textAnchor="middle">{label}</text>
    </g>
  );
}
