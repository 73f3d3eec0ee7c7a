import "server-only";
import { acknowledgement } from "../mail/acknowledgement";
import { queueLetter } from "../mail/outbox";
import type { Enquiry, Tx } from "../store/database";
import { firstAidIn } from "../words/first-aid";
import { greetingName } from "../reply/greeting-name";
import { wordsIn } from "../words/words";
import { linkMark } from "../workshop/client-link";
import type { WorkshopSettings } from "../workshop/settings";
import type { FirstAidAtOnce } from "./wet-by-words";

export interface ToAcknowledge {
  enquiryId: string;
  reference: string;
  channel: Enquiry["channel"];
  linkId: string;
  client: { name: string; email: string };
  /** A person has answered already, by a letter that has gone or on the telephone. */
  isTold?: boolean;
  /** The client added a rug to an enquiry sent before. */
  isAdded?: boolean;
  hasPhotos: boolean;
  /** What is told at once; null where no first aid is due. */
  firstAid: FirstAidAtOnce | null;
  /** How many rugs it tells of, where one of them is feared to be mouldy; null where none is. */
  mouldAmong: number | null;
  settings: WorkshopSettings;
  now: Date;
}

/** The automatic letter: received, and where the client's page is. It carries no judgement; the link is written in as it leaves. */
export async function acknowledge(tx: Tx, { enquiryId, reference, channel, linkId, client, isTold = false, isAdded = false, hasPhotos, firstAid, mouldAmong, settings, now }: ToAcknowledge): Promise<void> {
  const letter = acknowledgement({
    greeted: greetingName(client.name), reference, isHeard: channel === "telephone", isTold, isAdded, hasPhotos, workshop: settings, link: linkMark(linkId), mouldAmong,
    firstAid: firstAid && { ...firstAid, lines: firstAidIn(wordsIn(settings.locale), firstAid.lines, settings.emergencyNumber) },
  });
  await queueLetter(tx, { enquiryId, to: { name: client.name, address: client.email }, letter, workshop: settings, now });
}
