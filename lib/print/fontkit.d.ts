declare module "fontkit" {
  /** As much of a typeface as is asked here. */
  export interface Font { hasGlyphForCodePoint(code: number): boolean }
  export function create(bytes: Buffer): Font;
}
