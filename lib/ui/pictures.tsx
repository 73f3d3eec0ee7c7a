import type { ReactNode } from "react";
import type { PhotoKind } from "../trade/questions";
import { irregular } from "./weave";

/**
 * Small drawings beside the answers: the pile seen from the side, a folded corner seen from above, and what each
 * photo should hold. Decoration only: what they show stands in words beside them.
 */
const MATT = "var(--pile-matt)";
const LIGHT = "var(--pile-light)";
const DARK = "var(--pile-dark)";
const INK = "var(--graphite)";

function Drawing({ children }: { children: ReactNode }) {
  return <svg viewBox="0 0 92 76" fill="none" aria-hidden="true" focusable="false">{children}</svg>;
}

/** One row of pile. `lean` moves the tip sideways, `height` is its length, both in units of the drawing. */
interface Tuft { lean: number; height: number; colour: string }
const TUFTS = 15;

function Pile({ tuft, gleam }: { tuft: (k: number) => Tuft; gleam?: (k: number) => boolean }) {
  return (
    <>
      {Array.from({ length: TUFTS }, (_, k) => {
        const { lean, height, colour } = tuft(k);
        const x = 7 + k * 5.57;
        return <path key={k} d={`M${x} 65q${lean * 0.25} ${-height * 0.55} ${lean} ${-height}`} stroke={colour} strokeWidth="4.3" strokeLinecap="round" />;
      })}
      {gleam && Array.from({ length: TUFTS }, (_, k) => gleam(k) && <path key={k} d={`M${6.2 + k * 5.57} 53v-22`} stroke="var(--sheet)" strokeWidth="1.5" strokeLinecap="round" />)}
      <path d="M3 68h86" stroke={INK} strokeWidth="2" />
    </>
  );
}

const upright = (colour: string) => (): Tuft => ({ lean: 0, height: 43, colour });
/** Tufts pushed aside and down around the middle, as by a finger; `depth` 0–1. */
const parted = (depth: number) => (k: number): Tuft => {
  const from = k - (TUFTS - 1) / 2;
  const near = Math.max(0, 1 - Math.abs(from) / 3.2) * depth;
  return { lean: Math.sign(from) * near * 9, height: 43 - near * 30, colour: near > 0.05 ? DARK : MATT };
};

const SHINE: Record<string, ReactNode> = {
  none: <Pile tuft={upright(MATT)} />,
  "two-tone": <Pile tuft={(k) => ({ lean: k < TUFTS / 2 ? -6 : 6, height: 42, colour: k < TUFTS / 2 ? LIGHT : DARK })} />,
  satin: <Pile tuft={upright(MATT)} gleam={(k) => k % 2 === 1} />,
  mixed: <Pile tuft={(k) => ({ lean: 0, height: 43, colour: k > 4 && k < 10 ? LIGHT : MATT })} gleam={(k) => k > 4 && k < 10} />,
};

const FOOTPRINTS: Record<string, ReactNode> = {
  stay: <Pile tuft={parted(1)} />,
  brush: <><Pile tuft={parted(0.55)} /><path d="M24 15c12-9 32-9 43 0m-1-8 1.5 8.5-8.5 1" stroke={INK} strokeWidth="1.8" strokeLinecap="round" strokeLinejoin="round" /></>,
  none: <><Pile tuft={upright(MATT)} /><path d="M46 17V5m-4.5 7.5L46 17l4.5-4.5" stroke={INK} strokeWidth="1.8" strokeLinecap="round" strokeLinejoin="round" /></>,
};

