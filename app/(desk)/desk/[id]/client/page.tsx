import { Link } from "@/lib/ui/link";
import { Refused } from "@/app/(desk)/_parts/refused";
import { staffCallerOrRedirect } from "@/app/_server/caller";
import { asSeen } from "@/lib/enquiry/client-schema";
import { readEnquiry } from "@/lib/enquiry/read-enquiry";
import type { EnquiryView } from "@/lib/enquiry/views";
import css from "./client.module.css";
import { ClientForm } from "./client-form";

// The title stands in the form, because it begins with "Error:" after a failed attempt.
export const metadata = { title: null };

/** How the client is reached, to be put right, and what that does to letters and links. */
export default async function Page({ params }: { params: Promise<{ id: string }> }) {
  const caller = await staffCallerOrRedirect();
  const { id } = await params;
  const enquiry = await readEnquiry(caller, id, new Date());
  if (!enquiry.ok) return <Refused refusal={enquiry} />;
  const { title, reference, client, may, letters } = enquiry.value;
  return (
    <div className={css.page}>
      <p className="small"><Link href={`/desk/${id}`}><bdi>{title}</bdi></Link> <span className="num">· {reference}</span></p>
      <h1>Correct name, <span className={css.whole}>e-mail</span> or telephone</h1>
      {may.correctClient ? (
        <>
          <p className={css.lead}>{whatGoes(client.email, letters)} What has left stays as it was, and the words of letters are not changed.</p>
          <ClientForm enquiryId={id} contact={client} seen={asSeen(client)} tookLetters={tookLetters(letters, client.email)} />
        </>
      ) : <p className={css.lead}>It may send letters to another address, so it is left to the owner and the reviewers. Ask one of them.</p>}
    </div>
  );
}

/** What goes to the new address. */
function whatGoes(email: string | null, letters: EnquiryView["letters"]): string {
  if (email !== null) return "Letters that have not left go to the new address, and every letter from now on.";
  return letters.some((l) => l.isToBeReadOut) ? "The letter that waits to be read out goes to the address, once the holding time is over, and every letter from now on." : "Every letter from now on goes to the address.";
}

/** Whether some server took a letter for this address: whoever has it can open the client's page. */
const tookLetters = (letters: EnquiryView["letters"], email: string | null): boolean => letters.some((l) => l.to === email && (l.state === "sent" || l.state === "unknown"));
