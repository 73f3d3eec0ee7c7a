import { generateKeyPairSync } from "node:crypto";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { config } from "../../lib/config/config";
import { composeLetter } from "../../lib/mail/compose";
import { sendBySmtp } from "../../lib/mail/smtp";
import { messageOf, type Attachment } from "../../lib/mail/message";
import { relaxedBody, relaxedHeader, verifyDkim } from "../unit/mail/dkim";
import { NOW, OUR_ADDRESS, WORKSHOP } from "../unit/mail/make";
import { startMailServer, type MailServer } from "./mail-server";

const { privateKey, publicKey } = generateKeyPairSync("rsa", { modulusLength: 2048 });
const other = generateKeyPairSync("rsa", { modulusLength: 2048 }).publicKey;
const PDF: Attachment = { fileName: "Condition report.pdf", bytes: Buffer.from(Array.from({ length: 5000 }, (_, i) => (i * 7) % 256)), type: "application/pdf" };
/** What canonicalisation and the wire have to do with: lone dots, white space, long lines, letters outside ASCII, empty lines. */
const TEXTS = {
  "a plain letter": "Dear Ana Example,\n\nIt is likely wool.",
  "lines that begin with dots": "Dear Ana,\n\n.\n..and so on\n. end",
  "white space at the ends of lines": "Dear Ana,  \n\t\nIt is  likely \t wool. ",
  "letters of other scripts": "Liebe Żaneta Дорогая,\n\nGrüße 🧵 سلام",
  "a line of five thousand letters": `Dear Ana,\n\n${"wool ".repeat(1000)}`,
  "empty lines at its end": "Dear Ana,\n\nIt is wool.\n\n\n\n",
} as const;

describe("the verifier of these tests", () => {
  it("canonicalises the example of RFC 6376 §3.4.5 as it is printed there", () => {
    expect([relaxedHeader("A: X"), relaxedHeader("B : Y\t\r\n\tZ  ")]).toEqual(["a:X", "b:Y Z"]);
    expect(relaxedBody(" C \r\nD \t E\r\n\r\n\r\n")).toBe(" C\r\nD E\r\n");
  });
  it("takes an empty body for nothing (RFC 6376 §3.4.4)", () => expect([relaxedBody(""), relaxedBody("\r\n\r\n")]).toEqual(["", ""]));
});

describe("a letter that is signed", () => {
  let server: MailServer;
  beforeAll(async () => {
    server = await startMailServer();
    config.dkim = { domain: "lantern-yard.example", selector: "desk2026", privateKey: privateKey.export({ type: "pkcs8", format: "pem" }).toString() };
  });
  afterAll(async () => {
    config.dkim = null;
    await server.close();
  });
  async function arrives(text: string, attachments: readonly Attachment[] = []): Promise<Buffer> {
    const letter = composeLetter({ kind: "reply", subject: "Your rug, Ünal: grün", text, workshop: WORKSHOP });
    const message = await messageOf({ ...letter, messageId: "<1@lantern-yard.example>", inReplyTo: "<0@lantern-yard.example>", references: "<0@lantern-yard.example>", toName: "Ana Example", toAddress: "ana@example.org", automatic: false },
      { sender: OUR_ADDRESS, date: NOW, attachments });
    expect((await sendBySmtp(server.url, message)).kind).toBe("accepted");
    return server.received.at(-1)?.raw ?? Buffer.alloc(0);
  }

  it.each(Object.entries(TEXTS))("holds as it was received: %s", async (_, text) => {
    for (const attachments of [[], [PDF]]) {
      const { tags, ...verified } = verifyDkim(await arrives(text, attachments), publicKey);
      expect(verified).toEqual({ bodyHolds: true, signatureHolds: true });
      expect(tags).toMatchObject({ v: "1", a: "rsa-sha256", c: "relaxed/relaxed", d: "lantern-yard.example", s: "desk2026" });
      expect(tags["h"]?.split(":")).toEqual(expect.arrayContaining(["from", "to", "subject", "date", "message-id", "in-reply-to", "references", "mime-version", "content-type"]));
    }
  });
  it("holds no more once a word of it, a header of it or the key is another", async () => {
    const raw = (await arrives(TEXTS["a plain letter"])).toString("latin1");
    const changed = (from: string, to: string) => {
      expect(raw).toContain(from);
      return verifyDkim(Buffer.from(raw.replace(from, to), "latin1"), publicKey);
    };
    expect(changed("likely wool", "surely wool")).toMatchObject({ bodyHolds: false, signatureHolds: true });
    expect(changed("To: Ana Example", "To: Bea Example")).toMatchObject({ bodyHolds: true, signatureHolds: false });
    expect(verifyDkim(Buffer.from(raw, "latin1"), other).signatureHolds).toBe(false);
  });
  it("is not sent unsigned where the key cannot sign", async () => {
    const good = config.dkim;
    config.dkim = { domain: "lantern-yard.example", selector: "desk2026", privateKey: "no key" };
    await expect(arrives("Dear Ana")).rejects.toThrow("could not be signed");
    config.dkim = good;
  });
});
