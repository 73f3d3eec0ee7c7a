import type { Spot } from "../../photo/spot";
import css from "./outline.module.css";

/** `waiting`: nobody has put it there yet; `kept`: it stands already, behind what is being marked. */
interface Props { spot: Spot; photo: { width: number; height: number }; is?: "waiting" | "kept" | null }

/** A spot drawn on its photo, in the photo's pixels: white with a dark edge. */
export function SpotOutline({ spot, photo: { width, height }, is = null }: Props) {
  return [css.edge, css.line].map((layer) => {
    const className = is ? `${layer} ${css[is]}` : layer;
    return spot.shape === "circle"
      ? <circle key={layer} className={className} cx={spot.x * width} cy={spot.y * height} r={spot.radius * Math.max(width, height)} />
      : <rect key={layer} className={className} x={spot.x * width} y={spot.y * height} width={spot.width * width} height={spot.height * height} />;
  });
}
