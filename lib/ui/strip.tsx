import type { ColourShare } from "../enquiry/views";
import styles from "./strip.module.css";
import { STITCH, weave } from "./weave";

/** A strip of yarn that has not been dyed, for where no colours are known yet. */
const UNDYED: readonly ColourShare[] = [{ hex: "#808080", share: 1 }];

/**
 * The rug's own measured colours as a woven strip, in proportion: the only bright thing on a page. It fills the
 * width (or, upright, the height) of its place. Decoration: what it shows is said in words elsewhere.
 */
export function Strip({ colours, cells = 56, upright = false, thickness = 14 }: {
  colours: readonly ColourShare[];
  cells?: number;
  upright?: boolean;
  /** Pixels */
  thickness?: number;
}) {
  const along = cells * STITCH.long;
  const across = STITCH.rows * STITCH.high;
  const isUndyed = colours.length === 0;
  return (
    <svg
      className={`${upright ? styles.upright : styles.across} ${isUndyed ? styles.undyed : ""}`}
      style={upright ? { width: thickness } : { height: thickness }}
      viewBox={upright ? `0 0 ${across} ${along}` : `0 0 ${along} ${across}`}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      {weave({ colours: isUndyed ? UNDYED : colours, cells, upright }).map((yarn) => (
        <path key={yarn.colour} d={yarn.d} stroke={yarn.colour} strokeWidth={STITCH.high - STITCH.gap} strokeLinecap="round" fill="none" />
      ))}
    </svg>
  );
}
