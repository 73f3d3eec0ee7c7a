import { describe, expect, it } from "vitest";
import { refuse, type Result } from "../../../lib/enquiry/caller";
import type { PhotoView } from "../../../lib/enquiry/views";
import { PAUSES_MS, photoLine, type Sending } from "../../../lib/ui/photo-line";

const item = (key: string): Sending => ({ key, kind: "whole", file: new File(["x"], `${key}.jpg`), share: 0, isWaiting: false, refused: null, remark: null });
const view = (id: string): Result<PhotoView> => ({ ok: true, value: { id, kind: "whole", width: 1, height: 1, takenAt: null, colours: [], remark: null, likeness: null, label: null } });
const LOST: Result<never> = refuse("unavailable", "The connection was lost.");
const DAMAGED = refuse("unreadable", "Damaged.");

/** A line whose sender answers as `answers` says, photo by photo; what it did in order. */
function lineThat(answers: (key: string, time: number) => Result<PhotoView> | Promise<Result<PhotoView>>) {
  const did: string[] = [], pauses: number[] = [], told: boolean[] = [], times = new Map<string, number>();
  let items: readonly Sending[] = [];
  let settle = () => {};
  const line = photoLine({
    send: async ({ key }, onProgress, signal) => {
      const time = (times.get(key) ?? 0) + 1;
      times.set(key, time);
      did.push(`send ${key}`);
      onProgress(0.5);
      return Promise.race([answers(key, time), new Promise<Result<PhotoView>>((resolve) => signal.addEventListener("abort", () => resolve(LOST)))]);
    },
    pause: async (ms) => { pauses.push(ms); told.push(items[0]?.isWaiting ?? false); },
    onKept: (_item, photo) => { did.push(`kept ${photo.id}`); settle(); },
    onRefused: ({ key }, why) => { did.push(`refused ${key} ${why.code}`); settle(); },
    onChange: (all) => { items = all; },
  });
  const until = (what: string) => new Promise<void>((resolve) => { settle = () => { if (did.includes(what)) resolve(); }; settle(); });
  return { line, did, pauses, told, until, items: () => items };
}

describe("photoLine", () => {
  it("sends one after the other in the order chosen", async () => {
    let open = 0, most = 0;
    const { line, did, until } = lineThat(async (key) => { most = Math.max(most, ++open); await Promise.resolve(); open--; return view(key); });
    line.add(["a", "b"].map(item));
    line.add([item("c")]);
    await until("kept c");
    expect(did).toEqual(["send a", "kept a", "send b", "kept b", "send c", "kept c"]);
    expect(most).toBe(1);
  });
  it("tries a lost connection again under the same key before the next has its turn", async () => {
    const { line, did, pauses, told, until, items } = lineThat((key, time) => (key === "a" && time < 3 ? LOST : key === "b" ? new Promise(() => {}) : view(key)));
    line.add(["a", "b"].map(item));
    await until("kept a");
    expect(did.slice(0, 4)).toEqual(["send a", "send a", "send a", "kept a"]);
    expect(pauses).toEqual(PAUSES_MS.slice(0, 2));
    expect(told, "says meanwhile that it will try again").toEqual([true, true]);
    expect(items().map((s) => s.isWaiting)).toEqual([false]);
  });
  it("holds the line once it gave up, keeps everything in it, and goes on in order when told to", async () => {
    let isBack = false;
    const { line, did, until, items } = lineThat((key) => (isBack ? view(key) : LOST));
    line.add(["a", "b"].map(item));
    await until("refused a unavailable");
    expect(did.filter((d) => d === "send a")).toHaveLength(PAUSES_MS.length + 1);
    expect(items().map((s) => [s.key, s.refused?.code])).toEqual([["a", "unavailable"], ["b", undefined]]);
    isBack = true;
    line.again("a");
    await until("kept b");
    expect(did.slice(-4)).toEqual(["send a", "kept a", "send b", "kept b"]);
    expect(items()).toEqual([]);
  });
  it("lets what is refused for what it is stand aside", async () => {
    const { line, did, until, items } = lineThat((key) => (key === "a" ? DAMAGED : view(key)));
    line.add(["a", "b"].map(item));
    await until("kept b");
    expect(did).toEqual(["send a", "refused a unreadable", "send b", "kept b"]);
    expect(items().map((s) => s.refused)).toEqual([DAMAGED]);
  });
  it("breaks off what is left out while it is sent, says nothing of it, and goes on", async () => {
    const { line, did, until, items } = lineThat((key) => (key === "a" ? new Promise(() => {}) : view(key)));
    line.add(["a", "b"].map(item));
    line.putAside("a");
    await until("kept b");
    expect(did).toEqual(["send a", "send b", "kept b"]);
    expect(items()).toEqual([]);
  });
  it("leaves out what waits, and goes on where the one that held the line is left out", async () => {
    const { line, did, until } = lineThat((key) => (key === "a" ? LOST : view(key)));
    line.add(["a", "b", "c"].map(item));
    line.putAside("b");
    await until("refused a unavailable");
    line.putAside("a");
    await until("kept c");
    expect(did).not.toContain("send b");
  });
  it("keeps what was seen of a photo beside it, and forgets what is seen too late", () => {
    const { line, items } = lineThat(() => new Promise(() => {}));
    line.add([item("a")]);
    line.remark("a", "Rather dark.");
    line.remark("gone", "Rather dark.");
    expect(items()).toMatchObject([{ key: "a", remark: "Rather dark." }]);
  });
});
