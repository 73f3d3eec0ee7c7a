import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { MOST_MESSAGE_BYTES, readMessage, type Incoming } from "../../../../lib/mail/incoming/read-message";

const lines = (...l: string[]) => Buffer.from(l.join("\r\n"));
const head = (...more: string[]) => ["From: Ana Example <Ana@Example.org>", "To: desk@lantern-yard.example", "Subject: My rug", "Message-ID: <a1@example.org>", "Date: Sat, 28 Nov 2026 09:00:00 +0000", ...more];
const plain = (body: string[], ...more: string[]) => lines(...head(...more), "Content-Type: text/plain; charset=utf-8", "", ...body);
const letterOf = (i: Incoming) => { if (i.kind !== "letter") throw new Error(`${i.kind}: ${JSON.stringify(i)}`); return i.message; };

describe("readMessage", () => {
  it("reads a letter: who, what it answers, its own words apart from those it repeats", async () => {
    const m = letterOf(await readMessage(plain(["It is on the fringe too.", "", "On Fri, 27 Nov 2026 at 10:12, Lantern Yard <desk@lantern-yard.example> wrote:", "> Dear Ana,", "> please send a photo."], "In-Reply-To: <r2@lantern-yard.example>", "References: <r1@lantern-yard.example> <r2@lantern-yard.example>")));
    expect(m).toMatchObject({ messageId: "<a1@example.org>", answers: ["<r2@lantern-yard.example>", "<r1@lantern-yard.example>"], from: { name: "Ana Example", address: "ana@example.org" }, subject: "My rug" });
    expect(m.body.own).toBe("It is on the fringe too.");
    expect(m.body.quoted).toContain("please send a photo");
    expect(m.sentAt?.toISOString()).toBe("2026-11-28T09:00:00.000Z");
  });

  it("takes pictures as enclosures, and names what it leaves out", async () => {
    const picture = Buffer.alloc(20_000, 7).toString("base64").replace(/.{76}/gu, "$&\r\n");
    const part = (type: string, name: string, body: string) => ["--b", `Content-Type: ${type}; name="${name}"`, "Content-Transfer-Encoding: base64", `Content-Disposition: attachment; filename="${name}"`, "", body];
    const m = letterOf(await readMessage(lines(...head("MIME-Version: 1.0", "Content-Type: multipart/mixed; boundary=b"), "", "--b", "Content-Type: text/plain", "", "Three photos.",
      ...part("image/jpeg", "one.jpg", picture), ...part("application/octet-stream", "two.HEIC", picture), ...part("image/png", "three\tred.png", picture), ...part("application/pdf", "invoice.pdf", "JVBERi0="), "--b--", "")));
    expect(m.pictures.map((p) => p.name)).toEqual(["one.jpg", "two.HEIC", "three red.png"]);
    expect(m.pictures[0]?.content.equals(Buffer.alloc(20_000, 7))).toBe(true);
    expect(m.otherEnclosures.map((e) => [e.name, e.content.toString()])).toEqual([["invoice.pdf", "%PDF-"]]);
  });

  it("takes the pictures of a letter that was sent on as a file, and folds its words; deeper ones stay files", async () => {
    const sentOn = (inner: Buffer, own: string, b: string): Buffer => Buffer.concat([
      lines(...head("MIME-Version: 1.0", `Content-Type: multipart/mixed; boundary=${b}`), "", `--${b}`, "Content-Type: text/plain", "", own, `--${b}`, 'Content-Type: message/rfc822; name="sent on.eml"', "Content-Disposition: attachment", "", ""),
      inner, Buffer.from(`\r\n--${b}--\r\n`)]);
    const inmost = lines(...head("MIME-Version: 1.0", "Content-Type: multipart/mixed; boundary=b"), "", "--b", "Content-Type: text/plain", "", "The red ran.", "--b", 'Content-Type: image/jpeg; name="one.jpg"', "Content-Transfer-Encoding: base64", "Content-Disposition: attachment", "", Buffer.alloc(20_000, 7).toString("base64"), "--b--", "");
    const once = letterOf(await readMessage(sentOn(inmost, "From my sister.", "c")));
    expect(once.body).toMatchObject({ own: "From my sister.", quoted: "The red ran." });
    expect(once.pictures.map((p) => [p.name, p.content.length])).toEqual([["one.jpg", 20_000]]);
    expect(once.otherEnclosures.map((e) => e.type)).toEqual(["message/rfc822"]);
    const twice = sentOn(sentOn(inmost, "From my sister.", "c"), "See below!", "d");
    expect(letterOf(await readMessage(twice)).pictures).toHaveLength(1);
    expect(letterOf(await readMessage(sentOn(twice, "Look.", "e"))).pictures).toHaveLength(0);
  });
  it("cuts a subject that is longer than 500 signs, and says that it goes on: at, one over", async () => {
    const subject = async (n: number) => letterOf(await readMessage(lines("From: Ana <ana@example.org>", `Subject: ${"x".repeat(n)}`, "", "Yes."))).subject;
    expect(await subject(500)).toBe("x".repeat(500));
    expect(await subject(501)).toBe(`${"x".repeat(499)}…`);
  });

  it("reads words that came as HTML alone", async () => {
    const m = letterOf(await readMessage(lines(...head(), "Content-Type: text/html; charset=utf-8", "", "<p>The <b>red</b> ran.</p><script>alert(1)</script>")));
    expect(m.body.own).toBe("The red ran.");
  });
  it("reads words that came as HTML beside nothing but a photo, or beside plain words that are empty, and folds what they repeat", async () => {
    const html = ["--b", "Content-Type: text/html; charset=utf-8", "", "<div>The <b>red</b> ran.</div><blockquote><div>Dear Ana, please send a photo.</div></blockquote>"];
    const photo = ["--b", 'Content-Type: image/jpeg; name="one.jpg"', "Content-Transfer-Encoding: base64", "", "AAAA", "--b--", ""];
    const mixed = letterOf(await readMessage(lines(...head("MIME-Version: 1.0", "Content-Type: multipart/mixed; boundary=b"), "", ...html, ...photo)));
    expect(mixed.body.own).toBe("The red ran.");
    expect(mixed.body.quoted).toContain("please send a photo");
    expect(mixed.pictures).toHaveLength(1);
    const empty = letterOf(await readMessage(lines(...head("MIME-Version: 1.0", "Content-Type: multipart/alternative; boundary=b"), "", "--b", "Content-Type: text/plain", "", " ", ...html, "--b--", "")));
    expect(empty.body.own).toBe("The red ran.");
  });
  it("shows the words of a link and where it leads, not the long address behind it, and nothing of a picture that only counts readers", async () => {
    const track = "https://click.mailer.example/l/AbC?u=1&v=2";
    const html = `<p>Please <a href="${track.replace("&", "&amp;")}">look at my photos</a>, or write to <a href="mailto:ana@example.org">me</a>.</p><p><a href="https://we.tl/t-1">https://we.tl/t-1</a></p><p><a href="${track.replace("&", "&amp;")}"><img src="https://click.mailer.example/logo.png"></a></p><img src="https://click.mailer.example/o.gif?id=9">`;
    const { own } = letterOf(await readMessage(lines(...head(), "Content-Type: text/html; charset=utf-8", "", html))).body;
    expect(own.replace(/\s+/gu, " ")).toBe("Please look at my photos [click.mailer.example], or write to me [ana@example.org]. https://we.tl/t-1 [click.mailer.example]");
  });
  it("leaves addresses as they are in words that came plain", async () => {
    const text = "See [https://rugs.example/a?b=1] and https://rugs.example/c";
    expect(letterOf(await readMessage(lines(...head(), "", text))).body.own).toBe(text);
  });
  it("says so where the words are HTML that cannot be read, instead of showing none", async () => {
    const deep = `${"<div>".repeat(20_000)}The red ran.`;
    const m = letterOf(await readMessage(lines(...head(), "Content-Type: text/html; charset=utf-8", "", deep)));
    expect(m.body.own).toContain("could not be read");
  });

  it.each([
    ["Auto-Submitted: auto-replied"], ["Precedence: bulk"], ["X-Autoreply: yes"], ["List-Id: <rugs.example.org>"], ["Return-Path: <>"],
  ])("never takes for a person's letter what says %s", async (header) => {
    expect(await readMessage(plain(["I am away."], header))).toMatchObject({ kind: "automatic" });
  });
  it("takes Auto-Submitted: no for a person's", async () => expect(await readMessage(plain(["Hello."], "Auto-Submitted: no"))).toMatchObject({ kind: "letter" }));
  const under = async (subject: string) => (await readMessage(Buffer.from(plain(["Back on Monday."]).toString().replace("Subject: My rug", `Subject: ${subject}`)))).kind;
  it.each([
    "Out of office: My rug", "Automatic reply: My rug", "Auto-Reply: My rug", "Abwesenheitsnotiz: Ihr Teppich", "ABWESENHEITSNACHRICHT", "Automatische Antwort: Ihr Teppich", "Nicht im Büro: Ihr Teppich", "Réponse automatique : votre tapis", "Reponse automatique", "Message d’absence",
    "Risposta automatica: il tappeto", "Fuori sede", "Respuesta automática: su alfombra", "Fuera de la oficina", "Automatisch antwoord: uw kleed", "Afwezigheidsbericht", "Odpowiedź automatyczna: dywan", "Nieobecność w biurze", "Resposta automática: o tapete", "Fora do escritório",
  ])("knows an absence note by its subject “%s”", async (subject) => expect(await under(subject)).toBe("automatic"));
  it.each(["Re: Automatic reply: My rug", "Out of officers’ mess: a rug", "My automatic reply", "Abwesenheit und mein Teppich", "Absence", "Automatisch", "Fuori"])("takes “%s” for a person's", async (subject) => {
    expect(await under(subject)).toBe("letter");
  });

  const report = (action: string, status: string, diagnostic: string) => lines(
    "From: Mail Delivery <MAILER-DAEMON@example.org>", "To: desk@lantern-yard.example", "Subject: Delivery Status Notification", "Message-ID: <d1@example.org>", "Auto-Submitted: auto-replied",
    'MIME-Version: 1.0', 'Content-Type: multipart/report; report-type=delivery-status; boundary="r"', "", "--r", "Content-Type: text/plain", "", "Your message was not delivered.",
    "--r", "Content-Type: message/delivery-status", "", "Reporting-MTA: dns; mx.example.org", "", "Original-Recipient: rfc822;Ana@example.org", "Final-Recipient: rfc822;ana@example.org", `Action: ${action}`, `Status: ${status}`,
    `Diagnostic-Code: smtp; ${diagnostic}`, "", "--r", "Content-Type: message/rfc822", "", "From: desk@lantern-yard.example", "Message-ID:", " <reply-9@lantern-yard.example>", "Subject: Your rug", "", "Dear Ana", "--r--", "");
  it("reads a delivery report of RFC 3464, its letter's id folded over two lines", async () => {
    expect(await readMessage(report("failed", "5.1.1", "550 5.1.1 no such user"))).toMatchObject({
      kind: "bounce", bounce: { about: "<reply-9@lantern-yard.example>", address: "ana@example.org", status: "5.1.1", action: "failed", says: "550 5.1.1 no such user" },
    });
    expect(await readMessage(report("delayed", "4.4.1", "connection timed out"))).toMatchObject({ kind: "bounce", bounce: { action: "delayed", status: "4.4.1" } });
  });
  it("reads a bounce that is only words", async () => {
    const bytes = lines("From: postmaster@example.org", "Subject: Undeliverable: Your rug", "Message-ID: <d2@example.org>", "", "The address ana@example.org was refused:", "550 5.7.1 mailbox unavailable", "", "Message-ID: <reply-9@lantern-yard.example>");
    expect(await readMessage(bytes)).toMatchObject({ kind: "bounce", bounce: { about: "<reply-9@lantern-yard.example>", address: "ana@example.org", status: "5.7.1", action: "failed" } });
  });

  it("keeps names and subjects on one line, whatever is in them", async () => {
    const m = letterOf(await readMessage(Buffer.from(plain(["x"]).toString().replace("Subject: My rug", "Subject: =?utf-8?q?a=0D=0ABcc:_x=40y?=").replace("Ana Example", '"=?utf-8?b?QW5hDQpUbzogeg==?="'))));
    expect(`${m.subject}${m.from?.name}`).not.toMatch(/[\r\n]/u);
  });
  it("never throws, and says why what it cannot read", async () => {
    expect(await readMessage(Buffer.alloc(0))).toMatchObject({ kind: "unreadable", why: expect.stringMatching(/empty/) as string });
    expect(await readMessage(Buffer.alloc(MOST_MESSAGE_BYTES + 1))).toMatchObject({ kind: "unreadable", why: expect.stringMatching(/60 MB/) as string });
    expect(await readMessage(Buffer.from("no head at all"))).toMatchObject({ kind: "unreadable" });
    await fc.assert(fc.asyncProperty(fc.uint8Array({ maxLength: 400 }), async (bytes) => {
      expect(["letter", "bounce", "automatic", "unreadable"]).toContain((await readMessage(Buffer.from(bytes))).kind);
    }), { numRuns: 200 });
  });
});
