import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { acknowledgement } from "../../../lib/mail/acknowledgement";
import { domainOf, headerText, isOneAddress } from "../../../lib/mail/address";
import { withoutFoot } from "../../../lib/mail/foot";
import { composeLetter } from "../../../lib/mail/compose";
import { html } from "../../../lib/mail/html";
import { newMessageId, threadAfter } from "../../../lib/mail/message-id";
import { outcomeOf } from "../../../lib/mail/outcome";
import { retryAfterMs } from "../../../lib/mail/retry";
import { WORKSHOP } from "./make";

describe("isOneAddress", () => {
  it.each(["ana@example.org", "a.b+c@sub.example.museum", "ü@bücher.example", "x@例え.example", "o'neill@example.com"])("takes %s", (a) => expect(isOneAddress(a)).toBe(true));
  it.each(["", "ana", "@example.org", "ana@", "a@b@c.example", "a@x.example,b@y.example", "a@x.example b@y.example", "Ana <a@x.example>", "a@x.example\r\nBcc: b@y.example", '"a,b"@x.example', `${"a".repeat(250)}@x.example`])(
    "refuses %s", (a) => expect(isOneAddress(a)).toBe(false));
});

describe("domainOf", () => {
  it("is the domain in ASCII", () => expect([domainOf("desk@lantern-yard.example"), domainOf("x@bücher.example")]).toEqual(["lantern-yard.example", "xn--bcher-kva.example"]));
  it("is a reserved one without an address", () => expect([domainOf(null), domainOf("no address")]).toEqual(["plainpile.invalid", "plainpile.invalid"]));
});

describe("headerText", () => {
  it("makes one line and leaves letters of every script alone", () => {
    expect(headerText(" Ana\r\nBcc: x@y.example\t\u0000 ")).toBe("Ana Bcc: x@y.example");
    expect(headerText("\u202eevil\u2066 דנה ليلى 🧵")).toBe("evil דנה ليلى 🧵");
  });
});

describe("newMessageId and threadAfter", () => {
  it("is a new one each time, in brackets", () => {
    const made = Array.from({ length: 100 }, () => newMessageId("x.example"));
    expect(new Set(made).size).toBe(100);
    for (const id of made) expect(id).toMatch(/^<[0-9a-f-]{36}@x\.example>$/);
  });
  it("begins a conversation without ancestors", () => expect(threadAfter(null)).toEqual({ inReplyTo: null, references: null }));
  it("adds the parent to its references", () => {
    expect(threadAfter({ messageId: "<2@x>", references: "<0@x> <1@x>" })).toEqual({ inReplyTo: "<2@x>", references: "<0@x> <1@x> <2@x>" });
  });
  it("keeps the first and the newest, 20 in all", () => {
    const refs = Array.from({ length: 20 }, (_, n) => `<${n}@x>`).join(" ");
    const kept = threadAfter({ messageId: "<20@x>", references: refs }).references?.split(" ");
    expect(kept).toHaveLength(20);
    expect([kept?.[0], kept?.[1], kept?.at(-1)]).toEqual(["<0@x>", "<2@x>", "<20@x>"]);
  });
});

describe("retryAfterMs", () => {
  it("waits 1, 5, 15, 30, 60 minutes, then every hour", () => {
    expect([1, 2, 3, 4, 5, 6, 50].map((n) => (retryAfterMs(n) ?? 0) / 60_000)).toEqual([1, 5, 15, 30, 60, 60, 60]);
  });
  it("gives up when the waits come to more than four days, and not before", () => {
    let waited = 0;
    let attempts = 1;
    for (let wait = retryAfterMs(attempts); wait !== null; wait = retryAfterMs(++attempts)) waited += wait;
    expect(waited / 3_600_000).toBeGreaterThan(95);
    expect(waited / 3_600_000).toBeLessThanOrEqual(96);
  });
});

