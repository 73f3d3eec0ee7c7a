import { randomUUID } from "node:crypto";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { approveReply } from "../../lib/enquiry/approve-reply";
import { readPost } from "../../lib/enquiry/read-post";
import { readQueue } from "../../lib/enquiry/read-queue";
import { readMailbox } from "../../lib/enquiry/receive-mail";
import { mailboxName } from "../../lib/config/imap-url";
import { database } from "../../lib/store/database";
import { letter, photos, report } from "../unit/enquiry/mail-files";
import { openWorkshop } from "../unit/enquiry/open-workshop";
import { good, staff } from "../unit/enquiry/workshop";
import { startDovecot, whyNoDovecot, type Dovecot } from "./dovecot";

const missing = whyNoDovecot();
if (missing) console.log(`Reading a mailbox is not tested: ${missing}`);

const once = (dovecot: Dovecot, box = dovecot.box) => readMailbox(box, { stop: new AbortController().signal, isOnce: true });
const enquiriesOf = (email: string) => database().enquiry.findMany({ where: { client: { email } }, include: { letters: true, rugs: { include: { photos: true, answers: true } } } });
const postOf = (fromAddress: string) => database().post.findMany({ where: { fromAddress } });
const address = () => `${randomUUID().slice(0, 8)}@example.org`;

describe.skipIf(missing)("a mailbox of Debian's Dovecot", () => {
  let dovecot: Dovecot;
  beforeAll(async () => {
    await openWorkshop();
    dovecot = await startDovecot();
  });
  afterAll(() => dovecot.stop());

  it("gives a new letter with three photos, which becomes an enquiry, once; nothing in the mailbox changes", async () => {
    const from = address();
    dovecot.deliver(letter({ from, text: "It turned brown.", photos: await photos("#8a8f98", "#7d2e38", "#d8c7b0"), date: new Date() }));
    expect(await once(dovecot)).toBe(true);
    expect(await once(dovecot)).toBe(true);
    const [enquiry, ...more] = await enquiriesOf(from);
    expect(more).toEqual([]);
    expect(enquiry?.channel).toBe("email");
    expect(enquiry?.rugs[0]?.photos).toHaveLength(3);
    expect(enquiry?.letters.map((l) => l.kind)).toEqual(["acknowledgement"]);
    const { new: unread, cur } = dovecot.names();
    expect([...unread, ...cur]).toHaveLength(1);
    // No flag after ":2,": not marked as read, answered or deleted.
    for (const name of cur) expect(name).toMatch(/(?::2,|^[^:]*)$/);
  });

  it("gives a letter with three photos about a flood, which comes first in the queue, before letters that came earlier", async () => {
    const [calm, flood] = [address(), address()];
    dovecot.deliver(letter({ from: calm, text: "What is it made of?", photos: await photos("#40514e"), date: new Date() }));
    await once(dovecot);
    dovecot.deliver(letter({ from: flood, text: "Our cellar was flooded in the night\r\nand the rug is soaked.", photos: await photos("#7d2e38", "#8a8f98", "#d8c7b0"), date: new Date() }));
    await once(dovecot);
    const { waiting } = good(await readQueue(await staff("trainee", "Pia"), new Date()));
    const [first] = await enquiriesOf(flood);
    expect(first?.rugs[0]?.photos).toHaveLength(3);
    expect(waiting[0]).toMatchObject({ enquiryId: first?.id, urgency: "hours", urgencyWhy: "They write “Our cellar was flooded in the night and the rug is soaked”: read it now." });
    expect(waiting.at(-1)?.urgency).toBe("can_wait");
  });

  it("threads an answer, marks what came back, and keeps what cannot be read", async () => {
    const from = address();
    dovecot.deliver(letter({ from, photos: await photos("#2f3a4a"), date: new Date() }));
    await once(dovecot);
    const [enquiry] = await enquiriesOf(from);
    const { letterId } = good(await approveReply(await staff("reviewer", "Ivo"), { enquiryId: enquiry?.id ?? "", number: 1 }, new Date()));
    const ours = await database().letter.update({ where: { id: letterId }, data: { state: "sent" } });
    const garbage = Buffer.from([0, 255, 254, 128, 10, 13, 65, 10]);
    dovecot.deliver(letter({ from, text: "It is from 2019.", answers: ours.messageId, date: new Date() }));
    dovecot.deliver(garbage);
    dovecot.deliver(report({ about: ours.messageId, to: from }));
    await once(dovecot);
    expect((await postOf(from)).map((p) => p.kind).sort()).toEqual(["letter", "reply"]);
    const [after] = await enquiriesOf(from);
    expect(after?.rugs[0]?.answers.map((a) => a.value)).toContain("It is from 2019.");
    expect(await database().letter.findUniqueOrThrow({ where: { id: letterId } })).toMatchObject({ state: "failed" });
    const page = good(await readPost(await staff("reviewer", "Ivo")));
    expect(page.suppressed.map((s) => s.address)).toContain(from);
    expect(page.open.filter((p) => p.kind === "unreadable")).toHaveLength(1);
  });

  it("doubles nothing when the server numbers its messages anew", async () => {
    const before = { posts: await database().post.count(), enquiries: await database().enquiry.count() };
    const { uidValidity } = await database().mailbox.findUniqueOrThrow({ where: { id: mailboxName(dovecot.box) } });
    dovecot.renumber();
    await once(dovecot);
    const now = await database().mailbox.findUniqueOrThrow({ where: { id: mailboxName(dovecot.box) } });
    expect(now.uidValidity).not.toBe(uidValidity);
    expect(Number(now.lastUid)).toBe(before.posts);
    expect({ posts: await database().post.count(), enquiries: await database().enquiry.count() }).toEqual(before);
  });

  it("hears of a letter that comes while it listens, and leaves the mailbox to one reader at a time", async () => {
    const stop = new AbortController();
    const listening = readMailbox(dovecot.box, { stop: stop.signal });
    const claimed = async () => (await database().mailbox.findUniqueOrThrow({ where: { id: mailboxName(dovecot.box) } })).leaseOwner !== null;
    await vi.waitFor(async () => expect(await claimed()).toBe(true), 10_000);
    expect(await once(dovecot)).toBe(false);
    const from = address();
    dovecot.deliver(letter({ from, photos: await photos("#556b2f"), date: new Date() }));
    await vi.waitFor(async () => expect(await enquiriesOf(from)).toHaveLength(1), 25_000);
    stop.abort();
    expect(await listening).toBe(true);
    expect(await claimed()).toBe(false);
  });

  it("says on the Post page's behalf why it cannot be read, and reads on once it can", async () => {
    await expect(once(dovecot, { ...dovecot.box, password: "wrong" })).rejects.toThrow(/user name or the password/);
    const state = () => database().mailbox.findUniqueOrThrow({ where: { id: mailboxName(dovecot.box) } });
    expect((await state()).trouble).toMatch(/user name or the password/);
    expect((await state()).troubleSince).not.toBeNull();
    expect(await once(dovecot)).toBe(true);
    expect(await state()).toMatchObject({ trouble: null, troubleSince: null, leaseOwner: null });
  });
});
