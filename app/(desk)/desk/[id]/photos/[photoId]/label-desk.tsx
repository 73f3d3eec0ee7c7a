"use client";
import { useRouter } from "next/navigation";
import { LABELS } from "@/app/(desk)/desk/[id]/label-deeds";
import { reach } from "@/app/(desk)/_parts/reach";
import type { PhotoView } from "@/lib/enquiry/views";
import { LabelReading } from "@/lib/ui/label-reading";
import { FrameMarker } from "@/lib/ui/marking/frame-marker";
import css from "./photo.module.css";

const ANYWHERE = { x: 0, y: 0, width: 1, height: 1 };

/** The label in a photo at the desk: what was read of it, and the frame within which it is read. A photo of something else is read only where a frame is drawn. */
export function LabelDesk({ photo }: { photo: PhotoView }) {
  const router = useRouter();
  if (photo.label || photo.kind === "label") return <div className={css.label}><LabelReading photo={photo} deeds={LABELS} isFramed /></div>;
  const read = async (frame: typeof ANYWHERE) => {
    const begun = await reach(() => LABELS.frame({ photoId: photo.id, frame }));
    if (!begun.ok) return begun.say;
    router.refresh();
    return null;
  };
  return <div className={css.work}><FrameMarker photo={photo} found={ANYWHERE} read={read} says={LABELS.says} /></div>;
}
