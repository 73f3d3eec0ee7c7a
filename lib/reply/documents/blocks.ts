import type { Locale } from "../../words/locales";

/** What a printed document is made of; whoever draws it keeps the order, so that it reads the same aloud. */
export type Block =
  | { readonly kind: "heading"; readonly level: 2 | 3; readonly text: string }
  /** Where the title stands, if not at the top: the subject of a letter. */
  | { readonly kind: "title"; readonly text: string }
  /** A part by itself: it begins on a page of its own, numbered anew, and can be left out. */
  | { readonly kind: "part"; readonly text: string }
  | { readonly kind: "paragraph"; readonly text: string }
  | { readonly kind: "small"; readonly text: string }
  | { readonly kind: "list"; readonly items: readonly string[] }
  | { readonly kind: "table"; readonly caption: string; readonly head: readonly string[]; readonly rows: readonly (readonly string[])[] }
  | { readonly kind: "photo"; readonly photoId: string; readonly alternative: string; readonly caption: string;
      /** Pixels of the photo as it is kept, by which it is turned and marked; absent where it is shown as it is. */
      readonly shape?: { readonly width: number; readonly height: number } | undefined;
      /** How far what it shows lies turned clockwise there, in quarters of a turn, 0 to 3: it is turned back as it is shown. */
      readonly quarters?: number | undefined;
      readonly marks?: readonly PhotoMark[] | undefined }
  /** Lengths in centimetres from the rug's first corner; `keep` is what remains. */
  | { readonly kind: "plan"; readonly widthCm: number; readonly lengthCm: number; readonly keep: readonly Rectangle[]; readonly damaged: readonly (readonly { readonly x: number; readonly y: number }[])[]; readonly alternative: string;
      /** What is written on the drawing: the rug's two sides, and each piece that is kept. Absent in documents made before there was any. */
      readonly sizes?: { readonly across: string; readonly along: string; readonly kept: readonly string[] } | undefined;
      /** The edge that lies towards the top of the photo, and the words for it. Absent in documents made before it was drawn. */
      readonly photoTop?: { readonly edge: PlanSide; readonly words: string } | undefined }
  | { readonly kind: "signature"; readonly lines: readonly string[] };
/** A numbered outline drawn on a photo, in shares of its width and height as it is shown. */
export interface PhotoMark { readonly n: number; readonly outline: readonly { readonly x: number; readonly y: number }[] }
export type PlanSide = "top" | "right" | "bottom" | "left";
export interface Rectangle { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number }

export interface PrintedDocument {
  readonly title: string;
  readonly language: Locale;
  /** Who it comes from: the workshop's head; null for the client's own letter. */
  readonly head: { readonly name: string; readonly lines: readonly string[] } | null;
  /** Of the enquiry, at the foot of every page; absent where the title has it, and in the client's own letter. */
  readonly reference?: string | undefined;
  readonly blocks: readonly Block[];
  /** The characters that no typeface had as it was made, drawn as boxes. Absent where there were none. */
  readonly boxed?: readonly string[] | undefined;
}

/** Every word of a block, in the order it is read. */
export function textsOfBlock(b: Block): string[] {
  switch (b.kind) {
    case "list": return [...b.items];
    case "table": return [b.caption, ...b.head, ...b.rows.flat()];
    case "photo": return [b.alternative, b.caption];
    case "plan": return [b.alternative, ...(b.sizes ? [b.sizes.across, b.sizes.along, ...b.sizes.kept] : [])];
    case "signature": return [...b.lines];
    default: return [b.text];
  }
}
/** Every word of a document, its head and its title included. */
export const textsOf = ({ head, title, blocks }: PrintedDocument): string[] => [...(head ? [head.name, ...head.lines] : []), title, ...blocks.flatMap(textsOfBlock)];

export const heading = (text: string, level: 2 | 3 = 2): Block => ({ kind: "heading", level, text });
export const paragraph = (text: string): Block => ({ kind: "paragraph", text });
export const small = (text: string): Block => ({ kind: "small", text });
export const list = (items: readonly string[]): readonly Block[] => (items.length > 0 ? [{ kind: "list", items }] : []);
