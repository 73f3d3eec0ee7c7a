import path from "node:path";
import { describe, expect, it } from "vitest";
import { decodeHeic } from "../../../lib/photo/server/heic";
import { receivePhoto } from "../../../lib/photo/server/receive";
import { gridHeic } from "../../heic-grid";
import { inPieces, tempFolder } from "./pictures";

describe("decodeHeic", () => {
  it("gives up and ends its thread when patience runs out", async () => {
    const threads = () => process.getActiveResourcesInfo().filter((what) => what === "MessagePort" || what === "Worker").length;
    const before = threads();
    await expect(decodeHeic(path.resolve("tests/fixtures/rug.heic"), 1)).rejects.toThrow("out of patience");
    await expect.poll(threads).toBeLessThanOrEqual(before);
  });
  it("takes 48 megapixels in tiles, as telephones write them", async () => {
    const folder = tempFolder(), answer = await receivePhoto(inPieces(gridHeic(16, 10)), { name: "IMG_48.HEIC", type: "" }, folder);
    expect(answer).toMatchObject({ ok: true, photo: { receivedType: "image/heic", width: 10_240, height: 4800 } });
  }, 120_000);
  it("rejects for a file that is no HEIC", async () => {
    await expect(decodeHeic(path.resolve("package.json"))).rejects.toThrow();
  });
});
