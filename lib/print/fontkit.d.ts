declare module "fontkit" {
  export interface Glyph { readonly codePoints: readonly number[] }
  /** Glyphs in the order they stand from the left; advances and offsets in units of the typeface. */
  export interface GlyphRun { readonly glyphs: Glyph[]; readonly positions: { xAdvance: number; yAdvance: number; xOffset: number; yOffset: number }[] }
  /** As much of a typeface as is asked here. */
  export interface Font {
    readonly unitsPerEm: number;
    /** Above the baseline, in its own units. */
    readonly ascent: number;
    hasGlyphForCodePoint(code: number): boolean;
    glyphForCodePoint(code: number): Glyph;
    /** `direction`: "rtl" where the text runs from right to left. */
    layout(text: string, features?: unknown, script?: string, language?: string, direction?: string): GlyphRun;
  }
  export function create(bytes: Buffer): Font;
}