describe("outcomeOf", () => {
  const error = (response: string, command = "DATA") => ({ message: response, response, responseCode: Number(response.slice(0, 3)), command });
  it.each([["421 4.3.2 closing"], ["450 busy"], ["499 odd"]])("%s: later", (r) => expect(outcomeOf(error(r), true).kind).toBe("later"));
  it.each([["500 no"], ["550 5.1.1 unknown"], ["554 5.7.1 refused"]])("%s: refused", (r) => expect(outcomeOf(error(r), true).kind).toBe("refused"));
  it("no reply once the letter had begun: unknown; before it: later", () => {
    expect(outcomeOf({ message: "Connection closed" }, true).kind).toBe("unknown");
    expect(outcomeOf({ message: "connect ECONNREFUSED" }, false).kind).toBe("later");
  });
  it("a refused sign-in is about us, not about the letter: later", () => expect(outcomeOf(error("535 5.7.8 bad password", "AUTH PLAIN"), false).kind).toBe("later"));
  it("our own address refused is about us too: later", () => expect(outcomeOf(error("501 5.1.7 bad sender", "MAIL FROM"), true).kind).toBe("later"));
  it("a letter that nodemailer itself will not send is refused, not unknown", () => expect(outcomeOf({ message: "Message size larger than allowed", code: "EMESSAGE" }, true).kind).toBe("refused"));
  it.each([
    ["550 5.1.1 no such user", "RCPT TO", true], ["550 no such user", "RCPT TO", true], ["553 5.1.2 no such domain", "RCPT TO", true], ["550 5.1.0 gone", "DATA", true],
    ["550 5.7.1 looks like spam", "DATA", false], ["550 rejected", "DATA", false], ["550 5.7.1 not from you", "RCPT TO", false], ["552 5.2.2 mailbox full", "RCPT TO", false],
  ])("%s to %s speaks against the address: %s", (r, command, against) => expect(outcomeOf(error(r, command), true)).toMatchObject({ addressRefused: against }));
});

