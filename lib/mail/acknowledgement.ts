import { mouldIn } from "../words/first-aid";
import { wordsIn } from "../words/words";
import { headerText } from "./address";
import { composeLetter, type ComposedLetter } from "./compose";
import type { LetterHead } from "./letter-html";

const AID_LEADS = { wet: "ack.first-aid", gas: "ack.first-aid-gas", unread: "ack.first-aid-unread" } as const;

export interface AcknowledgementInput {
  /** By which name they are greeted, as in every letter; null where there is none to greet by. */
  greeted: string | null;
  /** The enquiry's short name for people. */
  reference: string;
  /** They rang us, and a person here wrote it down. */
  isHeard: boolean;
  /** A person has answered already: this one only brings the link to a new address. */
  isTold: boolean;
  /** It tells of a rug that was added to an enquiry sent before. */
  isAdded: boolean;
  /** Whether photos came with it. */
  hasPhotos: boolean;
  workshop: LetterHead & { hours: string };
  /** The client's own page, or the mark that becomes it. */
  link: string;
  /** First aid, where it is due by what was told; `of`: for what is wet, for what may be gas, wet or dry, or where nobody could read whether anything is wet. */
  firstAid: { of: keyof typeof AID_LEADS; lines: readonly string[] } | null;
  /** How many rugs it tells of, where mould may be in one of them by what was told; null where it may be in none. */
  mouldAmong: number | null;
}

/**
 * The letter that goes out by itself when an enquiry has arrived. It says that a person will answer and where the
 * client's own page is, or where somebody has answered and this is a new address, that the answer stands there; it holds no judgement about the rug. First aid is the same for every rug.
 */
export function acknowledgement({ greeted, reference, isHeard, isTold, isAdded, hasPhotos, workshop, link, firstAid, mouldAmong }: AcknowledgementInput): ComposedLetter {
  const words = wordsIn(workshop.locale ?? "en-GB");
  const { say } = words;
  const name = headerText(greeted ?? "");
  const blocks = [
    name ? say("ack.dear", { name }) : say("ack.good-day"),
    firstAid ? `${say(AID_LEADS[firstAid.of])}\n${firstAid.lines.map((s) => `– ${s}`).join("\n")}` : null,
    mouldAmong === null ? null : mouldIn(words, mouldAmong),
    isTold ? say("ack.told", { reference }) : isHeard ? say("ack.heard", { reference }) : say(isAdded ? "ack.added" : "ack.reached", { reference, photos: hasPhotos ? "some" : "none" }),
    firstAid || isTold ? null : say("ack.until"),
    say(isHeard ? "ack.page-heard" : "ack.page"),
    workshop.hours ? say("front.hours", { hours: workshop.hours }) : null,
    `${workshop.name}${workshop.telephone ? `\n${workshop.telephone}` : ""}`,
    say(isHeard ? "ack.itself-heard" : "ack.itself"),
  ];
  return composeLetter({
    kind: "acknowledgement", subject: say("ack.subject", { reference }), text: blocks.filter((b) => b !== null).join("\n\n"), workshop, link,
  });
}