/** The rug from above with its lower right corner folded over; what the fold shows is the back. */
function Folded({ id, front, back }: { id: string; front?: ReactNode; back: ReactNode }) {
  return (
    <>
      <clipPath id={`front-${id}`}><path d="M5 5h82v28L49 71H5z" /></clipPath>
      <clipPath id={`back-${id}`}><path d="M87 33H49v38z" /></clipPath>
      <g clipPath={`url(#front-${id})`}>{front ?? <Rows gap={6} />}</g>
      <path d="M87 33V5H5v66h44" stroke={INK} strokeWidth="1.5" />
      <path d="M87 33H49v38z" fill="var(--sheet)" />
      <g clipPath={`url(#back-${id})`}>{back}</g>
      <path d="M87 33H49v38z" stroke={INK} strokeWidth="1.8" strokeLinejoin="round" />
    </>
  );
}
const Rows = ({ gap, from = 5, colour = LIGHT, width = 2.6 }: { gap: number; from?: number; colour?: string; width?: number }) => (
  <path d={Array.from({ length: Math.ceil(70 / gap) }, (_, k) => `M5 ${from + gap / 2 + k * gap}h84`).join("")} stroke={colour} strokeWidth={width} />
);
const Columns = ({ gap, width = 1.2 }: { gap: number; width?: number }) => (
  <path d={Array.from({ length: Math.ceil(86 / gap) }, (_, k) => `M${5 + k * gap} 4v70`).join("")} stroke={MATT} strokeWidth={width} />
);
/** Small knots in rows; `dark` says which of them carry the pattern. */
const Knots = ({ dark }: { dark: (x: number, y: number) => boolean }) => (
  <>
    {Array.from({ length: 11 * 9 }, (_, k) => [k % 11, Math.floor(k / 11)] as const).map(([x, y]) => (
      <rect key={`${x} ${y}`} x={47 + x * 4.2} y={33 + y * 4.2} width="3.2" height="3.2" rx="1" fill={dark(x, y) ? DARK : LIGHT} />
    ))}
  </>
);
/** Flecks of felt or foam. */
const Flecks = () => (
  <path d={Array.from({ length: 90 }, (_, k) => `M${(49 + irregular(k) * 38).toFixed(1)} ${(33 + irregular(k + 200) * 38).toFixed(1)}h.01`).join("")} stroke={DARK} strokeWidth="2" strokeLinecap="round" />
);
const Diamonds = () => <path d="M14 38l16-16 16 16-16 16zM46 38l16-16 16 16-16 16z" stroke={MATT} strokeWidth="5" />;

const BACK: Record<string, ReactNode> = {
  knots: <Folded id="knots" back={<Knots dark={(x, y) => (x + y) % 5 === 0 || (x - y + 20) % 5 === 0} />} />,
  cloth: <Folded id="cloth" back={<><Rows gap={3} colour={MATT} width={1} /><Columns gap={3} width={1} /></>} />,
  loomed: <Folded id="loomed" back={<Rows gap={4.2} colour={MATT} width={2.6} />} />,
  machine: <Folded id="machine" back={<><Rows gap={6.5} colour={DARK} width={1.3} /><Columns gap={6.5} width={3} /></>} />,
  flat: <Folded id="flat" front={<Diamonds />} back={<g transform="translate(22 14)"><Diamonds /></g>} />,
  felt: <Folded id="felt" back={<Flecks />} />,
};

const ROW_OF_PICTURES: Readonly<Record<string, Record<string, ReactNode>>> = { shine: SHINE, footprints: FOOTPRINTS, back: BACK };

/** The drawing beside one answer; undefined where there is none. */
export function pictureOf(question: string, answer: string): ReactNode {
  const drawing = ROW_OF_PICTURES[question]?.[answer];
  return drawing ? <Drawing>{drawing}</Drawing> : undefined;
}

/** Fringe along both short ends of a small rug seen from above. */
const Fringe = ({ y, to }: { y: number; to: number }) => (
  <path d={Array.from({ length: 9 }, (_, k) => `M${26 + k * 5} ${y}v${to}`).join("")} stroke={MATT} strokeWidth="1.6" strokeLinecap="round" />
);
const PHOTOS: Record<PhotoKind, ReactNode> = {
  whole: <><Fringe y={12} to={-6} /><Fringe y={64} to={6} /><rect x="22" y="12" width="48" height="52" fill="var(--pile-light)" stroke={INK} strokeWidth="1.5" /><rect x="29" y="19" width="34" height="38" stroke={MATT} strokeWidth="3" /></>,
  label: <Folded id="label" back={<><rect x="54" y="38" width="21" height="13" fill="var(--sheet)" stroke={INK} strokeWidth="1.5" /><path d="M57.5 42.5h13m-13 4h9" stroke={INK} strokeWidth="1.5" /></>} />,
  back: <Folded id="photo-back" back={<Knots dark={(x, y) => (x + 2 * y) % 4 === 0} />} />,
  pile: <Pile tuft={(k) => ({ lean: k < TUFTS / 2 ? -9 : 9, height: 40, colour: Math.abs(k - 7) < 2 ? DARK : MATT })} />,
  trouble: <><rect x="8" y="8" width="76" height="60" fill="var(--pile-light)" stroke={INK} strokeWidth="1.5" /><path d="M34 30c7-9 22-8 27 0s2 19-9 20-24 1-25-7 3-8 7-13z" fill={MATT} stroke={DARK} strokeWidth="1.5" strokeDasharray="3 3" /></>,
};

/** What a photo of one kind should hold. */
export const photoPicture = (kind: PhotoKind): ReactNode => <Drawing>{PHOTOS[kind]}</Drawing>;
