import { headerText } from "./address";
import { composeLetter, type ComposedLetter } from "./compose";
import type { LetterHead } from "./letter-html";

export interface AcknowledgementInput {
  clientName: string;
  /** The enquiry's short name for people. */
  reference: string;
  workshop: LetterHead & { hours: string };
  /** The client's own page, or the mark that becomes it. */
  link: string;
  /** The one set of first aid, where something is wet now. */
  firstAid: readonly string[] | null;
}

/**
 * The letter that goes out by itself when an enquiry has arrived. It says that a person will answer and where the
 * client's own page is; it holds no judgement about the rug. First aid is the same for every rug.
 */
export function acknowledgement({ clientName, reference, workshop, link, firstAid }: AcknowledgementInput): ComposedLetter {
  const name = headerText(clientName);
  const blocks = [
    name ? `Dear ${name},` : "Good day,",
    firstAid ? `Please do this first, whatever the rug is made of:\n${firstAid.map((s) => `– ${s}`).join("\n")}` : null,
    `Your enquiry has reached us. Its number is ${reference}. A person here reads what you wrote, looks at your photos and answers you; nothing is decided by a machine.`,
    "On your own page you can see what you sent, add photos and read our answer. The link is for you alone: whoever has it can see the page.",
    workshop.hours ? `We are here ${workshop.hours}.` : null,
    `${workshop.name}${workshop.telephone ? `\n${workshop.telephone}` : ""}`,
    "This letter was sent by itself. If you did not write to us, you need do nothing.",
  ];
  return composeLetter({
    kind: "acknowledgement", subject: `We have your enquiry ${reference}`, text: blocks.filter((b) => b !== null).join("\n\n"), workshop, link,
  });
}
