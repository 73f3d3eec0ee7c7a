import path from "node:path";
import { describe, expect, it } from "vitest";
import { heicToPng } from "../../../lib/photo/server/heic";

describe("heicToPng", () => {
  it("gives up and ends its thread when patience runs out", async () => {
    const threads = () => process.getActiveResourcesInfo().filter((what) => what === "MessagePort" || what === "Worker").length;
    const before = threads();
    await expect(heicToPng(path.resolve("tests/fixtures/rug.heic"), 1)).rejects.toThrow("out of patience");
    await expect.poll(threads).toBeLessThanOrEqual(before);
  });
  it("rejects for a file that is no HEIC", async () => {
    await expect(heicToPng(path.resolve("package.json"))).rejects.toThrow();
  });
});
