import { PHOTO_KINDS, type PhotoKind } from "../trade/questions";
import type { Words } from "../words/words";
import type { AskedPhoto } from "./photo-picker";
import { photoPicture } from "./pictures";

/** The photos that are asked for of every rug, in their order. */
export const askedPhotos = (words: Words): readonly AskedPhoto[] =>
  (Object.keys(PHOTO_KINDS) as PhotoKind[]).map((kind) => (
    { kind, ask: words.table(`photo.${kind}.ask`), hint: words.table(`photo.${kind}.hint`), fills: PHOTO_KINDS[kind].fills, white: PHOTO_KINDS[kind].white, picture: photoPicture(kind) }
  ));
