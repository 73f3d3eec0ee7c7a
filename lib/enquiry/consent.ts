import * as z from "zod/mini";
import { wrong } from "./wrong";

/** The tick beside the sentence of consent, as a form sends it. */
export const consentSchema = z.object({
  consent: z.literal("yes", wrong("wrong.consent-tick")),
});
