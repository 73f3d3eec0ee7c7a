import { PHOTO_KINDS, type PhotoKind } from "../trade/questions";
import type { AskedPhoto } from "./photo-picker";
import { photoPicture } from "./pictures";

/** The photos that are asked for of every rug, in their order. */
export const ASKED_PHOTOS: readonly AskedPhoto[] = (Object.keys(PHOTO_KINDS) as PhotoKind[]).map((kind) => {
  const { ask, hint, fills } = PHOTO_KINDS[kind];
  return { kind, ask, hint, fills, picture: photoPicture(kind) };
});

/** Said before a photo is taken: staff can blur, and that cannot be undone. */
export const PEOPLE_AND_PAPERS = "Please leave people and papers out of the picture; where one is in it all the same, we may blur that part for good.";
