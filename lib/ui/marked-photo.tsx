import type { Block } from "../reply/documents/blocks";
import css from "./marked-photo.module.css";
import outlined from "./marking/outline.module.css";

type Photo = Extract<Block, { kind: "photo" }>;
interface Shape { readonly width: number; readonly height: number }

/** By eye: the disc that a number stands in, as a share of the photo's longer side as it is shown. */
const DISC = 0.024;

/** A photo of a printed document turned upright, and what was marked in it under its numbers, as in the file. */
export function MarkedPhoto({ photo: { photoId, alternative, quarters = 0, marks = [] }, shape }: { photo: Photo; shape: Shape }) {
  const shown = quarters % 2 === 1 ? { width: shape.height, height: shape.width } : shape;
  const on = ({ x, y }: { x: number; y: number }) => ({ x: x * shown.width, y: y * shown.height });
  const radius = DISC * Math.max(shown.width, shown.height);
  return (
    <svg viewBox={`0 0 ${shown.width} ${shown.height}`} preserveAspectRatio="xMinYMid meet" role="img" aria-label={alternative}>
      <image href={`/photos/${photoId}/1600`} width={shape.width} height={shape.height} transform={TURNS[quarters]?.(shape)} />
      {marks.map(({ n, outline }) => [outlined.edge, outlined.line].map((layer) => <polygon key={`${n}${layer}`} className={layer} points={outline.map(on).map((p) => `${p.x.toFixed(1)},${p.y.toFixed(1)}`).join(" ")} />))}
      {marks.map(({ n, outline }) => {
        const highest = outline.map(on).reduce((a, b) => (b.y < a.y ? b : a));
        const within = (value: number, room: number) => Math.min(Math.max(value, radius * 1.2), room - radius * 1.2);
        const [x, y] = [within(highest.x, shown.width), within(highest.y - radius * 1.2, shown.height)];
        return <g key={n}><circle className={css.disc} cx={x} cy={y} r={radius} /><text className={css.number} x={x} y={y} fontSize={radius * 1.3} textAnchor="middle" dominantBaseline="central">{n}</text></g>;
      })}
    </svg>
  );
}

/** How the kept photo comes to lie upright in the box it is shown in, by quarters of a turn. */
const TURNS: readonly (((shape: Shape) => string) | undefined)[] = [
  undefined, ({ width }) => `matrix(0 -1 1 0 0 ${width})`, ({ width, height }) => `matrix(-1 0 0 -1 ${width} ${height})`, ({ height }) => `matrix(0 1 -1 0 ${height} 0)`,
];
