interface Point { readonly x: number; readonly y: number }
type Outline = readonly Point[];

/** How far the middle of a number stands from its outline and from the edge of the photo, in radii of its disc; where that place is taken, further. By eye. */
const BESIDE = [1.2, 2.6] as const;
const ASIDE: readonly Point[] = [{ x: 0, y: -1 }, { x: 1, y: 0 }, { x: 0, y: 1 }, { x: -1, y: 0 }];
/** Two numbers on each other cannot be read; a number on another outline only hides some of it. */
const HIDES = { number: 100, outline: 1 } as const;

/**
 * Where the number of each outline stands, as the middle of a disc: above it, else to its right, below it or to its left, so that no
 * number lies on another and as few outlines as can be are covered; always on the photo. All lengths in one unit, from the photo's upper left corner.
 */
export function numberPlaces(outlines: readonly Outline[], { width, height, radius }: { width: number; height: number; radius: number }): Point[] {
  const edge = BESIDE[0] * radius;
  const within = ({ x, y }: Point): Point => ({ x: Math.min(Math.max(x, edge), width - edge), y: Math.min(Math.max(y, edge), height - edge) });
  const places: Point[] = [];
  outlines.forEach((outline, at) => {
    const others = outlines.filter((_, i) => i !== at);
    const cost = (place: Point) =>
      HIDES.number * places.filter((p) => Math.hypot(p.x - place.x, p.y - place.y) < 2 * radius).length + HIDES.outline * others.filter((o) => isNear(o, place, radius)).length;
    const best = placesBeside(outline, radius).map(within).map((place) => ({ place, cost: cost(place) })).reduce((a, b) => (b.cost < a.cost ? b : a));
    places.push(best.place);
  });
  return places;
}

/** Beside the outermost corner of an outline each way, near first. */
const placesBeside = (outline: Outline, radius: number): Point[] =>
  BESIDE.flatMap((away) => ASIDE.map((way) => {
    const corner = outline.reduce((a, b) => ((b.x - a.x) * way.x + (b.y - a.y) * way.y > 0 ? b : a));
    return { x: corner.x + way.x * away * radius, y: corner.y + way.y * away * radius };
  }));

/** Whether the line of an outline, closed, comes nearer to a point than this. */
const isNear = (outline: Outline, point: Point, distance: number): boolean =>
  outline.some((from, i) => distanceTo(point, from, outline[(i + 1) % outline.length] as Point) < distance);

function distanceTo({ x, y }: Point, from: Point, to: Point): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const length2 = dx * dx + dy * dy;
  const along = length2 === 0 ? 0 : Math.min(1, Math.max(0, ((x - from.x) * dx + (y - from.y) * dy) / length2));
  return Math.hypot(x - from.x - along * dx, y - from.y - along * dy);
}
