import "server-only";
import { senderOf } from "../mail/sender";
import type { WorkshopSettings } from "../workshop/settings";
import { refuse, type Refusal } from "./caller";

/** Refuses the desk's own address as a client's: a letter would come back to the desk. `field`: where it was typed. */
export function unlessOwn(email: string | null | undefined, settings: Pick<WorkshopSettings, "name" | "email">, field: string): Refusal | null {
  const ours = [senderOf(settings).address, settings.email].map((a) => a.toLowerCase());
  if (!email || !ours.includes(email.toLowerCase())) return null;
  const say = "That is the desk’s own address: letters would come back here. Write the client’s.";
  return refuse("invalid", say, { [field]: say });
}
