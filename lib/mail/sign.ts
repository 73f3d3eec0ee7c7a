import "server-only";
import DKIM from "nodemailer/lib/dkim";
import type { DkimKey } from "../config/dkim";

const SIGNATURE = Buffer.from("dkim-signature:");

/**
 * A message with its DKIM signature in front (RFC 6376, rsa-sha256, relaxed/relaxed). Throws where it could not be signed:
 * the library would otherwise hand it back without one.
 */
export async function signed(bytes: Buffer, { domain, selector, privateKey }: DkimKey): Promise<Buffer> {
  const parts: Buffer[] = [];
  for await (const part of new DKIM({ domainName: domain, keySelector: selector, privateKey }).sign(bytes)) parts.push(part as Buffer);
  const whole = Buffer.concat(parts);
  if (!SIGNATURE.equals(Buffer.from(whole.subarray(0, SIGNATURE.length).toString("latin1").toLowerCase()))) throw new Error("The letter could not be signed with the key of DKIM_KEY_FILE.");
  return whole;
}
