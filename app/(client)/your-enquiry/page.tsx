import type { Metadata } from "next";
import { Link } from "@/lib/ui/link";
import { clientCaller } from "@/app/_server/caller";
import { retell } from "@/lib/enquiry/retell";
import { readClientPage } from "@/lib/enquiry/read-client-page";
import { wordsIn, type Words } from "@/lib/words/words";
import { readSettings } from "@/lib/workshop/settings";
import { Shell } from "../_parts/shell";
import { ClientPage } from "./client-page";
import styles from "./client-page.module.css";

// The title stands in the page itself, because it begins with "Error:" after a failed attempt to write to us.
export const metadata: Metadata = { title: null };

/** The client's own page, opened by the link in their letter. */
export default async function YourEnquiry() {
  const caller = await clientCaller();
  const read = caller ? await readClientPage(caller, new Date()) : null;
  const settings = await readSettings();
  const words = wordsIn(settings.locale);
  if (!read?.ok) return <NoLink words={words} workshop={settings.name} say={read && !read.ok ? retell(words, read.say) : null} />;
  return (
    <Shell words={words} start={<bdi>{read.value.workshop.name}</bdi>} end={words.say("own.enquiry", { reference: read.value.reference })} colours={read.value.rugs[0]?.colours ?? []} isWide>
      <ClientPage view={read.value} words={words} place={settings} areaUnit={settings.areaUnit} emergencyNumber={settings.emergencyNumber} />
    </Shell>
  );
}

function NoLink({ words, workshop, say }: { words: Words; workshop: string; say: string | null }) {
  return (
    <Shell words={words} start={<Link href="/">{workshop}</Link>}>
      <title>{words.say("own.no-link")}</title>
      <h1>{words.say("own.no-link")}</h1>
      <p className={styles.said}>{say ?? words.say("own.no-link-why")}</p>
      <p><Link className="button" href="/">{words.say("page.to-beginning")}</Link></p>
    </Shell>
  );
}
