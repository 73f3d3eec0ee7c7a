import type { Metadata } from "next";
import Link from "next/link";
import { clientCaller } from "@/app/_server/caller";
import { readClientPage } from "@/lib/enquiry/read-client-page";
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
  if (!read?.ok) return <NoLink workshop={settings.name} say={read && !read.ok ? read.say : null} />;
  return (
    <Shell start={<bdi>{read.value.workshop.name}</bdi>} end={`Enquiry ${read.value.reference}`} colours={read.value.rugs[0]?.colours ?? []} isWide>
      <ClientPage view={read.value} emergencyNumber={settings.emergencyNumber} />
    </Shell>
  );
}

function NoLink({ workshop, say }: { workshop: string; say: string | null }) {
  return (
    <Shell start={<Link href="/">{workshop}</Link>}>
      <title>Your page opens with the link in our letter</title>
      <h1>Your page opens with the link in our letter</h1>
      <p className={styles.said}>{say ?? "This device has not opened it yet, or the link has run out. Look for our note in your e-mail and follow the link in it."}</p>
      <p><Link className="button" href="/">To the beginning</Link></p>
    </Shell>
  );
}
