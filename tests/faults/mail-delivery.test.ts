import { once } from "node:events";
import { createServer, type AddressInfo } from "node:net";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { config } from "../../lib/config/config";
import { composeLetter } from "../../lib/mail/compose";
import { deliverDue, letterAsEml } from "../../lib/mail/outbox";
import { pokeDelivery, startDelivery, stopDelivery } from "../../lib/mail/loop";
import type { FailedLetter } from "../../lib/mail/record";
import { closeDatabase, database, transact, type Tx } from "../../lib/store/database";
import { clientUrl, linkMark } from "../../lib/workshop/client-link";
import { DATABASES, type Scratch } from "../scratch";
import { migrated } from "../store/databases";
import { makeEnquiry, minutes, NOW, OUR_ADDRESS, queue, rowOf, WORKSHOP } from "../unit/mail/make";
import { startMailServer, type MailServer } from "./mail-server";

const QUICK = { connectMs: 2_000, silenceMs: 400 };

describe.each(DATABASES)("deliverDue on $name", (kind) => {
  let scratch: Scratch;
  let server: MailServer;

  beforeAll(async () => {
    scratch = await migrated(kind);
    config.databaseUrl = scratch.url;
    await closeDatabase();
  });
  afterAll(async () => {
    await closeDatabase();
    await scratch.drop();
  });
  beforeEach(async () => {
    server = await startMailServer();
    config.smtp = { url: server.url, from: OUR_ADDRESS };
    await database().letter.deleteMany({});
  });
  afterEach(async () => {
    config.smtp = null;
    await server.close();
  });

  it("sends a letter exactly once, keeps the server's last word, and finds nothing more to do", async () => {
    const { enquiryId, to } = await makeEnquiry();
    const id = await queue({ enquiryId, to });
    expect(await deliverDue(NOW)).toEqual({ accepted: 1, later: 0, refused: 0, unknown: 0 });
    expect(await deliverDue(minutes(60))).toEqual({ accepted: 0, later: 0, refused: 0, unknown: 0 });
    expect(server.received).toHaveLength(1);
    const [message] = server.received;
    expect(message?.to).toEqual([to.address]);
    expect(message?.from).toBe("desk@lantern-yard.example");
    const row = await rowOf(id);
    expect(row.state).toBe("sent");
    expect(row.lastResponse).toContain("250");
    expect(row.lastResponse).toContain("queued as 1");
    expect(row.attempts).toBe(1);
    expect(row.leaseOwner).toBeNull();
    expect(message?.mail.messageId).toBe(row.messageId);
    expect(message?.mail.from?.value).toEqual([OUR_ADDRESS]);
    expect(message?.mail.text).toContain("It is likely wool.");
    expect(message?.mail.html).toContain("It is likely wool.");
  });

  it("threads a reply to the acknowledgement and a third letter to both", async () => {
    const { enquiryId, to } = await makeEnquiry();
    const letter = composeLetter({ kind: "acknowledgement", subject: "We have your enquiry", text: "Received.", workshop: WORKSHOP, link: null });
    const first = await rowOf(await queue({ enquiryId, to, letter }));
    const second = await rowOf(await queue({ enquiryId, to, now: minutes(1) }));
    const third = await rowOf(await queue({ enquiryId, to, now: minutes(2) }));
    await deliverDue(minutes(3));
    const [one, two, three] = server.received.map((r) => r.mail);
    expect(one?.inReplyTo).toBeUndefined();
    expect(one?.headers.get("auto-submitted")).toBe("auto-replied");
    expect(two?.inReplyTo).toBe(first.messageId);
    expect(two?.headers.has("auto-submitted")).toBe(false);
    expect(three?.inReplyTo).toBe(second.messageId);
    expect(three?.references).toEqual([first.messageId, second.messageId]);
    expect(new Set([first, second, third].map((l) => l.messageId)).size).toBe(3);
  });

  it("does not thread to a letter that was taken back", async () => {
    const { enquiryId, to } = await makeEnquiry();
    const id = await queue({ enquiryId, to, notBefore: minutes(5) });
    await database().letter.update({ where: { id }, data: { state: "taken_back" } });
    expect((await rowOf(await queue({ enquiryId, to, now: minutes(1) }))).inReplyTo).toBeNull();
    expect((await deliverDue(minutes(10))).accepted).toBe(1);
  });

  it("holds a letter until its time: not a moment before, then at it", async () => {
    const { enquiryId, to } = await makeEnquiry();
    const id = await queue({ enquiryId, to, notBefore: minutes(5) });
    expect((await rowOf(id)).state).toBe("held");
    await deliverDue(new Date(minutes(5).getTime() - 60_000));
    expect(server.received).toHaveLength(0);
    expect((await rowOf(id)).state).toBe("held");
    await deliverDue(minutes(5));
    expect((await rowOf(id)).state).toBe("sent");
  });

  it("waits after a 4xx reply and sends again after 1, then 5, then 15 minutes", async () => {
    server.afterDot = (n) => (n < 4 ? { code: 451, say: "4.3.0 try later" } : "accept");
    const { enquiryId, to } = await makeEnquiry();
    const id = await queue({ enquiryId, to });
    const waits: number[] = [];
    let at = NOW;
    for (let n = 1; n <= 3; n++) {
      await deliverDue(at);
      const row = await rowOf(id);
      expect(row.state).toBe("waiting");
      expect(row.lastResponse).toContain("451");
      waits.push(Math.floor((row.notBefore.getTime() - at.getTime()) / 60_000));
      expect((await deliverDue(new Date(row.notBefore.getTime() - 60_000))).later).toBe(0);
      at = row.notBefore;
    }
    expect(waits).toEqual([1, 5, 15]);
    await deliverDue(at);
    expect((await rowOf(id)).state).toBe("sent");
    expect(new Set(server.received.map((r) => r.mail.messageId)).size).toBe(1);
  });

  it("waits when the server is not there, and sends when it is back", async () => {
    await server.close();
    const { enquiryId, to } = await makeEnquiry();
    const id = await queue({ enquiryId, to });
    expect((await deliverDue(NOW)).later).toBe(1);
    expect((await rowOf(id)).state).toBe("waiting");
    server = await startMailServer();
    config.smtp = { url: server.url, from: OUR_ADDRESS };
    await deliverDue(minutes(2));
    expect((await rowOf(id)).state).toBe("sent");
  });

  it("waits when the server takes the connection but never greets", async () => {
    const silent = createServer().listen(0, "127.0.0.1");
    await once(silent, "listening");
    config.smtp = { url: `smtp://127.0.0.1:${(silent.address() as AddressInfo).port}`, from: OUR_ADDRESS };
    const { enquiryId, to } = await makeEnquiry();
    const id = await queue({ enquiryId, to });
    expect((await deliverDue(NOW, { times: { connectMs: 300, silenceMs: 300 } })).later).toBe(1);
    expect((await rowOf(id)).state).toBe("waiting");
    silent.close();
  });

  it("signs in; a wrong password is our trouble, so the letter waits", async () => {
    const locked = await startMailServer({ password: "right" });
    const { enquiryId, to } = await makeEnquiry();
    const id = await queue({ enquiryId, to });
    config.smtp = { url: locked.url.replace("//", "//desk:wrong@"), from: OUR_ADDRESS };
    await deliverDue(NOW);
    expect((await rowOf(id)).state).toBe("waiting");
    expect((await rowOf(id)).lastResponse).toContain("535");
    config.smtp = { url: locked.url.replace("//", "//desk:right@"), from: OUR_ADDRESS };
    await deliverDue(minutes(2));
    expect((await rowOf(id)).state).toBe("sent");
    expect(locked.received).toHaveLength(1);
    await locked.close();
  });

  it("waits when a letter cannot be put together, and does not hold up the others", async () => {
    const secret = Object.getOwnPropertyDescriptor(config, "authSecret") as PropertyDescriptor;
    Object.defineProperty(config, "authSecret", { configurable: true, get: () => { throw new Error("the disk is full"); } });
    const { enquiryId, to } = await makeEnquiry();
    const letter = composeLetter({ kind: "reply", subject: "Your rug", text: "Hello", workshop: WORKSHOP, link: linkMark(enquiryId) });
    const id = await queue({ enquiryId, to, letter });
    const other = await queue({ enquiryId, to });
    expect(await deliverDue(NOW)).toMatchObject({ accepted: 1, later: 1 });
    expect([(await rowOf(id)).state, (await rowOf(id)).lastResponse, (await rowOf(other)).state]).toEqual(["waiting", "the disk is full", "sent"]);
    Object.defineProperty(config, "authSecret", secret);
    await deliverDue(minutes(2));
    expect((await rowOf(id)).state).toBe("sent");
  });

  it("fails for good on a 5xx reply to the letter, and says nothing against the address", async () => {
    server.afterDot = () => ({ code: 554, say: "5.6.0 not wanted here" });
    const { enquiryId, clientId, to } = await makeEnquiry();
    const id = await queue({ enquiryId, to });
    expect((await deliverDue(NOW)).refused).toBe(1);
    expect((await rowOf(id)).state).toBe("failed");
    expect((await rowOf(id)).lastResponse).toContain("5.6.0 not wanted here");
    expect((await deliverDue(minutes(600))).refused).toBe(0);
    expect((await database().client.findUniqueOrThrow({ where: { id: clientId } })).suppressedAt).toBeNull();
  });

  it("tells once of a letter that failed for good, and of no other", async () => {
    server.onRcpt = (address) => (address.startsWith("later") ? { code: 451, say: "4.3.0 try later" } : address.startsWith("gone") ? { code: 550, say: "5.1.1 no such mailbox" } : null);
    const told: FailedLetter[] = [];
    const onFailed = (_: unknown, letter: FailedLetter) => Promise.resolve(void told.push(letter));
    const queued = async (address: string) => {
      const { enquiryId } = await makeEnquiry({ email: address });
      return { enquiryId, id: await queue({ enquiryId, to: { name: "Ana", address } }) };
    };
    const [, , gone] = [await queued("here@x.example"), await queued("later@x.example"), await queued("gone@x.example")];
    await deliverDue(NOW, { onFailed });
    await deliverDue(minutes(600), { onFailed });
    expect(told).toEqual([{ ...gone, automatic: false, mayHaveArrived: false }]);
  });

  it("marks no letter as failed where what follows from it cannot be written", async () => {
    server.onRcpt = () => ({ code: 550, say: "5.1.1 no such mailbox" });
    const { enquiryId, clientId, to } = await makeEnquiry();
    const id = await queue({ enquiryId, to });
    const onFailed = async (tx: Tx) => {
      await tx.enquiry.update({ where: { id: enquiryId }, data: { state: "our_turn" } });
      throw new Error("the database is away");
    };
    await expect(deliverDue(NOW, { onFailed })).rejects.toThrow("the database is away");
    expect((await rowOf(id)).state).toBe("sending");
    expect((await database().enquiry.findUniqueOrThrow({ where: { id: enquiryId } })).state).toBe("new");
    expect((await database().client.findUniqueOrThrow({ where: { id: clientId } })).suppressedAt).toBeNull();
  });

  it("tries an address no more that was refused for good, until a person clears it", async () => {
    server.onRcpt = () => ({ code: 550, say: "5.1.1 no such mailbox" });
    const { enquiryId, clientId, to } = await makeEnquiry();
    await queue({ enquiryId, to });
    await deliverDue(NOW);
    const client = await database().client.findUniqueOrThrow({ where: { id: clientId } });
    expect(client.suppressedAt).not.toBeNull();
    expect(client.suppressedWhy).toContain("5.1.1");
    server.onRcpt = () => null;
    const before = server.connections();
    const next = await queue({ enquiryId, to, now: minutes(1) });
    await deliverDue(minutes(1));
    expect((await rowOf(next)).state).toBe("failed");
    expect((await rowOf(next)).lastResponse).toMatch(/^Not sent: this address was refused before/);
    expect(server.connections()).toBe(before);
    await database().client.update({ where: { id: clientId }, data: { suppressedAt: null, suppressedWhy: null } });
    const last = await queue({ enquiryId, to, now: minutes(2) });
    await deliverDue(minutes(2));
    expect((await rowOf(last)).state).toBe("sent");
  });

  for (const mood of ["drop", "hang"] as const) {
    it(`does not know the outcome when the server ${mood}s after the final dot; sends again under the same number and says so`, async () => {
      server.afterDot = (n) => (n === 1 ? mood : "accept");
      const { enquiryId, to } = await makeEnquiry();
      const id = await queue({ enquiryId, to });
      expect((await deliverDue(NOW, { times: QUICK })).unknown).toBe(1);
      const row = await rowOf(id);
      expect(row.state).toBe("unknown");
      expect(row.sentAt).toBeNull();
      expect(row.lastResponse).toContain("It may have arrived.");
      await deliverDue(row.notBefore);
      expect((await rowOf(id)).state).toBe("sent");
      expect((await rowOf(id)).lastResponse).toContain("It may have arrived twice.");
      expect(server.received.map((r) => r.mail.messageId)).toEqual([row.messageId, row.messageId]);
    });
  }

  it("keeps the doubt when a later try is put off by a 4xx reply", async () => {
    server.afterDot = (n) => (n === 1 ? "drop" : n === 2 ? { code: 451, say: "4.3.0 try later" } : "accept");
    const { enquiryId, to } = await makeEnquiry();
    const id = await queue({ enquiryId, to });
    await deliverDue(NOW, { times: QUICK });
    await deliverDue((await rowOf(id)).notBefore, { times: QUICK });
    expect((await rowOf(id)).state).toBe("unknown");
    await deliverDue((await rowOf(id)).notBefore, { times: QUICK });
    expect((await rowOf(id)).lastResponse).toContain("twice");
  });

  it("calls a letter unknown whose sender died, once the lease is over and not before", async () => {
    const { enquiryId, to } = await makeEnquiry();
    const id = await queue({ enquiryId, to });
    await database().letter.update({ where: { id }, data: { state: "sending", leaseOwner: "a dead process", leaseUntil: minutes(2), attempts: 1 } });
    await deliverDue(minutes(1));
    expect((await rowOf(id)).state).toBe("sending");
    await deliverDue(minutes(3));
    expect((await rowOf(id)).state).toBe("sent");
    expect((await rowOf(id)).lastResponse).toContain("It may have arrived twice.");
  });

  it("without a mail server leaves letters waiting, counts none as sent, and gives each as a file", async () => {
    config.smtp = null;
    const { enquiryId, to } = await makeEnquiry({ name: "Ünal, Ayşe" });
    const letter = composeLetter({ kind: "reply", subject: "Your rug", text: "Dear Ayşe,\n\nGrüße.", workshop: WORKSHOP, link: linkMark(enquiryId) });
    const id = await queue({ enquiryId, to, letter, notBefore: minutes(5) });
    expect(await deliverDue(minutes(6))).toEqual({ accepted: 0, later: 0, refused: 0, unknown: 0 });
    const row = await rowOf(id);
    expect([row.state, row.attempts, row.sentAt]).toEqual(["waiting", 0, null]);
    const eml = (await letterAsEml(id))?.toString() ?? "";
    expect(eml).toContain(`Message-ID: ${row.messageId}`);
    expect(eml).toContain(to.address);
    expect(eml.replaceAll("=\r\n", "")).toContain(clientUrl(enquiryId).replaceAll("=", "=3D"));
    expect(eml.split("\r\n").length).toBeGreaterThan(20);
    expect(eml.replaceAll("\r\n", "")).not.toContain("\n");
    expect(await letterAsEml("no such letter")).toBeNull();
  });

  it("sends nothing in nobody's name: a mail server without a sender's address is no way to send", async () => {
    config.smtp = { url: server.url, from: null };
    const { enquiryId, to } = await makeEnquiry();
    const id = await queue({ enquiryId, to });
    await deliverDue(NOW);
    expect([(await rowOf(id)).state, server.connections()]).toEqual(["waiting", 0]);
  });

  it("writes the client's link into the letter as it leaves, and never into the row", async () => {
    const { enquiryId, to } = await makeEnquiry();
    const letter = composeLetter({ kind: "acknowledgement", subject: "We have your enquiry", text: "Received.", workshop: WORKSHOP, link: linkMark(enquiryId) });
    const id = await queue({ enquiryId, to, letter });
    await deliverDue(NOW);
    expect(server.received[0]?.mail.text).toContain(clientUrl(enquiryId));
    expect(server.received[0]?.mail.html).toContain(`href="${clientUrl(enquiryId)}"`);
    const row = await rowOf(id);
    expect(row.text + row.html).not.toContain(clientUrl(enquiryId));
  });

  it("never sends a letter whose transaction was rolled back", async () => {
    const { enquiryId } = await makeEnquiry();
    await expect(transact(async (tx) => {
      await tx.letter.create({ data: { id: "undone", enquiryId, kind: "reply", automatic: false, state: "waiting", messageId: "<undone@x.example>", toName: "", toAddress: "a@b.example", subject: "", text: "", html: "", notBefore: NOW } });
      throw new Error("undo");
    })).rejects.toThrow("undo");
    expect((await deliverDue(NOW)).accepted).toBe(0);
    expect(server.received).toHaveLength(0);
  });

  it("leaves a letter to a client without an address in the outbox", async () => {
    const { enquiryId, to } = await makeEnquiry({ email: null });
    const id = await queue({ enquiryId, to, notBefore: minutes(5) });
    await deliverDue(minutes(6));
    expect((await rowOf(id)).state).toBe("waiting");
    expect(server.connections()).toBe(0);
  });

  it("refuses a row whose address is more than one", async () => {
    const { enquiryId } = await makeEnquiry();
    const id = await queue({ enquiryId, to: { name: "Ana", address: "a@x.example, b@y.example" } });
    await deliverDue(NOW);
    expect((await rowOf(id)).state).toBe("failed");
    expect(server.received).toHaveLength(0);
  });

  it("sends each of twenty letters once when four deliver at the same time", async () => {
    const { enquiryId, to } = await makeEnquiry();
    for (let n = 0; n < 20; n++) await queue({ enquiryId, to });
    const runs = await Promise.all([1, 2, 3, 4].map(() => deliverDue(minutes(1))));
    expect(runs.reduce((sum, r) => sum + r.accepted, 0)).toBe(20);
    expect(new Set(server.received.map((r) => r.mail.messageId)).size).toBe(20);
    expect(server.received).toHaveLength(20);
  });

  it("begins no further letter once it is told to stop", async () => {
    const { enquiryId, to } = await makeEnquiry();
    await queue({ enquiryId, to });
    await queue({ enquiryId, to });
    const stop = new AbortController();
    server.afterDot = () => {
      stop.abort();
      return "accept";
    };
    expect((await deliverDue(NOW, { stop: stop.signal })).accepted).toBe(1);
    expect(server.received).toHaveLength(1);
  });

  it("delivers in the background when poked, one loop a process, and ends cleanly", async () => {
    startDelivery(() => Promise.resolve());
    startDelivery(() => Promise.resolve());
    const { enquiryId, to } = await makeEnquiry();
    const arrived = new Promise<void>((resolve) => {
      server.afterDot = () => {
        resolve();
        return "accept";
      };
    });
    const id = await queue({ enquiryId, to, now: new Date() });
    pokeDelivery();
    await arrived;
    await stopDelivery();
    expect((await rowOf(id)).state).toBe("sent");
    expect(server.received).toHaveLength(1);
  });

  it("hands over the other letters, each once, while the server says nothing after the final dot of one, and still ends cleanly", async () => {
    const { enquiryId, to } = await makeEnquiry();
    const [first, ...others] = [await queue({ enquiryId, to }), ...(await Promise.all([1, 2, 3, 4, 5, 6].map((n) => queue({ enquiryId, to, now: minutes(n) }))))];
    const { messageId } = await rowOf(first ?? "");
    server.afterDot = (_, { mail }) => (mail.messageId === messageId ? "hang" : "accept");
    const states = () => Promise.all(others.map(async (id) => (await rowOf(id)).state));
    startDelivery(() => Promise.resolve());
    await expect.poll(states, { timeout: 20_000 }).toEqual(others.map(() => "sent"));
    expect((await rowOf(first ?? "")).state).toBe("sending");
    const ended = stopDelivery();
    server.dropAll();
    await ended;
    expect(await states()).toEqual(others.map(() => "sent"));
    expect((await rowOf(first ?? "")).state).toBe("unknown");
    expect(new Set(server.received.map((r) => r.mail.messageId)).size).toBe(others.length + 1);
    expect(server.received).toHaveLength(others.length + 1);
  });
});
