import "server-only";
import { config } from "../config/config";
import { domainOf } from "./address";
import type { Sender } from "./message";

/** A letter that nobody has set an address for is still readable as a file (RFC 2606 §2). */
const NO_ADDRESS = "no-address@plainpile.invalid";

/** Whom letters come from: MAIL_FROM, else the workshop's own address. */
export const senderOf = (workshop: { name: string; email: string }): Sender =>
  ({ name: config.smtp?.from?.name ?? workshop.name, address: config.smtp?.from?.address ?? (workshop.email || NO_ADDRESS) });

/** The domain of our Message-IDs. */
export const mailDomain = (workshop: { name: string; email: string }): string => domainOf(senderOf(workshop).address);

/** Whether there is a server to hand letters to and an address to send them from. */
export const canSend = (workshop: { email: string }): boolean => config.smtp !== null && (config.smtp.from?.address ?? workshop.email) !== "";

/** Whether a mail server is set up. Without one letters wait, and none counts as sent. */
export const mailConfigured = (): boolean => config.smtp !== null;
