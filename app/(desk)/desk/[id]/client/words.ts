import type { Corrected } from "@/lib/enquiry/correct-client";
import { countInWords, sentenceCase } from "@/lib/ui/figures";

const letters = (n: number, one: string, several: string): string => `${sentenceCase(countInWords(n))} ${n === 1 ? `letter ${one}` : `letters ${several}`}`;

/** What a correction did to letters and links, in sentences for whoever made it. */
export function sayCorrected({ is, redirected, posted, overtaken, inDoubt, areLinksEnded, isAcknowledged, suppressedWhy, others }: Corrected): string {
  return [
    "Corrected.",
    redirected > 0 && (is === null ? `${letters(redirected, "waits", "wait")} here, to be read out.` : `${letters(redirected, "goes", "go")} to ${is} now.`),
    posted > 0 && `${letters(posted, "that was to be read out goes", "that were to be read out go")} to ${is} once the holding time is over.`,
    overtaken > 0 && `${letters(overtaken, "that was to be read out is", "that were to be read out are")} taken back: what stands at the enquiry now takes ${overtaken === 1 ? "its" : "their"} place.`,
    inDoubt > 0 && `${letters(inDoubt, "may have reached the old address and is", "may have reached the old address and are")} not tried again.`,
    areLinksEnded && "The links sent before open nothing any more.",
    areLinksEnded && !isAcknowledged && "The client has no link now.",
    isAcknowledged && `The acknowledgement goes to ${is}, with a link to their own page.`,
    suppressedWhy !== null && `${is} refused our mail before (${suppressedWhy}): nothing is sent there until somebody says in the Post why it should be.`,
    others.length > 0 && `The old address stands in other enquiries too: ${others.join(", ")}.`,
  ].filter(Boolean).join(" ");
}
