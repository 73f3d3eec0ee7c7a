import Link from "next/link";
import type { IntakeView } from "@/lib/enquiry/read-intake";
import { nextStep } from "@/lib/enquiry/steps";
import { ASKED_PHOTOS, PEOPLE_AND_PAPERS } from "@/lib/ui/asked-photos";
import { PhotoPicker } from "@/lib/ui/photo-picker";
import { progressWords } from "@/lib/ui/progress";
import { answerLabel, readTheLabel, showSpots, takePhotoAway, takeSpotsBack } from "../actions";
import { SendAsItIs } from "../[step]/go-on";
import styles from "../[step]/step.module.css";
import { titleOf } from "@/lib/ui/step-titles";

const LABELS = { read: readTheLabel, answer: answerLabel };

/** The photos: each sent as soon as it is chosen. */
export function Photos({ intake }: { intake: IntakeView }) {
  const title = titleOf("photos", intake.answers);
  return (
    <>
      <title>{title}</title>
      <h1>{title}</h1>
      <p className={styles.hint}>
        As many of these as you can, in daylight, without flash. {PEOPLE_AND_PAPERS} Where a photo was taken is removed before we keep it.
      </p>
      <PhotoPicker kinds={ASKED_PHOTOS} photos={intake.photos} remove={takePhotoAway} spots={{ kept: intake.spots, keep: showSpots, takeBack: takeSpotsBack }} labels={LABELS} />
      <div className={styles.foot}>
        <div className={styles.onward}>
          <Link className="button" href={`/ask/${nextStep("photos", intake.answers)}`}>Go on</Link>
          <p className="small">{intake.photos.length === 0 ? "You can go on without photos and come back to them. " : ""}{progressWords("photos", intake.answers)}</p>
        </div>
        <SendAsItIs step="photos" />
      </div>
    </>
  );
}
