"use client";
import { reachableSchema } from "@/lib/enquiry/client-schema";
import { CheckedForm } from "@/lib/ui/checked-form";
import { TextField } from "@/lib/ui/field";
import { openFrom } from "../actions";
import css from "../post.module.css";
import { PAGE_TITLE } from "../words";

/** Who sent a message that names nobody, so that an enquiry can be opened with it. */
export function OpenFrom({ postId, isFirst }: { postId: string; isFirst: boolean }) {
  return (
    <CheckedForm schema={reachableSchema} action={openFrom} values={{}} title={PAGE_TITLE}>
      <div className={css.sender}>
        <input type="hidden" name="postId" value={postId} />
        <TextField name="name" label="Name" autoComplete="off" />
        <TextField name="email" label="E-mail address" type="email" inputMode="email" autoComplete="off" hint="Empty where there is none: letters then wait here, to be read out." />
        <TextField name="telephone" label="Telephone" type="tel" inputMode="tel" autoComplete="off" />
        <div><button className={isFirst ? "button" : "button quiet"}>Open an enquiry with it</button></div>
      </div>
    </CheckedForm>
  );
}
