import { answering } from "./answering";
import { atTheDesk } from "./at-the-desk";
import { blurring } from "./blurring";
import { byMail } from "./by-mail";
import { correcting } from "./correcting";
import { correctingClients } from "./correcting-clients";
import { erasing } from "./erasing";
import { following } from "./following";
import { fromOtherAddresses } from "./from-other-addresses";
import { holdingBack } from "./holding-back";
import { judgingAnew } from "./judging-anew";
import { measuring } from "./measuring";
import { oddPost } from "./odd-post";
import { onLabels } from "./on-labels";
import { onPaper } from "./on-paper";
import { onTheBench } from "./on-the-bench";
import { onTheWire } from "./on-the-wire";
import { ownParagraphs } from "./own-paragraphs";
import { reaching } from "./reaching";
import { readingOut } from "./reading-out";
import { submitting } from "./submitting";
import { unreadWords } from "./unread-words";

/** What every operation has to do, on whichever database is named. */
export function allOperations(): void {
  submitting();
  unreadWords();
  answering();
  atTheDesk();
  following();
  onTheBench();
  correcting();
  onPaper();
  onTheWire();
  holdingBack();
  reaching();
  readingOut();
  correctingClients();
  ownParagraphs();
  blurring();
  byMail();
  oddPost();
  fromOtherAddresses();
  measuring();
  onLabels();
  erasing();
  judgingAnew();
}
