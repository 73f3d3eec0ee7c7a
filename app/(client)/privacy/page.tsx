import type { Metadata } from "next";
import Link from "next/link";
import { INTAKE_DAYS } from "@/lib/enquiry/open-intake";
import { readSettings } from "@/lib/workshop/settings";
import { Shell } from "../_parts/shell";
import styles from "./privacy.module.css";

export const metadata: Metadata = { title: "What happens to what you tell us" };

/** Who, why, on what basis, who sees it, how long, and what you may ask for. */
export default async function Privacy() {
  const { name, address, email, telephone, retentionMonths } = await readSettings();
  const reach = [address, email, telephone].filter(Boolean).join(", ");
  return (
    <Shell start={<Link href="/">{name}</Link>}>
      <article className={styles.text}>
        <h1>What happens to what you tell us</h1>
        <h2>Who is responsible</h2>
        <p>{name}{reach && `, ${reach}`}.</p>
        <h2>What we keep, and why</h2>
        <p>Your answers, your photos, your name and how to reach you, and the letters between us. We use them to judge your rug and to answer you, and for nothing else.</p>
        <p>
          Photos are stored anew without anything your camera wrote into them except the time and the exposure. Where a photo was taken is not
          kept. Please leave people and papers out of the picture; if one slips in, we can make it unrecognisable.
        </p>
        <h2>On what basis</h2>
        <p>Your consent, which you give when you send the enquiry and can take back at any time. If you let us work on your rug, what belongs to that order is kept on the basis of the contract, and as long as the law asks for it.</p>
        <h2>What the program does, and what a person does</h2>
        <p>
          A program sorts enquiries by what waiting costs, ranks what the rug may be made of, and prepares a draft. A person of the workshop
          reads everything, decides, and sends the answer. Nothing about your rug is decided by the program alone.
        </p>
        <h2>Who sees it</h2>
        <p>The people of the workshop, each with a sign-in of their own. It stands on the workshop’s own computer. The letters go by e-mail, through the mail services of both sides. Nobody else gets it, and nothing on these pages comes from or reports to anybody else.</p>
        <h2>How long</h2>
        <p>
          {retentionMonths} months after your enquiry ends or we last heard from each other, then answers, photos and letters are erased. A questionnaire that was begun and never
          sent goes after {INTAKE_DAYS} days. A backup that the workshop made before holds it until that backup is removed; one that is put back is freed of it again.
        </p>
        <h2>Cookies</h2>
        <p>Two, both ours: one so that you can stop and come back on the same device, one that opens your own page after you followed your link. No others.</p>
        <h2>What you may ask for</h2>
        <p>A copy of everything and erasing it: both stand on your own page. A correction, that we use it less, or your consent back too. Write to us or ring; you need give no reason, and it costs nothing.</p>
        <h2>If you think we do wrong</h2>
        <p>Tell us first if you can. You may also complain to the data protection authority of the country or state you live in; your local law decides.</p>
      </article>
    </Shell>
  );
}
