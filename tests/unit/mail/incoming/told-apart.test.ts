import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { composeLetter } from "../../../../lib/mail/compose";
import { foldQuoted, hidesPerhaps } from "../../../../lib/mail/incoming/quoted";
import { readMessage } from "../../../../lib/mail/incoming/read-message";
import { letterHtml } from "../../../../lib/mail/letter-html";
import { plainOf } from "../../../../lib/mail/message";
import { composeDraft } from "../../../../lib/reply/draft";
import { ownLines } from "../../../../lib/words/quoted-lines";
import { anyInput } from "../../reply/any-input";

const HEAD = { name: "Lantern Yard", town: "", address: "1 Quay\nLeith", email: "desk@lantern-yard.example", telephone: "01632 960 200" };
const BODY = [
  "Dear Ana,",
  "thank you for the photos. The pile is likely viscose, and a bath would turn it brown for good, so please don’t wash it before we have seen it – 25–50 % of such rugs never recover.",
  "Please tell us:",
  "– Is it still wet?\n– When did it happen?",
  "Kind regards\nMira Quill",
];
const OURS = `${BODY.join("\n\n")}\n\nYour own page: https://lantern-yard.example/e/abc\n\n-- \nLantern Yard\n1 Quay\nLeith\n01632 960 200\ndesk@lantern-yard.example\n`;
const LATE = "Too late, I washed it in the bath this morning and it is still wet.";
const ASKED = "– Is it still wet?";
const ORIGINAL = "-----Original Message-----\nFrom: Lantern Yard\nSent: Friday\nTo: Ana\nSubject: Your rug\n\n";
const below = (line: string, words: string, text = OURS) => text.replace(line, `${line}\n${words}`);
const wrapped = (text: string, width = 72) => text.split("\n").map((line) => line.replace(new RegExp(`(.{1,${width}})(?: |$)`, "gu"), "$1\n").trimEnd()).join("\n");
const marked = (text: string) => text.split("\n").map((line) => `> ${line}`.trimEnd()).join("\n");
const ANSWERED = `> ${ASKED}\n\n${LATE}`;

/** The own words of a message that came as HTML alone. */
async function ownOfHtml(html: string, ours = OURS): Promise<string> {
  const incoming = await readMessage(Buffer.from(`From: ana@example.org\r\nIn-Reply-To: <r1@lantern-yard.example>\r\nContent-Type: text/html; charset=utf-8\r\n\r\n${html}`), (answers) => Promise.resolve(answers.join() === "<r1@lantern-yard.example>" ? ours : null));
  if (incoming.kind !== "letter") throw new Error(`Expected a letter but received ${incoming.kind}.`);
  return incoming.message.body.own;
}
const ourHtml = () => letterHtml({ subject: "Your rug", text: BODY.join("\n\n"), head: HEAD, link: "https://lantern-yard.example/e/abc" }).replace(/^[\s\S]*<main>/u, "").replace(/<\/main>[\s\S]*$/u, "");
const inHtml = (answer: string) => ourHtml().replace("Is it still wet?</li>", `Is it still wet?</li>${answer}`);

