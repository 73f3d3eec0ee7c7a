import { createHash, randomBytes } from "node:crypto";
import MailComposer from "nodemailer/lib/mail-composer";
import { simpleParser } from "mailparser";
import { describe, expect, it } from "vitest";
import { withoutEnclosure } from "../../../../lib/mail/incoming/without-enclosure";

const sha256 = (bytes: Buffer) => createHash("sha256").update(bytes).digest("hex");
const [FACE, RUG] = [randomBytes(5_000), randomBytes(7_001)] as [Buffer, Buffer];
const picture = (content: Buffer, filename: string) => ({ content, filename, contentType: "image/jpeg" });
/** Written by nodemailer, read by mailparser: neither is ours. */
const written = (options: object): Promise<Buffer> => new MailComposer({ from: "a@example.org", to: "b@example.org", subject: "Mein Teppich", text: "Er ist ölig.", ...options }).compile().build();
const contents = async (message: Buffer) => (await simpleParser(message)).attachments.filter((a) => a.contentType.startsWith("image/")).map((a) => sha256(a.content));

describe("withoutEnclosure", () => {
  it("takes out one picture and leaves the words, the head and the other pictures as they are", async () => {
    const message = await written({ html: "<p>Er ist <b>ölig</b>.</p>", attachments: [picture(FACE, "1.jpg"), picture(RUG, "2.jpg")] });
    expect(await contents(message)).toEqual([sha256(FACE), sha256(RUG)]);
    const cut = withoutEnclosure(message, sha256(FACE));
    expect(cut && await contents(cut)).toEqual([sha256(RUG)]);
    const [before, after] = [await simpleParser(message), await simpleParser(cut ?? "")];
    expect([after.subject, after.messageId]).toEqual([before.subject, before.messageId]);
    expect(after.html).toContain(before.html);
    expect(after.text).toContain("Er ist ölig.");
    expect(after.text).toContain("A picture was here.");
    expect(cut?.includes(FACE.toString("base64").slice(0, 60))).toBe(false);
  });
  it("finds it in the text, and in a message that was forwarded", async () => {
    const inner = await written({ html: '<img src="cid:face">', attachments: [{ ...picture(FACE, "1.jpg"), cid: "face" }] });
    const cut = withoutEnclosure(inner, sha256(FACE));
    expect(cut && await contents(cut)).toEqual([]);
    const outer = await written({ attachments: [{ content: inner, contentType: "message/rfc822", filename: "forwarded.eml", contentTransferEncoding: "7bit" }] });
    expect(outer.includes(FACE.toString("base64").slice(0, 60))).toBe(true);
    expect(withoutEnclosure(outer, sha256(FACE))?.includes(FACE.toString("base64").slice(0, 60))).toBe(false);
  });
  it("finds it in a message that was forwarded as base64, and writes that as base64 again", async () => {
    const inner = await written({ attachments: [picture(FACE, "1.jpg"), picture(RUG, "2.jpg")] });
    const outer = Buffer.from(["Content-Type: multipart/mixed; boundary=b", "", "--b", "Content-Type: message/rfc822", "Content-Transfer-Encoding: base64", "", (inner.toString("base64").match(/.{1,76}/gu) ?? []).join("\r\n"), "--b--", ""].join("\r\n"));
    const within = async (message: Buffer | null) => contents((await simpleParser(message ?? "")).attachments[0]?.content ?? Buffer.alloc(0));
    expect(await within(outer)).toEqual([sha256(FACE), sha256(RUG)]);
    expect(await within(withoutEnclosure(outer, sha256(FACE)))).toEqual([sha256(RUG)]);
  });
  it("takes out each of two that are the same, and one that is written as quoted-printable", async () => {
    const twice = withoutEnclosure(await written({ attachments: [picture(FACE, "1.jpg"), picture(RUG, "2.jpg"), picture(FACE, "3.jpg")] }), sha256(FACE));
    expect(twice && await contents(twice)).toEqual([sha256(RUG)]);
    const quoted = await written({ attachments: [{ ...picture(FACE, "1.jpg"), contentTransferEncoding: "quoted-printable" }] });
    expect(await contents(quoted)).toEqual([sha256(FACE)]);
    const cut = withoutEnclosure(quoted, sha256(FACE));
    expect(cut && await contents(cut)).toEqual([]);
  });
  it("takes out what is the whole message, and says so in its place", async () => {
    const message = Buffer.from(`From: a@example.org\r\nMIME-Version: 1.0\r\nContent-Type: image/jpeg;\r\n name="x.jpg"\r\nContent-Transfer-Encoding: base64\r\n\r\n${FACE.toString("base64")}\r\n`);
    expect(await contents(message)).toEqual([sha256(FACE)]);
    const after = await simpleParser(withoutEnclosure(message, sha256(FACE)) ?? "");
    expect(after.attachments).toEqual([]);
    expect([after.from?.text, after.text?.slice(0, 19)]).toEqual(["a@example.org", "A picture was here."]);
  });
  it("gives back nothing where there is no such picture, however broken the message is", async () => {
    expect(withoutEnclosure(await written({ attachments: [picture(RUG, "2.jpg")] }), sha256(FACE))).toBeNull();
    for (const broken of ["", "\r\n\r\n", "Content-Type: multipart/mixed", 'Content-Type: multipart/mixed; boundary="x"\r\n\r\n--x', 'Content-Type: multipart/mixed; boundary="x"\r\n\r\n--x\r\n--x\r\n--x--'])
      expect(withoutEnclosure(Buffer.from(broken), sha256(FACE)), broken).toBeNull();
  });
});