describe("html", () => {
  it("escapes what it is given, and leaves what it made", () => {
    expect(html`<p title="${'"<&>\''}">${"<b>"}${html`<i>${"&"}</i>`}${null}${[html`<u></u>`]}${1}</p>`.text).toBe('<p title="&quot;&lt;&amp;&gt;&#39;">&lt;b&gt;<i>&amp;</i><u></u>1</p>');
  });
  it("lets no tag through from any text", () => fc.assert(fc.property(fc.string(), (text) => {
    expect(html`${text}`.text).not.toMatch(/[<>"']/);
  })));
});

describe("composeLetter", () => {
  const FOOT = "\n\n-- \nLantern Yard Rug Workshop\n3 Lantern Yard, Hallowmere\n01632 960001\ndesk@lantern-yard.example\n";
  const letter = (text: string, link: string | null = null) => composeLetter({ kind: "reply", subject: "Your rug", text, workshop: WORKSHOP, link });
  it("has the same words in text and HTML, lists as lists", () => {
    const { text, html: page } = letter("Dear Ana,\n\nPlease:\n– press\n– wait\n\nBye");
    expect(text).toBe(`Dear Ana,\n\nPlease:\n– press\n– wait\n\nBye${FOOT}`);
    expect(page).toContain('<p dir="auto">Please:</p><ul><li dir="auto">press</li><li dir="auto">wait</li></ul>');
    expect(page).toContain("Lantern Yard Rug Workshop");
    expect(page).toContain("3 Lantern Yard, Hallowmere");
  });
  it("escapes everything people wrote", () => {
    const { html: page } = composeLetter({ kind: "reply", subject: "</title><script>1</script>", text: '"><img src=x onerror=alert(1)>\n– <b>x</b>', workshop: { ...WORKSHOP, name: "<i>Yard</i>" } });
    expect(page).not.toMatch(/<script|<img|<b>|<i>/);
  });
  it("fetches nothing from outside and is fit for the dark", () => {
    const { html: page } = letter("Hello", "https://desk.example/e/1");
    expect(page).not.toMatch(/src=|url\(|@import|<link/);
    expect([...page.matchAll(/href="([^"]*)"/g)].map((m) => m[1])).toEqual(["https://desk.example/e/1"]);
    expect(page).toMatch(/color-scheme/);
    expect(page).toMatch(/prefers-color-scheme:dark/);
  });
  it("names what goes with it at its end, in text and HTML, each kind once", () => {
    const { text, html: page } = composeLetter({ kind: "reply", subject: "Your rug", text: "Dear Ana", workshop: WORKSHOP, enclosed: ["care-card", "letter-to-seller", "care-card"] });
    expect(text).toBe(`Dear Ana\n\nWith this letter:\n– a care card\n– a letter to the seller, for you to sign and send if you wish${FOOT}`);
    expect(page).toContain('<p dir="auto">With this letter:</p><ul><li dir="auto">a care card</li>');
    expect(letter("Dear Ana").text).not.toContain("With this letter");
  });
  it("keeps the subject to one line, and never empty", () => {
    expect(composeLetter({ kind: "reply", subject: "Rug\r\nBcc: x@y.example", text: "", workshop: WORKSHOP }).subject).toBe("Rug Bcc: x@y.example");
    expect(composeLetter({ kind: "reply", subject: " \n", text: "", workshop: WORKSHOP }).subject).toBe("Your rug");
  });
  it("takes CR LF for line ends and drops control characters", () => expect(letter("a\r\n\r\nb\u0000\u001b[31m").text).toBe(`a\n\nb[31m${FOOT}`));
  it("has the foot of the HTML in its plain text, and none where nothing of the workshop is known", () => {
    const lines = (page: string) => (/<footer>(.*)<\/footer>/s.exec(page)?.[1] ?? "").split("<br>");
    const { text, html: page } = letter("Hello");
    expect(text.split("\n-- \n")[1]?.trim().split("\n")).toEqual(lines(page));
    const bare = { name: "", town: "", address: "", email: "", telephone: "" };
    expect(composeLetter({ kind: "reply", subject: "Your rug", text: "Hello", workshop: bare }).text).toBe("Hello\n");
    expect(composeLetter({ kind: "reply", subject: "Your rug", text: "Hello", workshop: { ...bare, name: "Yard", address: "3 Lantern Yard\r\n\r\n Hallowmere " } }).text).toBe("Hello\n\n-- \nYard\n3 Lantern Yard\nHallowmere\n");
  });
  it("is read without its foot on a page, and keeps a line of that kind in its own words", () => {
    const own = "Dear Ana\n\n-- \nMira\n\nP.S. Thursday";
    expect(withoutFoot(letter(own).text)).toBe(`${own}\n`);
    expect(withoutFoot(letter("Dear Ana").text)).toBe("Dear Ana\n");
    expect(withoutFoot(`${own}\n`)).toBe(`${own}\n`);
  });
});

describe("acknowledgement", () => {
  const given = { greeted: "Ana Example", reference: "K7-204", isHeard: false, isTold: false, isAdded: false, hasPhotos: true, workshop: WORKSHOP, link: "https://desk.example/e/1", firstAid: null, mouldAmong: null };
  it("says that it arrived, its number, who answers, and where the client's page is", () => {
    const { kind, subject, text } = acknowledgement(given);
    expect(kind).toBe("acknowledgement");
    expect(subject).toContain("K7-204");
    for (const must of [/^Dear Ana Example,/, /K7-204/, /A person here/, /https:\/\/desk\.example\/e\/1/, /sent by itself/, /Lantern Yard/]) expect(text).toMatch(must);
  });
  it("holds no judgement: no fibre, no chance, no range, no price", () => {
    expect(acknowledgement(given).text).not.toMatch(/silk|wool|viscose|likely|improve|year|£|%|clean/i);
  });
  it("asks for no water and no product until the answer comes, where no first aid says so", () => {
    const asked = /put no water and no product on/;
    expect(acknowledgement(given).text).toMatch(asked);
    expect(acknowledgement({ ...given, firstAid: { of: "wet", lines: ["Put nothing on it."] } }).text).not.toMatch(asked);
  });
  it("begins with first aid where something is wet", () => {
    expect(acknowledgement({ ...given, firstAid: { of: "wet", lines: ["Keep people off it."] } }).text).toMatch(/^Dear Ana Example,\n\nWhile it is wet, please do this first[^\n]*\n– Keep people off it\.\n/);
  });
  it("begins with it for what may be gas whether it is wet or dry", () => {
    const { text } = acknowledgement({ ...given, firstAid: { of: "gas", lines: ["Leave the room."] } });
    expect(text).toMatch(/^Dear Ana Example,\n\nWet or dry, please do this first[^\n]*\n– Leave the room\.\n/);
    expect(text).not.toContain("While it is wet");
  });
  it("warns of mould where it is feared, after first aid and whether it is wet or dry, and of one rug among several as of one of them", () => {
    const caution = /there may be mould in the rug\. Mould can harm your health: please do not touch/;
    expect(acknowledgement(given).text).not.toMatch(/mould/i);
    expect(acknowledgement({ ...given, mouldAmong: 1 }).text).toMatch(caution);
    expect(acknowledgement({ ...given, mouldAmong: 2 }).text).toMatch(/there may be mould in one of the rugs\. Mould can harm/);
    expect(acknowledgement({ ...given, mouldAmong: 1, firstAid: { of: "wet", lines: ["Do not blot it."] } }).text).toMatch(/– Do not blot it\.\n\nBy what you told us there may be mould/);
  });
  it("speaks of wet only as something that may be, where nobody could read the letter", () => {
    const { text } = acknowledgement({ ...given, firstAid: { of: "unread", lines: ["Keep people off it."] } });
    expect(text).toMatch(/^Dear Ana Example,\n\nNobody here has read your letter yet\. If the rug is wet, please do this first[^\n]*\n– Keep people off it\.\n/);
    expect(text).not.toContain("While it is wet");
  });
  it("thanks whoever rang for ringing, and speaks of nothing that they wrote or sent", () => {
    const { text } = acknowledgement({ ...given, isHeard: true });
    expect(text).toContain("Thank you for ringing us: your enquiry is written down here. Its number is K7-204.");
    expect(text).toContain("If you did not ring us, you need do nothing.");
    expect(text).not.toMatch(/you wrote|you sent|your photos|did not write/);
    expect(text).toContain("https://desk.example/e/1");
  });
  it("does not speak as if nobody had answered where somebody has, and names the page where the answer stands", () => {
    for (const isHeard of [true, false]) {
      const { text } = acknowledgement({ ...given, isHeard, isTold: true });
      expect(text).not.toMatch(/answers you|[Uu]ntil you hear from us|Thank you for ringing/);
      expect(text).toMatch(/told you so far stands on your own page[^]*https:\/\/desk\.example\/e\/1/);
    }
  });
  it("speaks of looking at photos only where some came, and of a rug that was added as of one more", () => {
    for (const isAdded of [false, true]) {
      expect(acknowledgement({ ...given, isAdded }).text).toMatch(/looks at your photos and answers you/);
      expect(acknowledgement({ ...given, isAdded, hasPhotos: false }).text).toMatch(/reads what you wrote and answers you/);
    }
    expect(acknowledgement({ ...given, isAdded: true }).text).toMatch(/^Dear Ana Example,\n\nYour other rug has reached us too\..*K7-204: both stand on one page/);
  });
  it("greets without a name where there is none", () => {
    for (const greeted of [null, "\u202e"]) expect(acknowledgement({ ...given, greeted }).text).toMatch(/^Good day,/);
  });
});
