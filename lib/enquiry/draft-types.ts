import type { Change } from "../reply/changes";
import type { CorrectedId } from "../trade/correcting-words";
import type { FormStepId } from "./step-schemas";
import type { PostView } from "./views";

/** A letter as the program would write it now. */
export interface LetterNow { subject: string; text: string }
/** The reply being written. */
export interface DraftView {
  number: number; subject: string; text: string; by: string; /** Whoever looks at it wrote it. */ isByYou: boolean; at: string; words: number;
  /** What the program would write now; null where it cannot know. */
  today: {
    letter: LetterNow;
    /** Where that only follows a letter of ours: the whole letter. */
    whole: LetterNow | null;
    /** What it words otherwise than when the draft was begun, or was last looked at. */
    changes: Change[];
    subject: { was: string; now: string } | null;
    /** Names it. */
    mark: string;
  } | null;
}
/** What somebody wrote after the enquiry; `other`: the message by which it came from an address we do not know, `owned`: by which it did and counts as the client's own. Both null where the client wrote it. */
export interface MessageView {
  at: string; /** When it came by mail; null where it did not, or that is not known. */ cameAt: string | null; text: string; other: { postId: string; address: string } | null; owned: { postId: string; address: string } | null;
  /** The mail it came by, where something came with it that is no photo of the enquiry. */
  enclosed: Pick<PostView, "id" | "files" | "leftOut"> | null;
  /** The id of the mail it came by, where words of theirs may be among what was folded; see PostView. */
  hidesPerhaps: string | null;
}
/** That a message seems to correct an answer. `at`: of the message; `step`: the page on which staff correct it. */
export interface CorrectionView { at: string; of: CorrectedId; step: FormStepId }
/** What came: what the client wrote, whether they answered questions, and how many photos. */
export interface CameView { messages: MessageView[]; answers: boolean; photos: number }
/** What the client wrote and sent since our last letter; `at` null: since they asked, where none has gone yet. */
export interface SinceView extends CameView { at: string | null; /** When it left; null where that is not known. */ leftAt: string | null; /** Whether that letter has left; one that is held has only been approved. */ hasLeft: boolean }
/** A letter of ours that no longer holds, and what of it would read otherwise. */
export interface OutdatedLetterView { leftAt: string; changes: Change[] }
/** What came after a letter of ours was approved and before it left. */
export interface MeanwhileView extends CameView { kind: "acknowledgement" | "reply" | "question"; /** It has not gone, and is ours to look at again; otherwise it was on its way already. */ isHeldBack: boolean; /** It was held back since the rug was judged anew, not for anything that came. */ isOvertaken: boolean; approvedAt: string }
