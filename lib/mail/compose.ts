import type { LetterKind } from "../store/database";
import { wordsIn, type MessageKey, type Words } from "../words/words";
import { headerText } from "./address";
import { withFoot } from "./foot";
import { footLines, letterHtml, type LetterHead } from "./letter-html";

/** Kinds of documents that a letter can name as going with it. */
export type Enclosable = Extract<MessageKey, `enclosed.${string}`> extends `enclosed.${infer Kind}` ? Kind : never;

export interface LetterInput {
  kind: LetterKind;
  subject: string;
  /** Blocks apart by an empty line; lines that begin with "– " make a list. */
  text: string;
  workshop: LetterHead;
  /** What goes with it, named at its end: a file that nobody announced is not opened. */
  enclosed?: readonly Enclosable[];
  /** The client's own page, or the mark that becomes it when the letter goes out. */
  link?: string | null;
}
export interface ComposedLetter {
  kind: LetterKind;
  subject: string;
  text: string;
  html: string;
}

/** A message's text ends its lines with LF alone here; no control characters but those. */
const cleanText = (text: string) => text.replace(/\r\n?/g, "\n").replace(/[\p{Cs}\u0000-\u0008\u000b-\u001f\u007f]/gu, "").trim();

/** Each kind once, as a block of its own. */
const naming = (kinds: readonly Enclosable[], { say }: Words): string =>
  kinds.length === 0 ? "" : `\n\n${[say("mail.enclosed"), ...[...new Set(kinds)].map((kind) => `– ${say(`enclosed.${kind}`)}`)].join("\n")}`;

/** Both forms of a letter. Everything people wrote is escaped in the HTML; the subject is one line. */
export function composeLetter({ kind, subject, text, workshop, enclosed = [], link = null }: LetterInput): ComposedLetter {
  const words = wordsIn(workshop.locale ?? "en-GB");
  const body = cleanText(text) + naming(enclosed, words);
  const line = headerText(subject) || words.say("mail.subject");
  return {
    kind, subject: line,
    text: withFoot(`${body}${link ? `\n\n${words.say("mail.own-page", { link })}` : ""}`, footLines(workshop)),
    html: letterHtml({ subject: line, text: body, head: workshop, link }),
  };
}
