import type { PlanSide as Edge, Rectangle } from "../reply/documents/blocks";
import css from "./plan-sides.module.css";

/** Which edge lies towards the top of the photo, and the words for it. */
export interface PhotoTop { readonly edge: Edge; readonly words: string }

/** Of a plan drawn in centimetres; `text` is the height of its letters, in centimetres too. */
interface Sheet { readonly widthCm: number; readonly lengthCm: number; readonly text: number }

/** Letters, measured in their own height: what stands beside a side, the bare edge, and the mark of the photo's top. By eye. */
const ROOM = { side: 2.4, bare: 0.96, mark: 1.7 } as const;
/** Width of a letter, in its height, on the average. By eye. */
const LETTER = 0.56;

/** What has to be shown of a plan so that its sides and the mark have room. */
export function planBox({ widthCm, lengthCm, text }: Sheet, edge: Edge | null): string {
  const room = (at: Edge, beside: number) => text * (beside + (edge === at ? ROOM.mark : 0));
  const [left, top] = [room("left", ROOM.side), room("top", ROOM.side)];
  return [-left, -top, left + widthCm + room("right", ROOM.bare), top + lengthCm + room("bottom", ROOM.bare)].join(" ");
}

/** The two sides along them, and beside the edge that lies towards the top of the photo an arrow that points there. */
export function PlanSides({ sheet, across, along, photoTop }: { sheet: Sheet; across: string; along: string; photoTop: PhotoTop | null }) {
  const { widthCm, lengthCm, text } = sheet;
  return (
    <>
      <Dimension from={0} to={widthCm} text={text} label={across} />
      <g transform="rotate(-90)"><Dimension from={-lengthCm} to={0} text={text} label={along} /></g>
      {photoTop && <TopMark sheet={sheet} {...photoTop} />}
    </>
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

/** An arrow away from the rug, and its words along the edge. */
function TopMark({ sheet: { widthCm, lengthCm, text }, edge, words }: { sheet: Sheet } & PhotoTop) {
  const [away, beyond] = [text * (ROOM.side + ROOM.mark / 2), text * (ROOM.bare / 2 + ROOM.mark / 2)];
  const middle = {
    top: [widthCm / 2, -away], bottom: [widthCm / 2, lengthCm + beyond], left: [-away, lengthCm / 2], right: [widthCm + beyond, lengthCm / 2],
  }[edge];
  const isUpright = edge === "left" || edge === "right";
  const arrow = (words.length * LETTER * text) / 2 + text * 0.8;
  const half = text * 0.42;
  const tip = edge === "top" || edge === "left" ? -half : half;
  return (
    <g className={css.top} transform={`translate(${middle.join(" ")})${isUpright ? " rotate(-90)" : ""}`}>
      <path d={`M${-arrow - half} ${-tip}h${2 * half}l${-half} ${2 * tip}z`} />
      <text textAnchor="middle" dominantBaseline="central">{words}</text>
    </g>
  );
}

/** The size of each piece in its middle, upright where it is too narrow for it. */
export function PieceSizes({ pieces, sizes, text }: { pieces: readonly Rectangle[]; sizes: readonly string[]; text: number }) {
  return pieces.map((b, i) => {
    const words = sizes[i] ?? "";
    const [x, y] = [(b.left + b.right) / 2, (b.top + b.bottom) / 2];
    const needed = (words.length * LETTER + 1) * text;
    const isUpright = needed > b.right - b.left && needed <= b.bottom - b.top;
    return <text key={i} className={css.size} x={x} y={y} transform={isUpright ? `rotate(-90 ${x} ${y})` : undefined} textAnchor="middle" dominantBaseline="central" strokeWidth={text * 0.3}>{words}</text>;
  });
}
