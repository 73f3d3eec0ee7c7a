"use client";
import { useRouter } from "next/navigation";
import { useId, useRef, useState, useTransition, type FormEvent } from "react";
import { reach } from "@/app/(desk)/_parts/reach";
import type { Result } from "@/lib/enquiry/caller";
import type { PostStateId } from "@/lib/enquiry/views";
import { link, open, putAside } from "../actions";
import css from "../post.module.css";
import { OpenFrom } from "./open-from";

interface Suggested { reference: string; title: string }

/** Whether an enquiry can be opened with a message, and whether somebody has to write down who sent it. */
export type Opens = "at-once" | "with-sender" | "not";

/** What a person may do with a message: open an enquiry with it, put it to one, or put it aside. */
export function Sort({ postId, state, opens, isAnswered, suggested }: { postId: string; state: PostStateId; opens: Opens; isAnswered: boolean; suggested: readonly Suggested[] }) {
  const [said, setSaid] = useState("");
  const [isBusy, start] = useTransition();
  const status = useRef<HTMLParagraphElement>(null);
  const router = useRouter();
  const run = <T,>(call: () => Promise<Result<T>>, done: (value: T) => void) => start(async () => {
    const result = await reach(call);
    if (result.ok) return done(result.value);
    setSaid(result.say);
    status.current?.focus();
  });
  const toEnquiry = ({ enquiryId }: { enquiryId: string }) => router.push(`/desk/${enquiryId}`);
  const outcome = <p ref={status} role="status" tabIndex={-1} className={css.said}>{said}</p>;
  if (state === "aside") {
    return <div className={css.do}><p>It was put aside.</p><button type="button" className="button quiet" disabled={isBusy} onClick={() => run(() => putAside({ postId, isBack: true }), () => router.refresh())}>Take it back out</button>{outcome}</div>;
  }
  if (state !== "waiting") return outcome;
  // What is the likelier stands first and is the dark button.
  const isKnown = suggested.length > 0;
  const linking = <Link suggested={suggested} isBusy={isBusy} send={(reference) => run(() => link({ postId, reference }), toEnquiry)} />;
  return (
    <div className={css.do}>
      {isKnown && linking}
      {opens !== "not" && (
        <section>
          <h2>A new enquiry</h2>
          <p>{becomes(opens, isAnswered)}</p>
          {opens === "with-sender" ? <OpenFrom postId={postId} isFirst={!isKnown} />
            : <button type="button" className={isKnown ? "button quiet" : "button"} disabled={isBusy} onClick={() => run(() => open(postId), toEnquiry)}>Open an enquiry with it</button>}
        </section>
      )}
      {!isKnown && linking}
      <section>
        <h2>Neither</h2>
        <p>It stays here, and nothing of it is thrown away.</p>
        <button type="button" className="button quiet" disabled={isBusy} onClick={() => run(() => putAside({ postId, isBack: false }), () => router.push("/desk/post"))}>Put it aside</button>
      </section>
      {outcome}
    </div>
  );
}

/** What becomes of a message and its sender where an enquiry is opened with it. */
function becomes(opens: Opens, isAnswered: boolean): string {
  if (!isAnswered) return "Its words and photos become an enquiry. A machine wrote it, so its sender is told nothing.";
  if (opens === "at-once") return "Its words and photos become an enquiry, and its sender is told that it has come.";
  return "Its words and photos become an enquiry. Write down who sent it, as its words or a call tell you; at an e-mail address they are told that it has come.";
}

const OTHER = "other";

/** Which enquiry a message belongs to: one the sender's address suggests, or another by its number. */
function Link({ suggested, isBusy, send }: { suggested: readonly Suggested[]; isBusy: boolean; send: (reference: string) => void }) {
  const field = useId();
  const [chosen, setChosen] = useState(suggested[0]?.reference ?? OTHER);
  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    send(chosen === OTHER ? String(new FormData(event.currentTarget).get("reference")) : chosen);
  };
  return (
    <section>
      <h2>It belongs to an enquiry</h2>
      <form onSubmit={submit} className={css.form}>
        {suggested.length > 0 && (
          <fieldset className={css.suggested}>
            <legend>The same address wrote about</legend>
            {suggested.map((s) => (
              <label key={s.reference}><input type="radio" name="chosen" checked={chosen === s.reference} onChange={() => setChosen(s.reference)} /><span><bdi>{s.title}</bdi> <small className="num">{s.reference}</small></span></label>
            ))}
            <label><input type="radio" name="chosen" checked={chosen === OTHER} onChange={() => setChosen(OTHER)} /><span>another enquiry</span></label>
          </fieldset>
        )}
        {chosen === OTHER && (
          <div className="field">
            <label htmlFor={field}>Number of the enquiry</label>
            <small id={`${field}-hint`}>Such as K7-204</small>
            <input id={field} name="reference" type="text" autoComplete="off" maxLength={20} aria-describedby={`${field}-hint`} />
          </div>
        )}
        <button className={suggested.length > 0 ? "button" : "button quiet"} disabled={isBusy}>Put it there</button>
      </form>
    </section>
  );
}
