import * as z from "zod/mini";

const words = { subject: z.string(), text: z.string() };
const typedSchema = z.object({ words: z.object(words), kept: z.object({ number: z.number(), ...words }), sent: z.array(z.object(words)) });
/** What was typed and is not known to be kept: the words, the version they began from, and what was sent of them since. */
export type Typed = z.infer<typeof typedSchema>;

const keyOf = (enquiryId: string) => `typed:${enquiryId}`;

/**
 * Holds what was typed in this window of the browser, and there only as long as it is open: a page read anew has it again.
 * Where the browser keeps nothing (its store is full or forbidden) nothing is held, and the server is sent the words all the same.
 */
export function holdTyped(enquiryId: string, typed: Typed | null): void {
  try {
    if (typed) sessionStorage.setItem(keyOf(enquiryId), JSON.stringify(typed));
    else sessionStorage.removeItem(keyOf(enquiryId));
  } catch {
    return;
  }
}

/** What was held; null where that is nothing, or cannot be read. */
export function typedBefore(enquiryId: string): Typed | null {
  try {
    return typedSchema.safeParse(JSON.parse(sessionStorage.getItem(keyOf(enquiryId)) ?? "null")).data ?? null;
  } catch {
    return null;
  }
}
