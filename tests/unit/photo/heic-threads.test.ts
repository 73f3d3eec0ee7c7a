import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { decodeHeic } from "../../../lib/photo/server/heic";
import { PARTS } from "../../../lib/photo/server/heic-threads";
import { gridHeic } from "../../heic-grid";
import { tempFolder } from "./pictures";

const started = vi.hoisted(() => ({ threads: 0 }));
vi.mock("node:worker_threads", async (original) => {
  const real = await original<typeof import("node:worker_threads")>();
  return { ...real, Worker: class extends real.Worker { constructor(...given: ConstructorParameters<typeof real.Worker>) { super(...given); started.threads++; } } };
});
beforeEach(() => { started.threads = 0; });

const folder = tempFolder(), fixture = path.resolve("tests/fixtures/rug.heic");
const grid = path.join(folder, "grid.heic"), broken = path.join(folder, "broken.heic");
writeFileSync(grid, gridHeic(3, 2));
const whole = readFileSync(fixture);
writeFileSync(broken, whole.subarray(0, Math.floor(whole.length / 2)));

describe("the threads that decode", () => {
  it("are as many as they may be, however many pictures there are, and serve one after the other", async () => {
    for (let n = 0; n < 3; n++) await Promise.all([decodeHeic(grid), decodeHeic(fixture), decodeHeic(grid)]);
    expect(started.threads).toBe(PARTS);
  });
  it("outlive a damaged picture", async () => {
    await expect(decodeHeic(broken)).rejects.toThrow("HEIC: the decoder says");
    expect((await decodeHeic(fixture)).height).toBe(640);
    expect(started.threads).toBe(0);
  });
  it("are replaced where one took too long", async () => {
    await expect(decodeHeic(grid, 1)).rejects.toThrow("out of patience");
    expect((await decodeHeic(grid)).width).toBe(1920);
    expect(started.threads).toBeGreaterThan(0);
  });
  it("give a picture the same patience whether it had to wait for its turn or not", async () => {
    const large = path.join(folder, "large.heic"), patienceMs = 1000;
    writeFileSync(large, gridHeic(16, 10));
    const begun = performance.now(), others = Array.from({ length: 2 }, () => decodeHeic(large));
    expect((await decodeHeic(fixture, patienceMs)).height).toBe(640);
    expect(performance.now() - begun).toBeGreaterThan(patienceMs);
    await Promise.all(others);
  }, 120_000);
});
