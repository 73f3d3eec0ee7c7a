/** Bytes of one photo as received. */
export const MAX_PHOTO_BYTES = 25 * 1024 * 1024;
/** Pixels. Above the 64 megapixels of the largest common phone panorama; a decompression bomb stops here. *elicited* */
export const MAX_PIXELS = 66e6;
