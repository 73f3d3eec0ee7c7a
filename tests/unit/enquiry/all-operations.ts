import { answering } from "./answering";
import { askedQuestions } from "./asked-questions";
import { atTheDesk } from "./at-the-desk";
import { blurring } from "./blurring";
import { byMail } from "./by-mail";
import { correcting } from "./correcting";
import { correctingClients } from "./correcting-clients";
import { enclosedFiles } from "./enclosed-files";
import { erasing } from "./erasing";
import { following } from "./following";
import { fromOtherAddresses } from "./from-other-addresses";
import { givingUp } from "./giving-up";
import { holdingBack } from "./holding-back";
import { holdingOvertaken } from "./holding-overtaken";
import { judgingAnew } from "./judging-anew";
import { measuring } from "./measuring";
import { oddPost } from "./odd-post";
import { onLabels } from "./on-labels";
import { onPaper } from "./on-paper";
import { onTheBench } from "./on-the-bench";
import { onTheWire } from "./on-the-wire";
import { overtakenDocuments } from "./overtaken-documents";
import { ownParagraphs } from "./own-paragraphs";
import { reaching } from "./reaching";
import { readingOut } from "./reading-out";
import { submitting } from "./submitting";
import { unreadWords } from "./unread-words";

/** What every operation has to do, on whichever database is named. */
export function allOperations(): void {
  submitting();
  unreadWords();
  askedQuestions();
  answering();
  atTheDesk();
  following();
  onTheBench();
  correcting();
  onPaper();
  overtakenDocuments();
  onTheWire();
  holdingBack();
  reaching();
  givingUp();
  readingOut();
  correctingClients();
  ownParagraphs();
  blurring();
  byMail();
  oddPost();
  enclosedFiles();
  fromOtherAddresses();
  measuring();
  onLabels();
  erasing();
  judgingAnew();
  // It judges every open enquiry too, at a time still later.
  holdingOvertaken();
}
