import { Link } from "@/lib/ui/link";
import { staffCallerOrRedirect } from "@/app/_server/caller";
import css from "../[id]/erase/erase.module.css";

export const metadata = { title: "Erased" };

/** After an enquiry was erased: nothing of it can be shown. */
export default async function Page() {
  await staffCallerOrRedirect();
  return (
    <div className={css.page}>
      <h1>Erased</h1>
      <p>The enquiry is gone, with its photos, letters and documents. Its client’s link opens nothing any more.</p>
      <p><Link href="/desk">Back to this morning</Link></p>
    </div>
  );
}
