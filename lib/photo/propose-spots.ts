import { deltaE00, labOf, type Lab } from "./colour";
import type { Spot } from "./spot";
import type { Rgb } from "./strip";

/**
 * Two spots to compare where nobody has touched any: only on a rug that is plain enough, and only as a proposal that a
 * person moves. Numbers elicited on drawn pictures.
 */
const BLOCKS = 24;
/** Of the blocks, how many must share one colour for a rug to count as plain. */
const PLAIN_SHARE = 0.45;
const SAME_COLOUR = 5;
const OTHER_COLOUR = 7;
/** A stain takes at least so many blocks that touch, and at most this share of the picture. */
const LEAST_BLOCKS = 3;
const MOST_SHARE = 0.4;
/** Of what stands out, the stain’s share: many things that stand out are a pattern, and a medallion is no stain. *elicited* on the pictures of the demo */
const ALONE_SHARE = 0.6;
/** Of each side, what is mostly floor. */
const MARGIN = 2;

interface Block extends Lab { readonly column: number; readonly row: number }
interface Point { readonly x: number; readonly y: number }

/**
 * An untouched and an affected spot, or null where the picture is too patterned, or nothing stands out. `rug`: its corners in order, in
 * shares of the picture, where they are known; nothing beside it is looked at then.
 */
export function proposeSpots(picture: Rgb, rug: readonly Point[] | null = null): { untouched: Spot; affected: Spot } | null {
  const blocks = blocksOf(picture).filter((b) => rug === null || liesOn(b, rug));
  const ground = commonColour(blocks);
  if (!ground || blocks.filter((b) => deltaE00(b, ground) < SAME_COLOUR).length < PLAIN_SHARE * blocks.length) return null;
  // What reaches the edge of what is looked at is floor or fringe rather than stain, or a stain of which too little is seen.
  const looked = new Set(blocks.map(({ column, row }) => `${column} ${row}`));
  const isAtEdge = ({ column, row }: Block) => [[-1, 0], [1, 0], [0, -1], [0, 1]].some(([dx = 0, dy = 0]) => !looked.has(`${column + dx} ${row + dy}`));
  const inside = groupsOf(blocks.filter((b) => deltaE00(b, ground) > OTHER_COLOUR)).filter((g) => !g.some(isAtEdge));
  const stain = inside.reduce<Block[]>((most, g) => (g.length > most.length ? g : most), []);
  if (stain.length < LEAST_BLOCKS || stain.length > MOST_SHARE * blocks.length || stain.length < ALONE_SHARE * inside.flat().length) return null;
  const middle = centreOf(stain);
  const affected = nearest(stain, middle);
  // Near it, so that the light is the same, but not at its edge.
  const clean = blocks.filter((b) => deltaE00(b, ground) < SAME_COLOUR && stain.every((s) => Math.max(Math.abs(s.column - b.column), Math.abs(s.row - b.row)) > 1));
  const untouched = clean.length > 0 ? nearest(clean, middle) : null;
  return untouched ? { untouched: spotAt(untouched), affected: spotAt(affected) } : null;
}

/** Whether all four corners of a block lie inside an outline, by how often a line to the right crosses it. */
const liesOn = ({ column, row }: Block, outline: readonly Point[]): boolean =>
  [[0, 0], [1, 0], [0, 1], [1, 1]].every(([dx = 0, dy = 0]) => {
    const [x, y] = [(column + dx) / BLOCKS, (row + dy) / BLOCKS];
    const crossed = outline.filter((a, i) => {
      const b = outline[(i + 1) % outline.length]!;
      return a.y > y !== b.y > y && x < a.x + ((y - a.y) * (b.x - a.x)) / (b.y - a.y);
    });
    return crossed.length % 2 === 1;
  });

const spotAt = (b: Block): Spot => ({ shape: "rectangle", x: b.column / BLOCKS, y: b.row / BLOCKS, width: 1 / BLOCKS, height: 1 / BLOCKS });

function blocksOf({ data, width, height }: Rgb): Block[] {
  const blocks: Block[] = [];
  for (let row = MARGIN; row < BLOCKS - MARGIN; row++)
    for (let column = MARGIN; column < BLOCKS - MARGIN; column++) {
      const [left, right] = [Math.floor((column * width) / BLOCKS), Math.floor(((column + 1) * width) / BLOCKS)];
      const [top, bottom] = [Math.floor((row * height) / BLOCKS), Math.floor(((row + 1) * height) / BLOCKS)];
      let [r, g, b, n] = [0, 0, 0, 0];
      for (let y = top; y < bottom; y++) for (let x = left; x < right; x++, n++) { const at = 3 * (y * width + x); r += data[at]!; g += data[at + 1]!; b += data[at + 2]!; }
      if (n > 0) blocks.push({ ...labOf(Math.round(r / n), Math.round(g / n), Math.round(b / n)), column, row });
    }
  return blocks;
}

/** The block with the most others of its colour. */
function commonColour(blocks: readonly Block[]): Block | null {
  let best: Block | null = null, most = 0;
  for (const b of blocks) {
    const count = blocks.filter((c) => Math.abs(c.L - b.L) < 2 * SAME_COLOUR && deltaE00(b, c) < SAME_COLOUR).length;
    if (count > most) [best, most] = [b, count];
  }
  return best;
}

/** The groups of blocks that touch, corners included. */
function groupsOf(blocks: readonly Block[]): Block[][] {
  const open = new Set(blocks);
  const groups: Block[][] = [];
  for (const start of blocks) {
    if (!open.delete(start)) continue;
    const group = [start];
    for (const b of group)
      for (const c of open) if (Math.abs(c.column - b.column) <= 1 && Math.abs(c.row - b.row) <= 1) { open.delete(c); group.push(c); }
    groups.push(group);
  }
  return groups;
}

const centreOf = (blocks: readonly Block[]) => ({ column: blocks.reduce((s, b) => s + b.column, 0) / blocks.length, row: blocks.reduce((s, b) => s + b.row, 0) / blocks.length });
const nearest = (blocks: readonly Block[], to: { column: number; row: number }): Block =>
  blocks.reduce((best, b) => (Math.hypot(b.column - to.column, b.row - to.row) < Math.hypot(best.column - to.column, best.row - to.row) ? b : best));
