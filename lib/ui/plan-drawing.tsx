import { useId } from "react";
import type { MeasuredPlan } from "../enquiry/measured-plan";
import type { CutDown } from "../photo/cut-down";
import type { PlanEdge } from "../photo/plan";
import type { Box } from "../photo/polygon";
import { cutName } from "./plan-words";
import { length, size, type Figures } from "../words/measures";
import { percent } from "./figures";
import { PieceSizes, planBox, PlanSides } from "./plan-sides";
import css from "./plan-drawing.module.css";

interface Props { measured: MeasuredPlan; borderCm: number; /** Drawn with its pieces; null: the rug as it lies. */ way: CutDown | null; figures: Figures }

const EDGES: Readonly<Record<PlanEdge, string>> = { top: "upper", right: "right", bottom: "lower", left: "left" };
const sides = (b: Box, figures: Figures) => size(Math.round(b.right - b.left), Math.round(b.bottom - b.top), figures);

/** The rug from above, to scale, with its damaged places and what is kept, all with their sizes as the workshop tells them. */
export function PlanDrawing({ measured: { plan: { widthCm, lengthCm }, photoTop, places, share }, borderCm, way, figures }: Props) {
  const hatch = useId();
  const text = Math.max(widthCm, lengthCm) * 0.042;
  const sheet = { widthCm, lengthCm, text };
  const words = `Plan of the rug from above, to scale: ${size(widthCm, lengthCm, figures)}, ${places.length === 0 ? "no damage outlined" : `${percent(share)} damaged`}`
    + `${way ? `. ${cutName(way.kind)}: ${way.pieces.map((b) => sides(b, figures)).join(" and ")} remain${way.pieces.length === 1 ? "s" : ""}` : ""}. The ${EDGES[photoTop]} edge lies towards the top of the photo.`;
  return (
    <svg className={css.plan} role="img" aria-label={words} viewBox={planBox(sheet, photoTop)} style={{ fontSize: text }} focusable="false">
      <defs>
        <pattern id={hatch} width={text * 0.5} height={text * 0.5} patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><line x1="0" y1="0" x2="0" y2={text * 0.5} strokeWidth={text * 0.16} className={css.hatch} /></pattern>
      </defs>
      <rect className={way ? css.cutAway : css.rug} width={widthCm} height={lengthCm} />
      {way?.pieces.map((b, i) => <rect key={i} className={css.piece} x={b.left} y={b.top} width={b.right - b.left} height={b.bottom - b.top} />)}
      {borderCm > 0 && 2 * borderCm < Math.min(widthCm, lengthCm) && <rect className={css.border} x={borderCm} y={borderCm} width={widthCm - 2 * borderCm} height={lengthCm - 2 * borderCm} />}
      {places.map((p, i) => <polygon key={i} className={css.damage} fill={`url(#${hatch})`} points={p.outline.map(({ x, y }) => `${x.toFixed(1)},${y.toFixed(1)}`).join(" ")} />)}
      {way && <PieceSizes pieces={way.pieces} sizes={way.pieces.map((b) => sides(b, figures))} text={text} />}
      <PlanSides sheet={sheet} across={length(widthCm, figures)} along={length(lengthCm, figures)} photoTop={{ edge: photoTop, words: "top of the photo" }} />
    </svg>
  );
}
