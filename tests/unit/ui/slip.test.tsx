import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import type { Slip } from "../../../lib/enquiry/views";
import { Slips } from "../../../lib/ui/slip";

const NOW = "2026-11-29T10:00:00.000Z";
const slip: Slip = {
  enquiryId: "e", reference: "A-1", title: "A rug", sentence: "A rug.", state: "new", standing: "new", heldUntil: null, urgency: "can_wait", urgencyWhy: "It is dry.",
  submittedAt: NOW, photoId: null, colours: [], rugs: 1, fibre: null, improvement: null, comesBackOpen: null,
};
/** What is read of when it came, for the eye and for the ear. */
function came(minutes: number) {
  const submittedAt = new Date(Date.parse(NOW) - minutes * 60_000).toISOString();
  const html = renderToStaticMarkup(<Slips slips={[{ ...slip, submittedAt }]} now={NOW} place={{ locale: "en-GB", timeZone: "Europe/London" }} as="h2" />);
  const time = /<time[^>]*>(.*)<\/time>/u.exec(html)?.[1] ?? "";
  const without = (part: RegExp) => time.replace(part, "").replace(/<[^>]*>/gu, "");
  return { eye: without(/<span class="unseen">[^<]*<\/span>/gu), ear: without(/<span aria-hidden="true">[^<]*<\/span>/gu) };
}

describe("a slip", () => {
  it.each([[0, "just now", "came just now"], [70, "1 h 10", "came 1 hour 10 minutes ago"], [5, "5 min", "came 5 minutes ago"], [3 * 24 * 60, "3 days", "came 3 days ago"]])("says of %i minutes ago once when it came", (minutes, eye, ear) =>
    expect(came(minutes)).toEqual({ eye, ear }));
  it("holds words only once that are the same for the eye and the ear", () => {
    const html = renderToStaticMarkup(<Slips slips={[slip]} now={NOW} place={{ locale: "en-GB", timeZone: "Europe/London" }} as="h2" />);
    expect(html.match(/just now/gu)).toHaveLength(1);
  });
});
