import { Readable } from "node:stream";
import sharp from "sharp";
import type { IntakeAnswers, Submission } from "../../lib/enquiry/questionnaire";

/** The n-th made-up enquiry: what the child sends is what the parent looks for afterwards. */
export const answersOf = (n: number): IntakeAnswers => ({
  wetNow: "wet", reason: "just-happened",
  rug: { labelText: "100% viscose", labelFound: "typed", sellerSaid: "silk", widthCm: 120 + n, lengthCm: 240, incidents: ["spill"], liquid: "coffee-tea", since: "hour", story: `Cup number ${n} went over.` },
});
/** Told apart by letters: nobody is greeted by a number. */
const surnameOf = (n: number): string => [...String(n)].map((digit) => "ABCDEFGHIJ".charAt(Number(digit))).join("");
export const contactOf = (n: number): Submission["contact"] => ({ name: `Ana ${surnameOf(n)}`, email: `ana${n}@example.org` });
export const PHOTO_KINDS_SENT = ["whole", "trouble"] as const;

export const pictureOf = async (n: number): Promise<Readable> =>
  Readable.from([await sharp({ create: { width: 640, height: 480, channels: 3, background: { r: 80 + (n % 100), g: 90, b: 110 } } }).jpeg().toBuffer()]);
