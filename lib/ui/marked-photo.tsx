import type { Block } from "../reply/documents/blocks";
import { numberPlaces } from "../reply/documents/number-places";
import css from "./marked-photo.module.css";
import outlined from "./marking/outline.module.css";

type Photo = Extract<Block, { kind: "photo" }>;
interface Shape { readonly width: number; readonly height: number }

/** By eye: the disc that a number stands in, as a share of the photo's longer side as it is shown. */
const DISC = 0.024;

/** A photo of a printed document turned upright, and what was marked in it under its numbers, as in the file. */
export function MarkedPhoto({ photo: { photoId, alternative, quarters = 0, marks = [] }, shape }: { photo: Photo; shape: Shape }) {
  const shown = quarters % 2 === 1 ? { width: shape.height, height: shape.width } : shape;
  const outlines = marks.map(({ outline }) => outline.map(({ x, y }) => ({ x: x * shown.width, y: y * shown.height })));
  const radius = DISC * Math.max(shown.width, shown.height);
  return (
    <svg viewBox={`0 0 ${shown.width} ${shown.height}`} preserveAspectRatio="xMinYMid meet" role="img" aria-label={alternative}>
      <image href={`/photos/${photoId}/1600`} width={shape.width} height={shape.height} transform={TURNS[quarters]?.(shape)} />
      {outlines.map((outline, i) => [outlined.edge, outlined.line].map((layer) => <polygon key={`${i}${layer}`} className={layer} points={outline.map((p) => `${p.x.toFixed(1)},${p.y.toFixed(1)}`).join(" ")} />))}
      {numberPlaces(outlines, { ...shown, radius }).map(({ x, y }, i) => (
        <g key={i}><circle className={css.disc} cx={x} cy={y} r={radius} /><text className={css.number} x={x} y={y} fontSize={radius * 1.3} textAnchor="middle" dominantBaseline="central">{marks[i]?.n}</text></g>
      ))}
    </svg>
  );
}

/** How the kept photo comes to lie upright in the box it is shown in, by quarters of a turn. */
const TURNS: readonly (((shape: Shape) => string) | undefined)[] = [
  undefined, ({ width }) => `matrix(0 -1 1 0 0 ${width})`, ({ width, height }) => `matrix(-1 0 0 -1 ${width} ${height})`, ({ height }) => `matrix(0 1 -1 0 ${height} 0)`,
];
