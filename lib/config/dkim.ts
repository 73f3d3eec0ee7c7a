import { createPrivateKey, type KeyObject } from "node:crypto";
import { readFileSync } from "node:fs";

/** What letters are signed with (RFC 6376): `<selector>._domainkey.<domain>` holds the public key. */
export interface DkimKey {
  domain: string;
  selector: string;
  /** PEM, an RSA key of 1024 bits or more. */
  privateKey: string;
}
interface Given { DKIM_DOMAIN?: string | undefined; DKIM_SELECTOR?: string | undefined; DKIM_KEY_FILE?: string | undefined }

const NAMES = ["DKIM_DOMAIN", "DKIM_SELECTOR", "DKIM_KEY_FILE"] as const;
/** RFC 8301 §3.2: signers use keys of at least 1024 bits; 2048 is what it recommends. */
const LEAST_BITS = 1024;

/** The key that letters are signed with, null where none is set, or what is wrong with it: one line a variable. */
export function readDkim(given: Given): DkimKey | null | { wrong: string[] } {
  const { DKIM_DOMAIN: domain, DKIM_SELECTOR: selector, DKIM_KEY_FILE: file } = given;
  if (!domain && !selector && !file) return null;
  if (!domain || !selector || !file) return { wrong: NAMES.filter((n) => !given[n]).map((n) => `${n} must be set too: letters are signed with a domain, a selector and a key`) };
  try {
    const privateKey = readFileSync(file, "utf8");
    const wrong = unfit(createPrivateKey(privateKey));
    return wrong ? { wrong: [`DKIM_KEY_FILE ${wrong}`] } : { domain, selector, privateKey };
  } catch (error) {
    const why = (error as NodeJS.ErrnoException).code === "ENOENT" ? "names a file that is not there" : "holds no private key that can be read (PEM, without a password)";
    return { wrong: [`DKIM_KEY_FILE ${why}`] };
  }
}

function unfit(key: KeyObject): string | null {
  if (key.asymmetricKeyType !== "rsa") return "must hold an RSA key: that is what letters are signed with";
  return (key.asymmetricKeyDetails?.modulusLength ?? 0) < LEAST_BITS ? `must hold a key of at least ${LEAST_BITS} bits; 2048 is better` : null;
}
