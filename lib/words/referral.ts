import { REFERRALS } from "../trade/losses";
import type { Words } from "./words";

const KEYS = new Map(REFERRALS.map(({ when, to }) => [to, `referral.${when}` as const]));

/** Who else should see it, which an assessment holds in English, in a client's words. */
export function referralIn(words: Words, to: string): string {
  const key = KEYS.get(to);
  return key === undefined ? to : words.table(key);
}
