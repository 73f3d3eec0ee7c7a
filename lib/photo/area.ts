/** A part of a picture: shares of its width and height, 0 to 1, from its upper left corner. */
export interface Area { left: number; top: number; width: number; height: number }

/** The least width and height of an area: a hundredth is some ten pixels on a screen. *elicited* */
export const LEAST = 0.01;

const between = (least: number, value: number, most: number): number => Math.min(most, Math.max(least, value));

/** The area two opposite corners span, kept inside the picture and no smaller than LEAST. */
export function areaBetween(one: { x: number; y: number }, other: { x: number; y: number }): Area {
  return inPicture({ left: Math.min(one.x, other.x), top: Math.min(one.y, other.y), width: Math.abs(one.x - other.x), height: Math.abs(one.y - other.y) });
}

/** The nearest area that lies whole inside the picture: what sticks out is cut, what is too small grows. */
export function inPicture({ left, top, width, height }: Area): Area {
  const l = between(0, left, 1 - LEAST), t = between(0, top, 1 - LEAST);
  return { left: l, top: t, width: between(LEAST, left + width - l, 1 - l), height: between(LEAST, top + height - t, 1 - t) };
}

/** The same area elsewhere, as far as the picture goes. */
export const moved = (a: Area, right: number, down: number): Area => ({ ...a, left: between(0, a.left + right, 1 - a.width), top: between(0, a.top + down, 1 - a.height) });

/** Its lower right corner moved, as far as the picture goes. */
export const resized = (a: Area, right: number, down: number): Area =>
  ({ ...a, width: between(LEAST, a.width + right, 1 - a.left), height: between(LEAST, a.height + down, 1 - a.top) });

/** One figure of an area set anew: a place moves it whole, as far as the picture goes; a size leaves it where it is. */
export function withFigure(a: Area, figure: keyof Area, share: number): Area {
  if (figure === "left") return moved(a, share - a.left, 0);
  if (figure === "top") return moved(a, 0, share - a.top);
  return inPicture({ ...a, [figure]: share });
}

/** The least and the most one figure of an area can be while the others stay. */
export const limitsOf = (a: Area, figure: keyof Area): { least: number; most: number } =>
  ({ left: { least: 0, most: 1 - a.width }, top: { least: 0, most: 1 - a.height }, width: { least: LEAST, most: 1 - a.left }, height: { least: LEAST, most: 1 - a.top } })[figure];
