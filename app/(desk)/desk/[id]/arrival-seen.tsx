"use client";
import { useId, useState } from "react";
import type { EnclosureView, EnquiryView } from "@/lib/enquiry/views";
import { headOf, type Named } from "@/lib/mail/head";
import { Enclosed } from "@/lib/ui/enclosed";
import css from "./arrival.module.css";

export interface LetterToSee {
  view: Pick<EnquiryView, "id" | "sender" | "client">;
  kind: "reply" | "question";
  words: { subject: string; text: string };
  enclosures: readonly EnclosureView[];
}
const FORMS = { html: "As most people see it", text: "As plain text" } as const;
const WIDTHS = { desk: "At a desk", phone: "On a phone" } as const;
/** A window too narrow to show a letter as it is at a desk. */
const NARROW = "(max-width: 48rem)";

/** Sends a form whose answer the frame shows, as soon as it is there: so the words need not be kept first. */
const post = (form: HTMLFormElement | null) => form?.requestSubmit();

/** The letter's head as a mail program shows it, and the letter in a frame that can do nothing. */
export function Seen({ view, kind, words, enclosures }: LetterToSee) {
  const { client, sender } = view;
  const head = headOf({ from: sender, to: { name: client.name, address: client.email ?? "" }, subject: words.subject });
  const [form, setForm] = useState<keyof typeof FORMS>("html");
  const [width, setWidth] = useState<keyof typeof WIDTHS>(() => (window.matchMedia(NARROW).matches ? "phone" : "desk"));
  const name = useId();
  return (
    <>
      <dl className={css.lines}>
        <div><dt>From</dt><dd><Mailbox of={head.from} /></dd></div>
        <div><dt>Answers to</dt><dd>{head.from.address}</dd></div>
        <div><dt>To</dt><dd>{client.email ? <Mailbox of={head.to} /> : <><bdi>{head.to.name}</bdi>, who left no e-mail address</>}</dd></div>
        <div><dt>Subject</dt><dd dir="auto">{head.subject}</dd></div>
      </dl>
      <Enclosed enclosures={enclosures} />
      <div className={css.choices}>
        <Choices legend="Form" names={FORMS} chosen={form} choose={setForm} />
        <Choices legend="Width" names={WIDTHS} chosen={width} choose={setWidth} />
      </div>
      <form key={form} ref={post} method="post" action={`/preview/${view.id}`} target={name} hidden>
        {Object.entries({ kind, form, ...words }).map(([field, value]) => <textarea key={field} name={field} defaultValue={value} />)}
      </form>
      {width === "desk" && <p className={css.wider}>Wider than this window: pull it sideways.</p>}
      <div className={css.window} role="group" aria-label="The letter, as wide as chosen" tabIndex={0}>
        <iframe name={name} title="The letter" sandbox="" className={`${css.frame} ${css[width]}`} />
      </div>
    </>
  );
}

/** As mail programs show it (RFC 5322, section 3.4). */
const Mailbox = ({ of: { name, address } }: { of: Named }) => <><bdi>{name}</bdi> &lt;{address}&gt;</>;

function Choices<K extends string>({ legend, names, chosen, choose }: { legend: string; names: Readonly<Record<K, string>>; chosen: K; choose: (id: K) => void }) {
  const group = useId();
  return (
    <fieldset>
      <legend className="unseen">{legend}</legend>
      {(Object.entries(names) as [K, string][]).map(([id, label]) => (
        <label key={id}><input type="radio" name={group} checked={chosen === id} onChange={() => choose(id)} /> {label}</label>
      ))}
    </fieldset>
  );
}
