import { describe, expect, it } from "vitest";
import { CHANGED_TABLES, deadRows } from "../../long/every-table-row";

/** Every fifth row, of each table another one to begin with; `npm run long` changes them all. */
const EVERY = 5;

describe("changing a row of a table moves some output", () => {
  it.each(CHANGED_TABLES.map((id, at) => [id, at] as const))("%s", (id, at) => {
    expect(deadRows(id, { every: EVERY, from: at }).dead).toEqual([]);
  }, 120_000);
  it("is not claimed of a change that changes nothing", () => {
    const { changed, dead } = deadRows("seller-claims", { changes: [() => true], depths: [40] });
    expect(dead).toHaveLength(changed);
  }, 120_000);
});
