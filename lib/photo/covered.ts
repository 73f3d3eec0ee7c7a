import type { Area } from "./area";
import type { Point } from "./homography";
import type { Spot } from "./spot";

/** Whether any pixel of a spot lies in an area. `photo`: its pixels, since a circle's radius is a share of the longer side. */
export function coversSpot(area: Area, spot: Spot, { width, height }: { width: number; height: number }): boolean {
  if (spot.shape === "rectangle") return coversFrame(area, spot);
  const [x, y, radius] = [spot.x * width, spot.y * height, spot.radius * Math.max(width, height)];
  const nearest = (at: number, from: number, size: number) => Math.min(from + size, Math.max(from, at));
  return Math.hypot(x - nearest(x, area.left * width, area.width * width), y - nearest(y, area.top * height, area.height * height)) < radius;
}

/** Whether an area and a part of the picture have more than an edge in common. */
export const coversFrame = (area: Area, part: { x: number; y: number; width: number; height: number }): boolean =>
  area.left < part.x + part.width && part.x < area.left + area.width && area.top < part.y + part.height && part.y < area.top + area.height;

/** Whether a point lies in an area, its edges included. */
export const coversPoint = (area: Area, { x, y }: Point): boolean =>
  x >= area.left && x <= area.left + area.width && y >= area.top && y <= area.top + area.height;
