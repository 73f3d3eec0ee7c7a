import { mkdtemp, writeFile } from "node:fs/promises";
import os from "node:os";
import path from "node:path";
import sharp from "sharp";
import { drawRug } from "../../prisma/demo/draw-rug";

export interface PhotoFiles { whole: string; label: string; back: string; trouble: string; refused: string }

/** Five files as a phone would send them: JPEG, PNG, WebP, HEIC, and a GIF, which is refused. */
export async function makePhotoFiles(): Promise<PhotoFiles> {
  const folder = await mkdtemp(path.join(os.tmpdir(), "plainpile-photos-"));
  const rug = { seed: 41, weave: "knotted" as const, colours: ["#7d2e38", "#d8c7b0", "#2f3a4a", "#a4505a"] };
  const whole = await drawRug({ ...rug, kind: "whole", damage: { kind: "wine", x: 0.6, y: 0.4, r: 0.12 } });
  const label = await drawRug({ ...rug, kind: "label", labelText: "PURE SILK\nHAND KNOTTED" }, 1000, 750);
  const back = await drawRug({ ...rug, kind: "back" }, 1000, 750);
  const write = async (name: string, bytes: Buffer) => {
    await writeFile(path.join(folder, name), bytes);
    return path.join(folder, name);
  };
  return {
    whole: await write("IMG_0001.JPG", whole),
    label: await write("label.png", await sharp(label).png().toBuffer()),
    back: await write("back.webp", await sharp(back).webp().toBuffer()),
    trouble: path.resolve("tests/fixtures/rug.heic"),
    refused: await write("moving.gif", await sharp({ create: { width: 40, height: 40, channels: 3, background: "#a33" } }).gif().toBuffer()),
  };
}
