import * as z from "zod/mini";

/** What a person agrees to when they send an enquiry, word for word. */
export const CONSENT_SENTENCE = "Yes, read my answers and photos to judge my rug, and answer me.";

/** The tick beside that sentence, as a form sends it. */
export const consentSchema = z.object({
  consent: z.literal("yes", "Tick the box, so that we may read your enquiry and answer it."),
});
