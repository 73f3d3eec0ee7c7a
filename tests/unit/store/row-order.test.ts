import { describe, expect, it } from "vitest";
import { newRowId } from "../../../lib/store/row-order";

describe("the order of rows", () => {
  it("is the order of their writing, however many share a millisecond", () => {
    const ids = Array.from({ length: 20_000 }, newRowId);
    expect([...ids].sort()).toEqual(ids);
    expect(new Set(ids).size).toBe(ids.length);
  });
  it("stands on ids that are UUIDs of version 7, their millisecond in front (RFC 9562 §5.7)", () => {
    const [before, id, after] = [Date.now(), newRowId(), Date.now()];
    expect(id).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/u);
    const made = Number.parseInt(id.replaceAll("-", "").slice(0, 12), 16);
    expect(made).toBeGreaterThanOrEqual(before - 1);
    expect(made).toBeLessThanOrEqual(after + 1);
  });
});
