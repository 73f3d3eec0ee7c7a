import { simpleParser } from "mailparser";
import { describe, expect, it } from "vitest";
import { composeLetter } from "../../../lib/mail/compose";
import { headOf } from "../../../lib/mail/head";
import { messageOf, plainOf, type LetterMessage } from "../../../lib/mail/message";
import { NOW, WORKSHOP } from "./make";

const LETTER: LetterMessage = {
  messageId: "<1@lantern-yard.example>", inReplyTo: null, references: null, toName: "Ana Example", toAddress: "ana@example.org", subject: "Your rug", text: "Hello\n", html: "<p>Hello</p>", automatic: false,
};
const made = async (letter: Partial<LetterMessage>, name = "Lantern Yard Rug Workshop") => {
  const { envelope, bytes } = await messageOf({ ...LETTER, ...letter }, { sender: { name, address: "desk@lantern-yard.example" }, date: NOW });
  return { envelope, head: bytes.toString("latin1").split("\r\n\r\n")[0] ?? "", mail: await simpleParser(bytes) };
};
const headerNames = (head: string) => head.split(/\r\n(?![ \t])/).map((line) => (line.split(":")[0] ?? "").toLowerCase()).sort();
const HEADERS = ["content-type", "date", "from", "message-id", "mime-version", "subject", "to"];

describe("plainOf", () => {
  it("keeps figures whole with spaces that do not break, and with no sign that a mail program may draw as a box", () => {
    expect(plainOf("0–19 % of it; ring 01632 960 200")).toBe("0–19\u00a0% of it; ring 01632\u00a0960\u00a0200");
  });
});

describe("messageOf", () => {
  it("is text and HTML for one recipient, with our Message-ID and the given date", async () => {
    const { envelope, head, mail } = await made({});
    expect(envelope).toEqual({ from: "desk@lantern-yard.example", to: ["ana@example.org"] });
    expect(headerNames(head)).toEqual(HEADERS);
    expect(head).toContain("multipart/alternative");
    expect([mail.messageId, mail.date?.toISOString(), mail.text?.trim(), mail.html]).toEqual(["<1@lantern-yard.example>", NOW.toISOString(), "Hello", "<p>Hello</p>"]);
  });
  it("ends its plain text on the wire with where the workshop is and how it is reached, as its HTML does", async () => {
    const { text, html } = composeLetter({ kind: "reply", subject: "Your rug", text: "Dear Ana", workshop: WORKSHOP });
    const { mail } = await made({ text, html });
    expect(mail.text).toMatch(/^Dear Ana\n\n-- \nLantern Yard Rug Workshop\n3 Lantern Yard, Hallowmere\n01632.960001\ndesk@lantern-yard\.example\n+$/);
    expect(mail.html).toMatch(/<footer>Lantern Yard Rug Workshop<br>3 Lantern Yard, Hallowmere<br>01632.960001<br>desk@lantern-yard\.example<\/footer>/);
  });
  it("marks an automatic letter and threads a reply", async () => {
    const { head } = await made({ automatic: true, inReplyTo: "<0@x.example>", references: "<a@x.example> <0@x.example>" });
    expect(headerNames(head)).toEqual([...HEADERS, "auto-submitted", "in-reply-to", "references"].sort());
  });
  it.each([
    ["a line break", "Ana\r\nBcc: evil@example.com"], ["a bare line feed", "Ana\nTo: evil@example.com"], ["commas", "Ana, evil@example.com, Bo"], ["an address of its own", "evil@example.com"],
    ["angle brackets", "Ana <evil@example.com>"], ["quotes", 'Ana "x" <evil@example.com>'], ["a comment and a group", "Friends: evil@example.com (x);"], ["an encoded word", "=?utf-8?Q?Ana=0D=0ABcc:_evil@example.com?="],
    ["right-to-left text", "דנה \u202eلیلی"], ["emoji", "Ana 🧵👩‍🔧"], ["great length", "Ana ".repeat(500)],
  ])("adds no recipient and no header by a name or subject with %s", async (_, text) => {
    for (const letter of [{ toName: text }, { subject: text }]) {
      const { envelope, head, mail } = await made(letter, text);
      expect(envelope).toEqual({ from: "desk@lantern-yard.example", to: ["ana@example.org"] });
      expect(headerNames(head)).toEqual(HEADERS);
      expect(Math.max(...head.split("\r\n").map((l) => l.length))).toBeLessThanOrEqual(998); // RFC 5322 §2.1.1
      expect([mail.to].flat().flatMap((t) => t?.value ?? []).map((v) => v.address)).toEqual(["ana@example.org"]);
      expect([mail.from?.value.map((v) => v.address), mail.cc, mail.bcc]).toEqual([["desk@lantern-yard.example"], undefined, undefined]);
    }
  });
  it.each(["Ana Example", "Ana, Bo & Co. (Ltd)", 'Ana "the weaver" Example', "Ünal, Ayşe 🧵", "  Ana\r\nBcc: evil@example.com ", "דנה \u202eلیلی"])("has the head that is shown beforehand, and no other place that answers go to: %j", async (text) => {
    const { mail } = await made({ toName: text, subject: text }, text);
    const shown = headOf({ from: { name: text, address: "desk@lantern-yard.example" }, to: { name: text, address: "ana@example.org" }, subject: text });
    expect(mail.from?.value).toEqual([shown.from]);
    expect([mail.to].flat()[0]?.value).toEqual([shown.to]);
    expect(mail.subject).toBe(shown.subject);
    expect(mail.replyTo).toBeUndefined();
    expect(shown.subject).not.toMatch(/[\r\n\u202e]/u);
  });
  it("keeps names in any script readable", async () => {
    const { mail } = await made({ toName: "Ünal, Ayşe 🧵", subject: "Your rug: grün" });
    expect([[mail.to].flat()[0]?.value[0]?.name, mail.subject]).toEqual(["Ünal, Ayşe 🧵", "Your rug: grün"]);
  });
  it("takes a domain in any script", async () => {
    expect((await made({ toAddress: "ana@bücher.example" })).envelope.to).toEqual(["ana@xn--bcher-kva.example"]);
  });
  it("reads no file and no address that a text names", async () => {
    const { mail } = await made({ text: "file:///etc/hostname", html: '<img src="file:///etc/hostname">' });
    expect([mail.text?.trim(), mail.attachments]).toEqual(["file:///etc/hostname", []]);
  });
});
