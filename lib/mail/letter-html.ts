import type { Locale } from "../words/locales";
import { tied } from "../words/unbroken";
import { wordsIn, type Words } from "../words/words";
import { html, Html } from "./html";

/** What stands at the head and the foot of a letter, and the locale of its own words (absent: en-GB). Empty lines are left out. */
export interface LetterHead { name: string; town: string; address: string; email: string; telephone: string; locale?: Locale }

// Written out here because mail programs read no stylesheet and fetch nothing from outside.
const STYLE = new Html(`<style>
:root{color-scheme:light dark}
body{margin:0;background:#f5f5f2;color:#26282a;font:400 17px/1.6 Georgia,"Times New Roman",serif}
main{max-width:34rem;overflow-wrap:anywhere;margin:0 auto;padding:32px 20px 48px}
header{border-bottom:1px solid #c9cac6;padding-bottom:12px;margin-bottom:28px}
p,ul{margin:0 0 1em}ul{padding-left:1.2em}li{margin-bottom:.35em}
a{color:inherit}
footer{border-top:1px solid #c9cac6;margin-top:32px;padding-top:12px;font-size:14px;line-height:1.5;color:#5a5e62}
@media (prefers-color-scheme:dark){body{background:#1b1c1d;color:#e8e8e4}header,footer{border-color:#4a4c4e}footer{color:#b4b6b8}}
</style>`);

const LIST_MARK = /^– /;

/** One block of the text in runs, in order: lines that begin with "– " are a list, the lines between lists a paragraph. No line is left out. */
function block(text: string): Html {
  const runs: { list: boolean; lines: string[] }[] = [];
  for (const line of text.split("\n")) {
    const list = LIST_MARK.test(line), last = runs.at(-1);
    if (last?.list === list) last.lines.push(line);
    else runs.push({ list, lines: [line] });
  }
  return html`${runs.map(({ list, lines }) => (list ? html`<ul>${lines.map((line) => html`<li dir="auto">${unbroken(line.replace(LIST_MARK, ""))}</li>`)}</ul>` : paragraph(lines)))}`;
}

const paragraph = (lines: readonly string[]): Html => html`<p dir="auto">${lines.map((line, at) => html`${at > 0 ? html`<br>` : null}${unbroken(line)}`)}</p>`;

/** A range of figures with its unit: "25–50 %". A line may not end at its dash. */
const RANGE = /([0-9][0-9.,½]*[–-][€£$]?[0-9][0-9.,½]*(?:\u00a0\S+)?)/u;
const unbroken = (line: string): Html => html`${tied(line).split(RANGE).map((part, at) => (at % 2 === 0 ? html`${part}` : html`<span style="white-space:nowrap">${part}</span>`))}`;

const LINK = "\u0000";
/** The line with the client's own page, the address to be followed. */
function ownPage(words: Words, link: string): Html {
  const [before = "", after = ""] = words.say("mail.own-page", { link: LINK }).split(LINK);
  return html`${before}<a href="${link}">${link}</a>${after}`;
}

/** The lines at the foot of a letter, in both of its forms: the workshop's name, where it is and how it is reached. */
export const footLines = ({ name, address, town, telephone, email }: LetterHead): string[] =>
  [name, address || town, telephone, email].flatMap((part) => part.split(/\r?\n/u)).map((line) => line.trim()).filter((line) => line !== "");

/** The letter as HTML: one column, serif, nothing fetched from outside, readable in the dark. `link` is the client's own page. */
export function letterHtml({ subject, text, head, link }: { subject: string; text: string; head: LetterHead; link: string | null }): string {
  const blocks = text.split(/\n{2,}/).filter((b) => b.trim() !== "").map(block);
  const words = wordsIn(head.locale ?? "en-GB");
  return html`<!doctype html>
<html lang="${words.locale}"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><meta name="color-scheme" content="light dark"><title>${subject}</title>${STYLE}</head>
<body><main><header>${head.name}</header>
${blocks}${link ? html`<p>${ownPage(words, link)}</p>` : null}
<footer>${footLines(head).map((line, at) => html`${at > 0 ? html`<br>` : null}${line}`)}</footer></main></body></html>`.text;
}
