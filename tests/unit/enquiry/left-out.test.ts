import { expect, it } from "vitest";
import { leftOutColumn, readLeftOut } from "../../../lib/enquiry/left-out";

const column = (...more: string[]) => leftOutColumn({ otherEnclosures: [{ name: "invoice.pdf", type: "application/pdf", content: Buffer.alloc(2_048) }] }, more);

it("tells once what is the same of several photos, with how often, in the order it was told", () => {
  expect(readLeftOut(column("A: known.", "B: broken.", "A: known.", "A: known."))).toEqual({
    files: [{ at: 0, name: "invoice.pdf", kilobytes: 2 }], leftOut: ["A: known. (3 times)", "B: broken."],
  });
});
