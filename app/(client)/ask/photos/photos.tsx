import { Link } from "@/lib/ui/link";
import { knownOf, type IntakeView } from "@/lib/enquiry/read-intake";
import { retellRemark } from "@/lib/enquiry/retell";
import { nextStep } from "@/lib/enquiry/steps";
import { askedPhotos } from "@/lib/ui/asked-photos";
import { PhotoPicker } from "@/lib/ui/photo-picker";
import { progressWords } from "@/lib/ui/progress";
import { titleOf } from "@/lib/ui/step-titles";
import { labelSays } from "@/lib/words/label-says";
import type { Words } from "@/lib/words/words";
import { answerLabel, lookAtLabel, showLabel, showSpots, takePhotoAway, takeSpotsBack } from "../actions";
import { SendAsItIs } from "../[step]/go-on";
import styles from "../[step]/step.module.css";

const LABELS = { look: lookAtLabel, answer: answerLabel, frame: showLabel };

/** The photos: each sent as soon as it is chosen. */
export function Photos({ intake, words }: { intake: IntakeView; words: Words }) {
  const { say } = words;
  const title = titleOf("photos", intake.answers, words);
  return (
    <>
      <title>{title}</title>
      <h1>{title}</h1>
      <p className={styles.hint}>{say("photos.how", { leaveOut: say("photos.leave-out") })}</p>
      <PhotoPicker kinds={askedPhotos(words)} photos={intake.photos.map((p) => retellRemark(words, p))} remove={takePhotoAway} spots={{ kept: intake.spots, keep: showSpots, takeBack: takeSpotsBack }} labels={{ ...LABELS, says: labelSays(words) }} />
      <div className={styles.foot}>
        <div className={styles.onward}>
          <Link className="button" href={`/ask/${nextStep("photos", intake.answers, knownOf(intake))}`}>{say("ask.go-on")}</Link>
          <p className="small">{intake.photos.length === 0 && `${say("photos.without")} `}{progressWords("photos", intake.answers, words)}</p>
        </div>
        <SendAsItIs step="photos" words={words} />
      </div>
    </>
  );
}
