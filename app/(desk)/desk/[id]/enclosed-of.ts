import type { DocumentView, EnquiryView } from "@/lib/enquiry/views";

/** The documents that go with the reply that is being written. */
export const enclosedOf = ({ documents }: Pick<EnquiryView, "documents">): DocumentView[] => documents.filter((d) => d.isEnclosed);
