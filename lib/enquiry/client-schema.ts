import * as z from "zod/mini";
import { LIMITS } from "./limits";
import { contactSchema } from "./questionnaire";
import type { FormValues } from "./step-schemas";
import { wrong } from "./wrong";

/** How a client is reached; null where they left none. */
export interface Contact { name: string; email: string | null; telephone: string | null }

/** Contact details as one text that a form carries along, to tell whether somebody changed them meanwhile. */
export const asSeen = ({ name, email, telephone }: Contact): string => JSON.stringify([name, email, telephone]);

/** Whether two addresses are one, as far as links and letters go. */
export const isSameAddress = (a: string | null, b: string | null): boolean => a?.toLowerCase() === b?.toLowerCase();

const filled = z.pipe(z.string().check(z.trim()), z.transform((typed) => typed || undefined));
const orNull = z.transform((value: string | undefined) => value ?? null);

/** A client's contact details as staff write them down; an empty field is none. */
const fields = z.object({
  name: z.string().check(z.trim(), z.minLength(1, "Write the client’s name."), z.maxLength(LIMITS.nameChars, wrong("wrong.name-long"))),
  email: z.pipe(z.pipe(filled, contactSchema.shape.email), orNull),
  telephone: z.pipe(z.pipe(filled, contactSchema.shape.telephone), orNull),
});
export const clientSchema = fields as unknown as z.ZodMiniType<Contact, FormValues>;

/** The same of somebody who must be answered and named nothing themselves: an address or a number is needed. */
const reachable = fields.check(z.refine(({ email, telephone }) => email !== null || telephone !== null, { error: "Write an e-mail address or a telephone number, so that somebody can be answered.", path: ["email"] }));
export const reachableSchema = reachable as unknown as z.ZodMiniType<Contact, FormValues>;
