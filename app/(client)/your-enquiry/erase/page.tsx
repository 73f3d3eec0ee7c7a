import type { Metadata } from "next";
import Link from "next/link";
import { redirect } from "next/navigation";
import { clientCaller } from "@/app/_server/caller";
import { readClientPage } from "@/lib/enquiry/read-client-page";
import { Shell } from "../../_parts/shell";
import css from "./erase.module.css";
import { EraseForm } from "./erase-form";

// The title stands in the form, because it begins with "Error:" after a failed attempt.
export const metadata: Metadata = { title: null };

/** What erasing means, before it is done for good. */
export default async function Erase() {
  const caller = await clientCaller();
  const read = caller ? await readClientPage(caller, new Date()) : null;
  if (!read?.ok) redirect("/your-enquiry");
  const { workshop, reference, copy, mayErase } = read.value;
  return (
    <Shell start={<bdi>{workshop.name}</bdi>} end={`Enquiry ${reference}`} colours={read.value.rugs[0]?.colours ?? []}>
      <h1>Erase everything</h1>
      {mayErase ? (
        <div className={css.text}>
          <p>Your answers, your photos, your name and how to reach you, and all letters between us are erased at once and for good. If nobody has answered yet, nobody will.</p>
          <p>What you have in your own e-mail stays there. A backup that was made before today holds it until the workshop removes that backup.</p>
          <p>You may want <a href={`/copies/${copy}`} download>a copy of everything</a> first.</p>
          <EraseForm />
        </div>
      ) : (
        <div className={css.text}><p>Work was ordered, and what belongs to an order is kept as long as the law asks. Please write to us or ring: we erase what may go.</p></div>
      )}
      <p><Link href="/your-enquiry">Back to your enquiry</Link></p>
    </Shell>
  );
}
