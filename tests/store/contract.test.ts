import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { isTaken } from "../../lib/store/database";
import { Prisma } from "../../lib/store/generated/sqlite/client";
import { openStore, USE_TX, type Store } from "../../lib/store/open-store";
import { DATABASES, type Scratch } from "../scratch";
import { migrated } from "./databases";
import { model, MODELS, ROWS, writeOneOfEach } from "./every-model";

/** A promise and the key to it. */
function latch() {
  let open!: () => void;
  const opened = new Promise<void>((resolve) => { open = resolve; });
  return { open, opened };
}

describe.each(DATABASES)("the store on $name", (kind) => {
  let scratch: Scratch;
  let store: Store;
  beforeEach(async () => {
    scratch = await migrated(kind);
    store = openStore(scratch.url);
  });
  afterEach(async () => {
    await store.close();
    await scratch.drop();
  });

  const addClient = (id: string) => store.client.client.create({ data: { id, name: id } });

  describe("migrations and models", () => {
    it("has a row of every model in these tests, with every field filled", () => {
      const models = Object.values(Prisma.ModelName).map((name) => name.charAt(0).toLowerCase() + name.slice(1));
      expect([...MODELS].sort()).toEqual(models.sort());
      for (const key of MODELS) {
        const fields = (Prisma as unknown as Record<string, object>)[`${key.charAt(0).toUpperCase()}${key.slice(1)}ScalarFieldEnum`];
        expect(Object.keys(ROWS[key]).sort(), key).toEqual(Object.keys(fields ?? {}).sort());
      }
    });

    it("gives back every field of every model as it was written", async () => {
      await store.transact(writeOneOfEach);
      for (const key of MODELS) expect(await model(store.client, key).findMany(), key).toEqual([ROWS[key]]);
    });

    it("removes what belongs to an enquiry with it, and keeps the audit row", async () => {
      await store.transact(writeOneOfEach);
      await store.client.enquiry.delete({ where: { id: "e1" } });
      const gone = ["thirdParty", "clientLink", "rug", "answer", "photo", "finding", "assessment", "draft", "revision", "letter", "benchTest", "outcome"] as const;
      for (const key of gone) expect(await model(store.client, key).count(), key).toBe(0);
      expect(await store.client.audit.findUnique({ where: { id: "au1" } })).toMatchObject({ enquiryId: null });
      expect(await store.client.client.count()).toBe(1);
    });

    it("refuses to remove a client who still has an enquiry, and a row that points at nothing", async () => {
      await store.transact(writeOneOfEach);
      await expect(store.client.client.delete({ where: { id: "c1" } })).rejects.toMatchObject({ code: "P2003" });
      await expect(store.client.rug.create({ data: { id: "x", enquiryId: "nowhere", position: 1, title: "" } })).rejects.toMatchObject({ code: "P2003" });
    });

    it("takes text that only one of the databases would take, with what cannot be stored replaced", async () => {
      const broken = "a\u0000b\ud800c 🧶";
      const data = { id: "a", name: broken, answers: { story: broken, list: [broken] } };
      await store.client.client.create({ data: { id: data.id, name: data.name } });
      await store.transact(async (tx) => { await tx.intake.create({ data: { id: "a", tokenHash: "h", expiresAt: new Date(0), answers: data.answers } }); });
      const mended = "a\ufffdb\ufffdc 🧶";
      expect((await store.client.client.findUniqueOrThrow({ where: { id: "a" } })).name).toBe(mended);
      expect((await store.client.intake.findUniqueOrThrow({ where: { id: "a" } })).answers).toEqual({ story: mended, list: [mended] });
    });

    it("says when a value that must be unique is taken", async () => {
      await addClient("a");
      const again = await addClient("a").catch((e: unknown) => e);
      expect(isTaken(again)).toBe(true);
      expect(isTaken(new Error("something else"))).toBe(false);
      expect(isTaken(null)).toBe(false);
    });
  });

  describe("transact", () => {
    it("keeps everything or nothing", async () => {
      await store.transact(async (tx) => {
        await tx.client.create({ data: { id: "a", name: "A" } });
        await tx.client.create({ data: { id: "b", name: "B" } });
      });
      const failed = store.transact(async (tx) => {
        await tx.client.create({ data: { id: "c", name: "C" } });
        throw new Error("changed my mind");
      });
      await expect(failed).rejects.toThrow("changed my mind");
      expect((await store.client.client.findMany({ orderBy: { id: "asc" } })).map((c) => c.id)).toEqual(["a", "b"]);
    });

    it("does not lose a row that another request wrote while a transaction was open and then rolled back", async () => {
      const inside = latch();
      const rolledBack = store.transact(async (tx) => {
        await tx.client.create({ data: { id: "theirs", name: "T" } });
        inside.open();
        await new Promise((resume) => setImmediate(resume));
        throw new Error("rolled back");
      }).catch(() => undefined);
      await inside.opened;
      await addClient("ours");
      await rolledBack;
      expect((await store.client.client.findMany()).map((c) => c.id)).toEqual(["ours"]);
    });

    it("shows nobody what is not yet kept", async () => {
      const inside = latch();
      const goOn = latch();
      const open = store.transact(async (tx) => {
        await tx.client.create({ data: { id: "a", name: "A" } });
        inside.open();
        if (kind.name === "postgresql") await goOn.opened;
        throw new Error("rolled back");
      }).catch(() => undefined);
      await inside.opened;
      expect(await store.client.client.count()).toBe(0);
      goOn.open();
      await open;
    });

    it("lets one of fifty people through who change the same state at once", async () => {
      await store.transact(writeOneOfEach);
      const approve = (who: number) => store.transact(async (tx) => {
        const { count } = await tx.enquiry.updateMany({ where: { id: "e1", state: "their_turn" }, data: { state: "finished" } });
        if (count === 1) await tx.audit.create({ data: { id: `won-${who}`, actorKind: "staff", action: "finish", enquiryId: "e1", detail: {} } });
        return count;
      });
      const counts = await Promise.all(Array.from({ length: 50 }, (_, who) => approve(who)));
      expect(counts.reduce((a, b) => a + b)).toBe(1);
      expect(await store.client.audit.count({ where: { action: "finish" } })).toBe(1);
    });

    it("holds a quota that thirty requests test and use up at once", async () => {
      const most = 12;
      const add = (n: number) => store.transact(async (tx) => {
        if (await tx.client.count() >= most) return false;
        await tx.client.create({ data: { id: `c${n}`, name: "C" } });
        return true;
      });
      const let_in = await Promise.all(Array.from({ length: 30 }, (_, n) => add(n)));
      expect(let_in.filter(Boolean)).toHaveLength(most);
      expect(await store.client.client.count()).toBe(most);
    });

    it("refuses another client inside, where it would wait for its own transaction or be lost with it", async () => {
      await expect(store.transact(() => store.client.client.count())).rejects.toThrow(USE_TX);
      await expect(store.transact(() => store.transact(async () => 1))).rejects.toThrow(USE_TX);
    });

    it("lets what was started inside but outlives it use the store", async () => {
      const after = latch();
      let later: Promise<number> | undefined;
      await store.transact(async (tx) => {
        later = after.opened.then(() => store.client.client.count());
        await tx.client.create({ data: { id: "a", name: "A" } });
      });
      after.open();
      expect(await later).toBe(1);
    });

    it("is what a library's own $transaction becomes; a list of queries is refused", async () => {
      const library = store.client as unknown as { $transaction(work: unknown): Promise<unknown> };
      const failed = library.$transaction(async (tx: Store["client"]) => {
        await tx.client.create({ data: { id: "a", name: "A" } });
        throw new Error("changed my mind");
      });
      await expect(failed).rejects.toThrow("changed my mind");
      expect(await store.client.client.count()).toBe(0);
      expect(() => library.$transaction([])).toThrow("use transact");
    });

    it("rolls back a transaction whose work never ends, and serves the next", async () => {
      const short = openStore(scratch.url, { transactionMs: 2_000, graceMs: 500 });
      try {
        const hung = short.transact(async (tx) => {
          await tx.client.create({ data: { id: "a", name: "A" } });
          await new Promise(() => undefined);
        });
        await expect(hung).rejects.toThrow("was rolled back");
        expect(await short.client.client.count()).toBe(0);
        await short.transact(async (tx) => { await tx.client.create({ data: { id: "b", name: "B" } }); });
        expect(await short.client.client.count()).toBe(1);
      } finally {
        await short.close();
      }
    });

    it("serves two stores that read and then write at the same time, as two processes would", async () => {
      const other = openStore(scratch.url);
      try {
        const add = (s: Store, id: string) => s.transact(async (tx) => {
          const before = await tx.client.count();
          await tx.client.create({ data: { id, name: String(before) } });
        });
        await Promise.all(Array.from({ length: 10 }, (_, n) => add(n % 2 ? store : other, `c${n}`)));
        const names = (await store.client.client.findMany()).map((c) => Number(c.name)).sort((a, b) => a - b);
        expect(names).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9]);
      } finally {
        await other.close();
      }
    });
  });
});
