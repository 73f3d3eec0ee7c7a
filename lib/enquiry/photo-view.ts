import "server-only";
import * as z from "zod/mini";
import type { LabelReading, Photo } from "../store/database";
import { isSpoilt, LIMITS, remarkOn, type Quality } from "../photo/quality";
import { PHOTO_KINDS, shownAs, UNSAID_PHOTO, type PhotoKind, type ShownKind } from "../trade/questions";
import { labelReadingView } from "./label-reading";
import type { ColourShare, PhotoView } from "./views";

const KINDS = Object.keys(PHOTO_KINDS) as [PhotoKind, ...PhotoKind[]];
/** What a photo can be sent as, or named. */
export const photoKindSchema = z.enum(KINDS);
/** What stands beside a photo that is kept. */
export const shownKindSchema = z.enum([...KINDS, UNSAID_PHOTO]);

/** What lib/photo measured, as it is stored beside the photo. What was not measured yet when a photo came counts as good. */
const measuredSchema = z.object({
  colours: z.array(z.object({ hex: z.string(), share: z.number() })),
  quality: z.object({
    sharpness: z._default(z.number(), 1),
    mean: z._default(z.number(), 0.5),
    clippedDark: z._default(z.number(), 0),
    clippedLight: z._default(z.number(), 0),
    flat: z._default(z.number(), 0),
    cast: z._default(z.number(), 0),
    castToward: z._default(z.nullable(z.enum(["yellow", "green", "blue"])), null),
    subject: z._default(z.number(), 1),
    likeness: z._default(z.nullable(z.string()), null),
    longSide: z._default(z.number(), LIMITS.longSide),
  }),
});

/** Which kinds of photos there are to judge a rug by, and which came out so dark, light or blurred that they are asked for again. */
export interface SentKinds { photos: ShownKind[]; spoilt: ShownKind[] }

export function sentKinds(taken: readonly { kind: ShownKind; quality: Quality }[]): SentKinds {
  const photos = taken.filter(({ kind, quality }) => !isSpoilt(quality, shownAs(kind))).map((p) => p.kind);
  return { photos, spoilt: taken.map((p) => p.kind).filter((kind) => !photos.includes(kind)) };
}

export const storedKinds = (photos: readonly Pick<Photo, "kind" | "measured">[]): SentKinds =>
  sentKinds(photos.map((p) => ({ kind: shownKindSchema.parse(p.kind), quality: measuredSchema.parse(p.measured).quality })));

export const coloursOf = (photo: Pick<Photo, "measured">): ColourShare[] => measuredSchema.parse(photo.measured).colours;

/** A photo with what was read of its label, where that was asked for. */
type Shown = Photo & { label?: LabelReading | null };

/** The photos of one rug in their order; of two that are the same the later one is told so. `told`: what was typed of its label. */
export const photoViews = (photos: readonly Shown[], told: string | null = null): PhotoView[] => photos.map((photo, at) => photoView(photo, { earlier: photos.slice(0, at), told }));

export function photoView(photo: Shown, { earlier = [], told = null }: { earlier?: readonly Photo[]; told?: string | null } = {}): PhotoView {
  const measured = measuredSchema.parse(photo.measured);
  const kind = shownKindSchema.parse(photo.kind);
  const { fills, white } = shownAs(kind);
  const asked = { fills, white };
  // One that we asked to take again is no reason to find fault with the one taken again.
  const others = earlier.map((p) => measuredSchema.parse(p.measured).quality).filter((q) => remarkOn(q, asked) === null).map((q) => q.likeness);
  return {
    id: photo.id,
    kind,
    width: photo.width,
    height: photo.height,
    takenAt: photo.takenAt?.toISOString() ?? null,
    colours: measured.colours,
    remark: remarkOn(measured.quality, { ...asked, others }),
    likeness: measured.quality.likeness,
    label: photo.label ? labelReadingView(photo.label, photo, told) : null,
  };
}

/** The photo a rug's colours are taken from: never its label or its back; one that nobody has named only where there is no other. */
export function colourPhoto<P extends Pick<Photo, "kind">>(photos: readonly P[]): P | undefined {
  return (["whole", "trouble", "pile", UNSAID_PHOTO] as const).map((kind) => photos.find((p) => p.kind === kind)).find((p) => p !== undefined);
}

/** A rug's colours, in order of their share; none where only its label or its back was photographed. */
export function rugColours(photos: readonly Pick<Photo, "kind" | "measured">[]): ColourShare[] {
  const photo = colourPhoto(photos);
  return photo ? coloursOf(photo) : [];
}

/** The photo that stands for a rug: the whole of it where there is one, else the trouble, else the first. */
export function facePhoto<P extends Pick<Photo, "kind">>(photos: readonly P[]): P | undefined {
  return photos.find((p) => p.kind === "whole") ?? photos.find((p) => p.kind === "trouble") ?? photos[0];
}
