import * as z from "zod/mini";
import type { TestId } from "../trade/bench-tests";
import { PHOTO_KINDS, type PhotoKind } from "../trade/questions";
import type { Sample } from "../triage/finding";
import { readingsSchema, TEST_IDS } from "./bench-test-schema";
import { LABORATORY_LIMITS, percentsSchema } from "./laboratory-schema";
import { LIMITS } from "./limits";
import { contactSchema, one, rugAnswersSchema, thirdPartySchema } from "./questionnaire";
import { isSampleId, sampleIdOf } from "./samples";

/** One enquiry as a file: the input of `npm run triage`, and of an enquiry that is entered whole. */

const photoPath = z.strictObject({ path: z.string().check(z.minLength(1)), kind: z.optional(z.enum(Object.keys(PHOTO_KINDS) as [PhotoKind, ...PhotoKind[]])) });

const isSample = (of: Sample) => isSampleId(sampleIdOf(of));
/** What a test speaks for; left out: the pile as a whole. */
const sampleOf = z.optional(z.strictObject({ part: z.enum(["pile", "ground", "fringe"]), yarn: z.enum(["whole", "field", "accent"]) })
  .check(z.refine(isSample, "Only a pile has a field and an accent.")));

const benchTestOf = (test: TestId) => z.strictObject({ test: z.literal(test), of: sampleOf, readings: readingsSchema(test) });
const [firstTest, ...otherTests] = TEST_IDS;
const benchTest = z.discriminatedUnion("test", [benchTestOf(firstTest), ...otherTests.map(benchTestOf)]);
const laboratory = z.strictObject({ name: z.string().check(z.trim(), z.minLength(1), z.maxLength(LABORATORY_LIMITS.nameChars)), of: sampleOf, percents: percentsSchema });

/** As many as anybody makes of one rug. Elicited. */
const MOST_TESTS = 40;

const rugFile = z.extend(rugAnswersSchema, {
  /** By path, relative to the file. */
  photos: z.optional(z.array(photoPath).check(z.maxLength(LIMITS.maxPhotos))),
  benchTests: z.optional(z.array(benchTest).check(z.maxLength(MOST_TESTS))),
  laboratory: z.optional(laboratory),
});
export type RugFile = z.infer<typeof rugFile>;

export const enquiryFileSchema = z.strictObject({
  channel: z.optional(z.enum(["web", "email", "telephone"])),
  /** ISO 8601 instant it was written; ages count from here. Default: now. */
  writtenAt: z.optional(z.iso.datetime({ offset: true })),
  wetNow: z.optional(one("wetNow")),
  reason: z.optional(one("reason")),
  client: z.optional(contactSchema),
  parties: z.optional(z.array(thirdPartySchema).check(z.maxLength(10))),
  rugs: z.array(rugFile).check(z.minLength(1, "An enquiry holds at least one rug."), z.maxLength(LIMITS.maxRugs)),
});
export type EnquiryFile = z.infer<typeof enquiryFileSchema>;
