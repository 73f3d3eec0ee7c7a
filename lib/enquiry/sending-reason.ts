import * as z from "zod/mini";
import { REASON_CHARS } from "./reason-limits";

/** Why a letter goes out although it says more than is known. */
export const sendingReasonSchema = z.string().check(
  z.trim(), z.minLength(REASON_CHARS.least, "Say why it may go out as it is, in a few words."), z.maxLength(REASON_CHARS.most, `At most ${REASON_CHARS.most} characters.`));
