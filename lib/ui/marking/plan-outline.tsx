import type { PlanMarks } from "../../enquiry/mark-schema";
import { homographyOf, mapped, type Point } from "../../photo/homography";
import type { Box } from "../../photo/polygon";
import css from "./outline.module.css";

interface Props {
  photo: { width: number; height: number };
  corners: PlanMarks["corners"];
  outlines: readonly (readonly Point[])[];
  /** Pieces that are kept, in cm on the plan, with its size. */
  cut?: { pieces: readonly Box[]; widthCm: number; lengthCm: number } | null;
  isWaiting?: boolean;
  /** Words beside the first two sides, which are width and length. */
  sides?: readonly [string, string] | undefined;
}

/** Corners, damaged places and what is kept, drawn on the photo in its pixels. */
export function PlanOutline({ photo: { width, height }, corners, outlines, cut = null, isWaiting = false, sides }: Props) {
  const path = (points: readonly Point[]) => points.map((p) => `${(p.x * width).toFixed(1)},${(p.y * height).toFixed(1)}`).join(" ");
  const lines = (points: readonly Point[], key: string, isDashed = false) => [css.edge, css.line].map((layer) => (
    <polygon key={`${key}${layer}`} className={isDashed && layer === css.line ? `${layer} ${css.waiting}` : layer} points={path(points)} />
  ));
  return (
    <>
      {lines(corners, "corners", isWaiting)}
      {outlines.map((o, i) => <polygon key={i} className={css.area} points={path(o)} />)}
      {outlines.map((o, i) => lines(o, `place${i}`))}
      {cut && piecesOnPhoto(corners, cut).map((piece, i) => lines(piece, `piece${i}`, true))}
      {sides?.map((words, i) => {
        const [p, q] = [corners[i] as Point, corners[i + 1] as Point];
        return <text key={words} className={css.side} x={((p.x + q.x) / 2) * width} y={((p.y + q.y) / 2) * height} fontSize={width / 32} textAnchor="middle" dominantBaseline="central">{words}</text>;
      })}
    </>
  );
}

function piecesOnPhoto(corners: PlanMarks["corners"], { pieces, widthCm, lengthCm }: NonNullable<Props["cut"]>): Point[][] {
  const back = homographyOf([{ x: 0, y: 0 }, { x: widthCm, y: 0 }, { x: widthCm, y: lengthCm }, { x: 0, y: lengthCm }], corners);
  if (!back) return [];
  return pieces.map(({ left, top, right, bottom }) => [{ x: left, y: top }, { x: right, y: top }, { x: right, y: bottom }, { x: left, y: bottom }].map((p) => mapped(back, p)));
}
