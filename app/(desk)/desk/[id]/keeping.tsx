import { Link } from "@/lib/ui/link";
import css from "./enquiry.module.css";

/** What a client may ask for at any time: a copy of everything, and that it goes. */
export function Keeping({ enquiryId }: { enquiryId: string }) {
  return (
    <section className={`${css.block} no-print`}>
      <h2>Copy and erase</h2>
      <p className="small">A client may ask for either at any time, and needs to give no reason.</p>
      <p><a href={`/copies/${enquiryId}`} download>A copy of everything</a> (.zip) · <Link href={`/desk/${enquiryId}/erase`}>Erase this enquiry</Link></p>
    </section>
  );
}
