"use client";
import { Link } from "@/lib/ui/link";
import { useMemo } from "react";
import { documentForm } from "@/lib/enquiry/document-forms";
import type { DocumentFormView } from "@/lib/enquiry/read-document-form";
import { DOCUMENTS, type DocumentKind } from "@/lib/reply/documents/offered";
import { CheckedForm } from "@/lib/ui/checked-form";
import { TextArea, TextField, TickBox } from "@/lib/ui/field";
import { useFields } from "@/lib/ui/form-context";
import { make } from "./actions";
import css from "./document-form.module.css";

export interface Where { enquiryId: string; rugId: string }
/** The client's own words, and whether they are a cleaner's. */
interface Account { text: string; isTrade: boolean }

/** What is filled in by hand for a document; the rest is written from what is known. */
export function DocumentForm({ kind, title, at, known: { filled, inspection, account, soldAs, unsettled, boxed } }: { kind: DocumentKind; title: string; at: Where; known: DocumentFormView }) {
  const schema = useMemo(() => documentForm(kind), [kind]);
  return (
    <CheckedForm schema={schema} action={make} values={filled} title={title}>
      {Object.entries({ ...at, kind }).map(([name, value]) => <input key={name} type="hidden" name={name} defaultValue={value} />)}
      <p className={css.tells}>{DOCUMENTS[kind].tells}</p>
      <div className={css.fields}>
        {unsettled && <p className={css.note}>{unsettled.says} <Link href={`/desk/${at.enquiryId}/photos/${unsettled.photoId}`}>The label in the photo</Link></p>}
        {kind === "condition-report" && <Report at={at} inspection={inspection} account={account} />}
        {kind === "letter-to-seller" && <SellerLetter soldAs={soldAs} />}
        <Boxed known={boxed} />
        <div className={css.send}><button className="button">Make it</button><Link href={`/desk/${at.enquiryId}#documents`}>Back without making it</Link></div>
      </div>
    </CheckedForm>
  );
}

/** What no typeface can draw, said before it is printed; somebody has to agree to it. */
function Boxed({ known }: { known: string | null }) {
  const { errors, initial } = useFields();
  if (known === null && errors["mayBox"] === undefined && initial["mayBox"] !== "yes") return null;
  return (
    <>
      {known !== null && errors["mayBox"] === undefined && <p className={css.note}>{known}</p>}
      <TickBox name="mayBox" label="They may print as empty boxes" />
    </>
  );
}

function Report({ at, inspection, account }: { at: Where; inspection: string | null; account: Account | null }) {
  return (
    <>
      <p className={css.note}>{inspection ?? <>Nobody has inspected this rug, so the report says “provisional, not inspected”. <Link href={`/desk/${at.enquiryId}/documents/${at.rugId}/inspection`}>Record an inspection</Link> first if somebody has.</>}</p>
      <TextField name="theirReference" label="The insurer’s reference, if there is one" autoComplete="off" />
      {account !== null && <OwnWords {...account} />}
    </>
  );
}

/** What would be quoted is read before it is: it can hold more than whoever gets the report should know. */
function OwnWords({ text, isTrade }: Account) {
  return (
    <div className={css.own}>
      <p>{isTrade ? "The report says that what the cleaner wrote to us is kept at the workshop, and does not quote it:" : "The report quotes what the client wrote:"}</p>
      <blockquote dir="auto">{text}</blockquote>
      {isTrade ? <TickBox name="putInWords" label="Quote these words in the report" /> : <TickBox name="leaveOutWords" label="Leave these words out: the report says that they are kept at the workshop" />}
    </div>
  );
}

const QUOTED = "It stands in the letter as a quotation: only the seller’s own words belong here, nothing that the client tells about them.";

function SellerLetter({ soldAs }: { soldAs: string | null }) {
  return (
    <>
      <p className={css.note}>The seller’s name has to be there; what else is left empty is left out. The client reads it, changes what they like and signs it themselves.</p>
      <TextArea name="clientAddress" label="The client’s address" rows={3} />
      <TextField name="sellerName" label="The seller’s name" autoComplete="off" />
      <TextArea name="sellerAddress" label="The seller’s address" rows={3} />
      <div className={css.pair}>
        <TextField name="boughtOn" label="Bought on" autoComplete="off" />
        <TextField name="price" label="Price paid" autoComplete="off" />
        <TextField name="invoice" label="Number of the invoice" autoComplete="off" />
      </div>
      <TextField name="saidWords" label="What was said or written of the fibre, word for word" hint={soldAs === null ? QUOTED : `${QUOTED} Left empty, the letter says what the client answered: “${soldAs}”`} autoComplete="off" />
      <TextField name="labelWords" label="What the label says, word for word" autoComplete="off" />
    </>
  );
}
