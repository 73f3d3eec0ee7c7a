import { MAX_PHOTO_BYTES, MAX_PIXELS } from "./limits";

/** Everything that is said of a photo, by what it is about; pages for clients say it again in their language by these ids. */
const ADVICE = "Please send a photo as JPEG, PNG, WebP or HEIC.";

/** What a file is that is no photo we can take. */
export const NOT_A_PHOTO = {
  empty: `This file is empty. ${ADVICE}`,
  page: `This is a web page or a drawing, not a photo. ${ADVICE}`,
  gif: `This is a GIF, which is too coarse to judge colours by. ${ADVICE}`,
  raw: `This is a TIFF or a camera's raw file. ${ADVICE}`,
  pdf: `This is a PDF, not a photo. ${ADVICE}`,
  office: `This is an archive or an office document, not a photo. ${ADVICE}`,
  archive: `This is an archive, not a photo. ${ADVICE}`,
  program: `This is a program, not a photo. ${ADVICE}`,
  bmp: `This is a BMP picture. ${ADVICE}`,
  jp2: `This is a JPEG 2000 picture. ${ADVICE}`,
  jxl: `This is a JPEG XL picture. ${ADVICE}`,
  avif: `This is an AVIF picture. ${ADVICE}`,
  film: `This is a film. Where a photo of yours moves, send the still half of it. ${ADVICE}`,
  burst: `This is a moving picture, or a burst without a main one. Please choose one of its photos. ${ADVICE}`,
  unknown: `We do not recognise this as a photo. ${ADVICE}`,
} as const;

/** Why a photo was not taken, though it is one. */
export const NOT_TAKEN = {
  tooManyBytes: `This photo is larger than ${MAX_PHOTO_BYTES / 1024 / 1024} MB, which is more than we can take. Most phones offer a smaller size when you share a photo.`,
  tooManyPixels: `This picture has more than ${MAX_PIXELS / 1e6} megapixels, which is more than we can open. An ordinary photo is plenty.`,
  moves: "This is a moving picture. Please send a single photo of the same thing.",
  tooDeep: "This photo is packed in a way only few programs can open (12 bits a colour). Please send it as an ordinary JPEG.",
  damaged: "We could not open this photo: the file seems to be damaged or cut short. Please choose it again, or take a new one.",
} as const;

/** Why two spots were not compared. */
export const NOT_COMPARED = {
  small: "The spot is too small to measure. Make it larger, or come closer with the camera.",
  lost: "The spot is burnt out by light or lost in shadow, so its colour cannot be measured. Take the photo again in daylight.",
} as const;

/** The one thing to do better in a photo. */
export const REMARKS = {
  dark: "This photo is rather dark. Could you take it again in daylight, by a window, with the lamp off?",
  drawn: "This looks like a drawing or a picture of a screen. Could you take a photo of the rug itself?",
  light: "Part of this photo is washed out by light. Could you take it again without flash or direct sun on the rug?",
  coarse: "This is a very small copy of a photo. Could you send the photo itself, as it lies on the phone or camera?",
  blurred: "This photo is blurred. Could you take it again with the phone held still, and tap on the rug first so that it focuses there?",
  same: "This looks like a photo we have already. Another one, from nearer or from the other end, would tell us more.",
  yellow: "Everything in this photo looks yellow, as if by lamplight. If the rug is not so itself, could you take it again by a window, in daylight, with the lamps off?",
  green: "Everything in this photo looks green, as if by the light of a tube or of leaves. If the rug is not so itself, could you take it again by a window, in daylight, with the lamps off?",
  blue: "Everything in this photo looks blue, as if by the light of a screen or deep shade. If the rug is not so itself, could you take it again by a window, in daylight, with the lamps off?",
  small: "The rug is small in this photo. Could you go nearer, so that it fills most of the picture?",
} as const;
