import "server-only";
import type { Enclosed, Incoming, IncomingMessage } from "../mail/incoming/read-message";
import { whyNotOpened } from "../photo/server/openable";

/** A message whose pictures were tried. `brokenPictures`: those that cannot be opened and are no photos any more, each with why. */
export interface SortedMessage extends IncomingMessage { readonly brokenPictures: readonly string[] }
export type Sorted =
  | Exclude<Incoming, { message: IncomingMessage }>
  | { [K in "letter" | "bounce" | "automatic"]: Omit<Extract<Incoming, { kind: K }>, "message"> & { message: SortedMessage } }["letter" | "bounce" | "automatic"];

/** Tries each picture of a message, one after the other. The message's own file stays as it came. */
export async function withSoundPictures(incoming: Incoming): Promise<Sorted> {
  if (incoming.kind === "unreadable") return incoming;
  const sound: Enclosed[] = [];
  const brokenPictures: string[] = [];
  for (const picture of incoming.message.pictures) {
    const why = await whyNotOpened(picture.content);
    if (why === null) sound.push(picture);
    else brokenPictures.push(`${picture.name}: ${why}`);
  }
  return { ...incoming, message: { ...incoming.message, pictures: sound, brokenPictures } };
}
