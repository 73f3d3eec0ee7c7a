import css from "./length.module.css";

/** What a length says to the ear: "Silk: likely, 70 %". */
export const spoken = (of: string, words: string, figures: string): string => `${of}: ${words}, ${figures}`;

/** A chance as a length from nothing, `share` 0–1 of the line: an image whose number stands in words. */
export function Length({ share, says }: { share: number; says: string }) {
  return (
    <svg className={css.length} role="img" aria-label={says} width="100%" height="18" focusable="false">
      <line x1="0" x2="100%" y1="9" y2="9" />
      <rect x="0" width={`${(share * 100).toFixed(2)}%`} y="5.5" height="7" rx="1" />
    </svg>
  );
}
