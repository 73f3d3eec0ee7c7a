import { writeFileSync } from "node:fs";
import path from "node:path";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { photo } from "../../../lib/commands/photo";
import { seeded } from "../../../prisma/demo/canvas";
import { conditionsOf } from "../../labels/conditions";
import { drawLabel } from "../../labels/draw";
import { TYPEFACES } from "../../labels/typefaces";
import { drawn, tempFolder } from "../photo/pictures";

const folder = tempFolder();
const file = path.join(folder, "rug.png");
const made = drawn(800, 600).png().toBuffer().then((bytes) => writeFileSync(file, bytes));
const run = async (...args: string[]) => { await made; return JSON.parse(await photo(args)) as Record<string, never>; };

describe("npm run photo", () => {
  it("prints what is measured", async () => {
    expect(await run(file)).toMatchObject({ file: "rug.png", receivedType: "image/png", width: 800, height: 600, quality: { remark: expect.stringContaining("a drawing") as string }, plan: null });
  });
  it("compares two spots, red against blue", async () => {
    const { spots } = await run(file, "--spots", "0.25,0.5", "0.75,0.5");
    expect(spots).toMatchObject({ proposed: false, comparison: { direction: "another-hue" } });
  });
  it("lays the rug out by four corners and a size", async () => {
    expect(await run(file, "--corners", "0,0", "1,0", "1,1", "0,1", "--size", "170x240")).toMatchObject({ plan: { widthCm: 170, lengthCm: 240, sides: "swapped", centreOfPhoto: { x: expect.closeTo(85, 6) as number, y: expect.closeTo(120, 6) as number } } });
    expect(await run(file, "--corners", "0,0", "1,1", "1,0", "0,1", "--size", "170x240")).toMatchObject({ plan: expect.stringMatching(/do not go round/) as string });
  });
  it("reads the label where asked", async () => {
    const random = seeded(3);
    const { data, width, height } = drawLabel(random, { language: "en", lines: ["80% WOOL", "20% SILK"], says: [] }, TYPEFACES[6]!, conditionsOf(random, "clean"));
    const label = path.join(folder, "label.png");
    await sharp(data, { raw: { width, height, channels: 3 } }).png().toFile(label);
    expect(await run(label, "--label")).toMatchObject({ label: { text: "80% WOOL\n20% SILK", reading: { components: [{ fibres: [{ fibre: "wool", percent: 80 }, { fibre: "silk", percent: 20 }] }] } } });
  }, 120_000);
  it("says that there is no label in a photo without one", async () => {
    const plain = path.join(folder, "plain.png");
    await sharp({ create: { width: 300, height: 200, channels: 3, background: "#8a8f98" } }).png().toFile(plain);
    expect(await run(plain, "--label")).toMatchObject({ label: null });
  });
  it.each([
    [[], /Say which photo/], [["a", "b"], /Say which photo/], [["a", "--spots", "0.1,0.2"], /needs 2 places/], [["a", "--spots", "0.1,0.2", "1.2,0"], /1\.2,0 is no place/],
    [["a", "--size", "170"], /is no size/], [["a", "--size", "1x1"], /go together/], [["a", "--deep"], /no option --deep/], [[path.join(folder, "none.jpg")], /no such file/],
  ] as const)("refuses %j in one line", async (args, say) => { await expect(photo([...args])).rejects.toThrow(say); });
  it("refuses what is no photo, in words", async () => {
    const text = path.join(folder, "x.jpg");
    writeFileSync(text, "hello");
    await expect(photo([text])).rejects.toThrow(/x\.jpg: /);
  });
});
