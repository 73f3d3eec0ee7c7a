"use client";
import { useId, useRef, useState, useTransition, type ReactNode } from "react";
import { reach } from "@/app/(desk)/_parts/reach";
import type { EnclosureView, EnquiryView } from "@/lib/enquiry/views";
import { Enclosed } from "@/lib/ui/enclosed";
import { sendTest } from "./actions";
import css from "./arrival.module.css";

interface Props {
  view: Pick<EnquiryView, "id" | "sender">;
  kind: "reply" | "question";
  words: { subject: string; text: string };
  to: ReactNode;
  enclosures: readonly EnclosureView[];
  tell: (say: string, focus?: boolean) => void;
}
const FORMS = { html: "As most people see it", text: "As plain text" } as const;
const WIDTHS = { desk: "At a desk", phone: "On a phone" } as const;

/** The letter in the very form in which it will arrive, in a window of its own; and a copy of it to oneself. */
export function Arrival(props: Props) {
  const dialog = useRef<HTMLDialogElement>(null);
  const [isOpen, setOpen] = useState(false);
  const [isBusy, start] = useTransition();
  const title = useId();
  const { view, kind, words, tell } = props;
  const open = () => { setOpen(true); dialog.current?.showModal(); };
  const test = () => start(async () => {
    const result = await reach(() => sendTest({ enquiryId: view.id, kind, ...words }));
    tell(result.ok ? `A test went to ${result.value.to}. The client got nothing.` : result.say, true);
  });
  return (
    <div className={`${css.ways} no-print`}>
      <button type="button" className={css.plain} onClick={open}>See it as it will arrive</button>
      <button type="button" className={css.plain} disabled={isBusy} onClick={test}>{isBusy ? "Sending a test" : "Send myself a test"}</button>
      <dialog ref={dialog} className={css.dialog} aria-labelledby={title} onClose={() => setOpen(false)}>
        <div className={css.head}>
          <h2 id={title}>As it will arrive</h2>
          <form method="dialog"><button className="button quiet">Close</button></form>
        </div>
        {isOpen && <Seen {...props} />}
      </dialog>
    </div>
  );
}

/** Sends a form whose answer the frame shows, as soon as it is there: so the words need not be kept first. */
const post = (form: HTMLFormElement | null) => form?.requestSubmit();

/** The letter's head as a mail program shows it, and the letter in a frame that can do nothing. */
function Seen({ view, kind, words, to, enclosures }: Props) {
  const [form, setForm] = useState<keyof typeof FORMS>("html");
  const [width, setWidth] = useState<keyof typeof WIDTHS>("desk");
  const name = useId();
  return (
    <>
      <dl className={css.lines}>
        <div><dt>From</dt><dd><bdi>{view.sender.name}</bdi>, {view.sender.address}</dd></div>
        <div><dt>To</dt><dd>{to}</dd></div>
        <div><dt>Subject</dt><dd dir="auto">{words.subject}</dd></div>
      </dl>
      <Enclosed enclosures={enclosures} />
      <div className={css.choices}>
        <Choices legend="Form" names={FORMS} chosen={form} choose={setForm} />
        <Choices legend="Width" names={WIDTHS} chosen={width} choose={setWidth} />
      </div>
      <form key={form} ref={post} method="post" action={`/preview/${view.id}`} target={name} hidden>
        {Object.entries({ kind, form, ...words }).map(([field, value]) => <textarea key={field} name={field} defaultValue={value} />)}
      </form>
      <iframe name={name} title="The letter" sandbox="" className={`${css.frame} ${width === "phone" ? css.phone : ""}`} />
    </>
  );
}

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
