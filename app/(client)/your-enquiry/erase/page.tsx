import type { Metadata } from "next";
import { Link } from "@/lib/ui/link";
import { redirect } from "next/navigation";
import { clientCaller } from "@/app/_server/caller";
import { clientWords } from "@/app/_server/client-words";
import { readClientPage } from "@/lib/enquiry/read-client-page";
import { inPage } from "@/lib/ui/in-page";
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
  const words = await clientWords();
  const { say } = words;
  const { workshop, reference, copy, mayErase } = read.value;
  return (
    <Shell words={words} start={<bdi>{workshop.name}</bdi>} end={say("own.enquiry", { reference })} colours={read.value.rugs[0]?.colours ?? []}>
      <h1>{say("data.erase")}</h1>
      {mayErase ? (
        <div className={css.text}>
          <p>{say("erase.at-once")}</p>
          <p>{say("erase.not")}</p>
          <p>{inPage(words.parts("erase.copy-first", { copy: (w) => <a href={`/copies/${copy}`} download>{inPage(w)}</a> }))}</p>
          <EraseForm title={say("data.erase")} sure={say("erase.sure")} />
        </div>
      ) : (
        <div className={css.text}><p>{say("refusal.ordered")}</p></div>
      )}
      <p><Link href="/your-enquiry">{say("erase.back")}</Link></p>
    </Shell>
  );
}