describe("foldQuoted, knowing our letter", () => {
  it.each<[string, string, string]>([
    ["an answer between our lines below “Original Message”", `Please see below.\n\n${ORIGINAL}${below(ASKED, LATE)}`, `Please see below.\n\n${ANSWERED}`],
    ["the same where the letter was wrapped at 72", `${ORIGINAL}${wrapped(below(ASKED, LATE))}`, ANSWERED],
    ["the same where the letter was wrapped at 40 and marked, and the answer too", marked(wrapped(below(ASKED, "It is."), 40)), `> ${ASKED}\n\nIt is.`],
    ["an answer within a sentence of ours, at the end of a line",
      `${ORIGINAL}${OURS.replace("viscose, and a", "viscose,\nIt says silk!\nand a").replace("photos. The", "photos.\nThe")}`,
      "> thank you for the photos.\n> The pile is likely viscose,\n\nIt says silk!"],
    ["an answer on the line of our question", `${ORIGINAL}${OURS.replace(ASKED, `${ASKED} Yes, soaking.`)}`, `> ${ASKED}\n\nYes, soaking.`],
    ["several answers of several lines, in order, with a blank line between two of theirs",
      `${ORIGINAL}${below("– When did it happen?", "Yesterday.", below(ASKED, "Yes.\n\nAlso the felt below."))}`,
      `> ${ASKED}\n\nYes.\n\nAlso the felt below.\n\n> – When did it happen?\n\nYesterday.`],
    ["an answer below our whole letter", `${ORIGINAL}${OURS}\n${LATE}`, `> – Is it still wet?\n> – When did it happen?\n\n${LATE}`],
    ["an answer that begins as a sentence of ours does", `${ORIGINAL}${below(ASKED, "The pile is likely viscose and it ran.")}`, `> ${ASKED}\n\nThe pile is likely viscose and it ran.`],
    ["an answer that is a part of a sentence of ours", `${ORIGINAL}${below(ASKED, "So please don’t wash it.")}`, `> ${ASKED}\n\nSo please don’t wash it.`],
    ["an answer in the words of ours, beside them", `${ORIGINAL}${below(ASKED, "Is it still wet? Yes.")}`, `> ${ASKED}\n\nIs it still wet? Yes.`],
    ["a sentence of ours in which a word was changed", `${ORIGINAL}${OURS.replace("likely viscose, and", "likely wool, and")}`, "> thank you for the photos.\n\nThe pile is likely wool, and a bath would turn it brown for good, so please don’t wash it before we have seen it – 25–50 % of such rugs never recover."],
    ["an answer of no letters", `${ORIGINAL}${below(ASKED, "👍")}`, `> ${ASKED}\n\n👍`],
    ["an answer below a German head", `Danke.\n\nVon: Lantern Yard\nGesendet: Freitag\nAn: Ana\nBetreff: Ihr Teppich\n\n${below(ASKED, LATE)}`, `Danke.\n\n${ANSWERED}`],
    ["an answer below a French one", `Merci.\n\nDe: Lantern Yard\nEnvoyé: vendredi\nÀ: Ana\nObjet: Votre tapis\n\n${below(ASKED, LATE)}`, `Merci.\n\n${ANSWERED}`],
    ["nothing of our whole letter below their words", `Thank you!\n\n${ORIGINAL}${OURS}`, "Thank you!"],
    ["nothing of it where it was wrapped and marked", `Thank you!\n\nOn Fri, Lantern Yard wrote:\n${marked(wrapped(OURS))}`, "Thank you!"],
    ["nothing of it where quotes, dashes and spaces were changed", `Thank you!\n\n${ORIGINAL}${OURS.replaceAll("’", "'").replaceAll("–", "-").replaceAll(" ", "\u00a0")}`, "Thank you!"],
    ["nothing of their signature below it", `Thank you!\n\n${ORIGINAL}${OURS}\n-- \nAna Example\nTel. 01632 960 111`, "Thank you!"],
    ["nothing of what their mail server puts below it", `Thank you!\n\n${ORIGINAL}${OURS}\nThis e-mail and all that is enclosed is confidential.\nIf you had it by mistake, delete it.`, "Thank you!"],
    ["nothing of an earlier letter of theirs below ours", `Thank you!\n\n${ORIGINAL}${below(ASKED, LATE)}\n\nFrom: Ana\nSent: Thursday\nTo: Lantern Yard\nSubject: My rug\n\nWater ran over it, and it is wet.`, `Thank you!\n\n${ANSWERED}`],
    ["nothing of an earlier one that was marked once more", `On Fri, Lantern Yard wrote:\n${marked(`${below(ASKED, LATE)}\n> Water ran over it.`)}`, ANSWERED],
    ["as before, answers that are not marked among lines that are", `On Fri, Lantern Yard wrote:\n${marked(OURS).replace(`> ${ASKED}`, `> ${ASKED}\n${LATE}`)}`, ANSWERED],
  ])("keeps of what is below the head %s", (_, came, own) => {
    const folded = foldQuoted(came, OURS);
    expect(folded.own).toBe(own);
    expect(hidesPerhaps(folded.quoted)).toBe(false);
  });

  const WITH_DRY = OURS.replace("Please tell us:", "When it is dry we look at it again.\n\nPlease tell us:");
  const CLEAR = "Thanks, that is all clear to me.";
  it.each<[string, string, string]>([
    ["their words above our whole letter", `${CLEAR}\n\n${OURS}`, CLEAR],
    ["the same where it was wrapped at 40", `${CLEAR}\n\n${wrapped(OURS, 40)}`, CLEAR],
    ["the same where quotes, dashes and spaces were changed", `${CLEAR}\n${OURS.replaceAll("’", "'").replaceAll("–", "-").replaceAll(" ", "\u00a0")}`, CLEAR],
    ["their closing and name above it", `${CLEAR}\n\nKind regards\nAna\n\n${OURS}`, `${CLEAR}\n\nKind regards\nAna`],
    ["an answer between our paragraphs", `${CLEAR}\n\n${below(ASKED, LATE)}`, `${CLEAR}\n\n> ${ASKED}\n\n${LATE}`],
    ["an answer between them, in lines of 72", wrapped(below(ASKED, LATE)), `> ${ASKED}\n\n${LATE}`],
    ["an answer below it all, without our name", `${OURS}\n\n${LATE}`, `> – Is it still wet?\n> – When did it happen?\n\n${LATE}`],
    ["one sentence of ours and its answer", `Thanks for that. The pile is likely viscose, and a bath would turn it brown for good, so please don't wash it before we have seen it - 25-50 % of such rugs never recover.\n\nIs that so? ${LATE}`,
      `Thanks for that.\n\n> The pile is likely viscose, and a bath would turn it brown for good, so please don't wash it before we have seen it - 25-50 % of such rugs never recover.\n\nIs that so? ${LATE}`],
    ["a sentence of ours in their quotes, also above our whole letter", `“When it is dry we look at it again.” Does that help?\n\n${WITH_DRY}`, "> “When it is dry we look at it again.”\n\nDoes that help?"],
    ["a sentence of fewer than five words as theirs", `${CLEAR}\n\nIs it still wet?\n\nNo.`, `${CLEAR}\n\nIs it still wet?\n\nNo.`],
    ["a part of a sentence of ours as theirs", `${CLEAR} So please don’t wash it before we have seen it.`, `${CLEAR} So please don’t wash it before we have seen it.`],
    ["a sentence that goes on otherwise than ours as theirs", "When it is dry we look at it again with a lamp.", "When it is dry we look at it again with a lamp."],
    ["a sentence of ours within one of theirs as theirs", "My sister says when it is dry we look at it again.", "My sister says when it is dry we look at it again."],
    ["a sentence in which a word of ours was changed as theirs", "When it is wet we look at it again.", "When it is wet we look at it again."],
  ])("keeps, where nothing is marked and no head stands over it, %s", (_, came, own) => {
    const folded = foldQuoted(came, WITH_DRY);
    expect(folded.own).toBe(own);
    expect(hidesPerhaps(folded.quoted)).toBe(false);
  });
  it("leaves what is below a head in doubt where above it a sentence of ours is quoted and nothing below it is ours", () => {
    const { own, quoted } = foldQuoted(`Please tell us when it is dry.\n\nWhen it is dry we look at it again.\n\nDoes that help?\n\n${ORIGINAL}Dear Bo,\n${LATE}`, "When it is dry we look at it again.");
    expect(own).toBe("Please tell us when it is dry.\n\n> When it is dry we look at it again.\n\nDoes that help?");
    expect(hidesPerhaps(quoted)).toBe(true);
  });

  const outlook = "<p>See below in red.</p><div><p><b>From:</b> Lantern Yard &lt;desk@lantern-yard.example&gt;<br><b>Sent:</b> Friday<br><b>To:</b> Ana<br><b>Subject:</b> Your rug</p></div>";
  it.each([["below a head of From and Sent, in red", (letter: string) => `${outlook}${letter}`], ["in a block of what is repeated", (letter: string) => `<p>See below in red.</p><div>On Fri, 27 Nov, Lantern Yard wrote:<br></div><blockquote>${letter}</blockquote>`]])("keeps an answer in HTML %s, and nothing of our letter, its head and foot", async (_, around) => {
    const kept = (answer: string) => ownOfHtml(around(inHtml(answer)));
    expect(await kept(`<div style="color:red">${LATE}</div>`)).toBe(`See below in red.\n\n> * Is it still wet?\n\n${LATE}`);
    expect(await kept("")).toBe("See below in red.");
  });

  it.each([
    ["is not known", null], ["is another", "Dear Bo,\n\nthe runner is wool, and it can be washed by us.\n\nKind regards\nMira Quill"],
  ])("folds all of it where our letter %s, and says so", (_, ours) => {
    const { own, quoted } = foldQuoted(`Thank you!\n\n${ORIGINAL}${below(ASKED, LATE)}`, ours);
    expect(own).toBe("Thank you!");
    expect(quoted).toContain(LATE);
    expect(hidesPerhaps(quoted)).toBe(true);
  });
  const anyLetter = anyInput.map((input) => composeLetter({ kind: "reply", ...composeDraft(input), workshop: HEAD }));
  it("finds in any letter of the program the one line that is not ours, at any place, wrapped, marked or neither, and none where there is none", () => {
    fc.assert(fc.property(anyLetter, fc.nat(), (ours, n) => {
      const blocks = plainOf(ours.text).split("\n\n");
      const at = n % (blocks.length - 1);
      const answered = [...blocks.slice(0, at + 1), LATE, ...blocks.slice(at + 1)].join("\n\n");
      for (const as of [(t: string) => t, wrapped, (t: string) => marked(wrapped(t))]) {
        expect(foldQuoted(ORIGINAL + as(blocks.join("\n\n")), ours.text).own).toBe("");
        expect(ownLines(foldQuoted(ORIGINAL + as(answered), ours.text).own).trim()).toBe(LATE);
      }
    }), { numRuns: 60 });
  });
  it("finds it also where nothing is marked and no head stands over it", () => {
    fc.assert(fc.property(anyLetter, fc.nat(), (ours, n) => {
      const blocks = plainOf(ours.text).split("\n\n");
      // A greeting alone between words of theirs is theirs.
      const at = 1 + n % (blocks.length - 2);
      for (const as of [(t: string) => t, wrapped]) {
        const own = (letter: string[]) => ownLines(foldQuoted(`${CLEAR}\n\n${as(letter.join("\n\n"))}`, ours.text).own).replaceAll(/\s+/gu, " ").trim();
        expect(own(blocks)).toBe(CLEAR);
        expect(own([...blocks.slice(0, at + 1), LATE, ...blocks.slice(at + 1)])).toBe(`${CLEAR} ${LATE}`);
      }
    }), { numRuns: 40 });
  });
  it("finds it in HTML too", async () => {
    await fc.assert(fc.asyncProperty(anyLetter, async (ours) => {
      const html = ours.html.replace(/^[\s\S]*<main>/u, "").replace(/<\/main>[\s\S]*$/u, "");
      for (const [before, after] of [[outlook, ""], ["<p>See below in red.</p><blockquote>", "</blockquote>"]] as const) {
        const own = async (letter: string) => ownLines(await ownOfHtml(before + letter + after, ours.text)).replaceAll(/\s+/gu, " ").trim();
        expect(await own(html)).toBe("See below in red.");
        expect(await own(html.replace("</p>", `</p><p>${LATE}</p>`))).toBe(`See below in red. ${LATE}`);
      }
    }), { numRuns: 15 });
  });
  it.each([
    ["below a head", ORIGINAL, "The pile is likely viscose,\n"], ["where nothing is marked", "", "The pile is likely viscose,\n"], ["in whole sentences", "", "When it is dry we look at it again.\n"], ["in short ones", "When it is dry we look at it again.\n", "Is it still wet? Yes. "], ["in lines without words", "When it is dry we look at it again.\n", "-\n\n"],
  ])("reads 100,000 signs of our own words in a moment, %s", (_, head, words) => {
    const many = `${head}${words.repeat(100_000 / words.length)}`;
    const begun = performance.now();
    foldQuoted(many, WITH_DRY);
    expect(performance.now() - begun).toBeLessThan(5_000);
  });
});

describe("hidesPerhaps", () => {
  it.each([["", false], ["> Dear Ana,\n\n> goodbye", false], ["On Fri, Lantern Yard wrote:\n> Dear Ana,", true]])("says of “%s” %s", (quoted, hides) => expect(hidesPerhaps(quoted)).toBe(hides));
});
