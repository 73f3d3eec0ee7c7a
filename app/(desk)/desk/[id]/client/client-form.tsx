"use client";
import { Link } from "@/lib/ui/link";
import { useState, useSyncExternalStore, type FormEvent } from "react";
import { clientSchema, isSameAddress, type Contact } from "@/lib/enquiry/client-schema";
import { CheckedForm } from "@/lib/ui/checked-form";
import { TextField, TickBox } from "@/lib/ui/field";
import { correct } from "./actions";
import css from "./client.module.css";

interface Props {
  enquiryId: string;
  contact: Contact;
  /** As it stood when the page was read. */
  seen: string;
  /** Whether letters were taken at the present address. */
  tookLetters: boolean;
}

/** The client's contact details, checked by the schema of the operation. */
export function ClientForm({ enquiryId, contact: { name, email, telephone }, seen, tookLetters }: Props) {
  const [typed, setTyped] = useState(email);
  const isLive = useSyncExternalStore(NOTHING_CHANGES, () => true, () => false);
  const follow = ({ target }: FormEvent<HTMLElement>) => {
    if (target instanceof HTMLInputElement && target.name === "email") setTyped(target.value.trim() || null);
  };
  const values = { name, email: email ?? "", telephone: telephone ?? "", somebodyElses: tookLetters ? "yes" : "" };
  return (
    <CheckedForm schema={clientSchema} action={correct} values={values} title="Correct name, e-mail or telephone">
      <div className={css.form} onInput={follow}>
        <input type="hidden" name="enquiryId" value={enquiryId} />
        <input type="hidden" name="seen" value={seen} />
        <TextField name="name" label="Name" autoComplete="off" />
        <TextField name="email" label="E-mail address" type="email" inputMode="email" autoComplete="off" hint="Empty where there is none: letters then wait here, to be read out." />
        <TextField name="telephone" label="Telephone" type="tel" inputMode="tel" autoComplete="off" />
        {/* It means nothing while the address stays; without scripts nobody can know whether it does. */}
        {email && <div hidden={isLive && isSameAddress(typed, email)}><TickBox name="somebodyElses" label={<SomebodyElses email={email} tookLetters={tookLetters} />} /></div>}
        <div className={css.send}><button className="button">Keep this</button><Link href={`/desk/${enquiryId}`}>Back to the enquiry</Link></div>
      </div>
    </CheckedForm>
  );
}

const NOTHING_CHANGES = () => () => undefined;

function SomebodyElses({ email, tookLetters }: { email: string; tookLetters: boolean }) {
  return (
    <>
      The address before, <bdi>{email}</bdi>, is not theirs, and may be somebody else’s
      <small className={css.why}>
        Links to the client’s page that were sent before then open nothing any more, whoever has them; the client is sent a new one, at the new address.
        {tookLetters ? " Ticked because letters were taken there. Untick it where it was theirs." : " No letter was taken there, so nobody is known to have one."}
      </small>
    </>
  );
}
